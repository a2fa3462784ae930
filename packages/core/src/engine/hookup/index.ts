export type { NotNeeded } from './applicable.ts';
export type { Driver, Finding, FindingStatus, OpenInterval, Threshold } from './finding.ts';
export { judgeHookup, prepareHookup, type Depth, type HookupJudgement } from './judgeHookup.ts';
export type { Joint } from './joint.ts';
export { checkIds, checksByHold, type CheckId, type Hold } from './kinds.ts';
export { summariseCategory, type CategorySummary } from './category.ts';
export { limits } from './limits.ts';
export { hasUpperPin, ruledOut, type RuledOut } from './mounting.ts';
export { ballCentres, type Pins } from './pins.ts';
