export { openEnded, openLedger, traced, wholeBox, type Adjuster, type Entry, type Ledger, type Origin } from './ledger.ts';
