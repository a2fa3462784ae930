import { describe, expect, test } from 'vitest';
import { guessMapping } from '../mapping/guessMapping.ts';
import type { GuessOptions } from '../mapping/guessMapping.ts';
import { markedDate, markedFormula } from '../marks.ts';
import { answered, type MappingChange } from '../mapping/answered.ts';
import { readRows, readTable } from './readRows.ts';
import { draftOf } from './record.ts';
import type { RowReading } from './rowTypes.ts';

function read(
  table: readonly (readonly string[])[],
  options: GuessOptions = {},
  ...changes: MappingChange[]
): readonly RowReading[] {
  const guessed = guessMapping(table, options).mapping;
  if (guessed === null) throw new Error('no mapping');
  const mapping = changes.reduce((before, change) => answered(table, before, change).mapping, guessed);
  return readTable(table, mapping).readings;
}

/** The readings of a row as they go into a setup. */
function leaves({ record }: RowReading): Record<string, unknown> {
  return Object.fromEntries(Object.entries(record?.readings ?? {}).map(([path, { leaf }]) => [path, leaf]));
}

function errorsOf({ errors }: RowReading): string[] {
  return errors.map(({ row, column, path, code }) => `${column ?? ''}${row} ${path} ${code}`);
}

describe('a row', () => {
  const table = [
    ['Stock no', 'Model', 'Cat', 'Mast ht (in)', 'Shoulder span', 'Weight (lb)', 'Measured by', 'Date', 'Remarks'],
    ['S-1', 'Harl rake', 'Cat. I', '18 (worn)', '27ish', '330', 'Jo', markedDate('2026-03-08'), 'bent'],
    ['S-2', 'Tarn ripper', 'cat1/2', '8-Mar', '683', 'heavy', '', '', ''],
    ['S-3', 'Wickset plough', '2', '?', '26-27', '', '', '', ''],
  ];
  const [first, second, third] = read(table) as [RowReading, RowReading, RowReading];

  test('proposes a record with its fields, readings with units as typed, notes and grades', () => {
    expect(first.record).toMatchObject({ kind: 'implement', name: 'Harl rake', id: 'S-1', key: 'implement:id:s 1' });
    expect(first.record?.fields).toEqual({ category: '1', note: 'bent' });
    expect(leaves(first)).toEqual({
      mastHeight: { value: '18 in', who: 'Jo', when: '2026-03-08', note: 'worn' },
      shoulderSpan: { value: '27 in', plusMinus: '1 in', who: 'Jo', when: '2026-03-08' },
      mass: { value: '330 lb', who: 'Jo', when: '2026-03-08' },
    });
    const grades = Object.values(first.record?.readings ?? {}).map(({ grade }) => grade);
    expect(grades).toEqual(['measured', 'guessed', 'measured']);
  });

  test('stands without the cells that can’t be read; each is named by row, column and field', () => {
    expect(second.outcome).toBe('record');
    expect(leaves(second)).toEqual({});
    expect(errorsOf(second)).toEqual([
      'C3 implement.category ambiguous',
      'D3 implement.mastHeight not-a-quantity',
      'E3 implement.shoulderSpan ambiguous',
      'F3 implement.mass not-a-quantity',
    ]);
  });

  test('holds a figure that is in another unit than most of its column, until somebody says so', () => {
    const spans = ['26', '26 1/2', '84', '26', '26 3/4', '690', '660 mm'];
    const sheet = [['Model', 'Cat', 'Shoulder span'], ...spans.map((span, i) => [`rake ${i}`, '1', span])];
    const held = read(sheet);
    expect(held.flatMap(errorsOf)).toEqual([
      'C4 implement.shoulderSpan ambiguous',
      'C7 implement.shoulderSpan ambiguous',
    ]);
    expect(leaves(held[2] as RowReading)).toEqual({});
    expect(held[2]?.errors[0]?.hint).toContain('The other figures of the column are in inches');
    expect(leaves(held[0] as RowReading)).toEqual({ shoulderSpan: '26 in' });
    expect(leaves(held[6] as RowReading)).toEqual({ shoulderSpan: '660 mm' });
    const confirmed = read(sheet, {}, { column: 'C', unit: null });
    expect(confirmed.flatMap(errorsOf)).toEqual([]);
    expect(leaves(confirmed[2] as RowReading)).toEqual({ shoulderSpan: '84 cm' });
    expect(confirmed[2]?.told.map(({ about }) => about)).toEqual(['unit']);
  });

  test('counts what is not known without calling it wrong', () => {
    expect([third.missing, third.errors.length]).toEqual([3, 0]);
    expect(leaves(third)).toEqual({ shoulderSpan: { between: ['26 in', '27 in'] } });
    expect(third.told.map(({ about, column }) => `${column} ${about}`)).toEqual(['E unit', 'E range']);
  });

  test('is in the form that a store takes', () => {
    const draft = draftOf(first.record as NonNullable<RowReading['record']>);
    expect(draft.fields).toEqual({ category: '1', note: 'bent' });
    expect(draft.readings[0]).toEqual({
      field: 'mastHeight',
      grade: 'measured',
      leaf: expect.objectContaining({ value: '18 in' }) as unknown,
    });
  });

  test('keeps fields of a customer together', () => {
    const [row] = read([
      ['Customer', 'Phone', 'Address'],
      ['Jo Harl', '555 0100', '1 Mill Lane'],
    ]);
    const draft = draftOf((row as RowReading).record as NonNullable<RowReading['record']>);
    expect(draft).toMatchObject({
      kind: 'customer',
      fields: { contact: { phone: '555 0100', address: '1 Mill Lane' } },
    });
  });
});

