export { betweenCentres, centresInUse } from './centres.ts';
export type { Hold } from './hold.ts';
export { openJoint, type Joint } from './joint.ts';
export { hasUpperPin, judgeMounting, knowsShaftWay, ruledOut } from './mounting.ts';
export { ballCentres, pastHook, type Pins } from './pins.ts';
