import { excerpt, type FieldRule } from '../../../records/index.ts';
import { canonicalUnit, readQuantity, type Dimension } from '../../../units/index.ts';
import { unitOf } from '../headings/headingUnit.ts';
import { bareUnit, unitWord, type UnitSaid } from './bareUnit.ts';
import { dateHint, dateShown, dayOfSerial } from './dates.ts';
import { hasFraction, type Figure } from './figure.ts';
import { isBroken, isMissing } from './missing.ts';
import { isProblem, phraseOf, type Amount, type Phrase } from './phrase.ts';
import { plainText } from './plainText.ts';
import type { CellError, Told } from './told.ts';
import { worthOf } from './worth.ts';

/** A figure that was read: as it is to be written, its value [canonical unit], and its digits with the unit that they were read in. */
export interface ReadFigure {
  readonly text: string;
  readonly value: number;
  readonly digits: string;
  readonly unit: string;
}

/** An amount that was read: one figure, perhaps with its tolerance, or two that it lies between. */
export interface ReadAmount {
  readonly figures: readonly [ReadFigure] | readonly [ReadFigure, ReadFigure];
  readonly plusMinus: string | null;
}

/** What a cell says of a quantity, read. */
export interface QuantitySaid {
  readonly shape: Phrase['shape'];
  readonly amounts: readonly ReadAmount[];
  readonly perPosition: boolean;
  readonly approximate: boolean;
  readonly note: string | null;
}

/** What came of a cell. */
export type QuantityReading =
  | { readonly kind: 'missing' }
  | { readonly kind: 'refused'; readonly error: CellError }
  | { readonly kind: 'read'; readonly said: QuantitySaid; readonly told: readonly Told[] };

interface Desk {
  readonly rule: FieldRule;
  readonly said: UnitSaid;
  readonly got: string;
  readonly told: Told[];
}

/** Thrown inside a cell only, to leave it from wherever something is found wrong. */
class Refusal extends Error {
  constructor(readonly error: CellError) {
    super(error.hint);
  }
}

/** Reads one cell of a column of quantities. Nothing is guessed without a sentence, and nothing where two meanings are left. */
export function quantityCell(text: string, isDate: boolean, rule: FieldRule, said: UnitSaid): QuantityReading {
  const plain = plainText(text.slice(0, 400));
  if (isMissing(plain)) return { kind: 'missing' };
  const desk: Desk = { rule, said, got: excerpt(text), told: [] };
  try {
    refuseWhatIsNone(plain, isDate, desk);
    const phrase = phraseOf(text, rule.dimension);
    if (isProblem(phrase)) throw refusal(phrase.code, phrase.hint, desk);
    return { kind: 'read', said: readPhrase(phrase, desk), told: desk.told };
  } catch (problem) {
    if (!(problem instanceof Refusal)) throw problem;
    return { kind: 'refused', error: problem.error };
  }
}

function refusal(code: CellError['code'], hint: string, { rule, got }: Desk): Refusal {
  return new Refusal({ code, expected: expectedOf(rule), got, hint });
}

function expectedOf({ dimension, min, max }: FieldRule): string {
  return `${String(min).replace('-', '−')} to ${String(max).replace('-', '−')} ${canonicalUnit[dimension]}`;
}

/** Dates that were fractions once, and what a spreadsheet shows where its sum went wrong. */
function refuseWhatIsNone(plain: string, isDate: boolean, desk: Desk): void {
  if (isBroken(plain)) {
    throw refusal('not-a-quantity', 'The spreadsheet could not work this out: type the figure itself.', desk);
  }
  const day = dateShown(plain);
  if (day !== null) throw refusal('not-a-quantity', dateHint(day), desk);
  if (isDate)
    throw refusal(
      'not-a-quantity',
      'The spreadsheet made a date of it: set the column to text and type it again.',
      desk,
    );
  if (/^(?:none|nil|nothing|no)$/i.test(plain)) {
    throw refusal('ambiguous', 'Write 0 where there is none; leave it empty where it is not known.', desk);
  }
}

function readPhrase(phrase: Phrase, desk: Desk): QuantitySaid {
  const bare = phrase.amounts.flatMap(({ figures }) => figures).filter(({ unit }) => unit === null);
  const unit = bare.length === 0 ? null : unitOfBare(bare, desk);
  const amounts = phrase.amounts.map((amount) => readAmount(amount, unit, desk));
  const [first] = amounts;
  if (phrase.again !== null && first !== undefined) holdAgainst(first, phrase.again, desk);
  const { shape, perPosition, note } = phrase;
  return { shape, amounts: hedged(phrase, amounts, desk), perPosition, approximate: phrase.approximate !== null, note };
}

