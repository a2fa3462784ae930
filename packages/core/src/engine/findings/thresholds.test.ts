import { describe, expect, test } from 'vitest';
import { readSetup } from '../../records/index.ts';
import { askOf } from '../../words/index.ts';
import type { Finding, Threshold } from './finding.ts';
import { judgeSetup } from '../assess/index.ts';

function finding(id: Finding['id'], coupler: object, implement: object): Finding {
  const reading = readSetup({
    hitchwright: 1,
    units: 'metric',
    tractor: {},
    coupler: { kind: 'uFrame', ...coupler },
    implement: { mounting: 'threePoint', ...implement },
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return judgeSetup(reading.setup, { thresholds: true }).findings.find((one) => one.id === id) as Finding;
}

const hooks = { hookSpan: 712, hookWidth: 25, topHookHeight: 457, topHookBehind: 0, topHookThroat: 19.8 };

describe('thresholds of what to measure', () => {
  test('the shoulder span that still clears the hooks is found, whatever the category would suggest', () => {
    const open = finding('rear.shoulders', hooks, { category: '1' });
    const [span] = open.asks as [Threshold];
    expect(span.path).toBe('implement.shoulderSpan');
    expect(span.passes[0]?.high).toBeCloseTo(687, 3);
    expect(span.fails[0]?.low).toBeCloseTo(687, 3);
    expect(askOf(open, 'metric')).toContain('687 mm (27 in) or less and it fits');
  });
  test('a band far narrower than the samples is found: a hook at 457 with 0.8 mm of play', () => {
    const { asks } = finding('rear.mast', hooks, { mastSetback: 0, upperPinDiameter: 19 });
    expect(asks[0]?.path).toBe('implement.mastHeight');
    expect(asks[0]?.passes[0]?.low).toBeCloseTo(456.2, 3);
    expect(asks[0]?.passes[0]?.high).toBeCloseTo(457.8, 3);
  });
  test('values inside what passes pass, values inside what fails fail', () => {
    const { asks } = finding('rear.mast', hooks, { mastSetback: 0, upperPinDiameter: 19 });
    const status = (mastHeight: number) =>
      finding('rear.mast', hooks, { mastSetback: 0, upperPinDiameter: 19, mastHeight }).status;
    for (const { low, high } of asks[0]?.passes ?? []) expect(status((low + high) / 2)).toBe('pass');
    for (const { low, high } of asks[0]?.fails ?? []) expect(status((low + high) / 2)).toBe('fail');
  });
});
