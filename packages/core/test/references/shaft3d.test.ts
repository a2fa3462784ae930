import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shaftSweepOf, type ShaftStation } from '../../src/engine/shaft/index.ts';
import { shaftCases, type ShaftCase } from '../properties/generateShaft.ts';
import { shaftDocument } from '../properties/generateShaftDocument.ts';
import type { Held } from '../properties/generateLift.ts';
import { placeAt, rigOf, type PlacedDrive, type Rig } from './drivePlaced.ts';
import { questionOf, spaced } from './engineAt.ts';
import { angleBetween, cross, dot, lengthOf, less, turnAbout, unit, type Spot } from './rigid.ts';
import { driveAt, middlesOf } from './shaftAt.ts';

const lanes = spaced(9);
const length = 1e-6;
const angle = 1e-9;

/** What the drive comes to at one height over all shifts and sways. */
interface Extremes {
  readonly shortest: number;
  readonly longest: number;
  readonly tractorAngle: number;
  readonly implementAngle: number;
}

/** Greatest of a function that has one hill about each of some places: the places, then thirds about the best. */
function greatest(of: (share: number) => number): number {
  const count = 12;
  const values = Array.from({ length: count + 1 }, (_, i) => of(i / count));
  const best = values.indexOf(Math.max(...values)) / count;
  let [low, high] = [Math.max(0, best - 1 / count), Math.min(1, best + 1 / count)];
  for (let i = 0; i < 70; i += 1) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (of(left) < of(right)) low = left;
    else high = right;
  }
  return Math.max(of((low + high) / 2), ...values);
}

/** From farthest left to farthest right, shift and sway moving together: the joint goes by the sum of both. */
function extremesOf(rig: Rig, at: PlacedDrive): Extremes {
  const { shiftLeft, shiftRight, sway } = rig.one.drive;
  const crossAt = (share: number): Spot =>
    at.implementCross(-shiftLeft + share * (shiftLeft + shiftRight), (2 * share - 1) * sway);
  const over = (of: (cross: Spot) => number): number => greatest((share) => of(crossAt(share)));
  const line = (cross: Spot): Spot => less(cross, at.tractorCross);
  return {
    shortest: -over((cross) => -lengthOf(line(cross))),
    longest: over((cross) => lengthOf(line(cross))),
    tractorAngle: over((cross) => angleBetween(line(cross), at.stubAxis)),
    implementAngle: over((cross) => angleBetween(line(cross), at.inputAxis)),
  };
}

/** Both bends, the twist between their planes, and the joint that swings as both do, implement in the middle of its swing. */
function evennessOf({ one: { drive } }: Rig, at: PlacedDrive) {
  const line = less(at.implementCross((drive.shiftRight - drive.shiftLeft) / 2, 0), at.tractorCross);
  const first = angleBetween(at.stubAxis, line);
  const second = angleBetween(line, at.inputAxis);
  const twist = turnAbout(line, cross(at.stubAxis, line), cross(line, at.inputAxis));
  const real = first ** 2 - second ** 2 * Math.cos(2 * twist);
  const imaginary = second ** 2 * Math.sin(2 * twist);
  return { first, second, twist, equivalent: Math.sqrt(Math.hypot(real, imaginary)) };
}

function tried(cases: fc.Arbitrary<ShaftCase>, numRuns: number, look: (rig: Rig) => void): number {
  let placed = 0;
  fc.assert(
    fc.property(cases, (one) => {
      const rig = rigOf(one);
      if (rig === null) return;
      placed += 1;
      look(rig);
    }),
    { numRuns, endOnFailure: true },
  );
  return placed;
}

/** The worst misses seen, by what was missed. */
function misses() {
  const worst = new Map<string, number>();
  return {
    note: (what: string, ours: number, theirs: number, most: number): void => {
      const miss = Math.abs(ours - theirs);
      worst.set(what, Math.max(miss, worst.get(what) ?? 0));
      if (!(miss <= most)) throw new Error(`${what}: engine ${ours}, placed in space ${theirs}`);
    },
    say: (title: string): void => {
      console.log(`${title}: worst ${[...worst].map(([what, miss]) => `${what} ${miss.toExponential(1)}`).join(', ')}`);
    },
  };
}

const heldWays: readonly Held[] = ['bareBalls', 'uFrame', 'triangle', 'clawEnds', 'hookEnds', 'bar'];