describe('the two ends of what can be set', () => {
  const table = [
    ['Tractor', 'Ball spread min (ball centres)', 'Ball spread max (ball centres)', 'Top link length (mm)'],
    ['Ostrey 24', '640 mm', '760 mm', '380-520'],
    ['Ostrey 35', '760 mm', '640 mm', '500'],
    ['Ostrey 55', '700 mm', '', 'adjustable 580 to 820'],
  ];
  const [first, second, third] = read(table) as [RowReading, RowReading, RowReading];

  test('come from two columns, or from one cell', () => {
    expect(leaves(first)).toEqual({
      ballSpan: { adjustable: { between: ['640 mm', '760 mm'] } },
      topLinkLength: { adjustable: { between: ['380 mm', '520 mm'] } },
    });
    expect(leaves(third)).toEqual({ topLinkLength: { adjustable: { between: ['580 mm', '820 mm'] } } });
  });

  test('are refused in the wrong order, alone, or as one figure', () => {
    expect(errorsOf(second)).toEqual(['B3 tractor.ballSpan wrong-order', 'D3 tractor.topLinkLength contradiction']);
    expect(errorsOf(third)).toEqual(['B4 tractor.ballSpan missing']);
  });
});

describe('reference points', () => {
  const table = [
    ['Name', 'Closed length', 'Overlap (mm)', 'Series'],
    ['Shaft A', '700 mm', '300', '4'],
    ['Shaft B', '800 mm', '300', '4'],
  ];

  test('that nothing says make a figure worthless: it is refused until somebody says them', () => {
    const [row] = read(table, { kind: 'shaft' }) as [RowReading];
    expect(errorsOf(row)).toEqual(['B2 shaft.closedLength ambiguous']);
    const [said] = read(table, { kind: 'shaft' }, { column: 'B', from: 'yokeEnds' }) as [RowReading];
    expect(leaves(said)).toMatchObject({ closedLength: { value: '700 mm', from: 'yokeEnds' } });
  });

  test('may stand in a column beside the figure', () => {
    const beside = table.map((row, i) => [
      ...row,
      ['closed length: measured between', 'cross to cross', 'yoke ends'][i] ?? '',
    ]);
    const [first, second] = read(beside, { kind: 'shaft' }) as [RowReading, RowReading];
    expect(leaves(first)).toMatchObject({ closedLength: { from: 'crossCentre' } });
    expect(leaves(second)).toMatchObject({ closedLength: { from: 'yokeEnds' } });
  });
});

describe('a row that is none of the records', () => {
  const table = [
    ['Model', 'Cat', 'Weight (kg)', 'Mast ht (in)'],
    ['MOWERS', '', '', ''],
    ['Harl rake', '1', '150', '18'],
    ['', '', '', ''],
    ['Model', 'Cat', 'Weight (kg)', 'Mast ht (in)'],
    ['Harl rake', '1', '150', '18'],
    ['HARL-RAKE', '1', '', '20'],
    ['Harl rake', '2', '300', '20'],
    ['', '1', '200', '18'],
    ['Total', '', '450', ''],
  ];
  const readings = read(table);

  test('is told from them: headings, blanks, totals, the same once more', () => {
    expect(readings.map(({ outcome }) => outcome)).toEqual([
      'skipped',
      'record',
      'blank',
      'skipped',
      'duplicate',
      'record',
      'record',
      'refused',
      'skipped',
    ]);
    for (const { outcome, told, errors } of readings)
      if (outcome === 'skipped' || outcome === 'duplicate') expect(told.length).toBe(1);
      else if (outcome === 'refused') expect(errors.map(({ code }) => code)).toEqual(['missing']);
  });

  test('one name is one record under one key; another category is another', () => {
    const keys = readings.map(({ record }) => record?.key);
    expect(keys[5]).toBe(keys[1]);
    expect(keys[6]).not.toBe(keys[1]);
    expect(readings[5]?.told.at(-1)?.sentence).toContain('both are one record');
    expect(readings[6]?.told.at(-1)?.sentence).toContain('kept as two records');
  });
});

