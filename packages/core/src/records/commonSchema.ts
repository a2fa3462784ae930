import * as z from 'zod/mini';
import { categories, ptoTypeNumbers } from '../tables/index.ts';

/** A name. */
export const text = z.string().check(z.maxLength(200));
/** What every record may be called. */
export const named = {
  name: z.optional(text),
  category: z.optional(z.enum(categories)),
  note: z.optional(z.string().check(z.maxLength(2000))),
};
/** Splines of a shaft end, by the type the standard numbers. */
export const ptoType = z.optional(z.literal(ptoTypeNumbers));
/** A speed of turning [rpm]. */
export const rpm = z.number().check(z.minimum(100), z.maximum(3000));
/** A count that may be left out. */
export function wholeNumber(least: number, most: number) {
  return z.optional(z.number().check(z.minimum(least), z.maximum(most), z.multipleOf(1)));
}
/** What something costs, in a currency by its ISO 4217 code. */
export const price = z.strictObject({
  amount: z.number().check(z.minimum(0), z.maximum(1_000_000)),
  currency: z.string().check(z.regex(/^[A-Z]{3}$/)),
});
