import { describe, expect, test } from 'vitest';
import { assess } from './assess.ts';

describe('assess', () => {
  test('answers from category and horsepower alone: measure first, and says what', () => {
    const assessment = assess({
      hitchwright: 1,
      tractor: { category: '1', enginePower: '35 hp' },
      implement: { category: '1' },
    });
    expect(assessment.ok).toBe(true);
    if (!assessment.ok) return;
    expect(assessment.answer.outcomes.hooksUp).toBe('measureFirst');
    expect(assessment.answer.assumed.length).toBeGreaterThan(5);
    const open = assessment.answer.findings.filter(({ status }) => status === 'undecided');
    expect(open.every(({ asks }) => asks.length > 0)).toBe(true);
  });
  test('gives the same list of checks whatever is known and however it is held', () => {
    const ids = (document: Record<string, unknown>) => {
      const assessment = assess({ hitchwright: 1, ...document }, { full: false });
      return assessment.ok ? assessment.answer.findings.map(({ id }) => id) : [];
    };
    const bare = ids({ tractor: {}, implement: {} });
    expect(bare.length).toBeGreaterThan(20);
    for (const kind of ['uFrame', 'triangle', 'clawEnds', 'bar', 'hookEnds']) {
      expect(ids({ tractor: {}, coupler: { kind }, implement: { mounting: 'threePoint' } })).toEqual(bare);
    }
  });
  test('never says that a setup about which nothing is known is safe', () => {
    const assessment = assess({ hitchwright: 1, tractor: {}, implement: {} });
    if (!assessment.ok) throw new Error('can’t be read');
    const { runs, lifts, staysUpright } = assessment.answer.outcomes;
    expect([runs, lifts, staysUpright]).toEqual(['measureFirst', 'measureFirst', 'measureFirst']);
    expect(assessment.answer.verdict).toBe('measureFirst');
  });
  test('power never changes anything', () => {
    const withPower = (enginePower: string) => {
      const assessment = assess({ hitchwright: 1, tractor: { enginePower }, implement: {} }, { full: false });
      if (!assessment.ok) throw new Error('the setup reads');
      const { figures, ...rest } = assessment.answer;
      expect(figures['tractor.enginePower']?.origin).toBe('stated');
      return rest;
    };
    expect(withPower('15 hp')).toEqual(withPower('120 hp'));
  });
});