describe('the key of a record', () => {
  const keys = (rows: readonly (readonly string[])[]) =>
    read([['Model', 'Cat', 'Mast ht (in)'], ...rows]).map(({ record }) => record?.key);
  test('does not change when its category is filled in later', () => {
    expect(keys([['Harl rake', '', '18']])).toEqual(['implement:name:harl rake']);
    expect(keys([['Harl rake', 'Cat. I', '18']])).toEqual(['implement:name:harl rake']);
  });
  test('has the category where two of one name need it, in whatever order they stand', () => {
    const both = [
      ['Harl rake', '1', '18'],
      ['Harl rake', '2', '20'],
    ];
    expect(keys(both)).toEqual(['implement:name:harl rake:1', 'implement:name:harl rake:2']);
    expect(keys([...both].reverse())).toEqual(['implement:name:harl rake:2', 'implement:name:harl rake:1']);
  });
});

describe('what a setup would not take', () => {
  test('is dropped with an error where it stands, and the rest of the record is kept', () => {
    const [row] = read([
      ['Model', 'Cat', 'Shoulder span (mm)', 'Mast height (mm)', 'Washer (mm)'],
      ['Harl rake', '1', '457', '683', '2'],
    ]) as [RowReading];
    expect(errorsOf(row)).toEqual(['C2 implement.shoulderSpan swapped']);
    expect(leaves(row)).toEqual({ washer: '2 mm' });
  });

  test('a coupler or part says what kind it is', () => {
    const [row] = read([
      ['Coupler', 'Hook centers (mm)', 'Wt (kg)'],
      ['U-28', '712', '45'],
    ]) as [RowReading];
    expect([row.outcome, ...errorsOf(row)]).toEqual(['refused', '2 coupler.kind missing']);
  });

  test('a part may lack figures that are not known yet, but not what it can’t be without', () => {
    const [bushing] = read([
      ['Part', 'Type', 'OD', 'Price (USD)'],
      ['pair of bushings', 'lower bushings', '1 1/8 in', '14'],
    ]) as [RowReading];
    expect(bushing.record).toMatchObject({
      kind: 'part',
      fields: { kind: 'lowerBushings', price: { amount: 14, currency: 'USD' } },
    });
    const [weight] = read([
      ['Ballast weight', 'Kind of weight', 'Mass (kg)'],
      ['Wafer', 'front weights', '20'],
    ]) as [RowReading];
    expect([weight.outcome, ...errorsOf(weight)]).toEqual(['refused', '2 weight.count missing']);
  });

  test('two columns for one field have to agree as far as their digits go', () => {
    const table = [
      ['Model', 'Mast ht (in)', 'Mast height (mm)'],
      ['a', '18', '457'],
      ['b', '18', '483'],
      ['c', '', '457'],
    ];
    const [first, second, third] = read(table) as [RowReading, RowReading, RowReading];
    expect(leaves(first)).toEqual({ mastHeight: '18 in' });
    expect(errorsOf(second)).toEqual(['C3 implement.mastHeight contradiction']);
    expect(leaves(third)).toEqual({ mastHeight: '457 mm' });
  });
});

describe('marks and units of a row', () => {
  test('a formula is taken by its saved result and told; a date in a figure’s place is refused', () => {
    const [row] = read([
      ['Model', 'Mast ht (in)', 'Weight (kg)'],
      ['a', markedDate('2026-03-08'), markedFormula('150')],
    ]) as [RowReading];
    expect(leaves(row)).toEqual({ mass: '150 kg' });
    expect(row.told.map(({ about }) => about)).toEqual(['formula']);
    expect(errorsOf(row)).toEqual(['B2 implement.mastHeight not-a-quantity']);
  });

  test('a column of units is for its row', () => {
    const [first, second] = read([
      ['Model', 'Cat', 'Mast height', 'Units'],
      ['a', '1', '18', 'in'],
      ['b', '1', '457', 'mm'],
    ]) as [RowReading, RowReading];
    expect([leaves(first), leaves(second)]).toEqual([{ mastHeight: '18 in' }, { mastHeight: '457 mm' }]);
  });

  test('a column that is not known is kept as it stands where somebody says so', () => {
    const table = [
      ['Model', 'Mast ht (in)', 'Colour'],
      ['a', '18', '=red'],
    ];
    const [row] = read(table, {}, { column: 'C', target: { role: 'extra' } }) as [RowReading];
    expect(row.record?.fields).toEqual({ extra: [{ label: 'Colour', text: '=red' }] });
  });
});

describe('long tables', () => {
  const table = [['Model', 'Mast ht (in)', 'Cat'], ...Array.from({ length: 3000 }, (_, i) => [`m${i}`, '18', '1'])];
  const mapping = guessMapping(table).mapping as NonNullable<ReturnType<typeof guessMapping>['mapping']>;

  test('tell how far they are and stop when asked', () => {
    const seen: number[] = [];
    const { stopped, tally } = readTable(table, mapping, (done, all) => {
      expect(all).toBe(3000);
      seen.push(done);
      return done < 1000;
    });
    expect(seen).toEqual([500, 1000]);
    expect([stopped, tally.rows, tally.records]).toEqual([true, 1000, 1000]);
  });

  test('are read row by row', () => {
    const rows = readRows(table, mapping);
    expect(rows.next().value).toMatchObject({ row: 2, outcome: 'record' });
    expect(readTable(table, mapping).tally).toMatchObject({ rows: 3000, records: 3000, errors: 0 });
  });
});
