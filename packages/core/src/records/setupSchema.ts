import * as z from 'zod/mini';
import { categories, driveRuleNames, ptoTypeNumbers } from '../tables/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { couplerFields, fieldRules, implementFields, pinFields, shaftFields, tractorFields } from './fields.ts';
import type { InputError } from './inputError.ts';
import { readValue } from './readValue.ts';
import type { FieldRule, Value } from './value.ts';

/** How an implement is carried; which coupler kinds each style rules out stands in engine/joint/mounting. */
export const mountingStyles = [
  'threePoint',
  'boomOnTopLinkBracket',
  'subframe',
  'swingingDrive',
  'floatingTopLink',
  'twoPointsAndWheels',
  'armMower',
] as const;
export const couplerKinds = ['uFrame', 'triangle', 'clawEnds', 'bar', 'hookEnds'] as const;
export const pinFixings = ['bolted', 'welded', 'reversible'] as const;
export const alterations = ['allowed', 'rented', 'warranty'] as const;
export const outlineParts = ['plate', 'brace', 'gearbox', 'hose', 'guard', 'hook', 'post', 'lever', 'body'] as const;
/** Parts of a tractor that what it carries can strike. */
export const tractorParts = ['tyre', 'fender', 'cab', 'rollBar', 'drawbar', 'body'] as const;
/** How much of a lift rating is counted on; sources in docs/method/lift.md. */
export const liftAllowances = ['tenPercentOff', 'asRated'] as const;

/** Joints of a drive shaft: one cross, or a wide-angle joint of two. */
export const jointKinds = ['single', 'wideAngle'] as const;
/** What limits the torque of a drive shaft. */
export const limiters = ['none', 'shearBolt', 'slipClutch', 'overrunning'] as const;
/** Which way a shaft turns, seen from behind the tractor. */
export const rotations = ['clockwise', 'counterclockwise'] as const;

/** One of `jointKinds`. */
export type JointKind = (typeof jointKinds)[number];
/** One of `limiters`. */
export type Limiter = (typeof limiters)[number];
/** One of `rotations`. */
export type Rotation = (typeof rotations)[number];
/** One of `mountingStyles`. */
export type MountingStyle = (typeof mountingStyles)[number];
/** One of `couplerKinds`. */
export type CouplerKind = (typeof couplerKinds)[number];
/** Whether the machine may be altered: freely, or not because it is rented or under warranty. */
export type Alteration = (typeof alterations)[number];
/** How the lower pins are held. */
export type PinFixing = (typeof pinFixings)[number];

type Leaf = z.ZodMiniOptional<z.ZodMiniType<Value>>;
type LeavesOf<R> = { [K in keyof R]: Leaf };
type Rules = Readonly<Record<string, FieldRule>>;

/** Rule of every quantity leaf, for the published JSON Schema. */
export const leafRules = new WeakMap<object, FieldRule>();

const cache = new Map<UnitSystem, ReturnType<typeof build>>();

/**
 * The schema of a setup whose texts without a unit are read in the given system.
 *
 * @param assume system of a text without a unit [us | metric]
 * @returns the schema, the same object each time [zod schema]
 */
export function setupSchema(assume: UnitSystem) {
  const known = cache.get(assume);
  if (known !== undefined) return known;
  const built = build(assume);
  cache.set(assume, built);
  return built;
}

function build(assume: UnitSystem) {
  return z.strictObject({
    $schema: z.optional(z.string().check(z.maxLength(300))),
    hitchwright: z.literal(1),
    units: z.optional(z.enum(['us', 'metric'])),
    tractor: tractorSchema(assume),
    coupler: z.optional(couplerSchema(assume)),
    implement: implementSchema(assume),
    shaft: z.optional(shaftSchema(assume)),
    rules: z.optional(
      z.strictObject({
        liftAllowance: z.optional(z.enum(liftAllowances)),
        driveShaft: z.optional(z.enum(driveRuleNames)),
      }),
    ),
    parts: z.optional(z.array(partSchema(assume)).check(z.maxLength(60))),
  });
}

function tractorSchema(assume: UnitSystem) {
  return z.strictObject({
    ...named,
    ...leaves(tractorFields, assume),
    ptoType,
    ptoSpeeds: z.optional(z.array(rpm).check(z.minLength(1), z.maxLength(6))),
    ptoTurns: z.optional(z.enum(rotations)),
    liftCylinders: z.optional(z.number().check(z.minimum(1), z.maximum(4), z.multipleOf(1))),
    outlines: outlinesOf(tractorParts),
  });
}

function couplerSchema(assume: UnitSystem) {
  return z.strictObject({
    ...named,
    kind: z.enum(couplerKinds),
    retainingPin: z.optional(z.enum(['needed', 'notNeeded'])),
    ...leaves(couplerFields, assume),
    front: z.optional(z.strictObject(pinShape(assume))),
    outlines,
  });
}

function implementSchema(assume: UnitSystem) {
  return z.strictObject({
    ...named,
    mounting: z.optional(z.enum(mountingStyles)),
    floatSits: z.optional(z.enum(['atPin', 'behindPin'])),
    lowerPinPlates: z.optional(z.enum(['single', 'double'])),
    alteration: z.optional(z.enum(alterations)),
    receiver: z.optional(z.enum(['triangle', 'jaws', 'none'])),
    driven: z.optional(z.boolean()),
    turnsWhileRaised: z.optional(z.boolean()),
    inputType: ptoType,
    inputSpeed: z.optional(rpm),
    inputTurns: z.optional(z.enum(rotations)),
    ...pinShape(assume),
    ...leaves(implementFields, assume),
    secondRow: z.optional(secondRowSchema(assume)),
    outlines,
  });
}

