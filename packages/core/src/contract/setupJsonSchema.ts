import * as z from 'zod/mini';
import { canonicalUnit } from '../units/index.ts';
import { leafRules, setupSchema, type FieldRule } from '../records/index.ts';

/**
 * The JSON Schema of a setup document (draft 2020-12), made from the same schema that reads it.
 *
 * @returns a plain JSON object [JSON Schema]
 */
export function setupJsonSchema(): Record<string, unknown> {
  const schema = z.toJSONSchema(setupSchema('us'), {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      const rule = leafRules.get(zodSchema);
      if (rule !== undefined) Object.assign(jsonSchema, leafSchema(rule));
    },
  }) as Record<string, unknown>;
  return { ...schema, title: 'Hitchwright setup, version 1', $defs: valueForms };
}

function leafSchema(rule: FieldRule): Record<string, unknown> {
  const unit = canonicalUnit[rule.dimension];
  return {
    $ref: '#/$defs/value',
    title: rule.label,
    description: `${rule.measure} A bare number is in ${unit}; accepted from ${rule.min} to ${rule.max} ${unit}.`,
  };
}

const plain = { type: ['number', 'string'] };
const limit = { anyOf: [plain, { type: 'object' }] };
const origin = Object.fromEntries(
  ['from', 'method', 'tool', 'who', 'when', 'source', 'note'].map((key) => [key, { type: 'string' }]),
);

function form(required: string, properties: Record<string, unknown>) {
  return {
    type: 'object',
    required: [required],
    properties: { ...properties, ...origin },
    additionalProperties: false,
  };
}

const valueForms = {
  value: {
    anyOf: [
      plain,
      { type: 'null' },
      form('value', { value: plain, plusMinus: plain }),
      form('between', {
        between: { type: 'array', items: plain, minItems: 2, maxItems: 2 },
        default: { type: 'string' },
      }),
      form('adjustable', {
        adjustable: {
          type: 'object',
          properties: {
            between: { type: 'array', items: limit, minItems: 2, maxItems: 2 },
            at: { type: 'array', items: limit, minItems: 1, maxItems: 12 },
            setting: { enum: ['one', 'perPosition'] },
          },
          additionalProperties: false,
        },
      }),
      form('unknown', { unknown: { const: true } }),
    ],
  },
};
