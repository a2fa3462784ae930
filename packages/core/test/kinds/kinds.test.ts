import { describe, expect, test } from 'vitest';
import { topicOf, type CheckId } from '../../src/engine/findings/index.ts';
import { checksByHold } from '../../src/engine/hookup/index.ts';
import { withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import { answer, finding } from '../asked.ts';

const tractor = {
  lowerBallBore: 22.4,
  lowerBallWidth: 35,
  ballSpan: { adjustable: { between: [640, 760] } },
  upperBallBore: 19.3,
  upperBallWidth: 42,
  lowerLinkLength: 760,
  lowerLinkPivotSpan: 440,
  lowerLinkPivotBehindAxle: 120,
  lowerLinkPivotHeight: 420,
  topLinkPivotBehindAxle: 270,
  topLinkPivotHeight: 800,
  topLinkLength: { adjustable: { between: [500, 760] } },
  ballHeightLow: 200,
  ballHeightHigh: 810,
};
const front = {
  lowerPinDiameter: 22.2,
  shoulderSpan: 683,
  standOut: 70,
  shoulderToHole: 50,
  washer: 2,
  upperPinDiameter: 19,
  clevisGap: 46,
  clevisOuterWidth: 70,
  mastHeight: 460,
  mastSetback: 0,
};
const implement = {
  mounting: 'threePoint',
  lowerPinDiameter: 22.2,
  shoulderSpan: 670,
  standOut: 70,
  shoulderToHole: 55,
  washer: 2,
  mastHeight: 457,
  mastSetback: 0,
  upperPinDiameter: 19,
  clevisGap: 46,
  clevisOuterWidth: 70,
  freeRoomLower: 110,
  freeRoomUpper: 110,
};
const hooks = { hookWidth: 25, hookSeat: 22.8, hookBehind: 100, hookRise: 0, roomNeededLower: 80, roomNeededUpper: 80 };

const base = { hitchwright: 1, units: 'metric', tractor, implement } as const;
const uFrame = {
  kind: 'uFrame',
  ...hooks,
  hookSpan: 712,
  topHookHeight: 457,
  topHookBehind: 0,
  topHookThroat: 20,
  topHookThickness: 25,
  front,
};

/** Each kind with a setup that passes, and a change that fails it for a reason no other kind can give. */
const kinds: Readonly<Record<string, { fits: SetupDocument; change: Edit; reason: CheckId }>> = {
  bareBalls: {
    fits: base,
    change: { path: 'tractor.ballSpan', value: { adjustable: { between: [500, 690] } } },
    reason: 'front.span',
  },
  uFrame: {
    fits: { ...base, coupler: uFrame },
    change: { path: 'implement.mastHeight', value: 521 },
    reason: 'rear.mast',
  },
  hookEnds: {
    fits: {
      ...base,
      coupler: { kind: 'hookEnds', ...hooks, front: { lowerPinDiameter: 22.2, shoulderToHole: 45, washer: 2 } },
    },
    change: { path: 'implement.shoulderToHole', value: 26 },
    reason: 'rear.retention',
  },
  clawEnds: {
    fits: {
      ...base,
      coupler: { kind: 'clawEnds', clawSize: 44, roomNeededLower: 80 },
      implement: { ...implement, pinBallDiameter: 44, pinBallWidth: 35, pinBallBore: 22.4 },
    },
    change: { path: 'implement.pinBallDiameter', value: 56 },
    reason: 'rear.claw',
  },
  triangle: {
    fits: {
      ...base,
      coupler: { kind: 'triangle', frameAngle: 60, frameWidth: 500, front },
      implement: { ...implement, receiver: 'triangle', receiverAngle: 60, receiverWidth: 504 },
    },
    change: { path: 'implement.receiverAngle', value: 54 },
    reason: 'rear.receiverAngle',
  },
  bar: {
    fits: {
      ...base,
      coupler: { kind: 'bar', barDiameter: 40, barLength: 620, hookBehind: 90, hookRise: 0, front },
      implement: { ...implement, receiver: 'jaws', jawOpening: 41, jawSpan: 600 },
    },
    change: { path: 'implement.jawOpening', value: 36 },
    reason: 'rear.jaw',
  },
};

describe('every way of holding', () => {
  for (const [kind, { fits, change, reason }] of Object.entries(kinds)) {
    test(`${kind}: a setup that hooks up`, () => {
      const { findings, outcomes } = answer(fits);
      const open = findings.filter(
        ({ id, status }) => topicOf(id) === 'hooksUp' && !['pass', 'notNeeded', 'notChecked'].includes(status),
      );
      expect(outcomes.hooksUp).toBe('works');
      expect(open.map(({ id }) => id)).toEqual([]);
      expect(answer(fits).outcomes.hooksUp).toBe('works');
    });
    test(`${kind}: one that fails by ${reason}`, () => {
      expect(finding(withEdits(fits, [change]), reason).status).toMatch(/fail|cured/);
    });
  }
  test('the mast check belongs to the U-frame alone, claw, bar and receiver to theirs', () => {
    const holding = (id: CheckId) =>
      Object.entries(checksByHold)
        .filter(([, ids]) => ids.includes(id))
        .map(([hold]) => hold);
    expect(holding('rear.mast')).toEqual(['uFrame']);
    expect(holding('rear.claw')).toEqual(['clawEnds']);
    expect(holding('rear.jaw')).toEqual(['bar']);
    expect(holding('rear.receiverAngle')).toEqual(['triangle']);
  });
  test('hook ends fail where the links’ one spread can’t serve shoulders and retaining pins together', () => {
    const short = withEdits((kinds['hookEnds'] as { fits: SetupDocument }).fits, [
      { path: 'implement.shoulderToHole', value: 26 },
    ]);
    const [shoulders, retention] = [finding(short, 'rear.shoulders'), finding(short, 'rear.retention')];
    expect([shoulders.status, retention.status]).toEqual(['fail', 'fail']);
    expect(shoulders.conflictsWith).toContain('rear.retention');
    expect(retention.conflictsWith).toContain('rear.shoulders');
  });
  test('hook ends pass where no one spread serves every span but each span has one', () => {
    const open = withEdits((kinds['hookEnds'] as { fits: SetupDocument }).fits, [
      { path: 'implement.shoulderSpan', value: { between: [640, 700] } },
    ]);
    expect(answer(open).outcomes.hooksUp).toBe('works');
    expect(finding(open, 'rear.shoulders').margin?.low).toBeLessThan(0);
  });
});

describe('the turn of an implement in a rigid coupler', () => {
  const held = (mastHeight: number, mastSetback: number, topHookHeight: number) =>
    withEdits({ ...base, coupler: uFrame }, [
      { path: 'implement.mastHeight', value: mastHeight },
      { path: 'implement.mastSetback', value: mastSetback },
      { path: 'coupler.topHookHeight', value: topHookHeight },
    ]);
  test('heights that differ fit where the distances agree: the implement is turned, and the turn is reported', () => {
    const document = held(455, 60, 459);
    expect(finding(document, 'rear.mast').status).toBe('pass');
    expect(answer(document).turn?.low).toBeCloseTo(90 - (Math.atan2(455, 60) * 180) / Math.PI, 9);
  });
  test('equal heights miss where the distances differ', () => {
    const miss = finding(held(455, 80, 455), 'rear.mast');
    expect(miss.status).toBe('fail');
    expect(miss.margin?.low).toBeCloseTo(1 - (Math.hypot(455, 80) - 455), 9);
  });
});

describe('reference points, rows and directions', () => {
  test('a span read between ball centres is one ball width wider than the shoulders', () => {
    const read = (from: string, value: number) =>
      finding(withEdits(base, [{ path: 'implement.shoulderSpan', value: { value, from } }]), 'front.span').quantity;
    expect(read('shoulder', 670)?.low).toBeCloseTo(705, 9);
    expect(read('ballCentre', 705)?.low).toBeCloseTo(705, 9);
    expect(read('unsaid', 700)).toEqual({ low: 700, high: 735 });
  });
  test('pins that point inward put the balls inside the shoulders', () => {
    const inward = withEdits(base, [
      { path: 'implement.pinsPoint', value: 'in' },
      { path: 'implement.shoulderSpan', value: 760 },
    ]);
    expect(finding(inward, 'front.span').quantity?.low).toBeCloseTo(725, 9);
  });
  test('of two pin rows the one that fits is taken', () => {
    const row = {
      lowerPinDiameter: 22.2,
      shoulderSpan: 670,
      standOut: 70,
      shoulderToHole: 55,
      washer: 2,
      rise: 0,
      behind: 0,
    };
    const both = withEdits(base, [
      { path: 'implement.lowerPinDiameter', value: 28.6 },
      { path: 'implement.secondRow', value: row },
    ]);
    expect(answer(both).outcomes.hooksUp).toBe('works');
  });
});
