import type { FieldRule } from '../../../records/index.ts';
import { canonicalUnit, readQuantity, unitNameIn, type UnitSystem } from '../../../units/index.ts';
import { quantityCell } from '../cells/quantityCell.ts';

const nobody = { unit: null, unitFrom: null, system: null, usual: null } as const;

type Form = Readonly<Record<string, unknown>>;

/** What a leaf says of its figure, as one cell that reads back to it; empty where it says that nothing is known. Figures without a unit are in `units`. */
export function leafText(leaf: unknown, rule: FieldRule, units: UnitSystem): string {
  if (typeof leaf !== 'object' || leaf === null) return leaf === null ? '' : figureText(leaf, rule, units);
  const form = leaf as Form;
  const adjustable = form['adjustable'] as Form | undefined;
  if (adjustable !== undefined) return settableText(adjustable, rule, units);
  return 'value' in form || 'between' in form ? limitText(form, rule, units) : '';
}

function settableText(form: Form, rule: FieldRule, units: UnitSystem): string {
  const setting = form['setting'] === 'perPosition' ? ', per position' : '';
  const at = form['at'] as readonly unknown[] | undefined;
  const limits = (at ?? (form['between'] as readonly unknown[])).map((limit) => limitText(limit, rule, units));
  return at === undefined ? `adjustable ${limits.join(' to ')}${setting}` : `holes ${limits.join('; ')}${setting}`;
}

function limitText(limit: unknown, rule: FieldRule, units: UnitSystem): string {
  if (typeof limit !== 'object' || limit === null) return figureText(limit, rule, units);
  const { value, plusMinus, between } = limit as Form;
  if (Array.isArray(between)) return `between ${between.map((end) => figureText(end, rule, units)).join(' and ')}`;
  const figure = figureText(value, rule, units);
  return plusMinus === undefined ? figure : `${figure} ± ${toleranceText(plusMinus, rule, units)}`;
}

/** A figure as typed, with its unit; as a plain number where a cell could not be read back to it. */
function figureText(figure: unknown, rule: FieldRule, units: UnitSystem): string {
  const { dimension, min, max } = rule;
  const reading = readQuantity(figure as string | number, { dimension, range: { min, max }, assume: units });
  if (!reading.ok) return String(figure);
  const typed = String(figure).trim();
  const texts = typeof figure === 'number' ? [] : [typed, `${typed} ${unitNameIn(units, dimension)}`];
  return (
    texts.find((text) => readsBackTo(text, reading.value, rule)) ??
    `${plainNumber(reading.value)} ${canonicalUnit[dimension]}`
  );
}

function readsBackTo(text: string, value: number, rule: FieldRule): boolean {
  const reading = quantityCell(text, false, rule, nobody);
  if (reading.kind !== 'read' || reading.told.length > 0 || reading.said.note !== null) return false;
  const figures = reading.said.amounts[0]?.figures ?? [];
  return reading.said.amounts.length === 1 && figures.length === 1 && figures[0]?.value === value;
}

function toleranceText(tolerance: unknown, rule: FieldRule, units: UnitSystem): string {
  const { dimension } = rule;
  const reading = readQuantity(tolerance as string | number, { dimension, assume: units });
  return reading.ok ? `${plainNumber(reading.value)} ${canonicalUnit[dimension]}` : String(tolerance);
}

/** A number without an exponent, and never with just three decimals, which could be taken for thousands. */
export function plainNumber(value: number): string {
  const text = /e/.test(String(value)) ? value.toFixed(20).replace(/0+$/, '').replace(/\.$/, '') : String(value);
  return /\.\d{3}$/.test(text) ? `${text}0` : text;
}
