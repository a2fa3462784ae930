import fc from 'fast-check';
import type { Edit, SetupDocument } from '../../src/records/index.ts';
import { near } from '../properties/generate.ts';
import { unknownTo, type LiftCase } from '../properties/generateLift.ts';
import { always, edits, holes, isOfKind, middleAt, none, offset, slot, type Twist } from './twist.ts';

const has = (document: SetupDocument, path: string): boolean => middleAt(document, path) !== null;

/** Figures that people leave out most; what stands in for them is wide. */
const leavable = [
  'implement.centreBehind',
  'implement.centreAbove',
  'implement.mastSetback',
  'implement.carryHeight',
  'implement.parkedPinHeight',
  'implement.workPinHeight',
  'implement.clearanceWanted',
  'implement.mass',
  'tractor.liftTestMastHeight',
  'tractor.sidePlay',
  'tractor.ballHeightLow',
  'tractor.lowerLinkPivotSpan',
  'tractor.topLinkPivotHeight',
  'coupler.mass',
  'coupler.hookBehind',
  'coupler.seatDepth',
  'coupler.topHookBehind',
];

const leftOut: fc.Arbitrary<readonly Edit[]> = fc
  .subarray(leavable, { minLength: 1, maxLength: 3 })
  .map((paths) => paths.map((path) => ({ path, value: undefined })));

/** A drawn box in the side view, and where it is drawn from behind as well [mm]. */
function part(name: string, kind: string, [x, z]: readonly [number, number], [long, tall]: readonly [number, number]) {
  const side = [
    [x, z],
    [x + long, z],
    [x + long, z + tall],
    [x, z + tall],
  ];
  const rear = [
    [-250, z],
    [250, z],
    [250, z + tall],
    [-250, z + tall],
  ];
  return fc
    .tuple(fc.boolean(), fc.constantFrom(0, 0, 5))
    .map(([both, plusMinusMm]) => ({ name, part: kind, side, ...(both ? { rear } : {}), plusMinusMm }));
}

/** Parts of what is carried and of the tractor that could meet. */
const parts: Twist = (document) => {
  const pivot = middleAt(document, 'tractor.lowerLinkPivotBehindAxle') ?? 100;
  return fc
    .tuple(
      part('body', 'body', [120, 150], [500, 350]),
      part('plate', 'plate', [20, -60], [80, 200]),
      part('bonnet', 'body', [pivot - 400, 900], [380, 500]),
      part('roll bar', 'rollBar', [pivot - 300, 1300], [220, 500]),
    )
    .map(([body, plate, fixed, bar]) => [
      { path: 'implement.outlines', value: [body, plate] },
      { path: 'tractor.outlines', value: [fixed, bar] },
    ]);
};

/** What the coupler and its pins are rated for, near what they carry. */
const ratings: Twist = (document) => {
  const [mass, material] = ['mass', 'carriedMass'].map((key) => middleAt(document, `implement.${key}`) ?? 0);
  const all = (mass as number) + (material as number);
  const pins = isOfKind(document, 'uFrame', 'triangle', 'bar', 'hookEnds') ? 'coupler.front' : 'implement';
  return edits({
    [`${pins}.lowerPinRatedLoad`]: near(0.9 * all + 60, 60),
    ...(isOfKind(document, 'uFrame', 'triangle', 'bar', 'hookEnds', 'clawEnds')
      ? { 'coupler.ratedLoad': near(all + 60, 50) }
      : {}),
    'implement.centreAside': near(0, 90),
  });
};

/** What makes a lift less plain; some of it needs the case that the document was made from. */
export function liftTwists(one: LiftCase): Readonly<Record<string, Twist>> {
  const unknown = fc.constantFrom('nothing', 'arms', 'ballHeights', 'linkage', 'liftAtBalls' as const);
  return {
    'a top link set apart for carrying': () => always({ 'tractor.topLinkLength.adjustable.setting': 'perPosition' }),
    'top-link holes': (document) =>
      edits({
        'tractor.topLinkPivotHeight': holes(document, 'tractor.topLinkPivotHeight', [0, -45], 2),
        'tractor.topLinkPivotBehindAxle': holes(document, 'tractor.topLinkPivotBehindAxle', [0, 12], 2),
      }),
    'mast holes': (document) =>
      edits({
        'implement.mastHeight': holes(document, 'implement.mastHeight', [0, 25], 1),
        'implement.mastSetback': holes(document, 'implement.mastSetback', [0, 10], 2),
      }),
    'a slot for the top hook': (document) =>
      isOfKind(document, 'uFrame')
        ? edits({ 'coupler.topHookHeight': slot(document, 'coupler.topHookHeight', -50, 35, 3) })
        : none,
    'lift rods that can be set': (document) =>
      has(document, 'tractor.liftRodLength')
        ? edits({ 'tractor.liftRodLength': slot(document, 'tractor.liftRodLength', -12, 18, 1) })
        : none,
    'a lift stop': (document) =>
      edits({ 'tractor.liftStopHeight': offset(document, 'tractor.ballHeightHigh', -60, 20) }),
    'the top link of the lift test': (document) =>
      edits({ 'tractor.liftTestTopLink': offset(document, 'tractor.topLinkLength', 10, 15) }),
    'rated coupler and pins': ratings,
    'parts that could meet': parts,
    'less, or more, known of the lift': () => unknown.map((what) => unknownTo(what, one)),
    'figures left out': () => leftOut,
    'stand-ins by category': () =>
      leftOut.map((without) => [
        { path: 'tractor.category', value: '1' },
        { path: 'implement.category', value: '1' },
        ...without,
      ]),
    'nothing for a top link to hold': () =>
      fc.constantFrom<readonly Edit[]>(
        [{ path: 'implement.mounting', value: 'twoPointsAndWheels' }],
        [
          { path: 'implement.mounting', value: 'floatingTopLink' },
          { path: 'implement.floatSits', value: 'behindPin' },
        ],
      ),
    'the rating taken as it is': () => always({ 'rules.liftAllowance': 'asRated' }),
  };
}
