import { describe, expect, test } from 'vitest';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import { answer, finding } from '../asked.ts';

/**
 * Links and top link side by side and alike long: the loop of mast and top link closes at every angle, also straight up and
 * beyond. The links themselves reach 600 mm above their pivots, to 1020 mm, and not a millimetre more.
 */
const sideBySide: SetupDocument = {
  hitchwright: 1,
  units: 'metric',
  tractor: {
    lowerBallWidth: 35,
    lowerLinkLength: 600,
    lowerLinkPivotSpan: 718,
    lowerLinkPivotBehindAxle: 100,
    lowerLinkPivotHeight: 420,
    topLinkPivotBehindAxle: 100,
    topLinkPivotHeight: 880,
    topLinkLength: { adjustable: { between: [560, 640] } },
    ballHeightLow: 200,
    ballHeightHigh: 900,
    liftAtBalls: 1000,
    liftAt610: 800,
    liftTestMastHeight: 460,
  },
  implement: {
    mounting: 'threePoint',
    shoulderSpan: 683,
    mastHeight: 460,
    mastSetback: 0,
    mass: 200,
    centreBehind: 500,
    centreAbove: 0,
    parkedPinHeight: 300,
    workPinHeight: 420,
    carryHeight: 600,
  },
};

const upTo = (ballHeightHigh: number): SetupDocument =>
  withEdits(sideBySide, [{ path: 'tractor.ballHeightHigh', value: ballHeightHigh }]);

describe('heights that the lower links can’t reach', () => {
  test('within reach the linkage closes', () => {
    expect(finding(upTo(900), 'lift.linkage').status).toBe('pass');
  });

  test.each([1035, 1060])(
    'a highest ball height of %d mm, beyond 1020, is no height at which the linkage closes',
    (height) => {
      expect(finding(upTo(height), 'lift.linkage').status).toBe('fail');
    },
  );

  test('a sweep past what the links reach says so, with no unbounded number in it', () => {
    const { sweep } = answer(upTo(1060), { full: true });
    expect(sweep?.unreachable?.low).toBeGreaterThan(1000);
    expect(sweep?.stations[sweep.stations.length - 1]?.closes).toBe(false);
    const numbers = sweep?.stations.flatMap((station) => Object.values(station).flat()) ?? [];
    const unbounded = numbers.filter((value) => typeof value === 'number' && !Number.isFinite(value));
    expect(unbounded).toEqual([]);
  });
});
