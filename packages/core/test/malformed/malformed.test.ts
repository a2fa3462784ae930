import { describe, expect, test } from 'vitest';
import { errorLine, readSetup, readSetupText, type InputErrorCode } from '../../src/records/index.ts';

type Case = readonly [title: string, part: Record<string, unknown>, code: InputErrorCode, path: string];

const fine = { hitchwright: 1, tractor: {}, implement: {} };
const implement = (fields: Record<string, unknown>) => ({ implement: fields });
const tractor = (fields: Record<string, unknown>) => ({ tractor: fields });

const cases: readonly Case[] = [
  ['a boolean where a length belongs', implement({ mastHeight: true }), 'wrong-type', 'implement.mastHeight'],
  ['a list where a length belongs', implement({ mastHeight: [457] }), 'wrong-type', 'implement.mastHeight'],
  ['an empty object where a length belongs', implement({ mastHeight: {} }), 'wrong-type', 'implement.mastHeight'],
  [
    'two forms in one value',
    implement({ mastHeight: { value: 457, between: [450, 460] } }),
    'wrong-type',
    'implement.mastHeight',
  ],
  ['a mass where a length belongs', implement({ mastHeight: '457 kg' }), 'wrong-unit', 'implement.mastHeight'],
  ['a word where a length belongs', implement({ mastHeight: 'tall' }), 'not-a-quantity', 'implement.mastHeight'],
  ['an empty text', implement({ mastHeight: '' }), 'empty', 'implement.mastHeight'],
  ['an infinite number', implement({ mastHeight: Infinity }), 'not-finite', 'implement.mastHeight'],
  ['no number at all', implement({ mastHeight: NaN }), 'not-finite', 'implement.mastHeight'],
  ['a negative height', implement({ mastHeight: -457 }), 'out-of-range', 'implement.mastHeight'],
  ['an absurd height', implement({ mastHeight: 45_700_000 }), 'out-of-range', 'implement.mastHeight'],
  ['inches typed as millimetres', implement({ mastHeight: 19 }), 'out-of-range', 'implement.mastHeight'],
  ['feet and inches without a mark', tractor({ lowerLinkLength: "2' 4" }), 'ambiguous', 'tractor.lowerLinkLength'],
  ['a decimal of feet', tractor({ lowerLinkLength: '2.4 ft' }), 'ambiguous', 'tractor.lowerLinkLength'],
  ['a fraction over zero', implement({ mastHeight: '18 3/0 in' }), 'not-a-quantity', 'implement.mastHeight'],
  [
    'a negative tolerance',
    implement({ mastHeight: { value: 457, plusMinus: -1 } }),
    'out-of-range',
    'implement.mastHeight.plusMinus',
  ],
  [
    'a tolerance that is no figure',
    implement({ mastHeight: { value: 457, plusMinus: [] } }),
    'wrong-type',
    'implement.mastHeight.plusMinus',
  ],
  [
    'the ends of a range in the wrong order',
    implement({ mastHeight: { between: [470, 440] } }),
    'wrong-order',
    'implement.mastHeight.between',
  ],
  [
    'a range of three ends',
    implement({ mastHeight: { between: [440, 450, 460] } }),
    'wrong-type',
    'implement.mastHeight.between',
  ],
  [
    'limits of an adjuster in the wrong order',
    tractor({ topLinkLength: { adjustable: { between: [700, 500] } } }),
    'wrong-order',
    'tractor.topLinkLength.adjustable.between',
  ],
  [
    'no holes',
    implement({ mastHeight: { adjustable: { at: [] } } }),
    'wrong-type',
    'implement.mastHeight.adjustable.at',
  ],
  [
    'an unknown way of setting',
    tractor({ topLinkLength: { adjustable: { between: [500, 700], setting: 'often' } } }),
    'not-a-choice',
    'tractor.topLinkLength.adjustable.setting',
  ],
  [
    'an adjuster where nothing can be set',
    implement({ lowerPinDiameter: { adjustable: { between: [20, 24] } } }),
    'contradiction',
    'implement.lowerPinDiameter',
  ],
  ['one figure for what is set to suit', tractor({ topLinkLength: 600 }), 'contradiction', 'tractor.topLinkLength'],
  [
    'a reference point that the field has not',
    implement({ mastHeight: { value: 457, from: 'shoulder' } }),
    'not-a-choice',
    'implement.mastHeight.from',
  ],
  [
    'a source that is no text',
    implement({ mastHeight: { value: 457, source: 7 } }),
    'wrong-type',
    'implement.mastHeight.source',
  ],
  [
    'an unknown key in a value',
    implement({ mastHeight: { value: 457, plusminus: 1 } }),
    'unknown-key',
    'implement.mastHeight.plusminus',
  ],
  ['a misspelt field', implement({ mastHieght: 457 }), 'unknown-key', 'implement.mastHieght'],
  ['an unknown machine', { trailer: {} }, 'unknown-key', 'trailer'],
  ['a category that there is not', implement({ category: '5' }), 'not-a-choice', 'implement.category'],
  ['a way of mounting that there is not', implement({ mounting: 'welded' }), 'not-a-choice', 'implement.mounting'],
  ['a coupler without a kind', { coupler: {} }, 'missing', 'coupler.kind'],
  ['no tractor', { tractor: undefined }, 'missing', 'tractor'],
  ['a list for a machine', { implement: [] }, 'wrong-type', 'implement'],
  ['another version', { hitchwright: 2 }, 'version', 'hitchwright'],
  [
    'a hole beyond the tip of its pin',
    implement({ standOut: 40, shoulderToHole: 60 }),
    'contradiction',
    'implement.shoulderToHole',
  ],
  [
    'clevis widths in each other’s place',
    implement({ clevisGap: 70, clevisOuterWidth: 45 }),
    'contradiction',
    'implement.clevisGap',
  ],
  [
    'span and mast height in each other’s place',
    implement({ category: '1', shoulderSpan: 457, mastHeight: 683 }),
    'swapped',
    'implement.shoulderSpan',
  ],
  [
    'setbacks that belong to no hole',
    implement({ mastHeight: 457, mastSetback: { adjustable: { at: [0, 10] } } }),
    'contradiction',
    'implement.mastSetback',
  ],
  ['a name of 10,000 characters', implement({ name: 'x'.repeat(10_000) }), 'out-of-range', 'implement.name'],
  ['a name that is a number', implement({ name: 7 }), 'wrong-type', 'implement.name'],
  [
    'an outline of two corners',
    implement({
      outlines: [
        {
          name: 'a',
          part: 'plate',
          rear: [
            [0, 0],
            [1, 1],
          ],
        },
      ],
    }),
    'out-of-range',
    'implement.outlines.0.rear',
  ],
  ['a part of an unknown kind', { parts: [{ kind: 'glue', name: 'x' }] }, 'not-a-choice', 'parts.0.kind'],
  [
    'a part without its size',
    { parts: [{ kind: 'upperBushing', name: 'x', inside: 19 }] },
    'wrong-type',
    'parts.0.outside',
  ],
];

