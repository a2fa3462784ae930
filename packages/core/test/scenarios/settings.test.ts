import { describe, expect, test } from 'vitest';
import { withEdits, type SetupDocument } from '../../src/records/index.ts';
import { answer, example, finding } from '../asked.ts';

function changed(document: SetupDocument, changes: Readonly<Record<string, unknown>>): SetupDocument {
  return withEdits(
    document,
    Object.entries(changes).map(([path, value]) => ({ path, value })),
  );
}

const held = example('kinds/uFrame-fits');
const hooked = example('kinds/hookEnds-fits');
const slot = { adjustable: { between: [356, 470] } };
const holes = { adjustable: { at: [356, 413, 470] } };

describe('a top hook that somebody sets', () => {
  test('in a slot: no one setting serves every mast in a wide range, but each mast has one, so it passes', () => {
    const open = changed(held, { 'coupler.topHookHeight': slot, 'implement.mastHeight': { between: [400, 465] } });
    const mast = finding(open, 'rear.mast');
    expect(mast.status).toBe('pass');
    expect(mast.margin?.low).toBeLessThan(0);
    expect(mast.unresolved).toBe(false);
  });
  test('in a slot: a range that reaches past its end by more than the play is open, wholly past it fails', () => {
    const mastAt = (low: number, high: number) =>
      finding(
        changed(held, { 'coupler.topHookHeight': slot, 'implement.mastHeight': { between: [low, high] } }),
        'rear.mast',
      ).status;
    expect(mastAt(465, 471)).toBe('pass');
    expect(mastAt(465, 471.1)).toBe('undecided');
    expect(mastAt(471.1, 475)).toBe('fail');
  });
  test('in holes: a mast on a hole passes, one between two holes fails, one in a range over a hole is open', () => {
    const mast = (mastHeight: unknown) =>
      finding(changed(held, { 'coupler.topHookHeight': holes, 'implement.mastHeight': mastHeight }), 'rear.mast')
        .status;
    expect(mast(413)).toBe('pass');
    expect(mast(470.9)).toBe('pass');
    expect(mast(440)).toBe('fail');
    expect(mast({ between: [405, 420] })).toBe('undecided');
  });
  test('an uncertain range is nobody’s to set: the same range as a doubt about the hook does not pass', () => {
    const doubt = changed(held, { 'coupler.topHookHeight': { between: [356, 470] } });
    expect(finding(doubt, 'rear.mast').status).toBe('undecided');
  });
});

describe('hooks on the link ends, set with the links', () => {
  const short = changed(hooked, { 'implement.shoulderToHole': 26 });
  test('two checks that want different spreads fail together and name each other', () => {
    const [shoulders, retention] = [finding(short, 'rear.shoulders'), finding(short, 'rear.retention')];
    expect([shoulders.status, retention.status]).toEqual(['fail', 'fail']);
    expect(shoulders.conflictsWith).toEqual(['rear.retention']);
    expect(retention.conflictsWith).toEqual(['rear.shoulders']);
  });
  test('each of the two passes where the other is out of the way', () => {
    const noPin = changed(short, { 'coupler.retainingPin': 'notNeeded' });
    expect(finding(noPin, 'rear.shoulders').status).toBe('pass');
    expect(finding(noPin, 'rear.retention').status).toBe('notNeeded');
    const narrow = changed(short, { 'tractor.ballSpan': { adjustable: { between: [640, 690] } } });
    expect(finding(narrow, 'rear.shoulders').status).toBe('fail');
    expect(finding(narrow, 'rear.retention').status).toBe('pass');
  });
  test('what both want meets where the hole stands hook and washer out, to a thousandth of a millimetre', () => {
    expect(finding(changed(hooked, { 'implement.shoulderToHole': 27.001 }), 'rear.retention').status).toBe('pass');
    expect(finding(changed(hooked, { 'implement.shoulderToHole': 26.999 }), 'rear.retention').status).toBe('fail');
  });
  test('no one spread serves every span in a range, but each span has one, so it passes', () => {
    const open = changed(hooked, { 'implement.shoulderSpan': { between: [640, 700] } });
    for (const id of ['rear.shoulders', 'rear.retention', 'rear.pinSeat'] as const) {
      expect(finding(open, id).status, id).toBe('pass');
    }
  });
  test('a spread that can’t open far enough fails the shoulders alone', () => {
    const narrow = changed(hooked, { 'tractor.ballSpan': { adjustable: { between: [600, 690] } } });
    const shoulders = finding(narrow, 'rear.shoulders');
    expect(shoulders.status).toBe('fail');
    expect(shoulders.margin?.high).toBeCloseTo(690 - 25 - 670, 6);
    expect(shoulders.conflictsWith).toEqual([]);
  });
});

