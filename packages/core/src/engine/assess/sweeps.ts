import { balanceSweepOf, type BalanceSweep } from '../balance/index.ts';
import type { Entry } from '../inputs/index.ts';
import { sweepOf, type Sweep } from '../lift/index.ts';
import type { Reading } from '../proof/index.ts';
import { shaftSweepOf, shaftWantedBy, type ShaftSweep, type ShaftWanted } from '../shaft/index.ts';
import type { SetupJudgement } from './judgeSetup.ts';

/** Reads the reported setting; what no check reads stands at the middle of its whole range. */
export function reportedReading({ question: { ledger }, setting }: SetupJudgement): Reading {
  return (index) => setting[index] ?? (ledger.entries[index] as Entry).range;
}

/** The lift at the reported setting. */
export function sweepAt(judgement: SetupJudgement): Sweep | null {
  return sweepOf(judgement.question.lift, reportedReading(judgement));
}

/** The drive shaft at the reported setting. */
export function shaftSweepAt(judgement: SetupJudgement): ShaftSweep | null {
  return shaftSweepOf(judgement.question.shaft, reportedReading(judgement));
}

/** What a shaft would have to measure at the reported setting. */
export function shaftWantedAt(judgement: SetupJudgement): ShaftWanted | null {
  return shaftWantedBy(judgement.question.shaft, reportedReading(judgement));
}

/** The axle loads at the reported setting. */
export function balanceSweepAt(judgement: SetupJudgement): BalanceSweep | null {
  return balanceSweepOf(judgement.question.balance, reportedReading(judgement));
}
