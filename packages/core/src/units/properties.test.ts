import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  canonicalUnit,
  customaryUnit,
  printMargin,
  printQuantity,
  readQuantity,
  toDegrees,
  toRadians,
  type Dimension,
  type UnitSystem,
} from './index.ts';

const dimensions = Object.keys(canonicalUnit) as Dimension[];
const anyDimension = fc.constantFrom(...dimensions);
const anySystem = fc.constantFrom<UnitSystem>('us', 'metric');
const anyValue = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const smallValue = fc.oneof(fc.double({ min: -3, max: 3, noNaN: true }), anyValue);
const typedCharacters = fc.constantFrom(...'0123456789.,/ -\'"′″⅞⁄⁷₈ftinmkglb°N·\u00a0'.split(''));
const typedText = fc.string({ unit: typedCharacters, maxLength: 30 });
const anyText = fc.oneof(typedText, fc.string({ maxLength: 300 }), fc.string({ unit: 'binary', maxLength: 80 }));

/** The value that a printed text reads back as; the range settles nothing, so a text with two meanings fails here. */
function readBack(text: string, dimension: Dimension): number {
  const result = readQuantity(text, { dimension });
  if (!result.ok) throw new Error(`${text}: ${result.hint}`);
  return result.value;
}

describe('printing and reading back', () => {
  it('returns every sixteenth of an inch exactly', () => {
    fc.assert(
      fc.property(fc.integer({ min: -200_000, max: 200_000 }), fc.constantFrom('nearest', 'down', 'up'), (n, round) => {
        const value = (n / 16) * 25.4 + 0;
        const text = printQuantity(value, 'length', { system: 'us', round: round as 'nearest' | 'down' | 'up' });
        expect(readBack(text, 'length')).toBe(value);
      }),
      { numRuns: 1000 },
    );
  });

  it('returns every printed value exactly and never prints a whole as a fraction', () => {
    fc.assert(
      fc.property(anyValue, anyDimension, anySystem, (value, dimension, system) => {
        const text = printQuantity(value, dimension, { system });
        const again = printQuantity(readBack(text, dimension), dimension, { system });
        expect(again).toBe(text);
        expect(text).not.toMatch(/(\d+)\/\1(?!\d)/);
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps what is printed on the side asked for, within one step of what was given', () => {
    fc.assert(
      fc.property(anyValue, anyDimension, anySystem, (value, dimension, system) => {
        const low = readBack(printQuantity(value, dimension, { system, round: 'down' }), dimension);
        const high = readBack(printQuantity(value, dimension, { system, round: 'up' }), dimension);
        expect(low <= value && value <= high).toBe(true);
        expect(high - low).toBeLessThan(5);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a printed margin', () => {
  function figuresOf(margin: string): readonly string[] {
    return margin.split(/ \(|\)/).filter((part) => part !== '');
  }

  it('never flatters in either unit', () => {
    fc.assert(
      fc.property(smallValue, anyDimension, anySystem, (value, dimension, system) => {
        for (const figure of figuresOf(printMargin(value, dimension, system))) {
          if (figure.startsWith('less than ')) expect(readBack(figure.slice(10), dimension)).toBeGreaterThan(value);
          else expect(readBack(figure, dimension)).toBeLessThanOrEqual(value);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('never changes its sign in either unit', () => {
    fc.assert(
      fc.property(smallValue, anyDimension, anySystem, (value, dimension, system) => {
        for (const figure of figuresOf(printMargin(value, dimension, system))) {
          const shown = Math.sign(readBack(figure.replace('less than ', ''), dimension));
          expect(shown).toBe(Math.sign(value) + 0);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('reading', () => {
  it('never throws, and gives a finite value or a full refusal', () => {
    fc.assert(
      fc.property(anyText, anyDimension, fc.option(anySystem, { nil: undefined }), (text, dimension, assume) => {
        const result = readQuantity(text, assume === undefined ? { dimension } : { dimension, assume });
        if (result.ok) {
          expect(Number.isFinite(result.value)).toBe(true);
          return;
        }
        expect(result.got.length).toBeLessThanOrEqual(60);
        expect(result.hint).not.toBe('');
        expect(result.code === 'ambiguous').toBe((result.readings?.length ?? 0) > 1);
      }),
      { numRuns: 5000 },
    );
  });

  it('gives the same number for a fraction and its decimal', () => {
    fc.assert(
      fc.property(fc.nat(500), fc.nat(15), (whole, sixteenths) => {
        const fraction = readBack(`${whole} ${sixteenths}/16 in`, 'length');
        expect(readBack(`${whole + sixteenths / 16} in`, 'length')).toBe(fraction);
        const feet = Math.floor(whole / 12);
        expect(readBack(`${feet}' ${whole % 12} ${sixteenths}/16"`, 'length')).toBe(fraction);
      }),
    );
  });

  it('gives the same number for millimetres, centimetres and metres', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), (tenths) => {
        const [mm, cm, m] = [1, 2, 4].map((decimals) => (tenths / 10 ** decimals).toFixed(decimals));
        const value = readBack(`${mm} mm`, 'length');
        expect(value).toBe(tenths / 10);
        expect([readBack(`${cm} cm`, 'length'), readBack(`${m} m`, 'length')]).toEqual([value, value]);
      }),
    );
  });
});

it('every unit that is printed can be read as a unit of its dimension', () => {
  for (const dimension of dimensions) {
    for (const unit of [canonicalUnit[dimension], customaryUnit[dimension]]) {
      expect(readQuantity(`1 ${unit}`, { dimension })).toMatchObject({ ok: true, unit });
    }
  }
});

it('degrees and radians undo each other', () => {
  expect(toRadians(180)).toBe(Math.PI);
  expect(toDegrees(Math.PI / 2)).toBe(90);
});
