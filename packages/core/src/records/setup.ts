import type { Category, DriveRuleName, PtoTypeNumber, SteeringRuleName, TyreFluid, TyreSize } from '../tables/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { CureRecord } from './chosen.ts';
import type { CouplerField, ImplementField, PinField, ShaftField, TractorField } from './fields.ts';
import type {
  Alteration,
  CouplerKind,
  DrivenWheels,
  JointKind,
  Limiter,
  LoaderState,
  MountingStyle,
  PinFixing,
  Rotation,
  Work,
  liftAllowances,
  outlineParts,
  tractorParts,
} from './choices.ts';
import type { Value } from './value.ts';

type Values<Field extends string> = Readonly<Partial<Record<Field, Value>>>;

/** A body part in one or two views, in its machine's own frame [mm]: rear view (y, z), side view (x, z). */
export interface OutlineRecord<Part extends string = (typeof outlineParts)[number]> {
  readonly name: string;
  readonly part: Part;
  readonly rear?: readonly (readonly [number, number])[];
  readonly side?: readonly (readonly [number, number])[];
  readonly plusMinusMm?: number;
}

/** The pins of a machine. */
export interface PinSet extends Values<PinField> {
  readonly pinsPoint?: 'out' | 'in';
  readonly pinFixing?: PinFixing;
}

/** A second row of lower pins, placed from the first. */
export interface PinRow extends PinSet {
  readonly rise?: Value;
  readonly behind?: Value;
}

/** The machine that is carried. */
export interface Implement extends PinSet, Values<Exclude<ImplementField, PinField>> {
  readonly name?: string;
  readonly category?: Category;
  readonly mounting?: MountingStyle;
  readonly floatSits?: 'atPin' | 'behindPin';
  readonly lowerPinPlates?: 'single' | 'double';
  readonly alteration?: Alteration;
  readonly receiver?: 'triangle' | 'jaws' | 'none';
  readonly note?: string;
  readonly secondRow?: PinRow;
  readonly outlines?: readonly OutlineRecord[];
  /** A drive shaft from the tractor drives it. */
  readonly driven?: boolean;
  /** Its drive keeps turning while it is raised from its pick-up to its carrying height. */
  readonly turnsWhileRaised?: boolean;
  readonly inputType?: PtoTypeNumber;
  /** Speed that it is made to be driven at [rpm]. */
  readonly inputSpeed?: number;
  /** Which way its input shaft has to turn, seen from behind the tractor. */
  readonly inputTurns?: Rotation;
  /** The kind of work it does. */
  readonly work?: Work;
  /** Shanks, bodies or rows that it works with. */
  readonly tools?: number;
  /** Double-acting remotes that it takes. */
  readonly remotes?: number;
}

/** Liquid in the rear tyres: their size, what is in them, and how full [% of the tyre’s volume]. */
interface TyreLiquid {
  readonly size: TyreSize;
  readonly fluid: TyreFluid;
  readonly fill?: number;
}

/** The tractor’s end of the linkage, and what it weighs. */
export interface Tractor extends Values<TractorField> {
  readonly name?: string;
  readonly category?: Category;
  readonly ptoType?: PtoTypeNumber;
  /** Speeds that the PTO can be set to [rpm]. */
  readonly ptoSpeeds?: readonly number[];
  /** Which way the PTO turns, seen from behind the tractor. */
  readonly ptoTurns?: Rotation;
  /** How many lift cylinders push together. */
  readonly liftCylinders?: number;
  /** The front loader as the question has it: not there, on and empty, or on and loaded. */
  readonly loader?: LoaderState;
  /** The loader was on, empty, when the tractor was weighed. */
  readonly weighedWithLoader?: boolean;
  /** Liquid put into both rear tyres after the tractor was weighed, where its mass is to be worked out. */
  readonly tyreLiquid?: TyreLiquid;
  /** Load index on the side of one tyre. */
  readonly frontTyreIndex?: number;
  readonly rearTyreIndex?: number;
  /** Wheels that pull at work. */
  readonly wheelsDriven?: DrivenWheels;
  /** Double-acting remotes at the rear. */
  readonly remotes?: number;
  /** What it can strike, in the tractor's frame: side view (x behind the axle, z above the ground), rear view (y to the right, z). */
  readonly outlines?: readonly OutlineRecord<(typeof tractorParts)[number]>[];
  readonly note?: string;
}

