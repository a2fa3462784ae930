import * as z from 'zod/mini';
import type { UnitSystem } from '../units/index.ts';
import { price, text } from './commonSchema.ts';
import { implementFields, pinFields } from './fields.ts';
import { required } from './leafSchema.ts';
import { shaftSchema } from './shaftSchema.ts';
import type { FieldRule } from './value.ts';

const extenderLength: FieldRule = {
  dimension: 'length',
  min: 20,
  max: 400,
  label: 'length of the stub extender',
  measure: 'How much it makes the stub longer.',
};
const weightMass: FieldRule = {
  dimension: 'mass',
  min: 2,
  max: 1500,
  label: 'mass of the weight',
  measure: 'On a scale, or cast on it: one front weight, or a pair for the rear wheels together.',
};
/** A part on the shelf, of one of the kinds that can cure something. */
export function partSchema(assume: UnitSystem) {
  const size = (rule: FieldRule) => required(rule, assume);
  const base = { name: text, fits: z.optional(z.array(text).check(z.maxLength(60))), price: z.optional(price) };
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
    z.strictObject({
      kind: z.literal('frontWeights'),
      ...base,
      mass: size(weightMass),
      count: z.number().check(z.minimum(1), z.maximum(60), z.multipleOf(1)),
    }),
    z.strictObject({ kind: z.literal('wheelWeights'), ...base, mass: size(weightMass) }),
  ]);
}
