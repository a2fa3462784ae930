import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../../src/engine/findings/index.ts';
import { shaftSweepOf } from '../../src/engine/shaft/index.ts';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { questionOf } from '../references/engineAt.ts';
import { middlesOf } from '../references/shaftAt.ts';
import { tapePaths, tapes } from './generateLift.ts';
import { shaftCases, type DrawbarCase, type ShaftCase } from './generateShaft.ts';
import { shaftDocument, shaftTapePaths, shaftTapes } from './generateShaftDocument.ts';
import { judgedDrive } from './shaftDrive.ts';

const flipped = (value: number): number => (value === 0 ? 0 : -value);

function mirroredDrawbar(drawbar: DrawbarCase | null): DrawbarCase | null {
  return drawbar === null ? null : { ...drawbar, left: -drawbar.right, right: -drawbar.left };
}

/** Left and right changed over. */
function mirrored({ drive, beside, ...rest }: ShaftCase): ShaftCase {
  return {
    ...rest,
    drive: {
      ...drive,
      stubAside: flipped(drive.stubAside),
      inputAside: flipped(drive.inputAside),
      inputYaw: drive.inputYaw === null ? null : flipped(drive.inputYaw),
      shiftLeft: drive.shiftRight,
      shiftRight: drive.shiftLeft,
    },
    beside: { ...beside, drawbar: mirroredDrawbar(beside.drawbar) },
  };
}

/** What a finding says, rounded by less than anyone can measure. */
function told({ id, status, reason, side, margin, quantity }: Finding) {
  const rounded = (value: number | null | undefined): number | null =>
    value == null ? null : Math.round(value * 1e6) / 1e6 + 0;
  const both = (of: Finding['margin']) => (of === null ? null : [rounded(of.low), rounded(of.high)]);
  return { id, status, reason, side, margin: both(margin), quantity: both(quantity) };
}

/** Figures that are said of left or right by themselves change places with their tape. */
const mirroredPaths = (paths: readonly string[]): string[] =>
  paths.map((path) => {
    if (path.endsWith('shiftLeft')) return 'implement.shiftRight';
    return path.endsWith('shiftRight') ? 'implement.shiftLeft' : path;
  });

describe('left and right', () => {
  for (const [title, isTaped] of [
    ['exact', false],
    ['taped', true],
  ] as const) {
    test(`${title}: in a mirror every finding of the drive is the same`, () => {
      let decided = 0;
      fc.assert(
        fc.property(shaftCases(), tapePaths, shaftTapePaths, (one, lift, paths) => {
          const said = (of: ShaftCase, drive: readonly string[]): SetupDocument =>
            isTaped ? shaftDocument(of, shaftTapes(drive, tapes(lift))) : shaftDocument(of);
          const here = judgedDrive(said(one, paths)).findings;
          const there = judgedDrive(said(mirrored(one), mirroredPaths(paths))).findings;
          expect(there.map(told)).toEqual(here.map(told));
          decided += here.filter(({ status }) => status === 'pass' || status === 'fail').length;
        }),
        { numRuns: isTaped ? 8 : 25, endOnFailure: true },
      );
      expect(decided).toBeGreaterThan(30);
    });
  }
});

/** A top link beside the lower links, as long and as steep: the implement stays level all the way up. */
function parallelLinks(one: ShaftCase): SetupDocument {
  const { pivot, upper } = one.lift.sideView;
  return withEdits(shaftDocument(one), [
    { path: 'tractor.topLinkPivotBehindAxle', value: pivot.x + upper.x },
    { path: 'tractor.topLinkPivotHeight', value: pivot.z + upper.z },
    { path: 'tractor.topLinkLength', value: undefined },
  ]);
}

describe('an input shaft that stays parallel to the stub', () => {
  const cases = shaftCases(fc.constant('bareBalls'));
  const aside = (one: ShaftCase, inputYaw: number | null): ShaftCase => ({
    ...one,
    drive: { ...one.drive, inputAside: 150, inputAngle: 0, inputYaw },
  });
  const sweepOf = (one: ShaftCase) => {
    const question = questionOf(parallelLinks(one));
    const sweep = shaftSweepOf(question.shaft, middlesOf(question));
    if (sweep === null) throw new Error('no sweep');
    return sweep;
  };
  test('leaves no unevenness, however far aside and however high', () => {
    fc.assert(
      fc.property(cases, fc.constantFrom(null, 0), (one, yaw) => {
        for (const station of sweepOf(aside(one, yaw)).stations) {
          expect(Math.abs(station.slope)).toBeLessThan(1e-9);
          expect(station.tractorAngle).toBeGreaterThan(2);
          expect(station.equivalentAngle).toBeLessThan(1e-5);
          expect(station.unevenness).toBeLessThan(1e-12);
        }
      }),
      { numRuns: 25, endOnFailure: true },
    );
  });
  test('turned aside by a few degrees it is not even any more', () => {
    fc.assert(
      fc.property(cases, fc.integer({ min: 4, max: 12 }), fc.boolean(), (one, by, toRight) => {
        const { stations } = sweepOf(aside(one, toRight ? by : -by));
        expect(Math.max(...stations.map((station) => station.equivalentAngle))).toBeGreaterThan(1);
      }),
      { numRuns: 25, endOnFailure: true },
    );
  });
});

test('widening what is uncertain never makes a result of the drive surer, nor turns it round', () => {
  const seen = new Map<string, number>();
  const inputs = [shaftCases(), tapePaths, shaftTapePaths, even(1.5, 5), even(0.75, 1.25)] as const;
  fc.assert(
    fc.property(...inputs, (one, lift, paths, times, closer) => {
      // Lengths about where the clearance and the overlap are just met, so that widening decides something.
      const near: ShaftCase = {
        ...one,
        drive: {
          ...one.drive,
          closedLength: one.drive.closedLength * closer,
          closedOverlap: Math.min(330, one.drive.closedLength * closer - 20),
        },
      };
      const [narrow, wide] = [1, times].map((by) =>
        judgedDrive(shaftDocument(near, shaftTapes(paths, tapes(lift, by), by))),
      );
      narrow?.findings.forEach((before, i) => {
        const after = wide?.findings[i]?.status ?? 'none';
        const step = `${before.status} to ${after}`;
        seen.set(step, (seen.get(step) ?? 0) + 1);
        if (after === 'pass' || after === 'fail')
          expect(`${before.id}: ${step}`).toBe(`${before.id}: ${after} to ${after}`);
      });
    }),
    { numRuns: 24, endOnFailure: true },
  );
  console.log(`widened: ${[...seen].map(([step, count]) => `${step} ${count}`).join(', ')}`);
  expect(seen.get('pass to undecided') ?? 0).toBeGreaterThan(3);
});
