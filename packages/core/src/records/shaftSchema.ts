import * as z from 'zod/mini';
import type { UnitSystem } from '../units/index.ts';
import { jointKinds, limiters } from './choices.ts';
import { named, ptoType, wholeNumber } from './commonSchema.ts';
import { shaftFields } from './fields.ts';
import { leaves } from './leafSchema.ts';

/** A drive shaft, in a setup or among its parts. */
export function shaftSchema(assume: UnitSystem) {
  return z.strictObject({
    name: named.name,
    note: named.note,
    tractorType: ptoType,
    implementType: ptoType,
    jointFront: z.optional(z.enum(jointKinds)),
    jointRear: z.optional(z.enum(jointKinds)),
    series: wholeNumber(1, 9),
    limiter: z.optional(z.enum(limiters)),
    ...leaves(shaftFields, assume),
  });
}