describe('malformed setups', () => {
  for (const [title, part, code, path] of cases) {
    test(`${title}: ${code} at ${path}`, () => {
      const reading = readSetup({ ...fine, ...part });
      expect(reading.ok).toBe(false);
      if (reading.ok) return;
      const errors = reading.errors.map((error) => `${error.code} ${error.path}`);
      expect(errors).toContain(`${code} ${path}`);
      for (const error of reading.errors) {
        expect(error.expected).not.toBe('');
        expect(error.hint).not.toBe('');
        expect(error.got.length).toBeLessThanOrEqual(80);
      }
    });
  }

  test('19 where millimetres are expected asks whether it was typed in inches, in one line', () => {
    const reading = readSetup({ ...fine, implement: { mastHeight: 19 } });
    expect(reading.ok ? '' : errorLine(reading.errors[0] as never)).toBe(
      'implement.mastHeight: expected 200–1200 mm, got 19. Was it typed in inches?',
    );
  });
  test('every error is listed, not just the first', () => {
    const reading = readSetup({
      ...fine,
      implement: { mastHeight: 19, clevisGap: 'wide', colour: 'red' },
      tractor: { lowerBallBore: -3 },
    });
    expect(reading.ok ? 0 : reading.errors.length).toBe(4);
  });
  test('a misspelt field is answered with the right name', () => {
    const reading = readSetup({ ...fine, implement: { mastHeigh: 457 } });
    expect(reading.ok ? '' : reading.errors[0]?.hint).toBe('Did you mean mastHeight?');
  });
  test('keys that reach for the prototype are unknown keys', () => {
    for (const key of ['__proto__', 'constructor', 'prototype']) {
      const reading = readSetupText(`{"hitchwright":1,"tractor":{},"implement":{"${key}":{"polluted":true}}}`);
      expect(reading.ok ? '' : reading.errors[0]?.code, key).toBe('unknown-key');
    }
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
  test('text that is no JSON, is too long, or nests without end is refused without a crash', () => {
    for (const text of [
      '',
      '{',
      'null',
      '[]',
      '7',
      '\u0000\u0001',
      `{"hitchwright":1,"a":"${'x'.repeat(1_000_001)}"}`,
    ]) {
      expect(readSetupText(text).ok, text.slice(0, 20)).toBe(false);
    }
    const deep = `{"hitchwright":1,"tractor":{},"implement":{"mastHeight":${'['.repeat(100_000)}${']'.repeat(100_000)}}}`;
    const reading = readSetupText(deep);
    expect(reading.ok ? '' : reading.errors[0]?.code).toMatch(/wrong-type|not-json/);
  });
});
