import { describe, expect, test } from 'vitest';
import { advise, type Advice } from '../../src/engine/advice/index.ts';
import type { Edit, SetupDocument } from '../../src/records/index.ts';
import { restWords, suggestionDetails, suggestionText } from '../../src/words/index.ts';
import { setup } from './yard.ts';

function adviceOn(document: SetupDocument): Advice {
  const advised = advise(document);
  if (!advised.ok) throw new Error(JSON.stringify(advised.errors));
  return advised.advice;
}

describe('scenario J: a flail of which span, upper pin and shaft are not known, and the load’s centre only guessed', () => {
  const guessed: readonly Edit[] = [
    { path: 'implement.mass', value: { value: 250, plusMinus: 10 } },
    { path: 'implement.centreBehind', value: { between: [356, 660] } },
    { path: 'implement.shoulderSpan', value: undefined },
    { path: 'implement.mastHeight', value: undefined },
    { path: 'implement.inputBehind', value: undefined },
    { path: 'implement.inputAbove', value: undefined },
    { path: 'implement.inputType', value: 1 },
    { path: 'implement.inputSpeed', value: 540 },
  ];
  const advice = adviceOn(setup('35', 'U-28', '1.5-m flail', guessed));
  const paths = advice.next.map(({ path }) => path);
  test('asks for the three that matter', () => {
    expect(advice.settled).toBe(false);
    expect(paths).toEqual(
      expect.arrayContaining(['implement.shoulderSpan', 'implement.mastHeight', 'implement.inputBehind']),
    );
  });
  test('says that mass and centre of the load don’t', () => {
    expect(paths).not.toContain('implement.mass');
    expect(paths).not.toContain('implement.centreBehind');
    expect(advice.needless).toContain('implement.centreBehind');
    expect(restWords(advice).join(' ')).toMatch(/No need to measure: .*centre of gravity behind the pins/);
  });
  test('tells where the span decides, and what it takes to read it', () => {
    const span = advice.next.find(({ path }) => path === 'implement.shoulderSpan');
    expect(span?.tool).toBe('tape');
    expect(span?.thresholds[0]?.passes.length).toBeGreaterThan(0);
    expect(span === undefined ? '' : suggestionText(span, 'us')).toBe(
      'Shoulder span of the implement: tape, about 2 min, within 1/16 in (2 mm).',
    );
  });
});

describe('a bale of which nobody knows the mass, on a tractor that front weights may balance', () => {
  const vague: readonly Edit[] = [
    { path: 'implement.carriedMass', value: { between: [450, 690] } },
    { path: 'tractor.loaderMass', value: undefined },
  ];
  const advice = adviceOn(setup('35', null, 'bale spear', vague));
  test('it fails as it stands, and whether weights cure it waits for the mass', () => {
    expect([advice.answer.verdict, advice.answer.lead?.status]).toEqual(['measureFirst', 'fail']);
    expect(advice.answer.perhaps?.cures.map(({ kind, count }) => [kind, count])).toEqual([['frontWeights', 14]]);
    expect(advice.next[0]?.path).toBe('implement.carriedMass');
  });
  test('what the mass decides is told of the check that it decides', () => {
    const mass = advice.next[0];
    expect(mass?.thresholds.map(({ check }) => check)).toEqual(['balance.frontShare']);
    expect(mass === undefined ? [] : suggestionDetails(mass, 'metric')).toContainEqual(
      expect.stringMatching(/^Between 450 kg .* and enough stays on the front axle\.$/),
    );
  });
});

describe('when nothing can change the verdict', () => {
  test('a machine that works is left alone', () => {
    const advice = adviceOn(setup('35', null, 'box blade'));
    expect([advice.answer.verdict, advice.settled, advice.next]).toEqual(['works', true, []]);
    expect(restWords(advice)[0]).toBe('Nothing that could still be measured changes the verdict.');
  });
  test('so is one that nothing on the list can cure, whatever else is not known', () => {
    const advice = adviceOn(setup('35', null, 'rear blade', [{ path: 'implement.mass', value: undefined }]));
    expect([advice.answer.verdict, advice.settled]).toEqual(['willNot', true]);
  });
  test('closer to a limit than a tape reads, a caliper is asked for', () => {
    const close: readonly Edit[] = [
      { path: 'implement.mastHeight', value: { value: 470, plusMinus: 1.5 } },
      { path: 'parts', value: [] },
    ];
    const advice = adviceOn(setup('35', 'U-28', 'box blade', close));
    expect(advice.answer.verdict).toBe('measureFirst');
    expect(advice.tooClose).toContain('rear.mast');
    expect(restWords(advice).join(' ')).toContain('Too close for a tape');
  });
});
