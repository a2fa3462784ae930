export type { Alternative, Answer, Assessment, CautionId, Cure, Outcome, RuledOutcome } from './answer.ts';
export { assess, type AssessOptions } from './assess.ts';
export { judgeSetup, prepareSetup, type SetupJudgement, type SetupQuestion } from './judgeSetup.ts';
export type { UsedFigure } from './figures.ts';
