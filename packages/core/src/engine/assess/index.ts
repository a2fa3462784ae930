export type { Candidate } from './candidate.ts';
export type {
  Alternative,
  Answer,
  Assessment,
  CautionId,
  Cure,
  Outcome,
  Perhaps,
  RuledOutcome,
  SteeredOutcome,
} from './answer.ts';
export { answerFrom, assess, type AssessOptions } from './assess.ts';
export { judgeSetup, prepareSetup, type SetupJudgement, type SetupQuestion } from './judgeSetup.ts';
export type { UsedFigure } from './figures.ts';
