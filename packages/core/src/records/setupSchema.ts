import * as z from 'zod/mini';
import { driveRuleNames, steeringRuleNames, tyreFluids, tyreSizes } from '../tables/index.ts';
import type { UnitSystem } from '../units/index.ts';
import {
  alterations,
  couplerKinds,
  drivenWheels,
  liftAllowances,
  loaderStates,
  mountingStyles,
  outlineParts,
  pinFixings,
  rotations,
  tractorParts,
  works,
} from './choices.ts';
import { chosenSchema } from './chosen.ts';
import { named, ptoType, rpm, text, wholeNumber } from './commonSchema.ts';
import { couplerFields, fieldRules, implementFields, pinFields, tractorFields } from './fields.ts';
import { leaf, leaves, type Leaf } from './leafSchema.ts';
import { partSchema } from './partSchema.ts';
import { shaftSchema } from './shaftSchema.ts';
import type { FieldRule } from './value.ts';

/** How many parts a setup takes [parts]. */
export const mostParts = 60;

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
        steeringShare: z.optional(z.enum(steeringRuleNames)),
      }),
    ),
    parts: z.optional(z.array(partSchema(assume)).check(z.maxLength(mostParts))),
    chosen: chosenSchema,
  });
}

function tractorSchema(assume: UnitSystem) {
  return z.strictObject({
    ...named,
    ...leaves(tractorFields, assume),
    ptoType,
    ptoSpeeds: z.optional(z.array(rpm).check(z.minLength(1), z.maxLength(6))),
    ptoTurns: z.optional(z.enum(rotations)),
    liftCylinders: wholeNumber(1, 4),
    loader: z.optional(z.enum(loaderStates)),
    weighedWithLoader: z.optional(z.boolean()),
    tyreLiquid: z.optional(
      z.strictObject({
        size: z.enum(tyreSizes),
        fluid: z.enum(tyreFluids),
        fill: z.optional(z.number().check(z.minimum(5), z.maximum(100))),
      }),
    ),
    frontTyreIndex: wholeNumber(40, 180),
    rearTyreIndex: wholeNumber(40, 180),
    wheelsDriven: z.optional(z.enum(drivenWheels)),
    remotes: wholeNumber(0, 8),
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
    work: z.optional(z.enum(works)),
    tools: wholeNumber(1, 60),
    remotes: wholeNumber(0, 8),
    ...pinShape(assume),
    ...leaves(implementFields, assume),
    secondRow: z.optional(secondRowSchema(assume)),
    outlines,
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
