import { catalogues } from '../catalogue/catalogue.ts';
import type { FieldSpec } from '../catalogue/fieldSpec.ts';
import { plainCell } from '../cells/plainCell.ts';
import { unitWord } from '../cells/bareUnit.ts';
import type { HeadingGuess } from '../headings/guessHeading.ts';
import type { Header } from '../headings/headerRow.ts';
import { bracketOf, pointHinted, pointNamed, pointText } from '../headings/points.ts';
import { folded } from '../headings/words.ts';
import type { RowKind } from '../kinds.ts';
import { columnLetter, type Table } from '../table.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { filledCells, unitOfFigures } from './columnFigures.ts';
import type { Column, MappingTold } from './mapping.ts';
import type { StatedUnit } from './statedUnits.ts';
import { fieldOfTarget, holdsFigures } from './target.ts';

/** What columns are settled by. */
export interface ColumnDesk {
  readonly table: Table;
  readonly firstRow: number;
  readonly kinds: readonly RowKind[];
  readonly system: UnitSystem | null;
  readonly stated: readonly StatedUnit[];
  readonly told: MappingTold[];
}

/** The description of a field in the first of some kinds that has it. */
export function specOf(kinds: readonly RowKind[], field: string | null): FieldSpec | undefined {
  return field === null
    ? undefined
    : kinds.map((kind) => catalogues[kind].get(field)).find((spec) => spec !== undefined);
}

/** The columns of a header, each with its unit and its reference points. */
export function columnsOf(header: Header, desk: ColumnDesk): Column[] {
  return header.guesses.map((guess, index) => columnOf(header.headings[index] ?? '', index, guess, desk));
}

/** One column by what its heading was taken for. */
export function columnOf(heading: string, index: number, guess: HeadingGuess, desk: ColumnDesk): Column {
  const { target, confidence, rivals } = isVague(heading) ? byValues(guess, index, desk) : guess;
  const letter = columnLetter(index);
  const settled = { letter, heading, target, confidence, rivals, unit: null, unitFrom: null, from: null };
  const spec = specOf(desk.kinds, fieldOfTarget(target));
  if (spec === undefined || !holdsFigures(target)) return settled;
  if (spec.form === 'price') return { ...settled, ...currencyOfColumn(index, guess, spec, desk) };
  if (spec.form !== 'quantity') return settled;
  return { ...settled, ...unitOfColumn(index, guess, spec, desk), from: pointsOfColumn(heading, letter, spec, desk) };
}

const vagueHeadings = new Set(['type', 'kind', 'style', 'class']);

function isVague(heading: string): boolean {
  return vagueHeadings.has(folded(heading));
}

/** What a column headed `Type` holds is told by its cells, where nearly all of them are words of one choice. */
function byValues(guess: HeadingGuess, index: number, { table, firstRow, kinds }: ColumnDesk): HeadingGuess {
  const texts = filledCells(table, firstRow, index);
  const choices = kinds
    .flatMap((kind) => [...catalogues[kind]])
    .filter(([, { form }]) => form === 'choice' || form === 'category');
  const shares = choices
    .map(([field, spec]) => ({
      field,
      share: texts.filter((text) => isOf(text, spec)).length / Math.max(1, texts.length),
    }))
    .filter(({ share }) => share >= 0.7)
    .sort((a, b) => b.share - a.share);
  const [first, second] = shares;
  if (first === undefined) return { ...guess, target: { role: 'ignore' }, confidence: 0, rivals: [] };
  const rivals = second?.share === first.share ? shares.filter(({ share }) => share === first.share) : [];
  if (rivals.length > 0)
    return { ...guess, target: { role: 'ignore' }, confidence: 0, rivals: rivals.map(({ field }) => field) };
  return { ...guess, target: { role: 'field', field: first.field }, confidence: 0.9 * first.share, rivals: [] };
}

function isOf(text: string, spec: FieldSpec): boolean {
  return spec.form !== 'quantity' && plainCell(text, false, spec, null).kind === 'read';
}

/** The currency that a heading names; where it names none and prices stand without one, somebody has to say. */
function currencyOfColumn(
  index: number,
  { unit }: HeadingGuess,
  spec: Extract<FieldSpec, { form: 'price' }>,
  { table, firstRow }: ColumnDesk,
): Pick<Column, 'unit' | 'unitFrom'> {
  if (unit?.dimension === 'money') return { unit: unit.unit, unitFrom: null };
  const isBare = (text: string): boolean => {
    const reading = plainCell(text, false, spec, null);
    return reading.kind === 'refused' && reading.error.code === 'ambiguous';
  };
  return { unit: null, unitFrom: filledCells(table, firstRow, index).some(isBare) ? 'ask' : null };
}

type Quantity = Extract<FieldSpec, { form: 'quantity' }>;

function unitOfColumn(
  index: number,
  guess: HeadingGuess,
  { rule }: Quantity,
  desk: ColumnDesk,
): Pick<Column, 'unit' | 'unitFrom'> {
  if (guess.unit !== null) return { unit: guess.unit.unit, unitFrom: 'heading' };
  const column = columnLetter(index);
  const stated = desk.stated.find(({ dimension }) => dimension === rule.dimension);
  const found = unitOfFigures(filledCells(desk.table, desk.firstRow, index), rule, desk.system);
  if (stated !== undefined) {
    const sentence = `${rule.label}: figures without a unit are taken in ${unitWord(stated.unit)}, as “${stated.line.slice(0, 60)}” says.`;
    desk.told.push({ column, row: stated.row + 1, sentence });
    const isSure = found.unitFrom === 'ask' || found.unit === stated.unit;
    return { unit: stated.unit, unitFrom: isSure ? 'heading' : 'figures' };
  }
  if (found.unit !== null && found.because !== null) {
    const sentence = `${rule.label}: figures without a unit are taken in ${unitWord(found.unit)}; ${found.because}.`;
    desk.told.push({ column, row: null, sentence });
  }
  return { unit: found.unit, unitFrom: found.unitFrom };
}

/** Where the figures of a column were taken, as its heading says; `unsaid` where the field knows of that. */
function pointsOfColumn(heading: string, column: string, { rule }: Quantity, desk: ColumnDesk): string | null {
  if (rule.from === undefined) return null;
  const said = pointNamed(bracketOf(heading), rule) ?? pointHinted(heading, rule);
  if (said !== null || !rule.from.includes('unsaid')) return said;
  const others = rule.from
    .filter((point) => point !== 'unsaid')
    .map(pointText)
    .join(' or ');
  const sentence = `${rule.label}: “${heading}” does not say where it was measured, ${others}; both are kept open.`;
  desk.told.push({ column, row: null, sentence });
  return 'unsaid';
}
