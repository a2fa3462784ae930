import { fieldRules, type Value } from '../../records/index.ts';
import type { HookupJudgement } from '../hookup/index.ts';
import type { Origin } from '../inputs/index.ts';
import { reader } from '../proof/index.ts';

/** A figure as it was used: its range at the reported setting [canonical unit], and where it came from. */
export interface UsedFigure {
  readonly low: number;
  readonly high: number;
  readonly origin: Origin;
}

/**
 * Every figure that was given, and every one that a check used, by field path; of several holes the one in use, of what
 * can be set the setting.
 */
export function usedFigures({ ledger, setting }: HookupJudgement): Readonly<Record<string, UsedFigure>> {
  const used = new Set(ledger.entries.map((entry) => entry.path.split('.adjustable.')[0] as string));
  const at = reader(setting);
  const figures: Record<string, UsedFigure> = {};
  for (const path of fieldRules.keys()) {
    if (used.has(path)) {
      const { low, high } = ledger.term(path)(at);
      figures[path] = {
        low,
        high,
        origin: ledger.entries.find((entry) => entry.path.startsWith(path))?.origin ?? 'stated',
      };
    } else if (ledger.given(path)) {
      const given = givenRange(ledger.value(path) as Value);
      if (given !== null) figures[path] = given;
    }
  }
  return figures;
}

function givenRange(value: Value): UsedFigure | null {
  if (value.kind === 'stated') return { ...value.bound, origin: 'stated' };
  if (value.kind === 'uncertain') return { ...value.bound, origin: 'range' };
  if (value.kind === 'default') return { ...value.bound, origin: 'default' };
  return null;
}
