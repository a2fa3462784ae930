import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { safeCell, unsafeCell } from './safeCell.ts';

describe('cells that a spreadsheet could run', () => {
  test.each([
    '=1+1',
    '+1+1',
    '-1+1',
    '@SUM(A1)',
    "=cmd|'/C calc'!A0",
    ' =1+1',
    '\t=1+1',
    '\r=1+1',
    '\n=1',
    '"=1+1"',
    "'=1+1",
    '  \' "@x',
    '＝1+1',
    '－2+3',
    '-25 mm',
    '\u00a0=1',
  ])('%j gets an apostrophe in front and comes back as it was', (text) => {
    expect(safeCell(text)).toBe(`'${text}`);
    expect(unsafeCell(safeCell(text))).toBe(text);
  });

  test.each(['', '26 3/8 in', '-25', '-25.5', '0', "5/8'", 'a=b', 'O’Brien', '60" cutter'])('%j stays', (text) => {
    expect(safeCell(text)).toBe(text);
    expect(unsafeCell(text)).toBe(text);
  });

  test('every text comes back, and what is written never starts like a formula', () => {
    const sign = fc.constantFrom(...'=+-@\t\r\n\'" 0159.aä＝'.split(''));
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: sign, maxLength: 12 }), fc.string({ unit: 'binary', maxLength: 20 })),
        (text) => {
          const written = safeCell(text);
          expect(unsafeCell(written)).toBe(text);
          expect(/^[\s"]*[=+@]/.test(written)).toBe(false);
        },
      ),
      { numRuns: 3000 },
    );
  });
});
