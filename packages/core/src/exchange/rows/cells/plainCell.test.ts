import { describe, expect, test } from 'vitest';
import { catalogues } from '../catalogue/catalogue.ts';
import type { RowKind } from '../kinds.ts';
import { plainCell } from './plainCell.ts';

/** What a cell comes to: its value and what was told about, or why it was refused. */
function told(kind: RowKind, field: string, text: string, unit: string | null = null, isDate = false): unknown {
  const spec = catalogues[kind].get(field);
  if (spec === undefined || spec.form === 'quantity') throw new Error(`${field} is no plain field`);
  const reading = plainCell(text, isDate, spec, unit);
  if (reading.kind === 'missing') return 'missing';
  if (reading.kind === 'refused') return `refused: ${reading.error.code}`;
  return reading.told.length === 0 ? reading.value : [reading.value, ...reading.told.map(({ about }) => about)];
}

describe('categories', () => {
  test.each([
    ['1', '1'],
    ['1N', '1N'],
    ['cat1', '1'],
    ['Cat. I', '1'],
    ['CAT II', '2'],
    ['Category 2 narrow', '2N'],
    ['ISO cat 3', '3'],
    ['1.0', '1'],
  ])('%s is category %s', (text, category) => {
    expect(told('implement', 'category', text)).toBe(category);
  });
  test.each(['cat1/2', '1 & 2', 'I/II', '1-2', '2-Jan'])('%s names two, or was turned into a date: refused', (text) => {
    expect(told('implement', 'category', text)).toBe('refused: ambiguous');
  });
  test.each(['5', '0N', 'big'])('%s is none', (text) => {
    expect(told('implement', 'category', text)).toBe('refused: not-a-choice');
  });
  test('what is said beside it and lost is told', () => {
    expect(told('implement', 'category', 'limited cat 1')).toEqual(['1', 'spelling']);
    expect(told('implement', 'category', 'Cat 1 (7/8 pins)')).toEqual(['1', 'spelling']);
  });
});

describe('choices', () => {
  test('trade words of either country are known, and told where they are not the plain word', () => {
    expect(told('implement', 'work', 'topper')).toEqual(['brushCutter', 'spelling']);
    expect(told('implement', 'work', 'Box Blade')).toEqual(['landPlane', 'spelling']);
    expect(told('implement', 'work', 'Brush Cutter')).toBe('brushCutter');
    expect(told('coupler', 'kind', 'quick hitch')).toEqual(['uFrame', 'spelling']);
    expect(told('implement', 'inputType', '6 splines')).toBe(1);
    expect(told('implement', 'inputType', '21')).toEqual([2, 'spelling']);
    expect(told('implement', 'driven', 'TRUE')).toBe(true);
  });
  test('a word that is none of them is refused with all of them', () => {
    expect(told('implement', 'work', 'thing')).toBe('refused: not-a-choice');
    expect(told('implement', 'driven', 'maybe')).toBe('refused: not-a-choice');
  });
});

describe('numbers, speeds, prices, lists', () => {
  test.each<[RowKind, string, string, unknown]>([
    ['implement', 'tools', '3', 3],
    ['implement', 'tools', '3.0', 3],
    ['implement', 'tools', '3.5', 'refused: wrong-type'],
    ['implement', 'tools', '99', 'refused: out-of-range'],
    ['implement', 'inputSpeed', '540 rpm', 540],
    ['implement', 'inputSpeed', '540/1000', 'refused: not-a-quantity'],
    ['implement', 'inputSpeed', '5', 'refused: not-a-quantity'],
    ['tractor', 'ptoSpeeds', '540/1000', [540, 1000]],
    ['tractor', 'ptoSpeeds', '540; 750; 1000', [540, 750, 1000]],
    ['tractor', 'ptoSpeeds', '540E', [[540], 'spelling']],
    ['part', 'price', '129.50 USD', { amount: 129.5, currency: 'USD' }],
    ['part', 'price', '€ 1.250,50', { amount: 1250.5, currency: 'EUR' }],
    ['part', 'price', '£12', { amount: 12, currency: 'GBP' }],
    ['part', 'price', '1,295 USD', [{ amount: 1295, currency: 'USD' }, 'separator']],
    ['part', 'price', '$12', 'refused: ambiguous'],
    ['part', 'price', '12', 'refused: ambiguous'],
    ['part', 'price', '-12 USD', 'refused: not-a-quantity'],
    ['part', 'fits', 'Harl rake; Tarn ripper', ['Harl rake', 'Tarn ripper']],
    ['part', 'fits', '["a; b","c"]', ['a; b', 'c']],
    ['tractor', 'outlines', '[{"name":"tyre"}]', [{ name: 'tyre' }]],
    ['tractor', 'outlines', 'round', 'refused: not-json'],
    ['tractor', 'note', 'n/a', 'n/a'],
    ['tractor', 'note', 'x'.repeat(2001), 'refused: out-of-range'],
    ['tractor', 'remotes', '?', 'missing'],
  ])('%s %s: %s', (kind, field, text, expected) => {
    expect(told(kind, field, text)).toEqual(expected);
  });
  test('the currency of a heading holds for figures without one', () => {
    expect(told('part', 'price', '12', 'CAD')).toEqual({ amount: 12, currency: 'CAD' });
    expect(told('part', 'price', '$12', 'CAD')).toEqual({ amount: 12, currency: 'CAD' });
  });
  test('a date is no choice', () => {
    expect(told('implement', 'tools', '2026-03-08', null, true)).toBe('refused: not-a-choice');
  });
});
