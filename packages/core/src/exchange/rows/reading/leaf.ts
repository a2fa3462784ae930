import type { FieldRule } from '../../../records/index.ts';
import type { QuantitySaid, ReadAmount } from '../cells/quantityCell.ts';

/** What stands beside a figure. */
export type Beside = Readonly<
  Partial<Record<'from' | 'method' | 'tool' | 'who' | 'when' | 'source' | 'note' | 'default', string>>
>;

/** The leaf of a setup document for what one cell says, or two cells say of the ends of a field. */
export function leafOf(said: QuantitySaid, beside: Beside, isSettable: boolean): unknown {
  const { default: basis, ...provenance } = beside;
  const form = formOf(said, isSettable, basis);
  const [only] = Object.keys(form);
  const isPlain = only === 'value' && Object.keys(form).length === 1 && Object.keys(provenance).length === 0;
  return isPlain ? form['value'] : { ...form, ...provenance };
}

function formOf(said: QuantitySaid, isSettable: boolean, basis: string | undefined): Readonly<Record<string, unknown>> {
  const { shape, amounts, perPosition } = said;
  const setting = perPosition ? { setting: 'perPosition' } : {};
  const [first, second] = amounts;
  if (shape === 'holes') return { adjustable: { at: amounts.map(limitOf), ...setting } };
  if (shape === 'adjustable' && first !== undefined && second !== undefined)
    return { adjustable: { between: [limitOf(first), limitOf(second)], ...setting } };
  if (first === undefined) return { unknown: true };
  const ends = first.figures.map(({ text }) => text);
  if (ends.length === 1) return figureOf(first);
  if (isSettable) return { adjustable: { between: ends } };
  return basis === undefined ? { between: ends } : { between: ends, default: basis };
}

function figureOf({ figures, plusMinus }: ReadAmount): Readonly<Record<string, unknown>> {
  return plusMinus === null ? { value: figures[0].text } : { value: figures[0].text, plusMinus };
}

/** An end or hole of what can be set: a figure by itself where nothing else is said of it. */
function limitOf(amount: ReadAmount): unknown {
  const [low, high] = amount.figures;
  if (high !== undefined) return { between: [low.text, high.text] };
  return amount.plusMinus === null ? low.text : figureOf(amount);
}

/** The two ends of a field from two cells. */
export function endsAsOne(low: QuantitySaid, high: QuantitySaid): QuantitySaid | null {
  const [[a], [b]] = [low.amounts, high.amounts];
  if (a === undefined || b === undefined || low.amounts.length > 1 || high.amounts.length > 1) return null;
  const isExact = [a, b].every(({ figures, plusMinus }) => figures.length === 1 && plusMinus === null);
  if (!isExact) return null;
  const notes = [low.note, high.note].filter((note) => note !== null);
  return {
    shape: 'amount',
    amounts: [{ figures: [a.figures[0], b.figures[0]], plusMinus: null }],
    perPosition: false,
    approximate: low.approximate || high.approximate,
    note: notes.length === 0 ? null : notes.join('; '),
  };
}

/** Whether the points that figures were taken between have to be said: the field knows several, and none of them is "not said". */
export function needsPoints(rule: FieldRule): boolean {
  return rule.from !== undefined && !rule.from.includes('unsaid');
}
