export { basisOf, type LiftBasis } from './knowledge.ts';
export { sweepOf, type SidePoint, type Station, type Sweep } from './sweep.ts';
export { liftLines } from './lines.ts';
export { openLift, type LiftQuestion } from './question.ts';
