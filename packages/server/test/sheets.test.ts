import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import readXlsxFile from 'read-excel-file/node';
import {
  guessMapping,
  markedDate,
  markedFormula,
  readTable,
  recordOf,
  shownText,
  tableOf,
} from '@hitchwright/core/exchange';
import { readSheetFile, sheetLimits, writeCsv, writeXlsx, type SheetFile } from '../src/sheets/index.ts';
import { partsOf, textRow, workbook } from './sheetsWorkbook.ts';
import { localEntry, zip } from './sheetsZip.ts';

async function read(bytes: Uint8Array, name = 'yard.csv'): Promise<SheetFile> {
  const reading = await readSheetFile(bytes, name);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return reading.file;
}

async function rowsOf(bytes: Uint8Array): Promise<unknown> {
  return (await read(bytes)).sheets[0]?.rows;
}

/** Code and the text of a refusal. */
async function refused(bytes: Uint8Array, name = 'yard.xlsx'): Promise<string> {
  const reading = await readSheetFile(bytes, name);
  if (reading.ok) return 'read';
  const [error] = reading.errors;
  expect(error?.hint).not.toBe('');
  return `${error?.code}: ${error?.got}`;
}

const utf8 = (text: string): Uint8Array => Buffer.from(text, 'utf8');

describe('CSV', () => {
  const expected = [
    ['Modèle', 'Mast ht'],
    ['Räke, wide', '26 3/8"'],
  ];
  const text = 'Modèle,Mast ht\r\n"Räke, wide","26 3/8"""\r\n';
  const wide = (bigEndian: boolean): Buffer => {
    const bytes = Buffer.from(text, 'utf16le');
    return bigEndian ? bytes.swap16() : bytes;
  };

  test.each<[string, Uint8Array]>([
    ['UTF-8', utf8(text)],
    ['UTF-8 with a mark', utf8(`\ufeff${text}`)],
    ['UTF-16 with a mark', Buffer.concat([Buffer.from([0xff, 0xfe]), wide(false)])],
    ['UTF-16, the other way round, with a mark', Buffer.concat([Buffer.from([0xfe, 0xff]), wide(true)])],
    ['UTF-16 without a mark', wide(false)],
    ['UTF-16, the other way round, without a mark', wide(true)],
    ['Windows-1252', Buffer.from(text, 'latin1')],
    ['a file without a last line end', utf8(text.trimEnd())],
    ['semicolons', utf8('Modèle;Mast ht\n"Räke, wide";"26 3/8"""\n')],
    ['tabs', utf8('Modèle\tMast ht\nRäke, wide\t26 3/8"\n')],
    ['a line that says its sign', utf8('sep=;\nModèle;Mast ht\n"Räke, wide";26 3/8"\n')],
    ['inch marks without quotes round them', utf8('Modèle,Mast ht\n"Räke, wide",26 3/8"\n')],
    ['empty columns and rows at the end', utf8('Modèle,Mast ht,,\n"Räke, wide","26 3/8""",,\n,,,\n\n')],
  ])('in %s', async (_, bytes) => {
    expect(await rowsOf(bytes)).toEqual(expected);
  });

  test('says what it took for granted', async () => {
    expect((await read(Buffer.from(text, 'latin1'))).told).toEqual([
      'The file does not say its encoding: read as Windows-1252.',
    ]);
    expect((await read(utf8('a;b\nc;d\n'))).told).toEqual(['Columns are set apart by semicolons.']);
  });

  test('a decimal comma between semicolons parts no column', async () => {
    expect(await rowsOf(utf8('Name;Span;Mast\na;68,3;45,7\nb;66,1;50,8\n'))).toEqual([
      ['Name', 'Span', 'Mast'],
      ['a', '68,3', '45,7'],
      ['b', '66,1', '50,8'],
    ]);
  });

  test('rows are as long as they are, and a cell keeps its line ends', async () => {
    expect(await rowsOf(utf8('a,b,c\nd\n"e\nf",g,h,i\n'))).toEqual([['a', 'b', 'c'], ['d'], ['e\nf', 'g', 'h', 'i']]);
  });

  test('marks of dates and formulas can’t be smuggled in', async () => {
    expect(await rowsOf(utf8(`${markedDate('2026-03-08')},${markedFormula('7')}\n`))).toEqual([['2026-03-08', '7']]);
  });

  test.each<[string, Uint8Array, string]>([
    ['an empty file', utf8(''), 'wrong-type: an empty file'],
    [
      'a picture',
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13]),
      'wrong-type: a file that is no text',
    ],
    [
      'an old workbook',
      Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0]),
      'wrong-type: an old binary workbook (.xls), or one with a password',
    ],
    ['a web page', utf8('<html><table><tr><td>1</td></tr></table></html>'), 'wrong-type: a web page or XML'],
    ['a mark and no UTF-8 behind it', Buffer.from([0xef, 0xbb, 0xbf, 0xff, 0xff]), 'wrong-type: bytes that are none'],
    [
      'a quote that never ends',
      utf8(`a,b\n"${'x'.repeat(100)}`),
      'wrong-type: Quote Not Closed: the parsing is finished with an opening…',
    ],
    ['too many rows', utf8('a,b\n'.repeat(sheetLimits.rows + 1)), 'too-large: more'],
    ['too many columns', utf8('a,'.repeat(sheetLimits.columns) + 'a\n'), 'too-large: 301'],
    ['too long a cell', utf8(`a,${'x'.repeat(sheetLimits.cell + 1)}\n`), 'too-large: 10001'],
    ['too large a file', Buffer.alloc(sheetLimits.file + 1, 'a,'), 'too-large: 20.0 MB'],
  ])('%s is refused', async (_, bytes, expected_) => {
    expect(await refused(bytes, 'yard.csv')).toBe(expected_);
  });
});

