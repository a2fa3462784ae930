import {
  couplerFields,
  fieldRules,
  implementFields,
  pinFields,
  shaftFields,
  tractorFields,
} from '../../../records/index.ts';
import type { FieldRule } from '../../../records/index.ts';
import type { RowKind } from '../kinds.ts';
import { weightKindWords } from './choiceWords.ts';
import type { Catalogue, FieldSpec } from './fieldSpec.ts';
import { partRules } from './partRules.ts';
import { placedBelow, plainFields } from './plainFields.ts';

type Fields = Readonly<Record<string, FieldSpec>>;

const isWeight = (kind: string): boolean => kind in weightKindWords;

/** Everything that a row of a kind can say, by its path below the record: what is measured first. */
export const catalogues: Readonly<Record<RowKind, Catalogue>> = {
  tractor: catalogue(quantities(tractorFields), plainFields.tractor),
  coupler: catalogue(quantities(couplerFields), placedBelow(quantities(pinFields), 'front'), plainFields.coupler),
  implement: catalogue(
    quantities({ ...pinFields, ...implementFields }),
    placedBelow({ ...quantities(pinFields), ...secondRowPlaces() }, 'secondRow', 'second row'),
    plainFields.implement,
  ),
  shaft: catalogue(quantities(shaftFields), plainFields.shaft),
  weight: catalogue(quantities(Object.fromEntries(partRules(isWeight))), plainFields.weight),
  part: catalogue(quantities(Object.fromEntries(partRules((kind) => !isWeight(kind)))), plainFields.part),
  customer: catalogue(plainFields.customer),
};

function catalogue(...fields: readonly Fields[]): Catalogue {
  return new Map(fields.flatMap((each) => Object.entries(each)));
}

function quantities(rules: Readonly<Record<string, FieldRule>>): Fields {
  return Object.fromEntries(
    Object.entries(rules).map(([key, rule]) => [key, { form: 'quantity', label: rule.label, rule }]),
  );
}

/** Where the second row stands from the first. */
function secondRowPlaces(): Fields {
  const rules = ['rise', 'behind'].map((key) => [key, fieldRules.get(`implement.secondRow.${key}`)] as const);
  return quantities(Object.fromEntries(rules) as Record<string, FieldRule>);
}
