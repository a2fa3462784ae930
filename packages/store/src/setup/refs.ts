import type { ChosenRules } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';

/** A question by references: ids of records of the yard, or of customers’ machines. */
export interface SetupRefs {
  readonly tractor: string;
  /** A state that is laid over the tractor: loader on, liquid in the tyres. */
  readonly state?: string;
  readonly coupler?: string;
  readonly implement: string;
  /** Null for none; where it is left out, the first one that is meant for the implement by name. */
  readonly shaft?: string | null;
  /** Parts that may cure; `fitting` for everything on the shelf that fits this implement; none where it is left out. */
  readonly parts?: 'fitting' | readonly string[];
  readonly rules?: ChosenRules;
  readonly units?: UnitSystem;
}

/** The same for part of a question: what is not chosen yet is left out. */
export type PartRefs = Omit<SetupRefs, 'tractor' | 'implement'> & Partial<Pick<SetupRefs, 'tractor' | 'implement'>>;
