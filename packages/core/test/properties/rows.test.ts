import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  guessMapping,
  type MappingGuess,
  documentOf,
  readTable,
  tableOf,
  type ProposedRecord,
  type RowReading,
} from '../../src/exchange/index.ts';
import { readQuantity } from '../../src/units/index.ts';
import { readValue } from '../../src/records/index.ts';
import { catalogues } from '../../src/exchange/rows/catalogue/catalogue.ts';
import { anyRecord, isTaken } from './generateRows.ts';

/** What a record says, whatever way its figures are written: values by their meaning, to the last bit but one. */
function meaning({ kind, name, id, fields, readings }: ProposedRecord): unknown {
  const said = Object.entries(readings).map(([path, { leaf, grade }]) => {
    const spec = catalogues[kind].get(path);
    if (spec?.form !== 'quantity') throw new Error(path);
    const { value, errors } = readValue(leaf, spec.rule, path, 'us');
    if (value === null) throw new Error(JSON.stringify(errors));
    return [path, { value: rounded(value), grade }] as const;
  });
  return { kind, name, id, fields: sorted(fields), readings: sorted(Object.fromEntries(said)) };
}

function rounded(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, each: unknown) => (typeof each === 'number' ? Number(each.toPrecision(12)) : each)),
  );
}

function sorted(fields: Readonly<Record<string, unknown>>): unknown {
  return Object.fromEntries(Object.entries(fields).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function readAgain(records: readonly ProposedRecord[]): { readings: readonly RowReading[]; asks: number } {
  const table = tableOf(records);
  const { mapping, asks, errors } = guessMapping(table);
  if (mapping === null) throw new Error(JSON.stringify(errors));
  return { readings: readTable(table, mapping).readings, asks: asks.length };
}

describe('records written as a table', () => {
  test('read back to the same records, with nothing asked, guessed or wrong', () => {
    fc.assert(
      fc.property(fc.array(anyRecord, { minLength: 1, maxLength: 6 }), (records) => {
        const { readings, asks } = readAgain(records);
        expect(asks).toBe(0);
        readings.forEach(({ record, outcome, errors, told }, i) => {
          const before = records[i] as ProposedRecord;
          const isSecond = readings
            .slice(0, i)
            .some((other) => other.outcome === 'record' && other.record?.key === (record ?? before).key);
          expect(errors).toEqual([]);
          expect(told.filter(({ about }) => about !== 'duplicate')).toEqual([]);
          if (outcome === 'duplicate') return;
          expect(meaning(record as ProposedRecord)).toEqual(meaning(before));
          if (!isSecond) expect(record?.key.startsWith(before.key)).toBe(true);
        });
      }),
      { numRuns: 250 },
    );
  });
});

/** Cells as people write them, well and badly. */
const cell = fc.oneof(
  fc.constantFrom(
    ...[
      '',
      '',
      '683',
      '26 3/8"',
      '27ish',
      '~18',
      '26-27',
      '26.2',
      '457 mm',
      '300 lb',
      '1,250',
      '1.250 kg',
      'n/a',
      '?',
      '8-Mar',
      '46089',
    ],
    ...[
      'cat1/2',
      'Cat. I',
      '2N',
      '1',
      '6 spline',
      '540/1000',
      'yes',
      'topper',
      'worn',
      '=1+1',
      '683 mm (26 7/8 in)',
      '7/8 & 1 1/8',
      '#REF!',
    ],
    ...[
      'adjustable 640 to 760 mm',
      'holes 440 mm; 460 mm',
      '2\' 3"',
      "5' 4",
      '-25',
      '(25)',
      '22/28',
      'Total',
      'between 1 and 2 in',
      '± 2 mm',
    ],
  ),
  fc.string({ unit: fc.constantFrom(...'0123456789.,/ -\'"±~()inmftcblkg;?=+@'.split('')), maxLength: 14 }),
  fc.string({ unit: 'binary', maxLength: 12 }),
);
const heading = fc.constantFrom(
  ...[
    'Model',
    'Name',
    'Cat',
    'Mast ht (in)',
    'Shoulder span',
    'Weight',
    'Weight lbs',
    'pin dia',
    'Top pin dia (mm)',
    'Measured by',
    'Date',
    'SKU',
  ],
  ...[
    'Remarks',
    'Ball spread min',
    'Ball spread max',
    'Wheelbase',
    'HP',
    'PTO hp',
    'Closed length (mm)',
    'Overlap',
    'Type',
    'Price (EUR)',
    'Units',
  ],
  ...[
    'mast height ±',
    'mast height: note',
    'Colour',
    '',
    'Record',
    'Phone',
    'Hook centers',
    'Setback',
    'Bore',
    'OD',
    'Qty',
    'CG behind pins',
  ],
);
const tables = fc
  .tuple(
    fc.array(heading, { minLength: 2, maxLength: 9 }),
    fc.array(fc.array(cell, { maxLength: 10 }), { maxLength: 8 }),
  )
  .map(([headings, rows]) => [headings, ...rows]);

/** Every text of a leaf that is a figure. */
function figuresOf(leaf: unknown): string[] {
  if (typeof leaf === 'string') return [leaf];
  if (typeof leaf !== 'object' || leaf === null) return [];
  return Object.entries(leaf).flatMap(([key, value]) =>
    key === 'value' || key === 'between' || key === 'adjustable' || key === 'at' || /^\d+$/.test(key)
      ? figuresOf(value)
      : [],
  );
}

describe('tables as people have them', () => {
  test('give records that a setup takes, figures that mean the same to everybody, and errors that say where and what to do', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const guess = guessMapping(table);
        const { mapping, errors } = guess;
        if (mapping === null) {
          expect(errors.length).toBeGreaterThan(0);
          return;
        }
        const { readings, tally } = readTable(table, mapping);
        expect(readings.length).toBe(table.length - mapping.firstRow);
        expect(tally.rows).toBe(readings.length);
        for (const reading of readings) {
          expectSound(reading);
          expectUnitsTold(reading, table, guess);
        }
      }),
      { numRuns: 1500 },
    );
  });

  test('read again, and written and read, give the same records under the same keys', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const { mapping } = guessMapping(table);
        if (mapping === null) return;
        const first = readTable(table, mapping);
        expect(readTable(table, mapping)).toEqual(first);
        const records = first.readings.flatMap(({ record }) => record ?? []);
        if (records.length === 0) return;
        const again = readAgain(records).readings;
        again.forEach(({ record }, i) => {
          if (record !== null) expect(meaning(record)).toEqual(meaning(records[i] as ProposedRecord));
        });
      }),
      { numRuns: 400 },
    );
  });
});

