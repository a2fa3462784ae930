import { describe, expect, test } from 'vitest';
import { checkIds, type CheckId, type Finding } from '../../src/engine/findings/index.ts';
import type { SetupResult, Violation } from './held.ts';
import { heldWith } from './inTests.ts';

/** Setups that are quick to judge, some of every kind. */
const tried = [6, 12, 17, 21, 23, 27, 33];
const shortly = { samples: 200 } as const;

/** What a fault makes of a finding, and what it has to be caught as. */
type Fault = (finding: Finding, honest: SetupResult) => readonly [Finding, Violation['what']] | null;

/** Puts a fault in findings, and sees which of them are caught as what they are; nothing else is to be told of any check. */
function planted(honest: ReadonlyMap<number, SetupResult>, fault: Fault) {
  const caught: string[] = [];
  const missed: string[] = [];
  for (const [number, result] of honest) {
    const faulty = new Map<string, Violation['what']>();
    const { first } = heldWith(number, {
      ...shortly,
      told: (finding) => {
        const [changed, what] = fault(finding, result) ?? [finding, null];
        if (what !== null) faulty.set(finding.id, what);
        return changed;
      },
    });
    for (const [id, what] of faulty) {
      const found = first.some((one) => one.id === id && one.what === what);
      (found ? caught : missed).push(`${number} ${id}`);
    }
    const ofChecks = first.filter(({ id }) => checkIds.includes(id as CheckId));
    expect(ofChecks.filter(({ id, what }) => faulty.get(id) !== what)).toEqual([]);
  }
  return { count: caught.length + missed.length, caught, missed };
}

/** A margin with both of its ends. */
function bounded({ margin }: Finding): { low: number; high: number } | null {
  return margin?.low == null || margin.high == null ? null : { low: margin.low, high: margin.high };
}

describe('a planted fault is caught', () => {
  const honest = new Map<number, SetupResult>();

  test('and without one nothing is', () => {
    for (const number of tried) honest.set(number, heldWith(number, shortly));
    expect([...honest.values()].map(({ violations }) => violations)).toEqual(tried.map(() => 0));
  });

  test('every margin told beside all truths of it', () => {
    const { count, missed } = planted(honest, (finding) => {
      const margin = bounded(finding);
      if (margin === null) return null;
      const by = margin.high - margin.low + 0.001;
      return [{ ...finding, margin: { low: margin.low + by, high: margin.high + by } }, 'outside its bound'];
    });
    expect(count).toBeGreaterThan(80);
    expect(missed).toEqual([]);
  });

  test('every margin told narrower by a hundredth at either end, where truths reach so far', () => {
    const { count, missed } = planted(honest, (finding, { checks }) => {
      const margin = bounded(finding);
      const spread = checks.find(({ id }) => id === finding.id)?.spread ?? 0;
      if (margin === null || spread < 0.001) return null;
      const by = (margin.high - margin.low) / 100;
      if (spread <= margin.high - margin.low - 2 * by) return null;
      return [{ ...finding, margin: { low: margin.low + by, high: margin.high - by } }, 'outside its bound'];
    });
    expect(count).toBeGreaterThan(40);
    expect(missed).toEqual([]);
  });

  /** Nearer to zero than this a check neither passes nor fails for certain [check's unit]. */
  const clear = 0.001;
  const told = (finding: Finding, status: 'pass' | 'fail') =>
    [{ ...finding, status, conflictsWith: [] }, status === 'pass' ? 'passes, yet missed' : 'fails, yet kept'] as const;

  test('what fails told as passing, and what passes told as failing', () => {
    const { count, missed } = planted(honest, (finding) => {
      const { low, high } = bounded(finding) ?? { low: 0, high: 0 };
      if (finding.status === 'fail' && high < -clear) return told(finding, 'pass');
      return finding.status === 'pass' && low > clear ? told(finding, 'fail') : null;
    });
    expect(count).toBeGreaterThan(80);
    expect(missed).toEqual([]);
  });

  for (const status of ['pass', 'fail'] as const) {
    test(`what is open told as ${status}ing, mostly`, () => {
      const { count, caught, missed } = planted(honest, (finding) =>
        finding.status === 'undecided' && bounded(finding) !== null ? told(finding, status) : null,
      );
      console.log(`told to ${status}: ${caught.length} of ${count} open ones caught; not ${missed.join(', ')}`);
      expect(caught.length).toBeGreaterThan(count / 2);
    });
  }

  test('an answer and a verdict that rest on what does not pass', () => {
    const { first } = heldWith(tried[0] as number, {
      ...shortly,
      told: (finding) => (finding.core && finding.status !== 'notNeeded' ? { ...finding, status: 'pass' } : finding),
    });
    const found = new Set(first.map(({ id, what }) => `${id} ${what}`));
    expect(found).toContain('hooksUp works, yet missed');
    expect(found).toContain('verdict works, yet missed');
  });

  test('an answer and a verdict that something is said to be in the way of', () => {
    const { first } = heldWith(18, {
      ...shortly,
      told: (finding) => (finding.id === 'front.span' ? { ...finding, status: 'fail' } : finding),
    });
    const found = new Set(first.map(({ id, what }) => `${id} ${what}`));
    expect(found).toContain('hooksUp will not, yet kept');
  });
});
