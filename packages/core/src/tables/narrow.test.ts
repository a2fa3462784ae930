import { expect, test } from 'vitest';
import { categories, fullCategory, isNarrow, spanCategory } from './category.ts';
import { implementFigures } from './implementSide.ts';
import { narrowSpan } from './narrow.ts';
import { tractorFigures } from './tractorSide.ts';

test('four of the nine categories are narrow, and each keeps the pins of its full category', () => {
  expect(categories.filter(isNarrow)).toEqual(['1N', '2N', '3N', '4N']);
  expect(categories.map(fullCategory)).toEqual(['0', '1', '1', '2', '2', '3', '3', '4', '4']);
});

test('a narrow category spans like the next smaller one, 1N like none', () => {
  expect(categories.map(spanCategory)).toEqual(['0', null, '1', '1', '2', '2', '3', '3', '4']);
  expect(narrowSpan('1N')).toEqual([]);
});

test('2N has the span of category 1 and the pin of category 2', () => {
  expect(narrowSpan('2N')[0]?.value).toBeCloseTo(682.625, 9);
  expect(implementFigures('2N', 'lowerPinDiameter')[0]?.value).toBe(28);
});

test('a row passed on is derived, or stays from memory, never read', () => {
  const passedOn = [...narrowSpan('2N'), ...implementFigures('2N', 'clevisOuterWidth')];
  expect(new Set(passedOn.map((figure) => figure.status))).toEqual(new Set(['derived', 'memory']));
  expect(passedOn.every((figure) => figure.note?.includes('narrow rule'))).toBe(true);
});

test('ball span of a narrow hitch is its shoulder span plus its own ball width', () => {
  expect(tractorFigures('3N', 'ballSpan')).toMatchObject([{ status: 'derived' }]);
  expect(tractorFigures('3N', 'ballSpan')[0]?.value).toBeCloseTo(825 + 44.96, 9);
  expect(tractorFigures('4N', 'ballSpan')).toMatchObject([{ value: 965 + 57.5, status: 'memory', confidence: 'low' }]);
});
