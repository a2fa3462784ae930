import { describe, expect, test } from 'vitest';
import type { FieldRule } from '../../../records/index.ts';
import { catalogues } from '../catalogue/catalogue.ts';
import type { UnitSaid } from './bareUnit.ts';
import { quantityCell } from './quantityCell.ts';

const silent: UnitSaid = { unit: null, unitFrom: null, system: null, usual: null };
const headed = (unit: string): UnitSaid => ({ ...silent, unit, unitFrom: 'heading' });

function ruleOf(field: string): FieldRule {
  const spec = catalogues.implement.get(field) ?? catalogues.tractor.get(field);
  if (spec?.form !== 'quantity') throw new Error(`${field} is no quantity`);
  return spec.rule;
}

/** What a cell comes to in a few words: figures, tolerance, note, what was told about; or why it was refused. */
function told(text: string, field = 'shoulderSpan', said = silent, isDate = false): string {
  const reading = quantityCell(text, isDate, ruleOf(field), said);
  if (reading.kind === 'missing') return 'missing';
  if (reading.kind === 'refused') return `refused: ${reading.error.code}`;
  const { shape, amounts, note } = reading.said;
  const figures = amounts.map(({ figures: each, plusMinus }) => {
    const range = each.map(({ text: figure }) => figure).join(' to ');
    return plusMinus === null ? range : `${range} ± ${plusMinus}`;
  });
  const about = reading.told.map((one) => one.about).join(', ');
  return [
    shape === 'amount' ? '' : `${shape} `,
    figures.join('; '),
    note === null ? '' : ` (${note})`,
    about && ` | ${about}`,
  ].join('');
}

function hint(text: string, field = 'shoulderSpan', isDate = false): string {
  const reading = quantityCell(text, isDate, ruleOf(field), silent);
  return reading.kind === 'refused' ? reading.error.hint : '';
}

