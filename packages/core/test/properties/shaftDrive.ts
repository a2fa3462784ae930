import { prepareSetup, type SetupQuestion } from '../../src/engine/assess/index.ts';
import { judgeLines, openQuestion, type CheckId, type Finding } from '../../src/engine/findings/index.ts';
import type { Box } from '../../src/engine/proof/index.ts';
import { shaftLines } from '../../src/engine/shaft/index.ts';
import { readSetup, type Setup, type SetupDocument } from '../../src/records/index.ts';

/** The drive of a setup, judged by itself. */
export interface JudgedDrive {
  readonly setup: Setup;
  readonly question: SetupQuestion;
  readonly findings: readonly Finding[];
  /** Every input at the setting that is shown with the findings. */
  readonly setting: Box;
  readonly of: (id: CheckId) => Finding;
}

/** Judges the drive of a document by itself: hook-up and lift have no say in it. */
export function judgedDrive(document: SetupDocument): JudgedDrive {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  const question = prepareSetup(reading.setup);
  const lines = shaftLines(question.shaft);
  const { findings, setting } = judgeLines(openQuestion(question.ledger, lines), { thresholds: false });
  const of = (id: CheckId): Finding => {
    const found = findings.find((finding) => finding.id === id);
    if (found === undefined) throw new Error(`no finding ${id}`);
    return found;
  };
  return { setup: reading.setup, question, findings, setting, of };
}