describe('a fit needs the turn', () => {
  const leaning = { 'implement.mastHeight': 450, 'implement.mastSetback': 80 };
  test('a mast 7 mm lower that leans back 80 mm is as long as the hook is high: it fits, turned by 10.1°', () => {
    const length = Math.hypot(450, 80);
    const result = answer(changed(held, { ...leaning, 'coupler.topHookHeight': length }));
    expect(result.findings.find(({ id }) => id === 'rear.mast')?.status).toBe('pass');
    expect(result.turn?.low).toBeCloseTo((Math.atan2(80, 450) * 180) / Math.PI, 9);
    expect(result.turn?.high).toBeCloseTo(10.08, 2);
  });
  test('the same mast misses a hook of its own height by what its lean makes it longer, less the play', () => {
    const mast = finding(changed(held, { ...leaning, 'coupler.topHookHeight': 450 }), 'rear.mast');
    expect(mast.status).toBe('fail');
    expect(mast.side).toBe('high');
    expect(mast.margin?.high).toBeCloseTo(450 + 1 - Math.hypot(450, 80), 9);
  });
  test('a hook as far back as the mast needs no turn', () => {
    const result = answer(changed(held, { ...leaning, 'coupler.topHookHeight': 450, 'coupler.topHookBehind': 80 }));
    expect(result.outcomes.hooksUp).toBe('works');
    expect(result.turn?.low).toBeCloseTo(0, 9);
  });
});

describe('where a reading was taken', () => {
  const direct = example('kinds/bareBalls-fits');
  test('a span between ball centres is the shoulders and one ball, wherever it is used', () => {
    const shoulder = changed(held, { 'implement.shoulderSpan': { value: 670, from: 'shoulder' } });
    const centre = changed(held, { 'implement.shoulderSpan': { value: 705, from: 'ballCentre' } });
    expect(finding(centre, 'rear.shoulders').quantity).toEqual(finding(shoulder, 'rear.shoulders').quantity);
  });
  test('a span that says neither is open where a ball’s width decides, and passes where both readings fit', () => {
    const unsaid = (value: number) => changed(held, { 'implement.shoulderSpan': { value, from: 'unsaid' } });
    expect(finding(unsaid(700), 'rear.shoulders').status).toBe('undecided');
    expect(finding(unsaid(685), 'rear.shoulders').status).toBe('pass');
    expect(finding(unsaid(725), 'rear.shoulders').status).toBe('fail');
  });
  test('links spread between inner or outer faces are one ball away from their centres', () => {
    const spread = (from: string, low: number, high: number) =>
      finding(changed(direct, { 'tractor.ballSpan': { adjustable: { between: [low, high] }, from } }), 'front.span')
        .band;
    expect(spread('innerFaces', 605, 725)).toEqual(spread('ballCentre', 640, 760));
    expect(spread('outerFaces', 675, 795)).toEqual(spread('ballCentre', 640, 760));
  });
  test('pins that point inward pass the hooks inward: shoulders outside them, tips between', () => {
    const inward = changed(held, { 'implement.pinsPoint': 'in', 'implement.shoulderSpan': 760 });
    expect(finding(inward, 'rear.shoulders').quantity?.low).toBeCloseTo(760 - 712 - 25, 9);
    expect(finding(inward, 'rear.pinSeat').quantity?.low).toBeCloseTo(712 - 760 + 2 * 70 - 25, 9);
    expect(answer(inward).outcomes.hooksUp).toBe('works');
  });
});
