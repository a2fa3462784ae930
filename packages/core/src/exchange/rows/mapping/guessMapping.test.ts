import { describe, expect, test } from 'vitest';
import { answered } from './answered.ts';
import { guessMapping } from './guessMapping.ts';
import { guessSheet, wrongSheet } from './guessSheet.ts';
import type { Mapping } from './mapping.ts';
import { headingsKey } from './remembered.ts';
import { fieldOfTarget } from './target.ts';

/** The mapping in a few words, column by column. */
function columnsOf(mapping: Mapping | null): string[] {
  return (mapping?.columns ?? []).map(({ letter, target, unit, unitFrom, from }) => {
    const what = target.role === 'field' ? fieldOfTarget(target) : target.role;
    return [letter, what, unit ?? '', unitFrom ?? '', from ?? ''].join(' ').replace(/ +/g, ' ').trim();
  });
}

const rows = [
  ['Harl rake', '1', '18', '26 1/2', '150 kg'],
  ['Tarn ripper', '2', '20.5', '32.1', '340 kg'],
];

describe('finding the headings', () => {
  const expected = ['A name', 'B category', 'C mastHeight in figures', 'D shoulderSpan in figures unsaid', 'E mass'];
  const headings = ['Model', 'Cat', 'Mast height', 'Span', 'Weight'];

  test('in the first row', () => {
    const { mapping } = guessMapping([headings, ...rows]);
    expect(columnsOf(mapping)).toEqual(expected);
    expect([mapping?.kind, mapping?.headingRows, mapping?.firstRow]).toEqual(['implement', [0], 1]);
  });

  test('under titles and empty rows, with empty columns between', () => {
    const wide = (row: readonly string[]): string[] => ['', ...row.flatMap((cell) => [cell, ''])];
    const { mapping } = guessMapping([
      ['Yard list, spring'],
      [],
      ['', 'printed by Jo'],
      wide(headings),
      ...rows.map(wide),
    ]);
    expect(mapping?.headingRows).toEqual([3]);
    expect(columnsOf(mapping).filter((column) => !column.endsWith('ignore'))).toEqual([
      'B name',
      'D category',
      'F mastHeight in figures',
      'H shoulderSpan in figures unsaid',
      'J mass',
    ]);
  });

  test('in two rows whose groups are merged, with a row of units below', () => {
    const { mapping } = guessMapping([
      ['', 'Lower pins', '', '', 'Top pin', '', 'Weight'],
      ['Attachment', 'dia', 'span', 'stand-out', 'dia', 'height', ''],
      ['', 'in', 'in', 'in', 'in', 'in', 'lb'],
      ['Harl rake', '7/8', '26.2', '2.4', '3/4', '18', '330'],
    ]);
    expect(columnsOf(mapping)).toEqual([
      'A name',
      'B lowerPinDiameter in heading',
      'C shoulderSpan in heading unsaid',
      'D standOut in heading',
      'E upperPinDiameter in heading',
      'F mastHeight in heading',
      'G mass lb heading',
    ]);
    expect([mapping?.headingRows, mapping?.firstRow]).toEqual([[0, 1, 2], 3]);
  });

  test('a group ends where its last column does, though no cell shows it', () => {
    const { mapping } = guessMapping([
      ['', 'Top pin', '', '', '', ''],
      ['Attachment', 'dia', 'height', 'Weight', 'Measured by', 'Remarks'],
      ['Harl rake', '3/4', '18', '330 lb', 'Jo', 'bent'],
    ]);
    expect(columnsOf(mapping).slice(3)).toEqual(['D mass', 'E who', 'F note']);
  });

  test('a heading that is merged down over both rows heads its own column only', () => {
    const { mapping } = guessMapping([
      ['Attachment', 'Top pin', '', 'Weight', ''],
      ['', 'dia', 'height', '', 'Type'],
      ['Harl rake', '3/4', '18', '330 lb', 'ripper'],
    ]);
    expect(columnsOf(mapping).slice(3)).toEqual(['D mass', 'E work']);
  });

  test('a heading under a group that says once more what stood there before is read by itself', () => {
    const { mapping } = guessMapping([
      ['', 'Top pin', '', '', ''],
      ['Attachment', 'dia', 'height', 'Pin dia', 'Weight'],
      ['Harl rake', '3/4', '18', '7/8', '330 lb'],
    ]);
    expect(mapping?.columns.map(({ target }) => fieldOfTarget(target))).toEqual([
      null,
      'upperPinDiameter',
      'mastHeight',
      'lowerPinDiameter',
      'mass',
    ]);
  });

  test('a sheet without any, an empty one, and one that lies on its side are told apart', () => {
    expect(
      guessMapping([
        ['1', '2'],
        ['3', '4'],
      ]).errors[0]?.code,
    ).toBe('missing');
    expect(guessMapping([]).errors[0]?.code).toBe('empty');
    const onItsSide = [
      ['Model', 'Ostrey 24', 'Ostrey 35'],
      ['Wheelbase', '1450', '1720'],
      ['PTO hp', '17', '28'],
      ['Lower ball bore', '22.4', '22.4'],
    ];
    expect(guessMapping(onItsSide).errors[0]?.hint).toContain('swap rows and columns');
  });

  test('two columns for one field are told', () => {
    const { told } = guessMapping([
      ['Model', 'Mast ht (in)', 'Mast height (mm)'],
      ['Harl rake', '18', '457'],
    ]);
    expect(told.map(({ sentence }) => sentence).join()).toContain('say the same');
  });

  test('columns that are not known are named', () => {
    const { told } = guessMapping([
      ['Model', 'Mast ht (in)', 'Colour'],
      ['Harl rake', '18', 'red'],
    ]);
    expect(told).toContainEqual({
      column: 'C',
      row: null,
      sentence: expect.stringContaining('“Colour” is not known') as string,
    });
  });
});