function unitOfBare(figures: readonly Figure[], desk: Desk): string {
  refuseFeetAndInches(figures, desk);
  const found = bareUnit(figures, desk.rule, desk.said);
  const digits = figures.map((figure) => figure.digits).join(' and ');
  if (found.unit === null) {
    const readings = found.rivals.map((unit) => `${digits} ${unit}`).join(', or ');
    throw refusal('ambiguous', `Was ${readings} meant? Write the unit, or choose one for the column.`, desk);
  }
  const isMetric = found.unit === 'mm' || found.unit === 'cm' || found.unit === 'm';
  if (isMetric && figures.some(hasFraction)) {
    const hint = `Nobody measures ${unitWord(found.unit)} in fractions: was ${digits} in meant? Write the unit.`;
    throw refusal('ambiguous', hint, desk);
  }
  if (found.guessed) {
    refuseAgainstUsual(figures, found.unit, digits, desk);
    const sentence = `“${digits}” without a unit was taken in ${unitWord(found.unit)}: in no other likely unit is it between the limits of ${desk.rule.label}.`;
    desk.told.push({ about: 'unit', taken: `${digits} ${found.unit}`, sentence });
  }
  return found.unit;
}

/** A figure that only another unit than the column’s puts between the limits may be that, or a slip: somebody has to say. Fractions say it. */
function refuseAgainstUsual(figures: readonly Figure[], unit: string, digits: string, { said, ...desk }: Desk): void {
  const { usual } = said;
  if (usual === null || unit === usual || figures.some(hasFraction)) return;
  const hint = `The other figures of the column are in ${unitWord(usual)}, and ${digits} ${usual} is outside the limits. If ${digits} ${unit} was meant, write the unit, or let each figure of the column stand by itself.`;
  throw refusal('ambiguous', hint, { said, ...desk });
}

/** `5-10` may be a range or five feet ten, where both could be. */
function refuseFeetAndInches(figures: readonly Figure[], desk: Desk): void {
  const [feet, inches] = figures.map(({ digits }) => Number(digits));
  if (desk.rule.dimension !== 'length' || figures.length !== 2 || !/^\d{1,2}-\d{1,2}$/.test(desk.got)) return;
  const asFeet = ((feet ?? 0) * 12 + (inches ?? 0)) * 25.4;
  if ((inches ?? 12) > 11 || asFeet < desk.rule.min || asFeet > desk.rule.max) return;
  throw refusal('ambiguous', `Was ${feet} ft ${inches} in meant, or from ${feet} to ${inches}? Write the unit.`, desk);
}

function readAmount(amount: Amount, bare: string | null, desk: Desk): ReadAmount {
  const [low, high] = amount.figures;
  const first = readFigure(low, bare, desk);
  const plusMinus = amount.plusMinus === null ? null : textOf(amount.plusMinus, bare);
  if (high === undefined) return { figures: [first], plusMinus };
  const second = readFigure(high, bare, desk);
  if (first.value > second.value) throw refusal('wrong-order', 'Write the smaller figure first.', desk);
  return { figures: [first, second], plusMinus };
}

/** The digits and unit of a figure as one text that `readQuantity` knows. */
function textOf(figure: Figure, bare: string | null): string {
  if (figure.unit === '') return figure.digits;
  const unit = figure.unit ?? bare ?? '';
  return `${figure.digits}${/^["'°]/.test(unit) ? '' : ' '}${unit}`;
}

function readFigure(figure: Figure, bare: string | null, desk: Desk): ReadFigure {
  const { dimension, min, max } = desk.rule;
  const options = { dimension, range: { min, max }, assume: 'metric' } as const;
  const typed = textOf(figure, bare);
  const known = figure.unit === null || figure.unit === '' ? null : unitOf(figure.unit);
  const asTyped = readQuantity(typed, options);
  const isOddSpelling = !asTyped.ok && asTyped.code === 'wrong-unit' && known?.dimension === dimension;
  const text = isOddSpelling ? `${figure.digits} ${known.unit}` : typed;
  const reading = isOddSpelling ? readQuantity(text, options) : asTyped;
  if (!reading.ok) throw new Refusal(withSerial(reading, figure, desk));
  const unit = reading.unit === 'ft in' ? 'in' : reading.unit;
  return { text: steady(text, reading.value, desk), value: reading.value, digits: inchesOf(figure), unit };
}

