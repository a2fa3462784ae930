import { leafRules, setupSchema, type FieldRule } from '../../../records/index.ts';

/** What a figure of a part is called, where its rule speaks of one kind of part only. */
const partLabels: Readonly<Record<string, string>> = {
  inside: 'inside diameter',
  outside: 'outside diameter',
  length: 'length',
  diameter: 'diameter',
  bore: 'ball bore',
  width: 'ball width',
  gapAfter: 'clevis gap after',
};

/**
 * The rule of each figure that a part or weight can have, from the schema of parts. Kinds that share a name share a rule as wide as
 * both; each row is held against the schema of its own kind besides.
 */
export function partRules(kinds: (kind: string) => boolean): ReadonlyMap<string, FieldRule> {
  const rules = new Map<string, FieldRule>();
  for (const shape of shapesOfParts()) {
    if (!kinds(kindOf(shape))) continue;
    for (const [key, schema] of Object.entries(shape)) {
      const rule = leafRules.get(schema as object);
      if (rule !== undefined)
        rules.set(key, asWideAs(rules.get(key), { ...rule, label: partLabels[key] ?? rule.label }));
    }
  }
  return rules;
}

function shapesOfParts(): readonly object[] {
  const { innerType } = setupSchema('metric').shape.parts._zod.def;
  return innerType._zod.def.element._zod.def.options.map((option) => option._zod.def.shape);
}

function kindOf(shape: object): string {
  const { kind } = shape as {
    readonly kind: { readonly _zod: { readonly def: { readonly values: readonly string[] } } };
  };
  return kind._zod.def.values[0] as string;
}

function asWideAs(known: FieldRule | undefined, rule: FieldRule): FieldRule {
  return known === undefined
    ? rule
    : { ...known, min: Math.min(known.min, rule.min), max: Math.max(known.max, rule.max) };
}