describe('the kind of a row', () => {
  test.each([
    ['tractor', ['Tractor', 'Wheelbase', 'PTO hp']],
    ['coupler', ['Quick hitch', 'Hook centers', 'Setback']],
    ['shaft', ['Name', 'Closed length', 'Overlap', 'Series']],
    ['part', ['Part', 'OD', 'Bore', 'Fits']],
    ['customer', ['Customer', 'Phone', 'Address']],
    ['implement', ['Item', 'Shoulder span', 'Mast height']],
  ])('%s is told by its headings', (kind, headings) => {
    expect(guessMapping([headings, headings.map((_, i) => `x${i}`)]).mapping?.kind).toBe(kind);
  });

  test('a sheet’s name tells where its headings do not, and is asked about where nothing does', () => {
    const table = [
      ['Name', 'Weight'],
      ['x', '30 kg'],
    ];
    expect(guessMapping(table, { sheetName: 'Suitcase weights' }).mapping?.kind).toBe('weight');
    expect(guessMapping(table).asks[0]?.about).toBe('kind');
    expect(guessMapping(table, { kind: 'coupler' }).asks.map(({ about }) => about)).not.toContain('kind');
  });

  test('a column of kinds makes a sheet of several', () => {
    const { mapping } = guessMapping([
      ['Record', 'Name', 'Weight', 'Mast height', 'Wheelbase'],
      ['tractor', 'Ostrey 24', '750 kg', '', '1450 mm'],
      ['implement', 'Harl rake', '150 kg', '457 mm', ''],
    ]);
    expect(mapping?.otherKinds).toEqual(['tractor', 'implement']);
  });
});

describe('units of figures without one', () => {
  const unitOf = (heading: string, figures: string[], options = {}) => {
    const guess = guessMapping([['Model', 'Cat', heading], ...figures.map((figure, i) => [`m${i}`, '1', figure])], {
      kind: 'implement',
      ...options,
    });
    return { column: guess.mapping?.columns[2], told: guess.told.map(({ sentence }) => sentence), asks: guess.asks };
  };

  test('are taken in the only unit that puts nearly all of them between the limits, and that is told', () => {
    const { column, told } = unitOf('Shoulder span', ['26.2', '26.5', '27']);
    expect(column).toMatchObject({ unit: 'in', unitFrom: 'figures' });
    expect(told).toContainEqual(expect.stringContaining('taken in inches'));
  });

  test('are asked about where several do', () => {
    const { column, asks } = unitOf('Weight', ['300', '450']);
    expect(column).toMatchObject({ unit: null, unitFrom: 'ask' });
    expect(asks).toContainEqual(expect.objectContaining({ about: 'unit', column: 'C' }));
    expect(unitOf('Weight', ['300', '450'], { system: 'us' }).column).toMatchObject({ unit: 'lb', unitFrom: 'person' });
  });

  test('are those of the figures beside them, or of a line above the table', () => {
    expect(unitOf('Weight', ['300', '450 kg', '500 kg']).column).toMatchObject({ unit: 'kg', unitFrom: 'figures' });
    const { mapping, told } = guessMapping([
      ['All weights in lbs'],
      ['Model', 'Mast ht (in)', 'Weight'],
      ['x', '18', '300'],
    ]);
    expect(mapping?.columns[2]).toMatchObject({ unit: 'lb', unitFrom: 'heading' });
    expect(told.map(({ sentence }) => sentence).join()).toContain('All weights in lbs');
  });

  test('are not told by a line of totals', () => {
    const { mapping } = guessMapping([
      ['Model', 'Cat', 'Weight'],
      ['a', '1', '300 kg'],
      ['b', '1', '450 kg'],
      ['Total', '', '750'],
    ]);
    expect(mapping?.columns[2]).toMatchObject({ unit: null, unitFrom: null });
  });

  test('are looked at one by one where a column mixes them', () => {
    expect(unitOf('Shoulder span', ['26.2', '683', '27', '690']).column).toMatchObject({ unit: null, unitFrom: null });
  });
});