/** What stands between them, left on the tractor. */
export interface Coupler extends Values<CouplerField> {
  readonly name?: string;
  readonly category?: Category;
  readonly kind: CouplerKind;
  readonly retainingPin?: 'needed' | 'notNeeded';
  readonly note?: string;
  readonly front?: PinSet;
  readonly outlines?: readonly OutlineRecord[];
}

/** The drive shaft between tractor and implement. */
export interface Shaft extends Values<ShaftField> {
  readonly name?: string;
  /** Splines of its yokes: the one for the tractor, and the one for the implement. */
  readonly tractorType?: PtoTypeNumber;
  readonly implementType?: PtoTypeNumber;
  readonly jointFront?: JointKind;
  readonly jointRear?: JointKind;
  /** Size of its joints, 1 to 9, as the trade numbers them. */
  readonly series?: number;
  readonly limiter?: Limiter;
  readonly note?: string;
}

/** What something costs, in a currency by its ISO 4217 code. */
export interface Price {
  readonly amount: number;
  readonly currency: string;
}

/** A part on the shelf that can cure a misfit; `fits` names the implements it is for, all of them where it is left out. */
export type Part = { readonly name: string; readonly fits?: readonly string[]; readonly price?: Price } & (
  | { readonly kind: 'lowerBushings'; readonly inside: Value; readonly outside: Value; readonly length: Value }
  | { readonly kind: 'upperBushing'; readonly inside: Value; readonly outside: Value }
  | {
      readonly kind: 'lowerPins';
      readonly diameter: Value;
      readonly shoulderSpan: Value;
      readonly standOut: Value;
      readonly shoulderToHole: Value;
    }
  | { readonly kind: 'upperPinPlate'; readonly mastHeight: Value; readonly mastSetback: Value }
  | { readonly kind: 'clevisSpacers'; readonly gapAfter: Value }
  | { readonly kind: 'pinBalls'; readonly bore: Value; readonly diameter: Value; readonly width: Value }
  | { readonly kind: 'driveShaft'; readonly shaft: Shaft }
  | { readonly kind: 'stubExtender'; readonly length: Value }
  /** Weights that hang on the front, each of one mass; so many are at hand. */
  | { readonly kind: 'frontWeights'; readonly mass: Value; readonly count: number }
  /** A pair of weights, or of fillings, for the rear wheels, together of one mass. */
  | { readonly kind: 'wheelWeights'; readonly mass: Value }
);

/** A named rule: how much of a lift rating is counted on. */
export type LiftAllowance = (typeof liftAllowances)[number];

/** Rules that sources disagree on, by the name of the one that is chosen. */
export interface ChosenRules {
  readonly liftAllowance?: LiftAllowance;
  readonly driveShaft?: DriveRuleName;
  readonly steeringShare?: SteeringRuleName;
}

/** One question: this tractor, perhaps this coupler, this implement, perhaps this drive shaft. */
export interface Setup {
  readonly hitchwright: 1;
  readonly units?: UnitSystem;
  readonly tractor: Tractor;
  readonly coupler?: Coupler;
  readonly implement: Implement;
  readonly shaft?: Shaft;
  readonly rules?: ChosenRules;
  readonly parts?: readonly Part[];
  /** Cures that the answer is to count on; the machines are as they are without them. */
  readonly chosen?: readonly CureRecord[];
}

/** A setup as it is written, sent and stored: plain JSON, checked by `readSetup`. */
export type SetupDocument = Readonly<Record<string, unknown>>;