function shaftSchema(assume: UnitSystem) {
  return z.strictObject({
    name: named.name,
    note: named.note,
    tractorType: ptoType,
    implementType: ptoType,
    jointFront: z.optional(z.enum(jointKinds)),
    jointRear: z.optional(z.enum(jointKinds)),
    series: z.optional(z.number().check(z.minimum(1), z.maximum(9), z.multipleOf(1))),
    limiter: z.optional(z.enum(limiters)),
    ...leaves(shaftFields, assume),
  });
}

function secondRowSchema(assume: UnitSystem) {
  const place = (key: string): Leaf => leaf(fieldRules.get(`implement.secondRow.${key}`) as FieldRule, assume);
  return z.strictObject({ ...pinShape(assume), rise: place('rise'), behind: place('behind') });
}

function pinShape(assume: UnitSystem) {
  return {
    ...leaves(pinFields, assume),
    pinsPoint: z.optional(z.enum(['out', 'in'])),
    pinFixing: z.optional(z.enum(pinFixings)),
  };
}

function partSchema(assume: UnitSystem) {
  const size = (rule: FieldRule) => required(rule, assume);
  const base = { name: text, fits: z.optional(z.array(text).check(z.maxLength(60))) };
  const { lowerBushingInside, lowerBushingOutside, lowerBushingLength, upperBushingInside, upperBushingOutside } =
    pinFields;
  return z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('lowerBushings'),
      ...base,
      inside: size(lowerBushingInside),
      outside: size(lowerBushingOutside),
      length: size(lowerBushingLength),
    }),
    z.strictObject({
      kind: z.literal('upperBushing'),
      ...base,
      inside: size(upperBushingInside),
      outside: size(upperBushingOutside),
    }),
    z.strictObject({
      kind: z.literal('lowerPins'),
      ...base,
      diameter: size(pinFields.lowerPinDiameter),
      shoulderSpan: size(pinFields.shoulderSpan),
      standOut: size(pinFields.standOut),
      shoulderToHole: size(pinFields.shoulderToHole),
    }),
    z.strictObject({
      kind: z.literal('upperPinPlate'),
      ...base,
      mastHeight: size(pinFields.mastHeight),
      mastSetback: size(pinFields.mastSetback),
    }),
    z.strictObject({ kind: z.literal('clevisSpacers'), ...base, gapAfter: size(pinFields.clevisGap) }),
    z.strictObject({
      kind: z.literal('pinBalls'),
      ...base,
      bore: size(implementFields.pinBallBore),
      diameter: size(implementFields.pinBallDiameter),
      width: size(implementFields.pinBallWidth),
    }),
    z.strictObject({ kind: z.literal('driveShaft'), ...base, shaft: shaftSchema(assume) }),
    z.strictObject({ kind: z.literal('stubExtender'), ...base, length: size(extenderLength) }),
  ]);
}

const text = z.string().check(z.maxLength(200));
const named = {
  name: z.optional(text),
  category: z.optional(z.enum(categories)),
  note: z.optional(z.string().check(z.maxLength(2000))),
};
const ptoType = z.optional(z.literal(ptoTypeNumbers));
const rpm = z.number().check(z.minimum(100), z.maximum(3000));
const extenderLength: FieldRule = {
  dimension: 'length',
  min: 20,
  max: 400,
  label: 'length of the stub extender',
  measure: 'How much it makes the stub longer.',
};
const coordinate = z.number().check(z.minimum(-5000), z.maximum(5000));
const outline = z.array(z.tuple([coordinate, coordinate])).check(z.minLength(3), z.maxLength(40));
function outlinesOf<P extends readonly [string, ...string[]]>(parts: P) {
  const one = z.strictObject({
    name: text,
    part: z.enum(parts),
    rear: z.optional(outline),
    side: z.optional(outline),
    plusMinusMm: z.optional(z.number().check(z.minimum(0), z.maximum(100))),
  });
  return z.optional(z.array(one).check(z.maxLength(40)));
}

const outlines = outlinesOf(outlineParts);

function leaves<R extends Rules>(rules: R, assume: UnitSystem): LeavesOf<R> {
  return Object.fromEntries(Object.entries(rules).map(([key, rule]) => [key, leaf(rule, assume)])) as LeavesOf<R>;
}

function leaf(rule: FieldRule, assume: UnitSystem): Leaf {
  return z.optional(required(rule, assume));
}

/** The reader reports its own errors whole; their paths start below the leaf. */
function required(rule: FieldRule, assume: UnitSystem): z.ZodMiniType<Value> {
  const schema = z.pipe(
    z.unknown(),
    z.transform((raw, ctx): Value => {
      const { value, errors } = readValue(raw, rule, '', assume);
      for (const error of errors) {
        ctx.issues.push({
          code: 'custom',
          input: raw,
          message: error.code,
          params: { error } satisfies { error: InputError },
        });
      }
      return value ?? { kind: 'unknown', provenance: {} };
    }),
  );
  leafRules.set(schema, rule);
  return schema;
}