describe('the drive against machines placed in space by 4 × 4 moves', () => {
  for (const held of heldWays) {
    test(`${held}: both crosses, distance, and both bends over all shifts and sways`, () => {
      const { note, say } = misses();
      const placed = tried(shaftCases(fc.constant(held)), 40, (rig) => {
        const { steps, value } = driveAt(questionOf(shaftDocument(rig.one)), 'stroke', lanes);
        lanes.forEach((lane, i) => {
          const height = rig.lowest + lane * (rig.highest - rig.lowest);
          const at = placeAt(rig, height);
          const { shiftLeft, shiftRight, sway } = rig.one.drive;
          const middle = at.implementCross(0, 0);
          note('height', value(steps.lift.ballHeight, i), height, length);
          note('J1 x', value(steps.tractorCross.x, i), at.tractorCross[0], length);
          note('J1 z', value(steps.tractorCross.z, i), at.tractorCross[2], length);
          note('J2 x', value(steps.implementCross.x, i), middle[0], length);
          note('J2 z', value(steps.implementCross.z, i), middle[2], length);
          const aside = (shift: number): number => at.implementCross(shift, Math.sign(shift || 1) * sway)[1];
          note('rightmost', value(steps.rightmost, i), aside(shiftRight) - at.tractorCross[1], length);
          const leftmost = at.implementCross(-shiftLeft, -sway)[1] - at.tractorCross[1];
          note('leftmost', value(steps.leftmost, i), leftmost, length);
          const over = extremesOf(rig, at);
          note('D shortest', value(steps.shortest, i), over.shortest, length);
          note('D longest', value(steps.longest, i), over.longest, length);
          note('β1', value(steps.tractorAngle, i), over.tractorAngle, angle);
          note('β2', value(steps.implementAngle, i), over.implementAngle, angle);
        });
      });
      say(`${held}, ${placed} drives`);
      expect(placed).toBeGreaterThan(30);
    });
  }
});

const rad = Math.PI / 180;

function compareStation(rig: Rig, station: ShaftStation, note: ReturnType<typeof misses>['note']): void {
  const at = placeAt(rig, station.ballHeight);
  const over = extremesOf(rig, at);
  const middle = at.implementCross(0, 0);
  note('J2 x', station.implementCross[0], middle[0], length);
  note('J2 z', station.implementCross[1], middle[2], length);
  note('D shortest', station.shortest, over.shortest, length);
  note('D longest', station.longest, over.longest, length);
  note('β1', station.tractorAngle * rad, over.tractorAngle, angle);
  note('β2', station.implementAngle * rad, over.implementAngle, angle);
  const { closedLength, closedOverlap } = rig.one.drive;
  note('overlap', station.overlap ?? NaN, closedOverlap - (over.longest - closedLength), length);
  note('to bottom', station.toBottom ?? NaN, over.shortest - closedLength, length);
}

function sweepOf(rig: Rig) {
  const question = questionOf(shaftDocument(rig.one));
  const sweep = shaftSweepOf(question.shaft, middlesOf(question));
  if (sweep === null) throw new Error('no sweep');
  return sweep;
}

/** Without the turn of the input shaft, or with it. */
const turned = (isTurned: boolean): fc.Arbitrary<ShaftCase> =>
  fc.tuple(shaftCases(), fc.integer({ min: 2, max: 15 }), fc.boolean()).map(([one, by, toRight]) => {
    const inputYaw = isTurned ? (toRight ? by : -by) : null;
    return { ...one, drive: { ...one.drive, inputYaw } };
  });

describe('the drive as drawings and words read it', () => {
  test('distance, bends, overlap and what is left to the bottom at stations of the sweep', () => {
    const { note, say } = misses();
    tried(shaftCases(), 40, (rig) => {
      const sweep = sweepOf(rig);
      const aside = placeAt(rig, rig.lowest).implementCross(0, 0)[1];
      note('input cross aside', sweep.inputAside, aside, length);
      for (const place of [0, 7, 31, 52, 60]) compareStation(rig, sweep.stations[place] as ShaftStation, note);
    });
    say('sweep');
  });

  for (const isTurned of [false, true]) {
    const title = isTurned ? 'input shaft turned aside' : 'input shaft straight from above';
    test(`${title}: equivalent angle and unevenness, from the planes of both joints in space`, () => {
      const { note, say } = misses();
      let twisted = 0;
      tried(turned(isTurned), 60, (rig) => {
        for (const station of sweepOf(rig).stations.filter((_, i) => i % 12 === 0)) {
          const { equivalent, twist } = evennessOf(rig, placeAt(rig, station.ballHeight));
          note('equivalent angle', station.equivalentAngle * rad, equivalent, 1e-8);
          note('unevenness', station.unevenness, Math.sin(equivalent) * Math.tan(equivalent), 1e-8);
          if (Math.abs(Math.sin(twist)) > 0.1) twisted += 1;
        }
      });
      say(title);
      expect(twisted).toBeGreaterThan(30);
    });
  }
});

test('a turn to the right takes the joint to the right, and leans the shaft’s axis so', () => {
  fc.assert(
    fc.property(turned(true), (one) => {
      const rig = rigOf(one);
      if (rig === null) return;
      const [straight, aside] = [{ ...one, drive: { ...one.drive, inputYaw: 0 } }, one].map((of) => {
        const made = rigOf(of);
        if (made === null) throw new Error('does not close');
        return placeAt(made, rig.lowest);
      }) as [PlacedDrive, PlacedDrive];
      const yaw = one.drive.inputYaw ?? 0;
      expect(Math.sign(aside.implementCross(0, 0)[1] - straight.implementCross(0, 0)[1])).toBe(Math.sign(yaw));
      expect(dot(unit(aside.inputAxis), unit(straight.inputAxis))).toBeCloseTo(Math.cos(yaw * rad), 12);
    }),
    { numRuns: 30 },
  );
});
