import { describe, expect, test } from 'vitest';
import { readSetup, readSetupText, type InputErrorCode } from '../../src/records/index.ts';

type Case = readonly [title: string, document: unknown, code: InputErrorCode, path: string];

const fine = { hitchwright: 1, tractor: {}, implement: {} };
const withImplement = (fields: object) => ({ ...fine, implement: fields });
const withTractor = (fields: object) => ({ ...fine, tractor: fields });
const withFront = (fields: object) => ({ ...fine, coupler: { kind: 'uFrame', front: fields } });
const bushings = (fields: object) => ({
  ...fine,
  parts: [{ kind: 'lowerBushings', name: 'pair', inside: 22.3, outside: 28.5, length: 35, ...fields }],
});

const cases: readonly Case[] = [
  ['no document', null, 'wrong-type', ''],
  ['a text for a document', 'setup', 'wrong-type', ''],
  ['no version', { tractor: {}, implement: {} }, 'missing', 'hitchwright'],
  ['the version as a text', { ...fine, hitchwright: '1' }, 'version', 'hitchwright'],
  ['a unit system that there is not', { ...fine, units: 'imperial' }, 'not-a-choice', 'units'],
  ['no implement', { hitchwright: 1, tractor: {} }, 'missing', 'implement'],
  ['a tractor that is nothing', { ...fine, tractor: null }, 'wrong-type', 'tractor'],
  ['a coupler of an unknown kind', { ...fine, coupler: { kind: 'magnet' } }, 'not-a-choice', 'coupler.kind'],
  ['a list for the front of a coupler', withFront([]), 'wrong-type', 'coupler.front'],
  ['a coupler’s field on its front', withFront({ topHookHeight: 457 }), 'unknown-key', 'coupler.front.topHookHeight'],
  ['an implement’s field on the tractor', withTractor({ mastHeight: 457 }), 'unknown-key', 'tractor.mastHeight'],
  [
    'an absurd bore on the front',
    withFront({ lowerPinDiameter: 222 }),
    'out-of-range',
    'coupler.front.lowerPinDiameter',
  ],
  ['a speed for a power', withTractor({ ptoPower: '540 rpm' }), 'wrong-unit', 'tractor.ptoPower'],
  ['an angle for a length', withImplement({ mastHeight: '18 deg' }), 'wrong-unit', 'implement.mastHeight'],
  ['a length for an angle', withImplement({ receiverAngle: '60 mm' }), 'wrong-unit', 'implement.receiverAngle'],
  [
    'an end of a range that is no figure',
    withImplement({ mastHeight: { between: [450, 'high'] } }),
    'not-a-quantity',
    'implement.mastHeight.between.1',
  ],
  [
    'an end of an adjuster in the wrong unit',
    withTractor({ topLinkLength: { adjustable: { between: [500, '700 kg'] } } }),
    'wrong-unit',
    'tractor.topLinkLength.adjustable.between.1',
  ],
  [
    'limits of an adjuster that overlap in the wrong order',
    withTractor({ topLinkLength: { adjustable: { between: [{ between: [500, 640] }, { between: [490, 700] }] } } }),
    'wrong-order',
    'tractor.topLinkLength.adjustable.between',
  ],
  [
    'a hole in the wrong unit',
    withImplement({ mastHeight: { adjustable: { at: [457, '20 kg'] } } }),
    'wrong-unit',
    'implement.mastHeight.adjustable.at.1',
  ],
  [
    'thirteen holes',
    withImplement({ mastHeight: { adjustable: { at: Array.from({ length: 13 }, (_, i) => 400 + i) } } }),
    'wrong-type',
    'implement.mastHeight.adjustable.at',
  ],
  [
    'a figure for an adjuster',
    withTractor({ ballSpan: { adjustable: 700 } }),
    'wrong-type',
    'tractor.ballSpan.adjustable',
  ],
  [
    'a range for what is set to suit',
    withTractor({ ballSpan: { between: [700, 760] } }),
    'contradiction',
    'tractor.ballSpan',
  ],
  [
    'an unknown that is not true',
    withImplement({ mastHeight: { unknown: 1 } }),
    'wrong-type',
    'implement.mastHeight.unknown',
  ],
  [
    'a default that says no basis',
    withImplement({ mastHeight: { between: [450, 460], default: 7 } }),
    'wrong-type',
    'implement.mastHeight.default',
  ],
  [
    'an infinite tolerance',
    withImplement({ mastHeight: { value: 457, plusMinus: Infinity } }),
    'not-finite',
    'implement.mastHeight.plusMinus',
  ],
  [
    'a bushing whose bore is larger than its outside',
    withImplement({ lowerBushingInside: 28.6, lowerBushingOutside: 22.2 }),
    'contradiction',
    'implement.lowerBushingInside',
  ],
  [
    'a second row’s hole beyond the tip of its pin',
    withImplement({ secondRow: { standOut: 40, shoulderToHole: 60 } }),
    'contradiction',
    'implement.secondRow.shoulderToHole',
  ],
  [
    'an unknown key in a second row',
    withImplement({ secondRow: { secondRow: {} } }),
    'unknown-key',
    'implement.secondRow.secondRow',
  ],
  [
    'more setbacks than holes',
    withImplement({ mastHeight: { adjustable: { at: [457, 482] } }, mastSetback: { adjustable: { at: [0, 5, 9] } } }),
    'contradiction',
    'implement.mastSetback',
  ],
  ['an object for the parts', { ...fine, parts: {} }, 'wrong-type', 'parts'],
  ['sixty-one parts', { ...fine, parts: Array.from({ length: 61 }, () => ({})) }, 'out-of-range', 'parts'],
  ['a part that fits a number', bushings({ fits: [7] }), 'wrong-type', 'parts.0.fits.0'],
  ['a part of negative length', bushings({ length: -35 }), 'out-of-range', 'parts.0.length'],
  ['a part with an unknown key', bushings({ colour: 4 }), 'unknown-key', 'parts.0.colour'],
  [
    'an outline with a corner that is no pair',
    withImplement({ outlines: [{ name: 'a', part: 'plate', rear: [[0, 0], [1, 1], [2]] }] }),
    'out-of-range',
    'implement.outlines.0.rear.2',
  ],
  [
    'an outline corner at no number',
    withImplement({
      outlines: [
        {
          name: 'a',
          part: 'plate',
          rear: [
            [0, 0],
            [1, NaN],
            [2, 2],
          ],
        },
      ],
    }),
    'wrong-type',
    'implement.outlines.0.rear.1.1',
  ],
];

