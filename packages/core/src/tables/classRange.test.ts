import { describe, expect, test } from 'vitest';
import { categories, type Category } from './category.ts';
import { classFields, classRange, type ClassField } from './classRange.ts';
import { highestOf, lowestOf } from './figure.ts';

const limitsOnly: readonly ClassField[] = ['tractor.ballSpanNarrowest'];

describe('a class range', () => {
  test('holds every row it was widened from', () => {
    for (const category of categories) {
      for (const field of classFields) {
        const range = classRange(category, field);
        if (range === null) continue;
        expect(range.low).toBeGreaterThan(field === 'implement.mastSetback' ? -50 : 0);
        for (const row of range.basis) {
          expect(range.low).toBeLessThanOrEqual(lowestOf(row));
          if (!limitsOnly.includes(field)) expect(range.high).toBeGreaterThanOrEqual(highestOf(row));
        }
      }
    }
  });

  test('says that its widening is ours and without a source', () => {
    expect(classRange('1', 'implement.shoulderSpan')?.note).toMatch(/own widening.*common practice, no source/);
  });

  test('is missing where nothing is known', () => {
    expect(classRange('0', 'implement.clevisGap')).toBeNull();
    expect(classRange('0', 'tractor.lowerBallWidth')).toBeNull();
    expect(classRange('0', 'tractor.lowerLinkPivotSpan')).toBeNull();
    expect(classRange('1N', 'tractor.lowerLinkPivotSpan')).toBeNull();
  });

  test('exists for every field of categories 1 to 4', () => {
    for (const category of ['1', '2', '3', '4'] as const) {
      for (const field of classFields) expect(classRange(category, field), `${category} ${field}`).not.toBeNull();
    }
  });

  test('leaves out spans cut to whole inches', () => {
    expect(classRange('1', 'implement.shoulderSpan')).toMatchObject({ low: 651.5, high: 739.5 });
  });
});

const sample: readonly (readonly [Category, ClassField, readonly number[]])[] = [
  ['1', 'implement.shoulderSpan', [674, 666, 661, 706, 676, 676, 681]],
  ['1', 'implement.standOut', [60, 64, 58, 62, 62, 58, 55]],
  ['1', 'implement.mastHeight', [457, 521, 445]],
  ['1', 'implement.lowerPinDiameter', [22.2]],
  ['1', 'implement.upperPinDiameter', [19]],
  ['2', 'implement.shoulderSpan', [816]],
  ['2', 'implement.standOut', [95]],
  ['2', 'implement.mastHeight', [508, 460, 483, 560, 610]],
  ['2', 'implement.lowerPinDiameter', [28.6]],
  ['1', 'tractor.lowerBallBore', [22.4]],
  ['2', 'tractor.lowerBallBore', [28.7]],
  ['1', 'tractor.ballSpanWidest', [760]],
  ['2', 'tractor.ballSpanWidest', [900]],
  ['2', 'tractor.ballSpanNarrowest', [700]],
];

test.each(sample)('category %s %s holds the sample yard', (category, field, values) => {
  const range = classRange(category, field);
  for (const value of values) {
    expect(value).toBeGreaterThanOrEqual(range?.low ?? Infinity);
    expect(value).toBeLessThanOrEqual(range?.high ?? -Infinity);
  }
});
