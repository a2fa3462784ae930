import type { Category, DriveRuleName, PtoTypeNumber } from '../tables/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { CouplerField, ImplementField, PinField, ShaftField, TractorField } from './fields.ts';
import type {
  Alteration,
  CouplerKind,
  JointKind,
  Limiter,
  MountingStyle,
  PinFixing,
  Rotation,
  liftAllowances,
  outlineParts,
  tractorParts,
} from './setupSchema.ts';
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
}

/** The tractor’s end of the linkage. */
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

/** A part on the shelf that can cure a misfit; `fits` names the implements it is for, all of them where it is left out. */
export type Part = { readonly name: string; readonly fits?: readonly string[] } & (
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
);

/** A named rule: how much of a lift rating is counted on. */
export type LiftAllowance = (typeof liftAllowances)[number];

/** Rules that sources disagree on, by the name of the one that is chosen. */
export interface ChosenRules {
  readonly liftAllowance?: LiftAllowance;
  readonly driveShaft?: DriveRuleName;
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
}

/** A setup as it is written, sent and stored: plain JSON, checked by `readSetup`. */
export type SetupDocument = Readonly<Record<string, unknown>>;
