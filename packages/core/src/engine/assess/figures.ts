import { fieldRules, type Value } from '../../records/index.ts';
import type { SetupJudgement } from './judgeSetup.ts';
import { reportedReading } from './sweeps.ts';
import type { Origin } from '../inputs/index.ts';

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
export function usedFigures(judgement: SetupJudgement): Readonly<Record<string, UsedFigure>> {
  const { ledger } = judgement.question;
  const at = reportedReading(judgement);
  const figures: Record<string, UsedFigure> = {};
  for (const path of fieldRules.keys()) {
    const entry = ledger.entries.find((one) => one.path === path);
    const stop = ledger.entries.find((one) => one.path.startsWith(`${path}.adjustable.at.`));
    if (entry !== undefined) figures[path] = { ...at(entry.index), origin: entry.origin };
    else if (stop !== undefined) figures[path] = { ...ledger.term(path)(at), origin: 'stated' };
    else {
      const given = ledger.given(path) ? givenRange(ledger.value(path) as Value) : null;
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
