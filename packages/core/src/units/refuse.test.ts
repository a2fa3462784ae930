import { describe, expect, it } from 'vitest';
import { readQuantity, type Dimension, type ReadOptions } from './index.ts';

const length: ReadOptions = { dimension: 'length', assume: 'us' };

describe('two meanings', () => {
  it.each([
    ["5' 4", ['5 ft 4 in', '5.4 ft']],
    ['5 ft 10', ['5 ft 10 in', '5.10 ft']],
    ["5.4'", ['5 ft 4 in', '5.4 ft = 5 ft 4 13/16 in']],
    ['5.4 ft', ['5 ft 4 in', '5.4 ft = 5 ft 4 13/16 in']],
    ['5,4 ft', ['5 ft 4 in', '5.4 ft = 5 ft 4 13/16 in']],
    ['5.5 ft', ['5 ft 5 in', '5.5 ft = 5 ft 6 in']],
    ['1,250', ['1250', '1.25']],
    ['1,250 mm', ['1250 mm', '1.25 mm']],
    ['−1,125 in', ['−1125 in', '−1.125 in']],
    ['267/8 in', ['267/8 in', '26 7/8 in']],
    ['17/8 in', ['17/8 in', '1 7/8 in']],
  ])('refuses %s and shows both readings in the list and the hint', (text, readings) => {
    const result = readQuantity(text, length);
    expect(result).toMatchObject({ ok: false, code: 'ambiguous', readings });
    for (const reading of readings) expect(result).toHaveProperty('hint', expect.stringContaining(reading));
  });

  it('takes a point before three digits for a decimal point unless the figure is metric', () => {
    expect(readQuantity('26.875 in', { dimension: 'length', assume: 'metric' })).toMatchObject({ value: 682.625 });
    expect(readQuantity('1.250 mm', length)).toMatchObject({ value: 1.25 });
    const metric = { dimension: 'length', assume: 'metric' } as const;
    expect(readQuantity('1.250', metric)).toMatchObject({ code: 'ambiguous', readings: ['1250', '1.25'] });
    expect(readQuantity('1.250 mm', { dimension: 'length' })).toMatchObject({ readings: ['1250 mm', '1.25 mm'] });
    expect(readQuantity('1.250', { dimension: 'length' })).toMatchObject({ value: 1.25 });
  });

  it('takes the one reading of 1,250 that the range leaves', () => {
    const kilograms = { dimension: 'mass', range: { min: 100, max: 3000 } } as const;
    expect(readQuantity('1,250', kilograms)).toEqual({ ok: true, value: 1250, unit: 'kg' });
    expect(readQuantity('1.250 kg', kilograms)).toEqual({ ok: true, value: 1250, unit: 'kg' });
    expect(readQuantity('1,250 kg', { dimension: 'mass', range: { min: 0, max: 20 } })).toMatchObject({ value: 1.25 });
  });

  it('refuses 1,250 where the range leaves both readings, and calls it out of range where it leaves none', () => {
    expect(readQuantity('1,250', { dimension: 'mass', range: { min: 0, max: 3000 } })).toMatchObject({
      code: 'ambiguous',
    });
    expect(readQuantity('1,250', { dimension: 'mass', range: { min: 5, max: 30 } })).toMatchObject({
      code: 'out-of-range',
    });
  });

  it('never lets the range choose between feet and inches', () => {
    expect(readQuantity("5' 4", { dimension: 'length', range: { min: 1600, max: 1630 } })).toMatchObject({
      code: 'ambiguous',
    });
  });

  it('refuses a bare fraction where millimetres would be assumed', () => {
    expect(readQuantity('26 7/8', { dimension: 'length' })).toMatchObject({
      code: 'ambiguous',
      readings: ['26 7/8 in', '26.875 mm'],
    });
  });
});

describe('no quantity', () => {
  it.each([
    '26.3/8',
    '26 3/0',
    '1/2/3',
    '26 9/8',
    'abc',
    'kg',
    '--5',
    '5-4',
    '1,25,0',
    '1.2,5',
    '5 11',
    '2.5\' 3"',
    '2\' 14"',
    '5,',
    "'",
    '/',
    '1,,2',
    '5 mm 3 mm',
  ])('refuses %s', (text) => {
    expect(readQuantity(text, length)).toMatchObject({ ok: false, code: 'not-a-quantity' });
  });

  it('refuses texts of more than two hundred characters whatever they hold', () => {
    for (const text of ['9'.repeat(201), `${' 1'.repeat(500_000)}/`, `1 in${' '.repeat(200)}`]) {
      expect(readQuantity(text, length)).toMatchObject({ ok: false, code: 'not-a-quantity' });
    }
  });

  it('tells how a fraction is written', () => {
    expect(readQuantity('26 3/0', length)).toHaveProperty(
      'hint',
      expect.stringContaining('Write a fraction as 26 7/8'),
    );
  });

  it.each(['', '   ', '\u00a0\t', '\u200b'])('calls %j empty', (text) => {
    expect(readQuantity(text, length)).toMatchObject({ ok: false, code: 'empty' });
  });

  it.each([NaN, Infinity, -Infinity, 'NaN', '-Infinity', '∞', '9'.repeat(200)])(
    'lets no endless number through: %s',
    (given) => {
      const result = readQuantity(given, length);
      expect(result.ok ? Number.isFinite(result.value) : result.code === 'not-finite').toBe(true);
    },
  );
});

