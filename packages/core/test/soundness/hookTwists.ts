import fc from 'fast-check';
import { atPath, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { near, type Figure } from '../properties/generate.ts';
import { edits, isOfKind, none, type Twist } from './twist.ts';

/** A bushing on the lower pins of a machine, and seats that take it. */
function lowerBushing(path: string, seats: readonly string[]): Readonly<Record<string, Figure>> {
  return {
    [`${path}.lowerBushingInside`]: near(22.9, 0.7),
    [`${path}.lowerBushingOutside`]: near(28.4, 0.5),
    [`${path}.lowerBushingLength`]: near(40, 4),
    ...Object.fromEntries(seats.map((seat) => [seat, near(28.9, 0.6)])),
  };
}

function upperBushing(path: string, seats: readonly string[]): Readonly<Record<string, Figure>> {
  return {
    [`${path}.upperBushingInside`]: near(19.6, 0.6),
    [`${path}.upperBushingOutside`]: near(25.4, 0.3),
    ...Object.fromEntries(seats.map((seat) => [seat, near(25.8, 0.4)])),
  };
}

const hasCoupler = (document: SetupDocument): boolean => atPath(document, 'coupler') !== undefined;

/** The figure at a path, said between other points. */
function readFrom(document: SetupDocument, path: string, ways: readonly string[]): fc.Arbitrary<readonly Edit[]> {
  const figure = atPath(document, path);
  if (figure === undefined || figure === null) return none;
  const said = typeof figure === 'number' ? { value: figure } : (figure as object);
  return fc.constantFrom(...ways).map((from) => [{ path, value: { ...said, from } }]);
}

type Views = Readonly<Record<'rear' | 'side', readonly (readonly [number, number])[]>>;

/** A box about a place, as it is seen from behind and from the side [mm]. */
function box(aside: number, behind: number, up: number): fc.Arbitrary<Views> {
  const off = fc.integer({ min: -120, max: 120 });
  const size = fc.integer({ min: 20, max: 90 });
  return fc.tuple(off, off, off, size, size, size).map(([right, back, above, wide, long, tall]) => {
    const low = up + above;
    const seen = (from: number, reach: number) =>
      [
        [from, low],
        [from + reach, low],
        [from + reach, low + tall],
        [from, low + tall],
      ] as const;
    return { rear: seen(aside + right, wide), side: seen(behind + back, long) };
  });
}

/** What stands about the hooks: outlines in one view or in both, drawn to some millimetres. */
const outlines: Twist = (document) => {
  if (!hasCoupler(document)) return none;
  const plusMinusMm = fc.constantFrom(0, 0, 2, 6);
  const views = fc.constantFrom<readonly (keyof Views)[]>(['rear', 'side'], ['rear', 'side'], ['side'], ['rear']);
  const drawn = (name: string, part: string, [aside, behind, up]: readonly [number, number, number]) =>
    fc.tuple(box(aside, behind, up), views, plusMinusMm).map(([seen, kept, slack]) => ({
      ...{ name, part, plusMinusMm: slack },
      ...Object.fromEntries(kept.map((view) => [view, seen[view]])),
    }));
  const gauge = fc.constantFrom<readonly Edit[]>([], [{ path: 'implement.freeRoomLower', value: undefined }]);
  return fc
    .tuple(
      drawn('brace', 'brace', [150, 60, 150]),
      drawn('gearbox', 'gearbox', [60, 180, 220]),
      drawn('post', 'post', [300, -20, 60]),
      gauge,
    )
    .map(([brace, gearbox, post, without]) => [
      { path: 'implement.outlines', value: [brace, gearbox] },
      { path: 'coupler.outlines', value: [post] },
      ...without,
    ]);
};

/** Fittings and conventions at the two joints. */
export const hookTwists: Readonly<Record<string, Twist>> = {
  'bushings on the lower pins': (document) =>
    hasCoupler(document)
      ? edits(lowerBushing('implement', ['coupler.hookSeat']))
      : edits(lowerBushing('implement', ['tractor.lowerBallBore'])),
  'bushings on the coupler’s front': (document) =>
    hasCoupler(document)
      ? edits({
          ...lowerBushing('coupler.front', ['tractor.lowerBallBore']),
          ...upperBushing('coupler.front', ['tractor.upperBallBore']),
        })
      : none,
  'a bushing on the upper pin': (document) =>
    edits(
      upperBushing('implement', isOfKind(document, 'uFrame') ? ['coupler.topHookThroat'] : ['tractor.upperBallBore']),
    ),
  'a second row of pins': () =>
    edits({
      'implement.secondRow.lowerPinDiameter': near(22.4, 0.6),
      'implement.secondRow.shoulderSpan': near(676, 22),
      'implement.secondRow.standOut': near(62, 6),
      'implement.secondRow.shoulderToHole': near(44, 5),
      'implement.secondRow.washer': near(2, 0.5),
      'implement.secondRow.rise': near(12, 14),
      'implement.secondRow.behind': near(5, 15),
    }),
  'double pin plates': () =>
    edits({ 'implement.lowerPinPlates': fc.constant('double'), 'implement.doublePlateGap': near(40, 10) }),
  'a top hook with two cheeks': (document) =>
    isOfKind(document, 'uFrame') ? edits({ 'coupler.topHookCheekGap': near(72, 3) }) : none,
  'play of the top hook said': (document) =>
    isOfKind(document, 'uFrame') ? edits({ 'coupler.topHookPlay': near(5, 4) }) : none,
  'spans read between other points': (document) =>
    fc
      .tuple(
        readFrom(document, 'implement.shoulderSpan', ['ballCentre', 'unsaid']),
        readFrom(document, 'coupler.front.shoulderSpan', ['ballCentre', 'unsaid']),
        readFrom(document, 'tractor.ballSpan', ['innerFaces', 'outerFaces']),
      )
      .map((all) => all.flat()),
  'outlines about the hooks': outlines,
};
