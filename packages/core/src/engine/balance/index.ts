export { balanceLines } from './lines.ts';
export { openBalance, type BalanceQuestion } from './question.ts';
export { balanceSweepOf, type BalanceStation, type BalanceSweep, type FittedMass } from './sweep.ts';
export type { TippingAngles } from './slope.ts';