describe('XLSX', () => {
  test('cells are read as a person sees them, with all their digits', async () => {
    const formats = ['0.0" in"', '# ?/?', '[$€-407] #,##0.00', 'd-mmm', '0.00E+00', '[h]:mm', '"about "0', '0\\"'];
    const cell = (ref: string, style: number, value: string): string =>
      `<c r="${ref}" s="${style}"><v>${value}</v></c>`;
    const rows = [
      '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="D1" t="b"><v>1</v></c><c r="E1" t="e"><v>#REF!</v></c></row>',
      `<row>${cell('A2', 1, '26.375')}${cell('B2', 2, '26.375')}${cell('C2', 3, '1250.5')}${cell('D2', 4, '46089')}${cell('E2', 5, '12345')}</row>`,
      `<row>${cell('A3', 6, '1.5')}${cell('B3', 7, '18')}${cell('C3', 8, '26')}${cell('D3', 9, '46089')}${cell('E3', 10, '0.2')}</row>`,
      '<row r="5"><c t="inlineStr"><is><r><t>rich </t></r><r><t>text</t></r><rPh><t>no</t></rPh></is></c><c r="C5"><v>26.300000000000001</v></c><c t="str"><v>x_x000D_y</v></c></row>',
    ].join('');
    const sharedTexts = [
      '<t xml:space="preserve"> a &amp; b </t>',
      '<r><t>c</t></r><rPh><t>zz</t></rPh><r><t>d</t></r>',
    ];
    expect(await rowsOf(workbook({ sheets: { A: rows }, formats, sharedTexts }))).toEqual([
      [' a & b ', 'cd', '', 'TRUE', '#REF!'],
      ['26.375 in', '26.375', '€1250.5', markedDate('2026-03-08'), '12345'],
      [markedDate('1899-12-31'), 'about 18', '26"', markedDate('2026-03-08'), '20%'],
      [],
      ['rich text', '', '26.3', 'x\ry'],
    ]);
  });

  test('the day that dates are counted from may be another', async () => {
    const rows = '<row r="1"><c r="A1" s="1"><v>44627</v></c></row>';
    expect(await rowsOf(workbook({ sheets: { A: rows }, workbookPr: 'date1904="1"' }))).toEqual([
      [markedDate('2026-03-08')],
    ]);
  });

  test('a formula is taken by its saved result, marked; one without is left empty and told', async () => {
    const rows =
      '<row r="1"><c r="A1"><f>B1*2</f><v>36</v></c><c r="B1" t="str"><f>HYPERLINK("http://example.invalid")</f><v>x</v></c><c r="C1"><f>NOW()</f></c></row>';
    const file = await read(workbook({ sheets: { A: rows } }));
    expect(file.sheets[0]?.rows).toEqual([[markedFormula('36'), markedFormula('x')]]);
    expect(file.told.join()).toContain('1 formula is without a saved result');
  });

  test('hidden sheets are left out, hidden rows read, and both told', async () => {
    const sheets = {
      Shown: '<row r="1" hidden="1"><c t="inlineStr"><is><t>a</t></is></c></row>',
      Secret: textRow(1, ['b']),
    };
    const file = await read(workbook({ sheets, states: { Secret: 'state="hidden"' } }));
    expect(file.sheets).toEqual([{ name: 'Shown', rows: [['a']] }]);
    expect(file.told).toEqual([
      '“Shown”: 1 hidden row is read like the others.',
      'The sheet “Secret” is hidden: left out.',
    ]);
  });

  test('prefixes of names, comments and CDATA are nothing special', async () => {
    const sheet =
      '<?xml version="1.0"?><x:worksheet xmlns:x="main"><!-- <row> --><x:sheetData><x:row r="1"><x:c r="A1" t="str"><x:v><![CDATA[a<b]]></x:v></x:c></x:row></x:sheetData></x:worksheet>';
    expect(await rowsOf(workbook({ sheets: { A: '' }, instead: { 'xl/worksheets/sheet1.xml': sheet } }))).toEqual([
      ['a<b'],
    ]);
  });

  test('columns that are only coloured in are no columns', async () => {
    const rows =
      '<row r="1"><c r="A1" t="str"><v>a</v></c><c r="XFD1" s="0"/></row><row r="1048576"><c r="A1048576" s="0"/></row>';
    expect(await rowsOf(workbook({ sheets: { A: rows } }))).toEqual([['a']]);
  });
});

