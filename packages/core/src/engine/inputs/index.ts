export { openEnded, openLedger, traced, wholeBox, type Adjuster, type Ledger } from './ledger.ts';
export type { Entry, Origin } from './register.ts';
export { standInFor } from './standIn.ts';
