import type { Edit, Setup, SetupDocument, Value } from '../../records/index.ts';
import type { CheckId, Finding } from '../findings/index.ts';
import type { ShaftSweep } from '../shaft/index.ts';
import { adjusted, taken, writtenRange, type Candidate } from './candidate.ts';

const lengths: readonly CheckId[] = ['shaft.bottoming', 'shaft.overlap', 'shaft.apart'];
const bends: readonly CheckId[] = [
  'shaft.tractorJoint',
  'shaft.implementJoint',
  'shaft.tractorJointRaised',
  'shaft.implementJointRaised',
];
const curedByAnotherShaft: readonly CheckId[] = [
  ...lengths,
  ...bends,
  'shaft.splines',
  'shaft.series',
  'shaft.passage',
];

/** What shaft cures are sought from: the setup as written and read, what fails, and the drive through the lift. */
export interface ShaftTrouble {
  readonly document: SetupDocument;
  readonly setup: Setup;
  readonly failing: readonly Finding[];
  readonly sweep: ShaftSweep | null;
}

const onShaft = { ...adjusted, on: 'shaft' } as const;

/**
 * What could be done about a drive shaft that does not serve, in the order in which it is worth doing: another shaft, longer
 * halves, a lift stop, cutting both halves, and last of all an extender on the stub. Nothing is offered against a wrong speed.
 */
export function shaftCandidates(trouble: ShaftTrouble): Candidate[] {
  return [
    ...otherShafts(trouble),
    ...longerHalves(trouble),
    ...liftStops(trouble),
    ...cutHalves(trouble),
    ...stubExtenders(trouble),
  ];
}

function fails({ failing }: ShaftTrouble, ids: readonly CheckId[]): readonly Finding[] {
  return failing.filter(({ id }) => ids.includes(id));
}

/** A shaft that is fitted stays where it fits: another one is a second shaft for this pair. */
function otherShafts(trouble: ShaftTrouble): Candidate[] {
  if (fails(trouble, curedByAnotherShaft).length === 0) return [];
  return (trouble.setup.parts ?? []).flatMap((part, i): Candidate[] =>
    part.kind === 'driveShaft'
      ? [
          {
            ...taken(part),
            on: 'shaft',
            edits: [{ path: 'shaft', value: writtenParts(trouble.document)[i]?.['shaft'] }],
          },
        ]
      : [],
  );
}

function writtenParts(document: SetupDocument): readonly SetupDocument[] {
  return (document['parts'] ?? []) as readonly SetupDocument[];
}

/** How far the worst of some findings misses, in whole millimetres; null where nothing bounds it. */
function missing(findings: readonly Finding[]): number | null {
  const low = Math.min(...findings.map(({ margin }) => margin?.low ?? -Infinity));
  return Number.isFinite(low) && low < 0 ? Math.ceil(-low) : null;
}

/** Halves are made longer in steps, and no shorter than needed [mm]. */
const longerStep = 5;

/** Both halves longer by x: closed length and closed overlap grow by x, the overlap at a distance by 2x. */
function longerHalves(trouble: ShaftTrouble): Candidate[] {
  const short = missing(fails(trouble, ['shaft.overlap', 'shaft.apart']));
  if (short === null) return [];
  const amount = (Math.floor(short / 2 / longerStep) + 1) * longerStep;
  return [amount, amount + 3 * longerStep].flatMap((more) => halvesBy(trouble, 'longerTubes', more, more));
}

/** What is cut beyond the least where the least does not serve together with everything else [mm]. */
const cutFurther = 4;

/** Both halves cut by k: closed length and closed overlap fall by k, the overlap at a distance by 2k. */
function cutHalves(trouble: ShaftTrouble): Candidate[] {
  const least = missing(fails(trouble, ['shaft.bottoming']));
  if (least === null) return [];
  return [least, least + cutFurther].flatMap((amount) => halvesBy(trouble, 'cutShaft', amount, -amount));
}

function halvesBy({ setup }: ShaftTrouble, kind: 'longerTubes' | 'cutShaft', amount: number, by: number): Candidate[] {
  const keys = ['closedLength', 'closedOverlap', 'profileLength'] as const;
  const edits = keys.flatMap((key): Edit[] => {
    const value = setup.shaft?.[key];
    return value === undefined ? [] : [{ path: `shaft.${key}`, value: movedBy(value, by) }];
  });
  if (edits.length < 2 || edits.some(({ value }) => value === null)) return [];
  return [{ ...onShaft, kind, returnable: kind !== 'cutShaft', amount, edits }];
}

/** How much lower than where a joint reaches its limit a stop is tried [mm]: figures that are open may want it lower. */
const below = [0, 25, 100];

/** The lift stopped where a joint reaches its limit. */
function liftStops(trouble: ShaftTrouble): Candidate[] {
  const { sweep } = trouble;
  if (sweep === null || fails(trouble, bends).length === 0) return [];
  const heights = [sweep.aboveStop, sweep.aboveTurning].filter((height) => height !== null);
  return heights.flatMap((height) =>
    below.map((less): Candidate => {
      const amount = Math.floor((height - less) / 5) * 5;
      const edits = [{ path: 'tractor.liftStopHeight', value: amount }];
      return { ...onShaft, kind: 'liftStop', on: 'tractor', amount, edits };
    }),
  );
}

/** An extender moves the joint at the tractor rearward; the shaft itself stays as it is. */
function stubExtenders(trouble: ShaftTrouble): Candidate[] {
  const { setup } = trouble;
  const stub = setup.tractor.stubBehindAxle;
  if (stub === undefined || fails(trouble, lengths).length === 0) return [];
  return (setup.parts ?? []).flatMap((part): Candidate[] => {
    if (part.kind !== 'stubExtender' || part.length.kind !== 'stated') return [];
    const value = movedBy(stub, part.length.value);
    if (value === null) return [];
    const edits = [{ path: 'tractor.stubBehindAxle', value }];
    return [{ ...taken(part), kind: 'stubExtender', on: 'tractor', amount: part.length.value, edits }];
  });
}

/** A reading moved along, its reference points and tolerance kept. */
function movedBy(value: Value, by: number): unknown {
  const { from } = value.provenance;
  const points = from === undefined ? {} : { from };
  if (value.kind !== 'stated' && value.kind !== 'uncertain' && value.kind !== 'default') return null;
  const { low, high } = value.bound;
  return { ...writtenRange(low + by, high + by), ...points };
}