/** A whole number out of range may be a date that a spreadsheet counts in days. */
function withSerial(error: CellError, figure: Figure, { got }: Desk): CellError {
  const { code, expected, hint } = error;
  const day = figure.unit === null && code === 'out-of-range' ? dayOfSerial(Number(figure.digits)) : null;
  const isLikely = day?.year !== undefined && day.year >= 1925 && Number(figure.digits) > 9999;
  return { code, expected, got, hint: isLikely ? dateHint(day) : hint };
}

/** A text that means the same whatever system is assumed: where a comma or point may group or divide, the range has decided, and that is told. */
function steady(text: string, value: number, desk: Desk): string {
  const { dimension } = desk.rule;
  if (isSteady(text, value, dimension)) return text;
  const plain = `${value} ${canonicalUnit[dimension]}`;
  const sentence = `“${text}” was taken for ${plain}: read the other way it would be outside the limits of ${desk.rule.label}.`;
  desk.told.push({ about: 'separator', taken: plain, sentence });
  return plain;
}

/** Whether a text with a unit means the same figure to everybody, wherever they put commas and points. */
function isSteady(text: string, value: number, dimension: Dimension): boolean {
  if (!/[.,]\d{3}(?!\d)/.test(text)) return true;
  return (['us', 'metric'] as const).every((assume) => {
    const reading = readQuantity(text, { dimension, assume });
    return reading.ok && reading.value === value;
  });
}

/** Of feet and inches the inches are the last digit. */
function inchesOf({ digits }: Figure): string {
  return (
    /(?:'|ft\.?|feet|foot)[ -]*(.+)$/i
      .exec(digits)?.[1]
      ?.replace(/[^\d.,/¼-¾⅐-⅞ ]/g, '')
      .trim() ?? digits
  );
}

/** What one step of a figure’s last digit is worth, as a text with its unit. */
function worthText({ digits, unit }: ReadFigure): string {
  return `${Number(worthOf(digits, unit === 'in' || unit === 'ft').toPrecision(10))} ${unit}`;
}

/** The same [canonical unit]. */
export function worthIn(figure: ReadFigure, dimension: Dimension): number {
  const reading = readQuantity(worthText(figure), { dimension });
  return reading.ok ? reading.value : 0;
}

/** The second statement of a figure has to agree with the first as far as their digits go. */
function holdAgainst({ figures, plusMinus }: ReadAmount, again: Figure, desk: Desk): void {
  const [first, range] = figures;
  const second = readFigure(again, null, desk);
  const slack = (worthIn(first, desk.rule.dimension) + worthIn(second, desk.rule.dimension)) / 2 + 1e-9;
  if (range !== undefined || plusMinus !== null || Math.abs(first.value - second.value) > slack) {
    throw refusal('contradiction', `${first.text} is not ${second.text}: keep the one that was measured.`, desk);
  }
  const sentence = `${first.text} was taken; ${second.text} beside it says the same.`;
  desk.told.push({ about: 'twice', taken: first.text, sentence });
}

/** A figure that is said not to be exact gets what its last digit is worth to either side, unless its tolerance is written. */
function hedged(phrase: Phrase, amounts: readonly ReadAmount[], desk: Desk): readonly ReadAmount[] {
  const [only] = amounts;
  if (phrase.approximate === null || only === undefined) return amounts;
  const [figure, high] = only.figures;
  if (phrase.shape !== 'amount' || high !== undefined) {
    const sentence = `“${desk.got}” was taken for the range itself.`;
    desk.told.push({ about: 'approximate', taken: desk.got, sentence });
    return amounts;
  }
  if (only.plusMinus !== null) {
    desk.told.push({
      about: 'approximate',
      taken: only.plusMinus,
      sentence: `“${desk.got}” was taken with the tolerance beside it.`,
    });
    return amounts;
  }
  const plusMinus = worthText(figure);
  const sentence = `“${desk.got}” was taken for ${figure.text} give or take ${plusMinus}, what its last digit is worth.`;
  desk.told.push({ about: 'approximate', taken: `${figure.text} ± ${plusMinus}`, sentence });
  return [{ figures: [figure], plusMinus }];
}