describe('more malformed setups', () => {
  for (const [title, document, code, path] of cases) {
    test(`${title}: ${code} at ${path === '' ? 'the document' : path}`, () => {
      const reading = readSetup(document);
      const errors = reading.ok ? [] : reading.errors.map((error) => `${error.code} ${error.path}`);
      expect(errors).toContain(`${code} ${path}`);
    });
  }
  test('a text that overflows every number is named as not finite, not read as a huge one', () => {
    const reading = readSetupText('{"hitchwright":1,"tractor":{},"implement":{"mastHeight":1e999}}');
    expect(reading.ok ? [] : reading.errors.map(({ code, path }) => `${code} ${path}`)).toEqual([
      'not-finite implement.mastHeight',
    ]);
  });
  test('ten errors in three machines are ten lines', () => {
    const reading = readSetup({
      hitchwright: 1,
      tractor: { lowerBallBore: -1, lowerBallWidth: '3 kg', ballSpan: { adjustable: 3 }, colour: 'red' },
      coupler: { kind: 'uFrame', hookSpan: 0, hookWidth: 'wide', front: { mastHeight: [] } },
      implement: { mastHeight: 19, shoulderSpan: { between: [700, 600] }, category: '9' },
    });
    expect(reading.ok ? 0 : reading.errors.length).toBe(10);
  });
  test('a name is only text: markup, escapes and other scripts are kept letter for letter', () => {
    for (const name of ['<img src=x onerror=alert(1)>', '\u001b[2J', '\u202eevil', 'Плуг 犁', '${7*7} {{7*7}}']) {
      const reading = readSetup(withImplement({ name }));
      expect(reading.ok && reading.setup.implement.name).toBe(name);
    }
  });
  test('an inherited name is no field', () => {
    for (const key of ['toString', 'hasOwnProperty', 'valueOf', '__proto__']) {
      const reading = readSetupText(`{"hitchwright":1,"tractor":{"${key}":{"value":457}},"implement":{}}`);
      expect(reading.ok ? '' : `${reading.errors[0]?.code} ${reading.errors[0]?.path}`, key).toBe(
        `unknown-key tractor.${key}`,
      );
    }
  });
});
