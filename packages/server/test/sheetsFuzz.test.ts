import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { guessSheet, readTable } from '@hitchwright/core/exchange';
import { readSheetFile, writeXlsx } from '../src/sheets/index.ts';
import { partsOf, textRow, workbook } from './sheetsWorkbook.ts';
import { zip } from './sheetsZip.ts';

/** A red run can be run again; SHEETS_SEED tries another. */
const seed = Number(process.env['SHEETS_SEED'] ?? 20261126);
const counts = { csv: 1200, packed: 600, parts: 900 } as const;
/** Longest that any file may take: a hang would take for ever [ms]. */
const longest = 20_000;

type Random = (below: number) => number;

/** Mulberry32, by T. Ettinger: small, and the same everywhere. */
function randomFrom(start: number): Random {
  let state = start >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * below);
  };
}

const snippets = [
  '"',
  '""',
  ',',
  ';',
  '\t',
  '\n',
  '\r\n',
  '\0',
  '\ufeff',
  '=1+1',
  '8-Mar',
  '27ish',
  '26-27',
  '__proto__',
  '26 3/8"',
  '1,250',
  '\ue0d12026-03-08',
  '<',
  '&',
  '&amp;',
  '&x;',
  '<!DOCTYPE a>',
  '<f>A1</f>',
  '</c>',
  '<row r="99999">',
  ' r="A1"',
  ' t="s"',
  ' s="9"',
  '<v>1e999</v>',
  '-0',
  'NaN',
  '😀',
  '\ud800',
];

/** One to six changes: bytes turned, cut out, doubled, put in, or the end cut off. */
function mutated(bytes: Buffer, random: Random): Buffer {
  let changed: Buffer = Buffer.from(bytes);
  for (let i = random(6); i >= 0; i -= 1) {
    const at = random(changed.length + 1);
    const size = random(random(4) === 0 ? 400 : 8);
    const [before, after] = [changed.subarray(0, at), changed.subarray(at)];
    const piece = Buffer.from(snippets[random(snippets.length)] ?? '', 'utf8');
    const ways: (() => Buffer)[] = [
      () => Buffer.concat([before, Buffer.from([random(256)]), after.subarray(1)]),
      () => Buffer.concat([before, after.subarray(size)]),
      () => Buffer.concat([before, after.subarray(0, size), after]),
      () => Buffer.concat([before, piece, after]),
      () => Buffer.concat([before, changed.subarray(random(changed.length + 1)).subarray(0, size), after]),
      () => (random(3) === 0 ? before : changed),
    ];
    changed = (ways[random(ways.length)] as () => Buffer)();
  }
  return changed;
}

const yard = readFileSync(fileURLToPath(new URL('../../../examples/nasty-yard.csv', import.meta.url)));
const yardText = yard.toString('utf8');
const csvFiles: readonly Buffer[] = [
  yard,
  Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(yardText, 'utf16le')]),
  Buffer.from(yardText, 'latin1'),
  Buffer.from(yardText.split('\n').slice(3, 12).join('\n').replace(/,/g, ';'), 'utf8'),
];
const plan = {
  sheets: {
    Yard: `${textRow(1, ['Model', 'Mast ht (in)', 'Weight', 'Date'])}${textRow(2, ['Harl rake', '18', '330 lb', '?'])}<row r="3"><c r="A3" t="s"><v>0</v></c><c r="B3" s="1"><v>20.5</v></c><c r="C3"><f>1+1</f><v>2</v></c><c r="D3" s="2"><v>46089</v></c></row>`,
    More: textRow(1, ['Customer', 'Phone']),
  },
  sharedTexts: ['<t>Tarn ripper</t>'],
  formats: ['0.0" in"', 'd-mmm'],
};

/** Reads a file to its last row; whatever happens has to be sheets or input errors. */
async function readWhole(bytes: Uint8Array): Promise<'read' | 'refused'> {
  const started = performance.now();
  const reading = await readSheetFile(bytes, 'fuzz');
  if (!reading.ok) {
    expect(reading.errors.length).toBeGreaterThan(0);
    for (const { code, expected, got, hint } of reading.errors)
      expect([code, expected, got, hint].every((text) => text !== '')).toBe(true);
  } else {
    const { guesses } = guessSheet(reading.file.sheets);
    guesses.forEach(({ mapping }, i) => {
      if (mapping === null) return;
      const { readings } = readTable(reading.file.sheets[i]?.rows ?? [], mapping);
      for (const { errors } of readings)
        for (const { hint, path } of errors) expect(hint !== '' && path !== '').toBe(true);
    });
  }
  expect(performance.now() - started).toBeLessThan(longest);
  return reading.ok ? 'read' : 'refused';
}

async function tally(
  count: number,
  made: (random: Random) => Uint8Array,
  start: number,
): Promise<Record<'read' | 'refused', number>> {
  const seen = { read: 0, refused: 0 };
  const random = randomFrom(start);
  for (let i = 0; i < count; i += 1) {
    const bytes = made(random);
    try {
      seen[await readWhole(bytes)] += 1;
    } catch (problem) {
      throw new Error(`File ${i} of seed ${start}: ${Buffer.from(bytes).toString('base64').slice(0, 4000)}`, {
        cause: problem,
      });
    }
  }
  return seen;
}

describe('damaged and hostile files', () => {
  test(`${counts.csv} mutated CSV files give sheets or input errors`, { timeout: 600_000 }, async () => {
    const seen = await tally(
      counts.csv,
      (random) => mutated(csvFiles[random(csvFiles.length)] as Buffer, random),
      seed,
    );
    expect(seen.read).toBeGreaterThan(counts.csv / 4);
    expect(seen.refused).toBeGreaterThan(10);
  });

  test(`${counts.packed} mutated XLSX files give sheets or input errors`, { timeout: 600_000 }, async () => {
    const rows = yardText
      .split('\n')
      .slice(0, 9)
      .map((line) => line.split(','));
    const files = [workbook(plan), Buffer.from(await writeXlsx([{ name: 'Yard', rows }]))];
    const seen = await tally(
      counts.packed,
      (random) => mutated(files[random(files.length)] as Buffer, random),
      seed + 1,
    );
    expect(seen.refused).toBeGreaterThan(counts.packed / 2);
  });

  test(
    `${counts.parts} XLSX files with mutated parts inside give sheets or input errors`,
    { timeout: 600_000 },
    async () => {
      const parts = partsOf(plan);
      const made = (random: Random): Buffer => {
        const chosen = random(parts.length);
        return zip(
          parts.map((part, i) =>
            i === chosen ? { ...part, content: mutated(Buffer.from(String(part.content)), random) } : part,
          ),
        );
      };
      const seen = await tally(counts.parts, made, seed + 2);
      expect(seen.read).toBeGreaterThan(counts.parts / 10);
      expect(seen.refused).toBeGreaterThan(counts.parts / 10);
    },
  );
});