describe('wrong unit', () => {
  it.each<[string, Dimension, string]>([
    ['26 kg', 'length', 'kg is a unit of mass'],
    ['2500 lb', 'force', 'lb is a unit of mass; force is read in N, kN, kgf or lbf.'],
    ['26 furlongs', 'length', "furlongs isn't a unit known here"],
    ['5 ft-lb', 'length', 'lb·ft is a unit of torque'],
    ['200 mPa', 'pressure', "mPa isn't a unit known here"],
    ["5'", 'mass', 'ft is a unit of length'],
    ['3 tons', 'mass', "tons isn't a unit known here"],
  ])('refuses %s as a %s', (text, dimension, hint) => {
    const result = readQuantity(text, { dimension });
    expect(result).toMatchObject({ ok: false, code: 'wrong-unit', hint: expect.stringContaining(hint) });
  });
});

describe('out of range', () => {
  const mast = { min: 200, max: 1200 };

  it('asks about inches in exactly these words', () => {
    expect(readQuantity(19, { dimension: 'length', range: mast })).toEqual({
      ok: false,
      code: 'out-of-range',
      expected: '200–1200 mm',
      got: '19',
      hint: 'Was it typed in inches?',
    });
  });

  it.each<[string | number, ReadOptions, string]>([
    ['19 mm', { dimension: 'length', range: mast }, 'inches'],
    ['483', { dimension: 'length', range: mast, assume: 'us' }, 'millimetres'],
    ['0.5', { dimension: 'length', range: mast }, 'metres'],
    [950, { dimension: 'mass', range: { min: 100, max: 600 } }, 'pounds'],
    [28, { dimension: 'power', range: { min: 5, max: 25 } }, 'horsepower'],
    ['-19', { dimension: 'length', range: { min: -600, max: -200 } }, 'inches'],
  ])('asks about the likely unit of %s', (text, options, unit) => {
    expect(readQuantity(text, options)).toMatchObject({ code: 'out-of-range', hint: `Was it typed in ${unit}?` });
  });

  it('asks about no unit where none would fit', () => {
    expect(readQuantity(-19, { dimension: 'length', range: mast })).toHaveProperty(
      'hint',
      'Check the figure and its unit.',
    );
  });

  it('takes both ends of the range', () => {
    expect(readQuantity('200 mm', { dimension: 'length', range: mast }).ok).toBe(true);
    expect(readQuantity('1200 mm', { dimension: 'length', range: mast }).ok).toBe(true);
  });

  it.each([
    [{ min: -10, max: 10 }, '−10 to 10 deg'],
    [{ min: 100, max: Infinity }, '100 deg or more'],
    [{ min: -Infinity, max: -100 }, '−100 deg or less'],
  ])('writes the range %o in words where a dash would mislead', (range, expected) => {
    expect(readQuantity(50, { dimension: 'angle', range })).toMatchObject({ expected });
  });
});

describe('what was got', () => {
  it('is cut to sixty characters and loses its control characters', () => {
    const result = readQuantity(`\u202e\u0000${'x'.repeat(100)}`, length);
    expect(result).toHaveProperty('got', `${'x'.repeat(59)}…`);
  });

  it('is cut for a very long text of blanks too', () => {
    expect(readQuantity(' '.repeat(300), length)).toHaveProperty('got', '…');
  });

  it('names the range in the units that were typed in, rounded inward, and asks nobody who types inches about metres', () => {
    const link: ReadOptions = { dimension: 'length', assume: 'us', range: { min: 300, max: 1500 } };
    expect(readQuantity('1/2', link)).toMatchObject({
      expected: '11 13/16 in to 59 in (300–1500 mm)',
      hint: 'Check the figure and its unit.',
    });
    expect(readQuantity('1/2', { ...link, assume: 'metric' })).toMatchObject({ expected: '300–1500 mm' });
    expect(readQuantity(12, link)).toMatchObject({ expected: '300–1500 mm' });
    const mass: ReadOptions = { dimension: 'mass', assume: 'us', range: { min: 150, max: 20_000 } };
    expect(readQuantity('12', mass)).toMatchObject({ expected: '331 lb to 44,092 lb (150–20000 kg)' });
  });
});