describe('XLSX that is refused', () => {
  const plain = { sheets: { A: textRow(1, ['a']) } };
  const sheetXml = (xml: string): Uint8Array => workbook({ ...plain, instead: { 'xl/worksheets/sheet1.xml': xml } });
  const withPart = (name: string, content = 'x'): Uint8Array => workbook({ ...plain, more: [{ name, content }] });
  const damaged = 'wrong-type';

  test('the plain one is read', async () => {
    expect(await refused(workbook(plain))).toBe('read');
  });

  test.each<[string, Uint8Array, string]>([
    ['macros', withPart('xl/vbaProject.bin'), 'a workbook with macros'],
    ['macro sheets', withPart('xl/macrosheets/sheet1.xml', '<x/>'), 'a workbook with macros'],
    [
      'links to other files',
      withPart('xl/externalLinks/externalLink1.xml', '<x/>'),
      'a workbook with links to other files or databases',
    ],
    ['connections', withPart('xl/connections.xml', '<x/>'), 'a workbook with links to other files or databases'],
    ['other files inside', withPart('xl/embeddings/oleObject1.bin'), 'a workbook with other files or controls inside'],
    ['a packed file inside', withPart('xl/media/more.zip'), 'a workbook with another file inside'],
    [
      'binary sheets',
      zip(
        partsOf(plain).map((part) => (part.name === 'xl/workbook.xml' ? { ...part, name: 'xl/workbook.bin' } : part)),
      ),
      'a binary workbook (.xlsb)',
    ],
    [
      'an OpenDocument',
      zip([
        { name: 'mimetype', content: 'x' },
        { name: 'content.xml', content: '<x/>' },
      ]),
      'an OpenDocument spreadsheet (.ods)',
    ],
    ['another packed file', zip([{ name: 'readme.txt', content: 'x' }]), 'another packed file'],
  ])('%s', async (_, bytes, got) => {
    expect(await refused(bytes)).toBe(`wrong-type: ${got}`);
  });

  test('a workbook that says it has macros, whatever is in it', async () => {
    const types =
      '<Types><Override PartName="/xl/workbook.xml" ContentType="application/vnd.ms-excel.sheet.macroEnabled.main+xml"/></Types>';
    expect(await refused(workbook({ ...plain, instead: { '[Content_Types].xml': types } }))).toBe(
      'wrong-type: a workbook with macros',
    );
  });

  test('relations that lead out of the file, but for links to click on', async () => {
    const relations = (type: string): string =>
      `<Relationships><Relationship Id="r1" Type="x/${type}" Target="http://example.invalid" TargetMode="External"/></Relationships>`;
    const name = 'xl/worksheets/_rels/sheet1.xml.rels';
    expect(await refused(withPart(name, relations('externalLinkPath')))).toBe(
      'wrong-type: a workbook with links to other files',
    );
    expect(await refused(withPart(name, relations('hyperlink')))).toBe('read');
  });

  test.each([
    ['a document type', '<!DOCTYPE worksheet><worksheet/>'],
    ['an entity that reads a file', '<!DOCTYPE w [<!ENTITY x SYSTEM "file:///etc/passwd">]><worksheet>&x;</worksheet>'],
    ['entities that grow', '<!DOCTYPE w [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><worksheet>&b;</worksheet>'],
  ])('%s', async (_, xml) => {
    expect(await refused(sheetXml(xml))).toBe('wrong-type: XML with a document type or entities');
  });

  test.each([
    ['an entity that nobody declared', '<worksheet>&constructor;</worksheet>'],
    ['tags that don’t match', '<worksheet><a></b></worksheet>'],
    ['XML cut short', '<worksheet><sheetData><row r="1">'],
    ['XML without an end to its tag', '<worksheet a="1'],
    ['XML in another encoding', '<?xml version="1.0" encoding="UTF-16"?><worksheet/>'],
    ['XML of a thousand levels', '<a>'.repeat(1000) + '</a>'.repeat(1000)],
    ['a cell that is nowhere', '<worksheet><row r="1"><c r="1A"><v>1</v></c></row></worksheet>'],
    ['a text that is not there', '<worksheet><row r="1"><c r="A1" t="s"><v>7</v></c></row></worksheet>'],
    ['a row that is no number', '<worksheet><row r="-1"><c r="A1"><v>1</v></c></row></worksheet>'],
  ])('%s', async (_, xml) => {
    expect(await refused(sheetXml(xml))).toMatch(/^wrong-type: (?!XML with a document)/);
  });

  test.each<[string, string, string]>([
    [
      'a row beyond the limit',
      `<row r="${sheetLimits.rows + 1}"><c r="A${sheetLimits.rows + 1}"><v>1</v></c></row>`,
      `row ${sheetLimits.rows + 1}`,
    ],
    ['a column beyond the limit', '<row r="1"><c r="KO1"><v>1</v></c></row>', 'column 301'],
    [
      'a cell longer than the limit',
      `<row r="1"><c r="A1" t="str"><v>${'x'.repeat(sheetLimits.cell + 1)}</v></c></row>`,
      '10001',
    ],
  ])('%s', async (_, rows, got) => {
    expect(await refused(workbook({ sheets: { A: rows } }))).toBe(`too-large: ${got}`);
  });

  const parts = partsOf(plain);
  const changed = (name: string, change: object): Uint8Array =>
    zip(parts.map((part) => (part.name === name ? { ...part, ...change } : part)));
  const sheet = 'xl/worksheets/sheet1.xml';

  test.each<[string, Uint8Array]>([
    ['a size that is not true', changed(sheet, { unpackedSaid: 10 })],
    ['a check sum that is not true', changed(sheet, { crcSaid: 1 })],
    ['two names for one entry', changed(sheet, { localName: 'xl/worksheets/sheet2.xml' })],
    ['a password', changed(sheet, { flags: 1 })],
    ['an unknown way of packing', changed(sheet, { method: 12 })],
    ['an entry that stands twice', zip([...parts, { name: sheet, content: '<worksheet/>' }])],
    ['an entry that leads out of the file', zip([...parts, { name: '../evil.xml', content: 'x' }])],
    ['a file cut short', workbook(plain).subarray(0, 700)],
    ['something behind its end', Buffer.concat([workbook(plain), Buffer.from('x')])],
    ['bytes that are no deflate', changed('xl/workbook.xml', { stored: true, method: 8 })],
  ])('%s', async (_, bytes) => {
    expect(await refused(bytes)).toMatch(damaged);
  });

  test('a bomb is refused by what it says before it is unpacked, and by what it is where it lies', async () => {
    const noughts = '0'.repeat(30_000_000);
    const bomb = workbook({ sheets: { A: `<row r="1"><c r="A1" t="str"><v>${noughts}</v></c></row>` } });
    expect(bomb.length).toBeLessThan(100_000);
    expect(await refused(bomb)).toMatch(/^too-large: \d+ times$/);
    expect(await refused(changed(sheet, { content: noughts, unpackedSaid: 1000 }))).toBe(
      'wrong-type: an entry that is not what it says',
    );
    const many = Array.from({ length: 60 }, (_, i) => ({
      name: `xl/media/${i}.bin`,
      content: 'x',
      unpackedSaid: 2_000_000,
      method: 8,
    }));
    expect(await refused(zip([...parts, ...many]))).toMatch(/^too-large: 12\d MB$/);
    const entries = Array.from({ length: 1001 }, (_, i) => ({ name: `xl/media/${i}.bin`, content: 'x' }));
    expect(await refused(zip(entries))).toBe('too-large: 1001');
  });

  test('entries that share their bytes are refused', async () => {
    const inner = { name: 'xl/media/inner.bin', content: 'x'.repeat(100) };
    const outer = { name: 'xl/media/outer.bin', content: localEntry(inner), stored: true };
    const start = zip(parts).indexOf(Buffer.from([0x50, 0x4b, 1, 2]));
    expect(await refused(zip([...parts, outer]))).toBe('read');
    const shared = zip([...parts, outer, { ...inner, at: start + 30 + outer.name.length }]);
    expect(await refused(shared)).toBe('wrong-type: entries that overlap');
  });
});

