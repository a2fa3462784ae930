import { chartHtml, chartOf, type Chart, type ChartCell, type ChartProgress } from '@hitchwright/core/handover';
import { parseSetup, type InputError, type SetupDocument, type YardDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { askedFor, readText, refuse, type Asked } from '../asked.ts';
import { writeOut } from '../drawing.ts';
import { UsageError } from '../exit.ts';
import { entries, wrapped } from '../lines.ts';
import { visible, visibleJson } from '../visible.ts';
import { dateAsked, outAsked, paperAsked } from './printed.ts';

/** `hitchwright chart FILE`: every implement of a yard with every coupler, tractor by tractor. */
export async function chartCommand(words: readonly string[]): Promise<number> {
  const asked = askedFor('chart', words, ['tractor', 'left-out', 'date', 'out', 'paper']);
  const out = asked.files['out'] === undefined ? null : outAsked('chart', { ...asked, json: false }, ['html', 'pdf']);
  const [date, paper] = [dateAsked(asked), paperAsked(asked)];
  const leftOut = leftOutAsked(asked);
  const reading = readYard(asked.file);
  if (!reading.ok) return refuse(reading.errors, asked.json, 'yard');
  const { tractor } = asked.files;
  const system = systemOf(asked, reading.yard);
  const options = { system, date, leftOut, ...(tractor === undefined ? {} : { tractor }) };
  const result = chartOf(reading.yard, options, process.stderr.isTTY ? told : undefined);
  if (!result.ok) return refuse(result.errors, asked.json, 'yard');
  if (out !== null)
    writeOut(out.file, out.format === 'html' ? chartHtml(result.chart) : await pdfOf(result.chart, paper));
  process.stdout.write(
    asked.json ? visibleJson(`${JSON.stringify({ hitchwright: 1, ...result.chart }, null, 2)}\n`) : text(result.chart),
  );
  return 0;
}

/** What of the whole yard is not in it, in sentences of whoever asks; nothing where the yard is all there is. */
function leftOutAsked({ files }: Asked): readonly string[] {
  const text = files['left-out']?.trim();
  if (text === '') throw new UsageError('--left-out takes sentences, such as "Only implements called rake."');
  return text === undefined ? [] : [text];
}

/** The writer is large: whoever wants no PDF never loads it. */
async function pdfOf(chart: Chart, paper: 'letter' | 'a4'): Promise<Uint8Array> {
  const { bundledFonts, chartPdf } = await import('@hitchwright/print');
  return (await chartPdf(chart, { fonts: bundledFonts, paper })).bytes;
}

function systemOf({ units }: Asked, yard: YardDocument): UnitSystem {
  return units ?? yard.units ?? 'us';
}

/** A yard takes a while: where somebody watches, the terminal says how far it is. */
function told({ done, total }: ChartProgress): void {
  process.stderr.write(`\r${done} of ${total}${done === total ? '\n' : ''}`);
}

type YardReading =
  { readonly ok: true; readonly yard: YardDocument } | { readonly ok: false; readonly errors: readonly InputError[] };

function readYard(file: string): YardReading {
  try {
    return yardFrom(parseSetup(readText(file)));
  } catch (problem) {
    if (!(problem instanceof SyntaxError)) throw problem;
    return {
      ok: false,
      errors: [
        {
          code: 'not-json',
          path: '',
          expected: 'a yard in JSON',
          got: 'a text that is none',
          hint: 'Check commas, quotes and brackets.',
        },
      ],
    };
  }
}

const lists = ['tractors', 'couplers', 'implements'] as const;

/** A yard by its lists; what stands in them is checked record by record. */
function yardFrom(document: unknown): YardReading {
  const record = isRecord(document) ? document : {};
  const errors = [...lists, ...(record['parts'] === undefined ? [] : ['parts'])].flatMap((path): InputError[] => {
    const list = record[path];
    if (Array.isArray(list) && list.every(isRecord)) return [];
    const hint = 'A yard holds tractors, couplers and implements, each in a list.';
    return [{ code: 'wrong-type', path, expected: 'a list of records', got: 'something else, or nothing', hint }];
  });
  return errors.length > 0 ? { ok: false, errors } : { ok: true, yard: record as unknown as YardDocument };
}

function isRecord(node: unknown): node is SetupDocument {
  return typeof node === 'object' && node !== null && !Array.isArray(node);
}

function text({ title, date, countText, tables, notes, cautions }: Chart): string {
  const blocks = tables.map(({ tractor, columns, rows, countText: counted }) =>
    [
      `${visible(tractor).toUpperCase()}: ${counted}`,
      ...rows.flatMap(({ implement, cells }) => [
        `  ${visible(implement)}`,
        ...cells.flatMap((cell, i) => wrapped(visible(`${columns[i] ?? ''}: ${cellText(cell)}`), 4)),
      ]),
    ].join('\n'),
  );
  const head = `${visible(title)}, ${date}\n${countText}`;
  return `${[head, ...blocks, ['Mind', ...entries([...notes, ...cautions])].join('\n')].join('\n\n')}\n`;
}

function cellText({ verdict, reason, measure }: ChartCell): string {
  const asks = measure.length === 0 ? '' : `; measure: ${measure.join(', ')}`;
  return `${verdict.toUpperCase()}${reason === '' ? '' : ` – ${reason}`}${asks}`;
}
