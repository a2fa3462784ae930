import { unitsFor, unitWord } from '../cells/bareUnit.ts';
import type { FieldSpec } from '../catalogue/fieldSpec.ts';
import { pointText } from '../headings/points.ts';
import { aKind, type RowKind } from '../kinds.ts';
import { specOf } from './columns.ts';
import { holdsFigures } from './target.ts';
import type { Ask, Column, Mapping } from './mapping.ts';

/**
 * Everything that a person has to say before all columns of a mapping can be read; what is not answered is refused, cell by cell.
 *
 * @param mapping a mapping [record]
 * @returns the questions [list]
 */
export function asksOf(mapping: Mapping): Ask[] {
  const kinds = kindsOf(mapping);
  const ofColumns = mapping.columns.flatMap((column) => [
    ...fieldAsk(column, kinds),
    ...unitAsk(column, kinds, mapping),
    ...currencyAsk(column, kinds),
    ...pointsAsk(column, kinds, mapping),
  ]);
  const units = ofColumns.filter(({ about }) => about === 'unit');
  if (units.length < 2 || mapping.system !== null) return ofColumns;
  const columns = units.map(({ column }) => column).join(', ');
  return [
    {
      about: 'unit',
      column: null,
      question: `Figures without a unit in columns ${columns}: whose units are they in?`,
      options: [
        { value: 'us', label: 'US: inches, pounds, horsepower' },
        { value: 'metric', label: 'metric: millimetres, kilograms, kilowatts' },
      ],
      suggested: likelySystem(mapping),
    },
    ...ofColumns,
  ];
}

/** Every kind that rows of a mapping may be: the mapping’s own first. */
export function kindsOf(mapping: Mapping): readonly RowKind[] {
  return [mapping.kind, ...(mapping.otherKinds ?? []).filter((kind) => kind !== mapping.kind)];
}

function fieldAsk({ letter, heading, rivals }: Column, kinds: readonly RowKind[]): Ask[] {
  if (rivals.length === 0) return [];
  const options = rivals.map((field) => ({ value: field, label: specOf(kinds, field)?.label ?? field }));
  return [{ about: 'field', column: letter, question: `What does “${heading}” mean?`, options, suggested: null }];
}

function unitAsk({ letter, heading, target, unitFrom }: Column, kinds: readonly RowKind[], mapping: Mapping): Ask[] {
  const rule = ruleOf(holdsFigures(target) ? specOf(kinds, target.field) : undefined);
  if (unitFrom !== 'ask' || rule === null) return [];
  const options = unitsFor(rule, mapping.system).map((unit) => ({ value: unit, label: unitWord(unit) }));
  const system = likelySystem(mapping);
  const likely = system === null ? undefined : unitsFor(rule, system)[0];
  return [
    {
      about: 'unit',
      column: letter,
      question: `“${heading}”: what are figures without a unit in?`,
      options,
      suggested: likely ?? null,
    },
  ];
}

/** Currencies that are asked about, the commoner ones. */
const currencies = ['USD', 'CAD', 'EUR', 'GBP', 'AUD', 'NZD'];

function currencyAsk({ letter, heading, target, unitFrom }: Column, kinds: readonly RowKind[]): Ask[] {
  const isPrice = holdsFigures(target) && specOf(kinds, target.field)?.form === 'price';
  if (unitFrom !== 'ask' || !isPrice) return [];
  const options = currencies.map((code) => ({ value: code, label: code }));
  const question = `“${heading}”: which currency are prices without one in?`;
  return [{ about: 'currency', column: letter, question, options, suggested: null }];
}

function pointsAsk({ letter, heading, target, from }: Column, kinds: readonly RowKind[], mapping: Mapping): Ask[] {
  const rule = ruleOf(holdsFigures(target) ? specOf(kinds, target.field) : undefined);
  if (rule?.from === undefined || from !== null || !holdsFigures(target)) return [];
  const isBeside = mapping.columns.some((other) => other.target.role === 'from' && other.target.field === target.field);
  if (isBeside) return [];
  const options = rule.from.map((point) => ({ value: point, label: pointText(point) }));
  return [
    { about: 'from', column: letter, question: `“${heading}”: where was it measured?`, options, suggested: null },
  ];
}

function ruleOf(spec: FieldSpec | undefined) {
  return spec?.form === 'quantity' ? spec.rule : null;
}

/** The system of all the units that are known, where they are of one. */
function likelySystem({ columns }: Mapping): 'us' | 'metric' | null {
  const units = columns.map(({ unit }) => unit).filter((unit) => unit !== null);
  const isUs = units.some((unit) => /^(?:in|ft|lb|hp|psi|gpm|mph|lb·ft)$/.test(unit));
  const isMetric = units.some((unit) => /^(?:mm|cm|m|kg|kW|bar|L\/min|km\/h|N·m)$/.test(unit));
  if (isUs === isMetric) return null;
  return isUs ? 'us' : 'metric';
}

/** The question what the rows are, where two kinds fit about as well. */
export function kindAsk(first: RowKind, others: readonly RowKind[]): Ask {
  const options = [first, ...others].map((kind) => ({ value: kind, label: aKind(kind) }));
  return { about: 'kind', column: null, question: 'What is a row of this table?', options, suggested: first };
}
