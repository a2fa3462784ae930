export type { LiftBasis } from './knowledge.ts';
export type { LeafTerms, Leaves } from './leaves.ts';
export { openRun, type Run } from './run.ts';
export type { Structure } from './structure.ts';
export { liftSteps, type Course, type LiftSteps } from './throughLift.ts';
export { swingOf } from './swing.ts';
export { sweepOf, type SidePoint, type Station, type Sweep } from './sweep.ts';
export { liftLines } from './lines.ts';
export { basisOf, holdsUpper, openLift, type LiftQuestion } from './question.ts';
