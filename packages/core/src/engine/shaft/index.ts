export { shaftLines } from './lines.ts';
export { openShaft, type ShaftQuestion } from './question.ts';
export { linesUnder } from './rules.ts';
export { shaftSweepOf, type ShaftStation, type ShaftSweep } from './sweep.ts';
export { shaftWantedBy, type ShaftWanted } from './wanted.ts';
