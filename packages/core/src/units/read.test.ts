import { describe, expect, it } from 'vitest';
import { readQuantity, type Dimension, type ReadOptions } from './index.ts';

function valueOf(text: string | number, options: ReadOptions): number | string {
  const result = readQuantity(text, options);
  return result.ok ? result.value : `${result.code}: ${result.hint}`;
}

describe('lengths', () => {
  const wholeAndFraction = 26.875 * 25.4;

  it.each([
    ['26 7/8"'],
    ['26-7/8 in'],
    ['26.875'],
    ['26 7/8'],
    ['2\' 2 7/8"'],
    ['2 ft 2 7/8 in'],
    ["2' 2 7/8"],
    ['2\'-2 7/8"'],
    ['2ft2.875in'],
    ['26⅞ in'],
    ['26 ⅞'],
    ['26⅞″'],
    ['26⅞”'],
    ['2′ 2⅞″'],
    ['2’ 2⅞”'],
    ["26⅞''"],
    ['26 7⁄8 in'],
    ['26⁷⁄₈ in'],
    ['26\u00a07/8\u2009in'],
    ['26\u202f7/8 in.'],
    ['26 7/8 inch'],
    ['26 7/8 INCHES'],
    ['26–7/8 in'],
    ['+26.875 in'],
    ['26,8750 in'],
  ])('reads %s as twenty-six and seven eighths of an inch', (text) => {
    expect(valueOf(text, { dimension: 'length', assume: 'us' })).toBe(wholeAndFraction);
  });

  it.each([
    ['68,3 cm', 683],
    ['683 mm', 683],
    ['0.683 m', 683],
    ['0,683 m', 683],
    ['683', 683],
    ['1 250 mm', 1250],
    ['1\u202f250,5 mm', 1250.5],
    ["2'", 609.5999999999999],
    ['24 in', 609.5999999999999],
    ['2 1/2 ft', 762],
    ['5.75 ft', 69 * 25.4],
    ['5.0 ft', 60 * 25.4],
    ['⅞"', 22.224999999999998],
    ['9/8 in', 28.575],
    ['.5 in', 12.7],
    ['26. in', 26 * 25.4],
    ['-3 mm', -3],
    ['−3 mm', -3],
    ['-0 mm', 0],
    ['−2\' 3"', -27 * 25.4],
  ])('reads %s as %f mm', (text, millimetres) => {
    expect(valueOf(text, { dimension: 'length' })).toBe(millimetres);
  });

  it('reads a bare fraction in inches where US units are assumed', () => {
    expect(valueOf('⅞', { dimension: 'length', assume: 'us' })).toBe(0.875 * 25.4);
  });

  it('names the unit that was read', () => {
    expect(readQuantity('26 7/8"', { dimension: 'length' })).toEqual({ ok: true, value: 682.625, unit: 'in' });
    expect(readQuantity('2\' 2"', { dimension: 'length' })).toMatchObject({ unit: 'ft in' });
    expect(readQuantity("2'", { dimension: 'length' })).toMatchObject({ unit: 'ft' });
    expect(readQuantity('26', { dimension: 'length', assume: 'us' })).toMatchObject({ unit: 'in' });
    expect(readQuantity('26', { dimension: 'length' })).toMatchObject({ unit: 'mm' });
  });
});

describe('other dimensions', () => {
  it.each<[string, Dimension, number]>([
    ['1,250 lb', 'mass', 1250 * 0.45359237],
    ['1,250.5 lbs', 'mass', 1250.5 * 0.45359237],
    ['1.250,5 kg', 'mass', 1250.5],
    ['1,250,000 kg', 'mass', 1_250_000],
    ['1.250.000 kg', 'mass', 1_250_000],
    ['1.2 t', 'mass', 1200],
    ['16 oz', 'mass', 0.45359237],
    ['500 g', 'mass', 0.5],
    ['12 N', 'force', 12],
    ['11.1 kN', 'force', 11_100],
    ['1 lbf', 'force', 4.4482216152605],
    ['100 kgf', 'force', 980.665],
    ['28 hp', 'power', 28 * 0.7456998715822702],
    ['28 HP', 'power', 28 * 0.7456998715822702],
    ['21 kW', 'power', 21],
    ['28 PS', 'power', 28 * 0.73549875],
    ['28 cv', 'power', 28 * 0.73549875],
    ['28 ch', 'power', 28 * 0.73549875],
    ['28 metric hp', 'power', 28 * 0.73549875],
    ['340 N·m', 'torque', 340],
    ['340 Nm', 'torque', 340],
    ['340 N m', 'torque', 340],
    ['1 lb·ft', 'torque', 1.3558179483314004],
    ['1 lb-ft', 'torque', 1.3558179483314004],
    ['1 ft-lb', 'torque', 1.3558179483314004],
    ['12 lb·in', 'torque', 1.3558179483314004],
    ['3 mph', 'speed', 3 * 1.609344],
    ['5 km/h', 'speed', 5],
    ['2 m/s', 'speed', 7.2],
    ['540 rpm', 'rotation', 540],
    ['540 rev/min', 'rotation', 540],
    ['540 1/min', 'rotation', 540],
    ['540 min-1', 'rotation', 540],
    ['540', 'rotation', 540],
    ['10 gpm', 'flow', 37.85411784],
    ['28 L/min', 'flow', 28],
    ['28 l/min', 'flow', 28],
    ['100 psi', 'pressure', 6.894757293168361],
    ['172 bar', 'pressure', 172],
    ['350 kPa', 'pressure', 3.5],
    ['17.2 MPa', 'pressure', 172],
    ['12.5°', 'angle', 12.5],
    ['12.5 deg', 'angle', 12.5],
    ['0 rad', 'angle', 0],
    ['-5 °', 'angle', -5],
  ])('reads %s as a %s', (text, dimension, value) => {
    expect(valueOf(text, { dimension })).toBeCloseTo(value, 10);
  });

  it('assumes the US unit of the dimension', () => {
    expect(readQuantity('100', { dimension: 'torque', assume: 'us' })).toMatchObject({ unit: 'lb·ft' });
    expect(readQuantity('100', { dimension: 'pressure', assume: 'us' })).toMatchObject({ unit: 'psi' });
    expect(readQuantity('100', { dimension: 'force', assume: 'us' })).toMatchObject({ unit: 'lbf' });
  });

  it('reads a plain number in the canonical unit whatever is assumed', () => {
    expect(readQuantity(483, { dimension: 'length', assume: 'us' })).toEqual({ ok: true, value: 483, unit: 'mm' });
  });
});
