import type { Category } from '../tables/index.ts';
import type { UnitSystem } from '../units/index.ts';
import type { CouplerField, ImplementField, PinField, TractorField } from './fields.ts';
import type {
  Alteration,
  CouplerKind,
  MountingStyle,
  PinFixing,
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
}

/** The tractor’s end of the linkage. */
export interface Tractor extends Values<TractorField> {
  readonly name?: string;
  readonly category?: Category;
  readonly enginePower?: Value;
  readonly ptoPower?: Value;
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
);

/** A named rule: how much of a lift rating is counted on. */
export type LiftAllowance = (typeof liftAllowances)[number];

/** One question: this tractor, perhaps this coupler, this implement. */
export interface Setup {
  readonly hitchwright: 1;
  readonly units?: UnitSystem;
  readonly tractor: Tractor;
  readonly coupler?: Coupler;
  readonly implement: Implement;
  readonly rules?: { readonly liftAllowance?: LiftAllowance };
  readonly parts?: readonly Part[];
}

/** A setup as it is written, sent and stored: plain JSON, checked by `readSetup`. */
export type SetupDocument = Readonly<Record<string, unknown>>;
