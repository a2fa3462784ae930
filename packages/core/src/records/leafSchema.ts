import * as z from 'zod/mini';
import type { UnitSystem } from '../units/index.ts';
import type { InputError } from './inputError.ts';
import { readValue } from './readValue.ts';
import type { FieldRule, Value } from './value.ts';

/** A quantity that may be left out. */
export type Leaf = z.ZodMiniOptional<z.ZodMiniType<Value>>;
type LeavesOf<R> = { [K in keyof R]: Leaf };
type Rules = Readonly<Record<string, FieldRule>>;

/** Rule of every quantity leaf, for the published JSON Schema. */
export const leafRules = new WeakMap<object, FieldRule>();

/** The leaves of a record by its rules, texts without a unit read in the given system. */
export function leaves<R extends Rules>(rules: R, assume: UnitSystem): LeavesOf<R> {
  return Object.fromEntries(Object.entries(rules).map(([key, rule]) => [key, leaf(rule, assume)])) as LeavesOf<R>;
}

/** One quantity that may be left out. */
export function leaf(rule: FieldRule, assume: UnitSystem): Leaf {
  return z.optional(required(rule, assume));
}

/** One quantity. The reader reports its own errors whole; their paths start below the leaf. */
export function required(rule: FieldRule, assume: UnitSystem): z.ZodMiniType<Value> {
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
