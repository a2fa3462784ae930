import { describe, expect, it } from 'vitest';
import { printBoth, printQuantity, splitQuantity, type Dimension } from './index.ts';

const us = { system: 'us' } as const;
const metric = { system: 'metric' } as const;

describe('lengths', () => {
  it.each([
    [26.875 * 25.4, '26 7/8 in'],
    [0.875 * 25.4, '7/8 in'],
    [-0.875 * 25.4, '−7/8 in'],
    [-26.875 * 25.4, '−26 7/8 in'],
    [26.99 * 25.4, '27 in'],
    [0, '0 in'],
    [-0.1, '0 in'],
    [2000 * 25.4, '2000 in'],
  ])('prints %f mm as %s', (value, text) => {
    expect(printQuantity(value, 'length', us)).toBe(text);
  });

  it('prints thirty-seconds, reduced, when asked', () => {
    expect(printQuantity((3 / 32) * 25.4, 'length', { system: 'us', step: 32 })).toBe('3/32 in');
    expect(printQuantity((4 / 32) * 25.4, 'length', { system: 'us', step: 32 })).toBe('1/8 in');
  });

  it('prints millimetres to the step asked for', () => {
    expect(printQuantity(682.625, 'length', metric)).toBe('683 mm');
    expect(printQuantity(682.625, 'length', { system: 'metric', step: 0.1 })).toBe('682.6 mm');
    expect(printQuantity(682.6, 'length', { system: 'metric', step: 0.25 })).toBe('682.50 mm');
    expect(printQuantity(682.625, 'length', { system: 'metric', step: 5 })).toBe('685 mm');
    expect(printQuantity(-682.625, 'length', metric)).toBe('−683 mm');
  });

  it('rounds toward the end asked for', () => {
    expect(printQuantity(682.625, 'length', { system: 'metric', round: 'down' })).toBe('682 mm');
    expect(printQuantity(-682.625, 'length', { system: 'metric', round: 'down' })).toBe('−683 mm');
    expect(printQuantity(-682.625, 'length', { system: 'metric', round: 'up' })).toBe('−682 mm');
    expect(printQuantity(1, 'length', { system: 'us', round: 'up' })).toBe('1/16 in');
  });

  it('puts the other system in brackets, rounded the same way', () => {
    expect(printBoth(682.625, 'length', us)).toBe('26 7/8 in (683 mm)');
    expect(printBoth(682.625, 'length', metric)).toBe('683 mm (26 7/8 in)');
    expect(printBoth(682.625, 'length', { system: 'us', round: 'down' })).toBe('26 7/8 in (682 mm)');
  });
});

describe('other dimensions', () => {
  it.each<[number, Dimension, string, string]>([
    [567, 'mass', '1,250 lb (567 kg)', '567 kg (1,250 lb)'],
    [11_120, 'force', '2,500 lbf (11120 N)', '11120 N (2,500 lbf)'],
    [21, 'power', '28.2 hp (21.0 kW)', '21.0 kW (28.2 hp)'],
    [340, 'torque', '251 lb·ft (340 N·m)', '340 N·m (251 lb·ft)'],
    [5, 'speed', '3.1 mph (5.0 km/h)', '5.0 km/h (3.1 mph)'],
    [540, 'rotation', '540 rpm', '540 rpm'],
    [28, 'flow', '7.4 gpm (28.0 L/min)', '28.0 L/min (7.4 gpm)'],
    [172, 'pressure', '2,495 psi (172 bar)', '172 bar (2,495 psi)'],
    [12.5, 'angle', '12.5°', '12.5°'],
  ])('prints %f (%s) as %s', (value, dimension, inUs, inMetric) => {
    expect(printBoth(value, dimension, us)).toBe(inUs);
    expect(printBoth(value, dimension, metric)).toBe(inMetric);
  });

  it('sets commas between all thousands', () => {
    expect(printQuantity(1234567 * 0.45359237, 'mass', us)).toBe('1,234,567 lb');
  });
});

describe('parts', () => {
  it('splits a length for a page that sets real fractions', () => {
    expect(splitQuantity(682.625, 'length', us)).toEqual({ whole: '26', numerator: '7', denominator: '8', unit: 'in' });
    expect(splitQuantity(25.4, 'length', us)).toEqual({ whole: '1', unit: 'in' });
    expect(splitQuantity(-12.7, 'length', us)).toEqual({ whole: '−', numerator: '1', denominator: '2', unit: 'in' });
    expect(splitQuantity(683, 'length', metric)).toEqual({ whole: '683', unit: 'mm' });
  });
});

describe('broken calls', () => {
  it('crash loudly', () => {
    expect(() => printQuantity(NaN, 'length', us)).toThrow(RangeError);
    expect(() => printQuantity(Infinity, 'mass', metric)).toThrow(RangeError);
    expect(() => printQuantity(1, 'length', { system: 'us', step: 0.5 })).toThrow(RangeError);
    expect(() => printQuantity(1, 'length', { system: 'metric', step: 0 })).toThrow(RangeError);
    expect(() => printQuantity(1, 'length', { system: 'metric', step: NaN })).toThrow(RangeError);
  });
});
