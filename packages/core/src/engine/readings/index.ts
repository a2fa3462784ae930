export { agreementOf, allowedApart, isTwoSided, type Agreement, type Suspicion } from './agreement.ts';
export { doubtsAbout, type Doubt } from './doubts.ts';
export { mergeOf, type Merged } from './merge.ts';
export { partsOf } from './parts.ts';
export { editFor, type Taker } from './record.ts';
export { fieldOfPart, takenAs, type Taken, type Taking, type Typed } from './taken.ts';
export type { Way, WayQuestion } from './way.ts';
export { wayQuestion } from './ways.ts';