describe('writing', () => {
  const hostile = ['=1+1', '+1', '-1+1', '@SUM(A1)', "=cmd|'/C calc'!A0", '\t=1', ' =1', '"=1', "'=1", '＝1'];
  const rows = [
    ['name', 'figure'],
    ...hostile.map((text) => [text, '-25']),
    ['60" rake; wide, long\nline', '007'],
    ['', '1e5'],
    ['-25 mm', '26.375'],
  ];
  const trimmed = (table: readonly (readonly string[])[]): string[][] =>
    table.map((row) => row.map((cell) => cell.trim()));

  test('CSV: dangerous texts carry an apostrophe, plain numbers do not, everything is quoted', async () => {
    const bytes = await writeCsv(rows);
    const text = Buffer.from(bytes).toString('utf8');
    expect(text.startsWith('\ufeff"name","figure"\r\n"\'=1+1","-25"\r\n')).toBe(true);
    const cells = (parse(text, { bom: true }) as string[][]).flat();
    expect(cells.length).toBe(rows.flat().length);
    for (const cell of cells)
      expect(/^-?\d+(?:\.\d+)?$/.test(cell) || !/^(?:[\s"]*[=+\-@＝]|[\t\r])/.test(cell), cell).toBe(true);
  });

  test('XLSX: everything is text but plain numbers, and no cell is a formula', async () => {
    const bytes = Buffer.from(await writeXlsx([{ name: 'A', rows }]));
    const [{ data } = { data: [] }] = (await readXlsxFile(bytes)) as unknown as { data: unknown[][] }[];
    expect(data[1]).toEqual(['=1+1', -25]);
    expect(data.at(-1)).toEqual(['-25 mm', 26.375]);
    expect(data.at(-2)).toEqual([null, '1e5']);
    expect(data.at(-3)?.[1]).toBe('007');
    expect(bytes.includes(Buffer.from('<f>'))).toBe(false);
    const file = await read(bytes);
    expect(trimmed(file.sheets[0]?.rows ?? [])).toEqual(trimmed(rows));
  });

  test('names of sheets are made ones that spreadsheets take', async () => {
    const bytes = await writeXlsx(['a/b', 'A B', 'x'.repeat(40), '', "'q'"].map((name) => ({ name, rows: [['1']] })));
    const { sheets } = await read(bytes);
    expect(sheets.map(({ name }) => name)).toEqual(['a b', 'A B 2', 'x'.repeat(31), 'Sheet', 'q']);
  });

  test('records of the sample yard come back through either file', async () => {
    const yard = JSON.parse(
      readFileSync(fileURLToPath(new URL('../../../examples/sample-yard.json', import.meta.url)), 'utf8'),
    ) as Record<'tractors' | 'couplers' | 'implements', Record<string, unknown>[]>;
    const records = [
      ...yard.tractors.map((each) => recordOf('tractor', each)),
      ...yard.couplers.map((each) => recordOf('coupler', each)),
      ...yard.implements.map((each) => recordOf('implement', each)),
    ];
    const table = tableOf(records, { units: 'us' });
    for (const bytes of [await writeCsv(table), await writeXlsx([{ name: 'Yard', rows: table }])]) {
      const sheet = (await read(bytes)).sheets[0]?.rows ?? [];
      const { mapping } = guessMapping(sheet);
      const { readings, tally } = readTable(sheet, mapping as NonNullable<typeof mapping>);
      expect(tally).toMatchObject({ records: records.length, errors: 0, told: 0 });
      expect(tableOf(readings.flatMap(({ record }) => record ?? []))).toEqual(table);
    }
  });
});

describe('the nasty yard', () => {
  test('is read as far as it can be, and the rest is told', async () => {
    const file = await read(
      readFileSync(fileURLToPath(new URL('../../../examples/nasty-yard.csv', import.meta.url))),
      'nasty-yard.csv',
    );
    const rows = file.sheets[0]?.rows ?? [];
    const { mapping, asks } = guessMapping(rows, { sheetName: file.sheets[0]?.name ?? '' });
    expect(asks).toEqual([]);
    const { readings, tally } = readTable(rows, mapping as NonNullable<typeof mapping>);
    expect(tally).toMatchObject({ rows: 19, records: 13, skipped: 5, duplicates: 1, refused: 0, errors: 17 });
    const tiller = readings.find(({ record }) => record?.id === 'H-005')?.record;
    expect(tiller?.readings['shoulderSpan']?.leaf).toEqual({ value: '2\' 2 1/4"', from: 'unsaid' });
    expect(tiller?.readings['lowerPinDiameter']?.leaf).toEqual({ value: '22.2 mm', note: 'worn' });
    const blade = readings.find(({ record }) => record?.id === 'H-007')?.record;
    expect(blade?.fields['note']).toBe('=HYPERLINK("http://example.invalid","drawing")');
    const again = await writeCsv(tableOf(readings.flatMap(({ record }) => record ?? [])));
    expect(Buffer.from(again).toString('utf8')).toContain('"\'=HYPERLINK(');
    expect(rows.flat().map(shownText)).toEqual(rows.flat());
  });
});
