export { openEstimator, type Estimator } from './estimator.ts';
export { openBounder, type Bounder, type Care } from './bounds.ts';
export { evaluate, openWorkspace, valueAt, type Workspace } from './evaluate.ts';
export { openFormula, stepsFor, type Formula, type Step, type Writer } from './formula.ts';
