export { draft, drawbarFromPto, drawbarPower, ptoFromFlywheel, type DraftTerms } from './drawbar.ts';
export { draftRange } from './drawn.ts';
export { fieldCapacity } from './field.ts';
export { rangeOf } from './hydraulicLines.ts';
export { cycleTime, cylinderForce, cylinderVolume, hydraulicPower } from './hydraulics.ts';
export { workLines } from './lines.ts';
export { draftRows, paceOf, type Work } from './works.ts';
