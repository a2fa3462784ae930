export type { Alternative, Answer, Assessment, CautionId, Cure, Outcome } from './answer.ts';
export { assess, type AssessOptions } from './assess.ts';
export type { UsedFigure } from './figures.ts';
