import { describe, expect, it } from 'vitest';
import { setupOn, setupWith } from '../drawings/setups.ts';
import { planOf, target, unmetAt } from './judged.ts';

// Every expected figure is worked out by hand from the definitions in docs/method/hookup.md.
// The setup: hooks H 712 apart, w 25 wide; pins L 58 long, hole s 44, washer 0; top hook 470 straight above, throat 24, pin 19.
const [H, w, s] = [712, 25, 44];

describe('where the lower pins may stand', () => {
  it('is between what retention and shoulders leave', () => {
    const span = target(planOf(setupWith({ implement: { shoulderSpan: 700 } })), 'shoulderSpan');
    expect([span.low, span.high]).toEqual([H + w - 2 * s, H - w]);
    expect(span.endsBy).toEqual({ low: 'rear.retention', high: 'rear.shoulders' });
    expect(span.aim).toBe(H - w - 5);
    expect(span.stays).toBe(false);
  });
  it('is mirrored where the pins point inward', () => {
    const span = target(planOf(setupWith({ implement: { shoulderSpan: 700, pinsPoint: 'in' } })), 'shoulderSpan');
    expect([span.low, span.high]).toEqual([H + w, H - w + 2 * s]);
  });
  it('loses what is uncertain of the coupler on both sides', () => {
    const coupler = { hookSpan: { value: H, plusMinus: 2 }, hookWidth: { value: w, plusMinus: 0.5 } };
    const span = target(planOf(setupWith({ implement: { shoulderSpan: 700 }, coupler })), 'shoulderSpan');
    expect([span.low, span.high]).toEqual([H + 2 + w + 0.5 - 2 * s, H - 2 - w - 0.5]);
  });
  it('loses what is uncertain of the pins that stay', () => {
    const implement = { shoulderSpan: 700, shoulderToHole: { value: s, plusMinus: 1.5 } };
    expect(target(planOf(setupWith({ implement })), 'shoulderSpan').low).toBe(H + w - 2 * (s - 1.5));
  });
  it('takes ball centres and shoulders for what they are', () => {
    const implement = { shoulderSpan: { value: 735, from: 'ballCentre' } };
    expect(target(planOf(setupWith({ implement })), 'shoulderSpan').now).toEqual({ low: 700, high: 700 });
  });
  it('asks for longer pins where those that are there are too short at every spread', () => {
    const plan = planOf(setupWith({ implement: { standOut: 20, shoulderToHole: 15 } }));
    expect(target(plan, 'shoulderSpan').stays).toBe(true);
    // At S = 661: s ≥ (H + w − S)/2.
    expect(target(plan, 'shoulderToHole').low).toBe((H + w - 661) / 2);
    expect(target(plan, 'standOut').low).toBe((H + w - 661) / 2);
    expect(target(plan, 'standOut').high).toBeNull();
  });
  it('asks for longer pins too where those that are there leave less than 2 mm to weld to', () => {
    // 2s − 2w = 1 mm is left between retention and shoulders.
    const plan = planOf(setupWith({ implement: { shoulderSpan: 700, standOut: 30, shoulderToHole: 25.5 } }));
    expect(target(plan, 'shoulderSpan')).toMatchObject({ low: H - w - 6, high: H - w });
    expect(target(plan, 'shoulderToHole').low).toBe(28);
  });
  it('uses only the spread next to where they are where longer pins are needed anyway', () => {
    const plan = planOf(setupWith({ implement: { shoulderSpan: 720, standOut: 20, shoulderToHole: 15 } }));
    expect(target(plan, 'shoulderSpan')).toMatchObject({ low: H - w - 6, high: H - w });
    expect(target(plan, 'shoulderToHole').low).toBe((H + w - (H - w - 6)) / 2);
  });
});