describe('a cell with one figure', () => {
  test.each([
    ['683 mm', '683 mm'],
    ['26 3/8"', '26 3/8"'],
    ['26 3/8 in', '26 3/8 in'],
    ['26⅜ in', '26⅜ in'],
    ['2\' 3"', '2\' 3"'],
    ['2 ft 3 in', '2 ft 3 in'],
    ['68,3 cm', '68,3 cm'],
    ['27 ins', '27 in'],
    ['683\u00a0mm', '683 mm'],
    ['683 mm (worn)', '683 mm (worn)'],
    ['683mm - worn', '683 mm (worn)'],
    ['683 mm, with bushing', '683 mm (with bushing)'],
    ['27 in. worn', '27 in. (worn)'],
    ['683 ± 2 mm', '683 mm ± 2 mm'],
    ['683 mm +/- 1/16 in', '683 mm ± 1/16 in'],
  ])('%s is kept as typed', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  test.each([
    ['683', '683 mm | unit'],
    ['26.2', '26.2 in | unit'],
    ['68.3', '68.3 cm | unit'],
    ['26 3/8', '26 3/8 in | unit'],
  ])('%s without a unit is in the only one that fits, and that is told', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  test('30 may be inches or centimetres: refused, and both are named', () => {
    expect(told('30')).toBe('refused: ambiguous');
    expect(hint('30')).toBe('Was 30 in, or 30 cm meant? Write the unit, or choose one for the column.');
  });

  test('a mass without a unit may be pounds or kilograms: refused', () => {
    expect(told('300', 'mass')).toBe('refused: ambiguous');
    expect(told('300', 'mass', headed('lb'))).toBe('300 lb');
    expect(told('1,250 lbs', 'mass')).toBe('1,250 lbs');
    expect(told('850#', 'mass')).toBe('850 lb');
  });

  test('what the heading says holds: a figure beyond the limits in it is refused, never taken in another unit', () => {
    expect(told('683', 'shoulderSpan', headed('in'))).toBe('refused: out-of-range');
    expect(told('5/8', 'washer', headed('mm'))).toBe('refused: ambiguous');
    expect(told('27', 'shoulderSpan', headed('in'))).toBe('27 in');
  });

  test('a unit that the figures of the column told gives way to the only one that fits', () => {
    expect(told('683', 'shoulderSpan', { ...silent, unit: 'in', unitFrom: 'figures' })).toBe('683 mm | unit');
    expect(told('27', 'shoulderSpan', { ...silent, unit: 'in', unitFrom: 'figures' })).toBe('27 in');
  });

  test('nothing bare is taken in a column that is asked about', () => {
    expect(told('12000', 'mass')).toBe('12000 lb | unit');
    expect(told('12000', 'mass', { ...silent, unitFrom: 'ask' })).toBe('refused: ambiguous');
  });

  test('negative figures keep their sign, brackets are no minus', () => {
    expect(told('−25', 'mastSetback', headed('mm'))).toBe('-25 mm');
    expect(told('(25)', 'mastSetback', headed('mm'))).toBe('refused: ambiguous');
  });
});

describe('a cell that is not sure', () => {
  test.each([
    ['27ish', '27 in ± 1 in | unit, approximate'],
    ['~27', '27 in ± 1 in | unit, approximate'],
    ['about 27 in', '27 in ± 1 in | approximate'],
    ['27-ish"', '27" ± 1 in | approximate'],
    ['27?', '27 in ± 1 in | unit, approximate'],
    ['26 3/4 in and a bit', '26 3/4 in ± 0.25 in | approximate'],
    ['26.5 in or so', '26.5 in ± 0.5 in | approximate'],
    ['approx. 680 mm', '680 mm ± 10 mm | approximate'],
    ['68.3 cm (approx)', '68.3 cm ± 0.1 cm | approximate'],
    ['about 700 mm', '700 mm ± 10 mm | approximate'],
    ['about 30 in', '30 in ± 1 in | approximate'],
    ['about 683 mm ± 5 mm', '683 mm ± 5 mm | approximate'],
  ])('%s gets what its last digit is worth to either side', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  test.each([
    ['26-27', '26 in to 27 in | unit'],
    ['26 to 27 in', '26 in to 27 in'],
    ['26 – 27 in', '26 in to 27 in'],
    ['26 1/2-27 in', '26 1/2 in to 27 in'],
    ['between 660 mm and 690 mm', '660 mm to 690 mm'],
    ['26 in - 27', '26 in to 27 in'],
    ['adjustable 640 mm to 760 mm', 'adjustable 640 mm; 760 mm'],
    ['holes 440 mm; 460 mm ± 1 mm', 'holes 440 mm; 460 mm ± 1 mm'],
  ])('%s is a range', (text, expected) => {
    expect(told(text)).toBe(expected);
  });

  test.each([
    '27-26 in',
    '27+',
    '> 27',
    'up to 760',
    'max 27',
    '7/8 & 1 1/8',
    '22/28',
    '26 in and 27 in',
    '683 mm 26',
    '2 x 18 in',
  ])('%s is refused: one end, or two figures', (text) => {
    expect(told(text)).toMatch(/^refused: (?:ambiguous|wrong-order)$/);
  });

  test('a fraction that no tape has may be two pins: refused though it would fit', () => {
    expect(told('22/28', 'lowerPinDiameter')).toBe('refused: ambiguous');
    expect(told('7/8', 'lowerPinDiameter')).toBe('7/8 in | unit');
  });

  test('5-10 may be five feet ten where both could be', () => {
    expect(told('5-10', 'workWidth')).toBe('refused: ambiguous');
  });

  test('the same in two units has to agree', () => {
    expect(told('683 mm (26 7/8 in)')).toBe('683 mm | twice');
    expect(told('683 mm / 26 7/8 in')).toBe('683 mm | twice');
    expect(told('683 mm (25 in)')).toBe('refused: contradiction');
  });
});

describe('a cell without a figure', () => {
  test.each(['', ' ', '-', '–', '?', '??', 'n/a', 'N/A', 'n.a.', '#N/A', 'tbd', 'TBC', 'unknown', '...'])(
    '%j is no error',
    (text) => {
      expect(told(text)).toBe('missing');
    },
  );

  test.each([
    ['8-Mar', 'was 3/8 meant?'],
    ['Mar-08', 'was 3/8 meant?'],
    ['08/03/2026', 'was 3/8 meant?'],
    ['2026-03-08', 'was 3/8 meant?'],
    ['46089', 'this is 8 March 2026; was 3/8 meant?'],
    ['Mar-32', 'was 3/32 meant?'],
    ['1. May 2026', 'this is 1 May 2026'],
  ])('%s is a date that was a fraction: refused', (text, expected) => {
    expect(told(text)).toMatch(/^refused/);
    expect(hint(text)).toContain(expected);
  });

  test('a cell that the sheet keeps as a date is refused whatever it shows', () => {
    expect(told('2026-05-08', 'shoulderSpan', silent, true)).toBe('refused: not-a-quantity');
  });

  test.each([
    ['#REF!', 'not-a-quantity'],
    ['#DIV/0!', 'not-a-quantity'],
    ['none', 'ambiguous'],
    ['wide', 'not-a-quantity'],
    ['684 kg', 'wrong-unit'],
    ['683 worn', 'wrong-unit'],
    ['683 mmm', 'wrong-unit'],
    ['26.3/8 in', 'ambiguous'],
    ["5' 4", 'ambiguous'],
    ['=A1*2', 'not-a-quantity'],
  ])('%s is refused', (text, code) => {
    expect(told(text)).toBe(`refused: ${code}`);
  });

  test('a text of thousands of digits is refused at once', () => {
    expect(told('9'.repeat(5000))).toBe('refused: not-a-quantity');
  });
});

describe('a comma or point before three digits', () => {
  test('is decided by the limits of the field only where one reading is left, and told', () => {
    expect(told('1.250 kg', 'mass')).toBe('1250 kg | separator');
    expect(told('1.250 kg', 'carriedMass')).toBe('refused: ambiguous');
    expect(told('1.250 mm')).toBe('1250 mm | separator');
    expect(told('1,250 mm')).toBe('1250 mm | separator');
    expect(told('1.100', 'centreBehind', headed('mm'))).toBe('refused: ambiguous');
  });
});
