import { describe, expect, test } from 'vitest';
import { forums, memory, own, plough, seedDrill } from './citations.ts';
import { bestFigure, chooseFigures, highestOf, lowestOf } from './figure.ts';

describe('choosing among rows', () => {
  const rounded = plough(960, '960', 'mm', { rounded: true });
  const read = seedDrill(965, '965', 'mm');
  const remembered = memory('high')(966, '966', 'mm');
  const vague = memory('low')(967, '967', 'mm');

  test('a read row leads whatever the order', () => {
    expect(bestFigure([vague, remembered, rounded, read])).toBe(read);
  });

  test('an exact row from memory leads a rounded print', () => {
    expect(bestFigure([rounded, vague, remembered])).toBe(remembered);
  });

  test('our own figure leads memory', () => {
    expect(bestFigure([remembered, own(1, '1', 'mm')])?.status).toBe('own');
  });

  test('a choice of edition keeps only its rows', () => {
    expect(chooseFigures([rounded, read, vague], { edition: 'ISO 730-1' })).toEqual([read]);
  });

  test('nothing to choose from gives null', () => {
    expect(bestFigure([])).toBeNull();
    expect(bestFigure([read], { source: 'owner-blog' })).toBeNull();
  });
});

test('a printed range with a tolerance reaches past both its ends', () => {
  const row = forums(10, '10–20', 'mm', { high: 20, plus: 2, minus: 1 });
  expect([lowestOf(row), highestOf(row)]).toEqual([9, 22]);
});
