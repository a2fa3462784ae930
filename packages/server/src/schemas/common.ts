import type { InputErrorCode } from '@hitchwright/core/records';
import * as z from 'zod';
import { troubles } from '../http/refusal.ts';

/** Letters of an id; whoever made it. */
export const id = z
  .string()
  .min(1)
  .max(100)
  .regex(/^[A-Za-z0-9_.:-]+$/);

/**
 * What may be left out. JSON, headers and addresses never say “undefined”, so the type says that it is there or not, which the validator’s own
 * word for this would say of the description too.
 */
export function mayMiss<T extends z.ZodType>(schema: T): z.ZodExactOptional<T> {
  return schema.optional() as unknown as z.ZodExactOptional<T>;
}

/** Any JSON. */
export const json = z.unknown();
/** Any object of JSON. */
export const object = z.record(z.string(), z.unknown());

const codes = [
  'not-json',
  'too-large',
  'wrong-type',
  'missing',
  'unknown-key',
  'not-a-choice',
  'empty',
  'not-a-quantity',
  'wrong-unit',
  'ambiguous',
  'out-of-range',
  'not-finite',
  'wrong-order',
  'contradiction',
  'swapped',
  'version',
] as const satisfies readonly InputErrorCode[];

/** One thing wrong with an input. */
export const inputError = z
  .object({ code: z.enum(codes), path: z.string(), expected: z.string(), got: z.string(), hint: z.string() })
  .meta({ id: 'InputError' });

/** The body of every answer that refuses. */
export const refusal = z
  .object({
    hitchwright: z.literal(1),
    errors: z.array(inputError),
    trouble: mayMiss(z.enum(troubles)),
    message: mayMiss(z.string()),
    current: json.optional(),
  })
  .meta({ id: 'Refusal', description: 'Every error of the input; or what else is wrong, and how it stands now.' });

/** Which page of a list is wanted. */
export const pageQuery = {
  cursor: mayMiss(z.string().max(2000)),
  limit: mayMiss(z.coerce.number().int().min(1).max(1000)),
};

/** A page of a list. */
export function pageOf<T extends z.ZodType>(item: T) {
  return z.object({ items: z.array(item).readonly(), next: z.string().nullable() });
}

/** Yes or no in a query. */
export const flag = z.enum(['true', 'false']);

/** Which units texts are in. */
export const units = z.enum(['us', 'metric']);

/** A path with one id. */
export const idPath = z.object({ id });

/** Who changes something, and what it is called in the history. */
const byHeaders = {
  'hitchwright-who': mayMiss(z.string().max(600)).meta({
    description: 'Who does it, percent-encoded UTF-8; “this computer” where it is left out.',
  }),
  'hitchwright-title': mayMiss(z.string().max(600)).meta({
    description: 'What it is called in the history, percent-encoded UTF-8.',
  }),
};
const onceHeader = {
  'idempotency-key': mayMiss(z.string().min(1).max(200)).meta({
    description: 'Sent again with the same key and body, it is done once and answered the same.',
  }),
};
const matchHeader = {
  'if-match': z.string().max(60).meta({ description: 'The ETag that the record had when it was read, such as "3".' }),
};

/** Headers of a request that changes something. */
export const byOnly = z.object(byHeaders);
/** Headers of a POST that writes. */
export const onceBy = z.object({ ...byHeaders, ...onceHeader });
/** Headers of a change of what was read before. */
export const matchBy = z.object({ ...byHeaders, ...matchHeader });
/** Headers of a POST that changes what was read before. */
export const onceMatchBy = z.object({ ...byHeaders, ...onceHeader, ...matchHeader });