/** A figure that stands without a unit was taken in one that its heading says, or in one that is told of. */
function expectUnitsTold(
  { record, row, told }: RowReading,
  table: readonly (readonly string[])[],
  guess: MappingGuess,
): void {
  guess.mapping?.columns.forEach(({ letter, target, unitFrom }, i) => {
    const isBare = /^\d+(?:[.,]\d+)?$/.test(table[row - 1]?.[i] ?? '');
    if (record === null || target.role !== 'field' || !isBare || unitFrom === 'heading') return;
    if (record.readings[target.field] === undefined) return;
    expect(
      [...told, ...guess.told].some(({ column }) => column === letter),
      letter,
    ).toBe(true);
  });
}

function expectSound({ record, errors, told, outcome, row }: RowReading): void {
  for (const error of errors) {
    expect(error.row).toBe(row);
    expect([error.path, error.hint, error.expected, error.got].every((text) => text !== '')).toBe(true);
  }
  for (const one of told) expect(one.sentence).toMatch(/\.$/);
  expect(record !== null).toBe(outcome === 'record');
  if (record === null) return;
  expect(isTaken(record.kind, documentOf(record)), JSON.stringify(record)).toBe(true);
  for (const [path, { leaf }] of Object.entries(record.readings)) {
    const spec = catalogues[record.kind].get(path);
    if (spec?.form !== 'quantity') throw new Error(path);
    const { dimension, min, max } = spec.rule;
    for (const text of figuresOf(leaf)) {
      const values = (['us', 'metric'] as const).map((assume) =>
        readQuantity(text, { dimension, range: { min, max }, assume }),
      );
      expect(values[0]?.ok, text).toBe(true);
      expect(values[0]).toEqual(values[1]);
    }
  }
}
