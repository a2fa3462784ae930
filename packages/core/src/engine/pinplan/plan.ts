import type { Alteration, CouplerKind, InputError, Setup, SetupDocument } from '../../records/index.ts';
import type { Answer } from '../assess/index.ts';
import type { CheckId, Driver, Finding } from '../findings/index.ts';
import type { Interval } from '../geometry/index.ts';

/** What of its pins can be put elsewhere on an implement, by its path in a setup. */
export const movable = [
  'implement.shoulderSpan',
  'implement.standOut',
  'implement.shoulderToHole',
  'implement.mastHeight',
  'implement.mastSetback',
] as const;

/** One of `movable`. */
export type MovablePath = (typeof movable)[number];

/** Ends of a target are found this closely, on the safe side [mm]: what lies farther out than this is not shown to hold. */
export const endStep = 0.1;

/** Where a measure of the pins may lie, with everything that is uncertain already taken off. */
export interface PinTarget {
  readonly path: MovablePath;
  /** As it is now [mm]. */
  readonly now: Interval;
  /** Everywhere in it the checks hold, wherever in theirs the others lie; null where nothing ends it [mm]. */
  readonly low: number | null;
  readonly high: number | null;
  /** The check that ends it there; null where none does, or where the range is as wide as a good fit asks for. */
  readonly endsBy: { readonly low: CheckId | null; readonly high: CheckId | null };
  /** Where to put it: as near to where it is as leaves room for making it [mm]. The same as now where it stays. */
  readonly aim: number;
  readonly stays: boolean;
}

/** What has to stay free around a hook and its latch: a square block of this side about the pin [mm]. */
export interface ClearZone {
  readonly at: 'lower' | 'upper';
  readonly side: Interval;
  /** False where what is usual stands in for it. */
  readonly measured: boolean;
}

/** Where the pins of an implement would have to sit for it to take a coupler. */
export interface PinPlan {
  readonly document: SetupDocument;
  readonly setup: Setup;
  readonly kind: CouplerKind;
  readonly targets: readonly PinTarget[];
  readonly clear: readonly ClearZone[];
  /** The checks that the plan is held against: with it they all hold. */
  readonly checks: readonly CheckId[];
  /** What the setup comes to as it is. */
  readonly before: Answer;
  /** The setup with the pins anywhere in their targets, and what that comes to. */
  readonly planned: SetupDocument;
  readonly after: Answer;
  /** What nobody measured and the plan rests on all the same. */
  readonly assumed: readonly Driver[];
}

/** Why there is no plan. */
export type PinRefusal =
  | { readonly why: 'noCoupler' | 'fitsAlready' }
  | { readonly why: 'mayNotAlter'; readonly alteration: Exclude<Alteration, 'allowed'> }
  /** It takes hold in a counterpart, not on pins. */
  | { readonly why: 'counterpart'; readonly kind: 'triangle' | 'bar' }
  /** These fail whatever is moved. */
  | { readonly why: 'notByMoving'; readonly findings: readonly Finding[] }
  /** These have to be known, or known more closely, before anything is cut. */
  | { readonly why: 'measureFirst' | 'tooCoarse'; readonly paths: readonly string[] }
  /** No place of the pins makes these hold. */
  | { readonly why: 'noPlace'; readonly findings: readonly Finding[] };

/** A plan, why there is none, or everything that is wrong with the setup. */
export type PinPlanResult =
  | { readonly ok: true; readonly plan: PinPlan }
  | { readonly ok: false; readonly refused: PinRefusal; readonly setup: Setup; readonly before: Answer }
  | { readonly ok: false; readonly refused: null; readonly errors: readonly InputError[] };
