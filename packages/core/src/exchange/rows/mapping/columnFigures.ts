import type { FieldRule } from '../../../records/index.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { fittingUnits, unitsFor, type UnitFrom } from '../cells/bareUnit.ts';
import { isProblem, phraseOf } from '../cells/phrase.ts';
import { isMissing } from '../cells/missing.ts';
import { plainText } from '../cells/plainText.ts';
import { unitOf } from '../headings/headingUnit.ts';
import { cellOf } from '../marks.ts';
import { isTotalRow, type Table } from '../table.ts';

/** Enough cells of a column to know it by. */
const enoughCells = 400;

/** Texts of a column that say something, from the top. */
export function filledCells(table: Table, firstRow: number, index: number): string[] {
  const texts: string[] = [];
  for (let row = firstRow; row < table.length && texts.length < enoughCells; row += 1) {
    const cells = table[row] ?? [];
    const cell = cellOf(cells[index] ?? '');
    if (isTotalRow(cells)) continue;
    if (!cell.isDate && !isMissing(plainText(cell.text.slice(0, 400)))) texts.push(cell.text);
  }
  return texts;
}

/** The unit of a column’s bare figures as the figures tell it, and the units that may all be meant. */
export interface UnitOfFigures {
  readonly unit: string | null;
  readonly unitFrom: UnitFrom | null;
  /** Why, in a sentence, where something was guessed. */
  readonly because: string | null;
  readonly rivals: readonly string[];
}

const unsaid: UnitOfFigures = { unit: null, unitFrom: null, because: null, rivals: [] };

/** What the figures of a column tell of their unit. One unit that puts nearly all of them between their limits, alone, is taken; several are asked about. */
export function unitOfFigures(texts: readonly string[], rule: FieldRule, system: UnitSystem | null): UnitOfFigures {
  const { bare, written } = figuresOf(texts, rule);
  const units = unitsFor(rule, null);
  const [only] = units;
  if (units.length === 1 && only !== undefined) return { ...unsaid, unit: only, unitFrom: 'figures' };
  if (bare.length === 0) return unsaid;
  const shares = units.map((unit) => ({ unit, share: shareIn(bare, unit, rule) })).sort((a, b) => b.share - a.share);
  const [first, second] = shares;
  if (first === undefined || first.share < mostOf) return unsaid;
  if ((second?.share ?? 0) <= first.share - farBehind) {
    const because = `no other likely unit puts its figures between ${rule.min} and ${rule.max}`;
    return { ...unsaid, unit: first.unit, unitFrom: 'figures', because };
  }
  return amongSeveral(
    shares.filter(({ share }) => share > first.share - farBehind).map(({ unit }) => unit),
    written,
    rule,
    system,
  );
}

/** The unit that more than half of a column’s bare figures may be in, and no other; null where there is none. */
export function usualUnit(texts: readonly string[], rule: FieldRule): string | null {
  const { bare } = figuresOf(texts, rule);
  if (bare.length === 0) return null;
  const most = unitsFor(rule, null).filter((unit) => shareIn(bare, unit, rule) > 0.5);
  const [only] = most;
  return only !== undefined && most.length === 1 ? only : null;
}

const mostOf = 0.8;
const farBehind = 0.5;

function amongSeveral(
  rivals: readonly string[],
  written: ReadonlySet<string>,
  rule: FieldRule,
  system: UnitSystem | null,
): UnitOfFigures {
  const [beside] = written;
  if (written.size === 1 && beside !== undefined && rivals.includes(beside)) {
    return { ...unsaid, unit: beside, unitFrom: 'figures', because: 'the other figures of the column have that unit' };
  }
  const ofSystem = rivals.filter((unit) => unitsFor(rule, system).includes(unit));
  const [chosen] = ofSystem;
  if (system !== null && ofSystem.length === 1 && chosen !== undefined)
    return { ...unsaid, unit: chosen, unitFrom: 'person' };
  return { ...unsaid, unitFrom: 'ask', rivals: ofSystem.length === 0 ? rivals : ofSystem };
}

/** The figures without a unit, cell by cell, and the units that stand beside others. */
function figuresOf(texts: readonly string[], rule: FieldRule): { bare: string[][]; written: ReadonlySet<string> } {
  const written = new Set<string>();
  const bare: string[][] = [];
  for (const text of texts) {
    const phrase = phraseOf(text, rule.dimension);
    if (isProblem(phrase)) continue;
    const figures = phrase.amounts.flatMap((amount) => amount.figures);
    for (const { unit } of figures) written.add(unit === null ? '' : (unitOf(unit)?.unit ?? 'in'));
    const without = figures.filter(({ unit }) => unit === null).map(({ digits }) => digits);
    if (without.length > 0) bare.push(without);
  }
  written.delete('');
  return { bare, written };
}

function shareIn(bare: readonly string[][], unit: string, rule: FieldRule): number {
  const isNought = (digits: string): boolean => Number(digits.replace(',', '.')) === 0;
  const telling = bare.filter((digits) => !digits.every(isNought));
  if (telling.length === 0) return unit === unitsFor(rule, null)[0] ? 1 : 0;
  return telling.filter((digits) => fittingUnits(digits, rule, [unit]).length > 0).length / telling.length;
}
