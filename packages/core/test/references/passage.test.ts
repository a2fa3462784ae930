import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passageClearance } from '../../src/tables/index.ts';
import type { Held } from '../properties/generateLift.ts';
import { shaftCases, type ShaftCase } from '../properties/generateShaft.ts';
import { shaftDocument } from '../properties/generateShaftDocument.ts';
import { placeAt, rigOf } from './drivePlaced.ts';
import { questionOf, spaced } from './engineAt.ts';
import { barOf, boxOf, gapTo, type Gap, type Guard } from './guardGap.ts';
import { roomsAt } from './shaftAt.ts';
import { gapOver, type Kind } from './surroundings3d.ts';

const lanes = spaced(5);
/** What the search along the line may miss [mm]. */
const searched = 0.02;
const wanted = passageClearance.value;

/** The engine's room and the distance in space at one height. */
interface Pair extends Gap {
  readonly room: number;
}

/** One case over all its heights. */
interface Compared {
  readonly pairs: readonly Pair[];
}

function compared(cases: fc.Arbitrary<ShaftCase>, kind: Kind, numRuns: number, grid: number): Compared[] {
  const all: Compared[] = [];
  fc.assert(
    fc.property(cases, (one) => {
      const rig = rigOf(one);
      if (rig === null || (kind === 'drawbar' && one.beside.drawbar === null)) return;
      const rooms = roomsAt(questionOf(shaftDocument(one)), one.beside, kind, lanes);
      const pairs = lanes.map((lane, i): Pair => {
        const at = placeAt(rig, rig.lowest + lane * (rig.highest - rig.lowest));
        return { room: rooms[i] as number, ...gapOver(rig, at, kind, grid) };
      });
      all.push({ pairs });
    }),
    { numRuns, endOnFailure: true },
  );
  return all;
}

const at = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.round(share * (values.length - 1))] ?? NaN;

function slackWords(pairs: readonly Pair[]): string {
  const slack = pairs.map(({ room, gap }) => gap - room);
  return `slack least ${at(slack, 0).toFixed(2)}, median ${at(slack, 0.5).toFixed(2)}, worst ${at(slack, 1).toFixed(0)} mm over ${pairs.length} places`;
}

/** How often the clearance is told apart otherwise than by the distance in space, over the whole lift. */
function verdictWords(all: readonly Compared[]): string {
  const over = ({ pairs }: Compared, of: (pair: Pair) => number): boolean => Math.min(...pairs.map(of)) >= wanted;
  const count = (isRoom: boolean, isGap: boolean): number =>
    all.filter((one) => over(one, ({ room }) => room) === isRoom && over(one, ({ gap }) => gap) === isGap).length;
  return `of ${all.length} lifts ${count(true, true)} clear by both, ${count(false, true)} only in space, ${count(true, false)} only by the engine`;
}

const framed: fc.Arbitrary<Held> = fc.constantFrom('uFrame', 'triangle');

const casesOf = (kind: Kind): fc.Arbitrary<ShaftCase> => (kind === 'window' ? shaftCases(framed) : shaftCases());

/** Nothing turned, aside or shifted: the shaft stays in the middle plane. */
const straight = (kind: Kind): fc.Arbitrary<ShaftCase> =>
  casesOf(kind).map((one) => ({
    ...one,
    lift: { ...one.lift, tractor: { ...one.lift.tractor, sidePlay: 0 } },
    drive: { ...one.drive, stubAside: 0, inputAside: 0, inputYaw: null, shiftLeft: 0, shiftRight: 0, sway: 0 },
  }));

const kinds: readonly (readonly [Kind, string])[] = [
  ['topLink', 'the top link'],
  ['lowerLinks', 'the lower links'],
  ['window', 'the edges of a coupler’s opening'],
  ['drawbar', 'a drawbar'],
];

describe('room in the passage against the distance in space, over shifts and sways', () => {
  for (const [kind, title] of kinds) {
    test(`${title}: the engine never claims more room than there is`, () => {
      const all = compared(casesOf(kind), kind, 100, 3);
      const pairs = all.flatMap((one) => one.pairs);
      console.log(`${title}: ${slackWords(pairs)}; ${verdictWords(all)}`);
      const near = pairs.filter(({ gap }) => Math.abs(gap - wanted) < 60);
      if (near.length > 0) console.log(`${title}, within 60 mm of the clearance: ${slackWords(near)}`);
      const excess = Math.max(...pairs.map(({ room, gap }) => room - gap));
      expect(excess).toBeLessThan(searched);
    });
  }
});

describe('a straight shaft beside the tube of its guard', () => {
  for (const [kind, title] of kinds.filter(([one]) => one !== 'lowerLinks')) {
    test(`${title}: engine and space agree within a millimetre, or the engine keeps to the safe side`, () => {
      const pairs = compared(straight(kind), kind, 100, 2).flatMap((one) => one.pairs);
      const beside = pairs.filter(({ besideTube, gap }) => besideTube && gap > 0);
      console.log(`${title}, straight: ${slackWords(pairs)}; beside the tube: ${slackWords(beside)}`);
      expect(beside.length).toBeGreaterThan(20);
      const slack = beside.map(({ room, gap }) => gap - room);
      expect(at(slack, 0)).toBeGreaterThan(-searched);
      // Edges that the shaft does not pass square to, and corners ahead of its front joint, give away some room.
      expect(at(slack, 0.5)).toBeLessThan(1);
    });
  }
});

describe('the distance in space itself', () => {
  const guard: Guard = { from: [0, 0, 0], to: [600, 0, 0], tube: 35, cone: 75, coneLength: 120 };
  const slant = Math.hypot(120, 40);
  test('beside the tube it is across the line, beside the cone square to its slope, past the joint to its rim', () => {
    const across = (x: number, out: number) => barOf([x, -500, out], [x, 500, out], 10);
    expect(gapTo(guard, across(300, 100)).gap).toBeCloseTo(100 - 35 - 10, 3);
    expect(gapTo(guard, across(80, 150)).gap).toBeCloseTo(((150 - 75 + (80 * 40) / 120) * 120) / slant - 10, 3);
    expect(gapTo(guard, across(-30, 115)).gap).toBeCloseTo(50 - 10, 3);
    expect(gapTo(guard, across(640, 105)).gap).toBeCloseTo(50 - 10, 3);
  });
  test('a box is as far as its nearest corner, edge or face', () => {
    expect(gapTo(guard, boxOf([200, -40, -200], [400, 40, -90])).gap).toBeCloseTo(90 - 35, 3);
    expect(gapTo(guard, boxOf([200, 60, -200], [400, 90, -80])).gap).toBeCloseTo(100 - 35, 3);
    expect(gapTo(guard, boxOf([-200, -40, -200], [-60, 40, -75])).gap).toBeCloseTo(60, 3);
  });
});
