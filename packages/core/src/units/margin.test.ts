import { describe, expect, it } from 'vitest';
import { printMargin, printMarginSize } from './index.ts';

describe('a margin', () => {
  it.each([
    [6.5, '1/4 in (6 mm)'],
    [0.25 * 25.4, '1/4 in (6 mm)'],
    [6.34, '3/16 in (6 mm)'],
    [1.2, 'less than 1/16 in (1 mm)'],
    [0.4, 'less than 1/16 in'],
    [Number.MIN_VALUE, 'less than 1/16 in'],
    [0, '0 in'],
    [-0, '0 in'],
    [-Number.MIN_VALUE, '−1/16 in (−1 mm)'],
    [-0.4, '−1/16 in (−1 mm)'],
    [-6.5, '−5/16 in (−7 mm)'],
    [-0.25 * 25.4, '−1/4 in (−7 mm)'],
  ])('of %f mm is printed as %s', (value, text) => {
    expect(printMargin(value, 'length', 'us')).toBe(text);
  });

  it('is printed with millimetres first for a metric reader', () => {
    expect(printMargin(6.5, 'length', 'metric')).toBe('6 mm (1/4 in)');
    expect(printMargin(1.2, 'length', 'metric')).toBe('1 mm (less than 1/16 in)');
    expect(printMargin(0.4, 'length', 'metric')).toBe('less than 1 mm');
    expect(printMargin(0, 'length', 'metric')).toBe('0 mm');
  });

  it('of another dimension is rounded to its own step', () => {
    expect(printMargin(100, 'mass', 'us')).toBe('220 lb (100 kg)');
    expect(printMargin(0.3, 'mass', 'us')).toBe('less than 1 lb');
    expect(printMargin(-0.01, 'power', 'metric')).toBe('−0.1 kW (−0.1 hp)');
    expect(printMargin(2.19, 'angle', 'us')).toBe('2.1°');
  });

  it('can be had without its sign for a sentence that says short', () => {
    expect(printMarginSize(-6.5, 'length', 'us')).toBe('5/16 in (7 mm)');
    expect(printMarginSize(6.5, 'length', 'us')).toBe('1/4 in (6 mm)');
    expect(printMarginSize(0.4, 'length', 'us')).toBe('less than 1/16 in');
  });
});
