import type { YardDocument } from '@hitchwright/core/records';
import type { Store } from '@hitchwright/store';
import type { Assessors } from './assessing/assessors.ts';
import type { HeldCharts } from './charts/held.ts';
import type { HeldImports } from './imports/held.ts';
import type { Recheck } from './recheck/recheck.ts';

/** What the routes work with. */
export interface Desk {
  readonly store: Store;
  readonly assessors: Assessors;
  readonly recheck: Recheck;
  readonly imports: HeldImports;
  readonly charts: HeldCharts;
  readonly clock: () => string;
  /** Where what a restore replaces is kept [path]. */
  readonly folder: string;
  /** The sample yard; null where there is none. */
  readonly sample: YardDocument | null;
}
