export type { LiftBasis } from './knowledge.ts';
export { swingOf } from './swing.ts';
export { sweepOf, type SidePoint, type Station, type Sweep } from './sweep.ts';
export { liftLines } from './lines.ts';
export { basisOf, openLift, type LiftQuestion } from './question.ts';
