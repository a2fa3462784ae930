import { prepareSetup, type SetupQuestion } from '../../src/engine/assess/index.ts';
import { balanceSweepOf, type BalanceSweep } from '../../src/engine/balance/index.ts';
import { judgeLines, type CheckId, type Finding, type Judgement } from '../../src/engine/findings/index.ts';
import { readSetup, type SetupDocument } from '../../src/records/index.ts';
import { middleReading } from '../references/balanceAt.ts';
import { balanceDocument, type BalanceCase } from './generateBalance.ts';

/** The axle loads of a document judged by themselves. */
export interface JudgedBalance extends Judgement {
  readonly question: SetupQuestion;
  readonly finding: (id: CheckId) => Finding;
}

/** Judges the axle loads of a document, and nothing else of it. */
export function judgedBalance(document: SetupDocument): JudgedBalance {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  const question = prepareSetup(reading.setup, 'balance');
  const judgement = judgeLines(question, { thresholds: false });
  const finding = (id: CheckId): Finding => {
    const found = judgement.findings.find((one) => one.id === id);
    if (found === undefined) throw new Error(`no finding ${id}`);
    return found;
  };
  return { ...judgement, question, finding };
}

/** The sweep of a question at the middle of every range, the implement level at work. */
export function sweepInMiddle(question: SetupQuestion): BalanceSweep {
  const sweep = balanceSweepOf(question.balance, middleReading(question));
  if (sweep === null) throw new Error('no sweep');
  return sweep;
}

/** The sweep of a document at the middle of every range. */
export function sweepOf(document: SetupDocument): BalanceSweep {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return sweepInMiddle(prepareSetup(reading.setup, 'balance'));
}

/** The sweep of a case, every figure exact. */
export function swept(one: BalanceCase): BalanceSweep {
  return sweepOf(balanceDocument(one));
}