describe('reference points', () => {
  const fromOf = (kind: 'tractor' | 'shaft' | 'implement', heading: string) => {
    const { mapping, asks } = guessMapping(
      [
        ['Model', heading],
        ['x', '683 mm'],
      ],
      { kind },
    );
    return mapping?.columns[1]?.from ?? asks.find(({ about }) => about === 'from')?.question ?? null;
  };
  test('are taken from the heading, kept open where the field knows of that, and asked about where it does not', () => {
    expect(fromOf('implement', 'Shoulder span')).toBe('shoulder');
    expect(fromOf('implement', 'Span (c-c)')).toBe('ballCentre');
    expect(fromOf('implement', 'Pin spacing')).toBe('unsaid');
    expect(fromOf('shaft', 'Closed length (yoke ends)')).toBe('yokeEnds');
    expect(fromOf('shaft', 'Closed length')).toBe('“Closed length”: where was it measured?');
    expect(fromOf('tractor', 'Ball spread')).toBe('“Ball spread”: where was it measured?');
  });
});

describe('answers', () => {
  const table = [
    ['Tractor', 'HP', 'Weight', 'Wheelbase'],
    ['Ostrey 24', '24', '1650', '57.1'],
    ['Ostrey 35', '35', '3704', '67.7'],
  ];

  test('settle the field, the unit and the points of a column', () => {
    const { mapping, asks } = guessMapping(table);
    expect(asks.map(({ about, column }) => `${about} ${column}`)).toEqual(['field B', 'unit C']);
    const named = answered(table, mapping as Mapping, {
      column: 'B',
      target: { role: 'field', field: 'ptoPower' },
    }).mapping;
    expect(named.columns[1]).toMatchObject({
      target: { field: 'ptoPower' },
      unitFrom: 'heading',
      unit: 'hp',
      rivals: [],
    });
    const settled = answered(table, named, { column: 'C', unit: 'lb' }).mapping;
    expect(settled.columns[2]).toMatchObject({ unit: 'lb', unitFrom: 'person' });
    const bySystem = answered(table, named, { system: 'us' }).mapping;
    expect(bySystem.columns[2]).toMatchObject({ unit: 'lb', unitFrom: 'person' });
  });

  test('another kind reads the headings anew', () => {
    const { mapping } = guessMapping(table);
    const other = answered(table, mapping as Mapping, { kind: 'implement' }).mapping;
    expect(other.columns.map(({ target }) => fieldOfTarget(target))).toEqual([null, 'powerWanted', 'mass', null]);
  });

  test('are taken again for a sheet with the same headings, in whatever order', () => {
    const { mapping } = guessMapping(table);
    const chosen = answered(table, mapping as Mapping, {
      column: 'B',
      target: { role: 'field', field: 'ptoPower' },
    }).mapping;
    const turned = table.map(([a = '', ...rest]) => [...rest, a]);
    const again = guessMapping(turned, { remembered: [chosen] });
    expect(headingsKey(again.mapping as Mapping)).toBe(headingsKey(chosen));
    expect(again.mapping?.columns.map(({ target }) => fieldOfTarget(target))).toEqual([
      'ptoPower',
      'mass',
      'wheelbase',
      null,
    ]);
    expect(again.told[0]?.sentence).toContain('was read before');
    expect(again.told.map(({ sentence }) => sentence).join()).not.toContain('taken in inches');
  });
});

describe('several sheets', () => {
  const implements_ = {
    name: 'Implements',
    rows: [
      ['Model', 'Cat', 'Mast height'],
      ['x', '1', '18 in'],
    ],
  };
  const wages = {
    name: 'Hours',
    rows: [
      ['Week', 'Who', 'Hours'],
      ['1', 'Jo', '40'],
    ],
  };
  test('the one that fits best is chosen, and a wrong choice is told which fits better', () => {
    const sheets = [wages, implements_];
    const guess = guessSheet(sheets);
    expect(guess.best).toBe(1);
    expect(wrongSheet(sheets, guess, 0)?.hint).toBe('The sheet “Implements” fits better: 3 of 3 columns known.');
    expect(wrongSheet(sheets, guess, 1)).toBeNull();
    expect(guessSheet([wages]).best).toBeNull();
  });
});
