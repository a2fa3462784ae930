export type { Alternative, Answer, Assessment, CautionId, Cure, Outcome } from './answer.ts';
export { assess, type AssessOptions } from './assess.ts';
export { judgeSetup, prepareSetup, type SetupJudgement, type SetupQuestion } from './judgeSetup.ts';
export type { UsedFigure } from './figures.ts';
