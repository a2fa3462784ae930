import type { Interval } from '../geometry/index.ts';
import type { Check } from '../proof/index.ts';
import type { Origin } from '../inputs/index.ts';
import type { MountingStyle } from '../../records/index.ts';
import type { CheckId } from './checkIds.ts';
import type { Need, NotNeeded } from './line.ts';

/** A style of mounting that rules some way of holding out. */
export type RuledOut = Exclude<MountingStyle, 'threePoint'>;

/** Why a finding that was not computed stands as it does. */
export type Reason = NotNeeded | RuledOut | Need | Mismatch;

/** What of a drive does not go together, by what the records say. */
export type Mismatch = 'tractorSplines' | 'implementSplines' | 'stubAndInput' | 'speed' | 'direction';

/** The standing of a finding. `cured` is a failure that a part on the list cures; it is set where cures are sought. */
export type FindingStatus = 'pass' | 'fail' | 'undecided' | 'cured' | 'notNeeded' | 'notChecked';

/** An end that is not bounded is null: no infinity leaves the engine. */
export interface OpenInterval {
  readonly low: number | null;
  readonly high: number | null;
}

/** An input that a finding depends on, with the range it was taken in [canonical unit]. */
export interface Driver {
  readonly path: string;
  readonly range: Interval;
  readonly origin: Origin;
  readonly basis: string | null;
}

/** Where one open input would have to lie for an undecided check to pass or to fail, whatever the rest turns out to be. */
export interface Threshold {
  readonly path: string;
  readonly passes: readonly Interval[];
  readonly fails: readonly Interval[];
}

/** How one check stands. */
export interface Standing {
  readonly id: CheckId;
  readonly status: FindingStatus;
  /** Core findings decide the verdict; limit findings stand beside it. */
  readonly core: boolean;
  /** Other checks that can't be met together with this one. */
  readonly conflictsWith: readonly CheckId[];
}

/** The result of one check. */
export interface Finding extends Standing {
  /** Distance to the nearer end of the band at the reported setting; negative by how much it misses [unit]. */
  readonly margin: OpenInterval | null;
  readonly unit: Check['unit'] | null;
  /** The tested quantity and the band it must stay in, at the reported setting [unit]. */
  readonly quantity: OpenInterval | null;
  readonly band: OpenInterval | null;
  /** Which end of the band is missed or nearest. */
  readonly side: 'low' | 'high' | null;
  readonly drivers: readonly Driver[];
  /** Why it is not needed, what it needs to be checked, or the way of mounting that rules it out. */
  readonly reason: Reason | null;
  readonly asks: readonly Threshold[];
  readonly unresolved: boolean;
}