describe('where the upper pin may stand', () => {
  const play = 24 - 19;
  it('is the top hook with its play', () => {
    const height = target(planOf(setupWith({ implement: { mastHeight: 521 } })), 'mastHeight');
    expect([height.low, height.high]).toEqual([470 - play, 470 + play]);
    expect(height.endsBy).toEqual({ low: 'rear.mast', high: 'rear.mast' });
    expect(height.aim).toBe(470);
  });
  it('is measured along the line to the lower pins where it stands back', () => {
    const plan = planOf(setupWith({ implement: { mastHeight: 440, mastSetback: 60 } }));
    const { low, high } = target(plan, 'mastHeight');
    expect(low).toBeCloseTo(Math.ceil(10 * Math.sqrt((470 - play) ** 2 - 60 ** 2)) / 10, 6);
    expect(high).toBeCloseTo(Math.floor(10 * Math.sqrt((470 + play) ** 2 - 60 ** 2)) / 10, 6);
    const turn = (Math.atan2(470, 0) - Math.atan2(target(plan, 'mastHeight').aim, 60)) * (180 / Math.PI);
    expect(plan.after.turn?.low).toBeLessThanOrEqual(turn);
    expect(plan.after.turn?.high).toBeGreaterThanOrEqual(turn);
  });
  it('goes as far as a top hook can be set', () => {
    const coupler = { topHookHeight: { adjustable: { between: [400, 470] } } };
    const height = target(planOf(setupWith({ implement: { mastHeight: 521 }, coupler })), 'mastHeight');
    expect([height.low, height.high]).toEqual([400 - play, 470 + play]);
    expect(height.aim).toBe(470);
  });
  it('loses what is uncertain of the hook', () => {
    const coupler = { topHookHeight: { value: 470, plusMinus: 2 } };
    const height = target(planOf(setupWith({ implement: { mastHeight: 521 }, coupler })), 'mastHeight');
    expect([height.low, height.high]).toEqual([470 + 2 - play, 470 - 2 + play]);
  });
  it('moves forward only where no height serves where it stands', () => {
    const plan = planOf(setupWith({ implement: { mastHeight: 300, mastSetback: 490 } }));
    expect(target(plan, 'mastSetback')).toMatchObject({ low: -3, high: 3, aim: 0, stays: false });
    // The farthest back in that range decides: √(3² + h²) ≤ 475.
    expect(target(plan, 'mastHeight').high).toBe(Math.floor(10 * Math.sqrt((470 + play) ** 2 - 9)) / 10);
  });
});

describe('the other kinds', () => {
  it('on claws the retaining holes have to clear the ball', () => {
    const document = setupOn(
      { kind: 'clawEnds', clawSize: 56 },
      { pinBallDiameter: 56, pinBallWidth: 45, pinBallBore: 22.6 },
    );
    expect(target(planOf(document), 'shoulderToHole')).toMatchObject({
      low: 45,
      high: null,
      now: { low: 44, high: 44 },
    });
  });
  it('leaves the upper pin alone where no top hook takes it', () => {
    const document = setupOn(
      { kind: 'clawEnds', clawSize: 56 },
      { pinBallDiameter: 56, pinBallWidth: 45, pinBallBore: 22.6 },
    );
    expect(planOf(document).targets.map(({ path }) => path)).not.toContain('implement.mastHeight');
  });
});

describe('the plan as a whole', () => {
  const plan = planOf(setupWith({ implement: { shoulderSpan: 700, mastHeight: 521 } }));
  it('holds with the pins anywhere in it, and not as the setup is', () => {
    expect(unmetAt(plan, [])).toEqual([]);
    expect(plan.before.outcomes.hooksUp).toBe('willNot');
    expect(plan.after.outcomes.hooksUp).toBe('works');
  });
  it('can be told from one that is wrong: pins left where they were fail', () => {
    expect(unmetAt(plan, [{ path: 'implement.mastHeight', value: 521 }])).toEqual(['rear.mast']);
    expect(unmetAt(plan, [{ path: 'implement.shoulderSpan', value: 700 }])).toEqual(['rear.shoulders']);
  });
  it('keeps the room that hooks and latches need', () => {
    expect(plan.clear).toEqual([
      { at: 'lower', side: { low: 75, high: 100 }, measured: false },
      { at: 'upper', side: { low: 75, high: 100 }, measured: false },
    ]);
    expect(plan.assumed.map(({ path }) => path)).toEqual(['coupler.roomNeededLower', 'coupler.roomNeededUpper']);
  });
  it('of several holes starts from the one in use', () => {
    const implement = { mastHeight: { adjustable: { at: [521, 560] } }, mastSetback: 0 };
    expect(target(planOf(setupWith({ implement })), 'mastHeight').now).toEqual({ low: 521, high: 521 });
  });
});
