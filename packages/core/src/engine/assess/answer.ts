import type { InputError } from '../../records/index.ts';
import type { CheckId, Driver, Finding, OpenInterval } from '../findings/index.ts';
import type { CategorySummary } from '../hookup/index.ts';
import type { Hold } from '../joint/index.ts';
import type { LiftBasis, Sweep } from '../lift/index.ts';
import type { ShaftSweep, ShaftWanted } from '../shaft/index.ts';
import type { BalanceSweep } from '../balance/index.ts';
import type { DriveRuleName, SteeringRuleName } from '../../tables/index.ts';
import type { Candidate } from './candidate.ts';
import type { UsedFigure } from './figures.ts';

/** The standing of one of the four answers. */
export type Outcome = 'works' | 'withParts' | 'measureFirst' | 'willNot' | 'notChecked' | 'notNeeded';

/** A cure that was applied and checked again, with what it cures. */
export interface Cure extends Candidate {
  readonly cures: readonly CheckId[];
  /** True for the members of the set that the answer counts on: what was chosen, with the fewest more that cure everything that fails. */
  readonly inSmallestSet: boolean;
}

/** What may cure what fails, once more is known. */
export interface Perhaps {
  readonly cures: readonly Candidate[];
  /** What is open with all of it applied. */
  readonly open: readonly Finding[];
}

/** Another way to hook up, checked like the setup itself. */
export interface Alternative {
  readonly kind: 'leaveCouplerOff' | 'otherCoupler';
  readonly coupler: string | null;
  /** Whether it hooks up, and the verdict on all that is checked. */
  readonly outcome: Outcome;
  readonly lead: Finding | null;
}

/** The drive judged by one set of rules, by itself. */
export interface RuledOutcome {
  readonly rules: DriveRuleName;
  readonly chosen: boolean;
  readonly outcome: Outcome;
  readonly lead: Finding | null;
}

/** What the steering comes to by one rule, by itself. */
export interface SteeredOutcome {
  readonly rule: SteeringRuleName;
  readonly chosen: boolean;
  readonly finding: Finding;
}

/** Cautions that stand beside a result, by what they belong to; the sentences are in words/cautions.ts. */
export type CautionId =
  | 'steeringNeedsWeight'
  | 'loaderCounterweight'
  | 'frontMayLift'
  | 'rollBarUp'
  | 'weighIt'
  | 'shaftEntangles'
  | 'noAdaptors'
  | 'stubExtender'
  | 'raisedLoad'
  | 'ratingCompares'
  | 'mayUnhook'
  | 'standClear'
  | 'firstLift'
  | 'notRetained'
  | 'pinRoundSmall'
  | 'boltedPlate'
  | 'cutPart'
  | 'shaftMovesBack'
  | 'manualPrevails';

/** What `assess` says of a setup. */
export interface Answer {
  readonly hold: Hold;
  readonly outcomes: {
    readonly hooksUp: Outcome;
    readonly runs: Outcome;
    readonly lifts: Outcome;
    readonly staysUpright: Outcome;
  };
  /** The standing of everything that counts, by precedence. */
  readonly verdict: Outcome;
  /** The finding that gives the verdict its reason: the first that fails, else the first that is open. */
  readonly lead: Finding | null;
  readonly findings: readonly Finding[];
  readonly cures: readonly Cure[];
  /** Where no set of what is on the list is shown to cure what fails: one that may, and what is open with it; else null. */
  readonly perhaps: Perhaps | null;
  /** No set of what is on the list was passed over in the search for one that cures everything. */
  readonly everySetTried: boolean;
  readonly alternatives: readonly Alternative[];
  /** How far the implement is turned in a rigid coupler [deg]; null without one. */
  readonly turn: OpenInterval | null;
  /** The lift at every height; null where the linkage is not known. */
  readonly sweep: Sweep | null;
  /** The drive shaft at every height; null where nothing is driven or its ends are not placed. */
  readonly shaft: ShaftSweep | null;
  /** What the drive comes to under every set of rules, the chosen one among them; none where nothing is driven. */
  readonly otherRules: readonly RuledOutcome[];
  /** What a shaft would have to measure here; null where it can't be told. */
  readonly shaftWanted: ShaftWanted | null;
  /** The axle loads at every height; null where the tractor or the implement is not weighed. */
  readonly balance: BalanceSweep | null;
  /** What the steering comes to by every rule, the chosen one among them; none where the tractor is not weighed. */
  readonly steeringRules: readonly SteeredOutcome[];
  /** How the lift was worked out: from its cylinder, its linkage and ratings, its ratings alone, or not at all. */
  readonly liftBasis: LiftBasis;
  /** Figures as used, by field path [canonical unit]: what a drawing is made from. */
  readonly figures: Readonly<Record<string, UsedFigure>>;
  readonly category: CategorySummary;
  readonly cautions: readonly CautionId[];
  /** Inputs that were not given and what stood in for them. */
  readonly assumed: readonly Driver[];
}

/** An answer, or everything that is wrong with the input. */
export type Assessment =
  { readonly ok: true; readonly answer: Answer } | { readonly ok: false; readonly errors: readonly InputError[] };
