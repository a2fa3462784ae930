import { markedDate } from '@hitchwright/core/exchange';
import { limits } from '../limits.ts';
import { tooMuch } from '../trouble.ts';
import { Scanner } from './scan.ts';

/** How a number is shown: as a date, in hundredths, or with what stands before and behind it. */
export interface NumberFormat {
  readonly isDate: boolean;
  readonly isPercent: boolean;
  readonly before: string;
  readonly behind: string;
}

const general: NumberFormat = { isDate: false, isPercent: false, before: '', behind: '' };

/** Numbers of the formats that are dates or times without being written in the file. Source: ECMA-376-1, 18.8.30 (numFmt). */
const builtInDates: ReadonlySet<number> = new Set([
  ...range(14, 22),
  ...range(27, 36),
  ...range(45, 47),
  ...range(50, 58),
]);

function range(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

/** The number format of every cell style of a workbook, in the order of the styles. */
export function readFormats(xml: string): readonly NumberFormat[] {
  const scanner = new Scanner(xml);
  const written = new Map<number, NumberFormat>();
  const styles: NumberFormat[] = [];
  let inside = false;
  for (let token = scanner.next(); token !== 'end'; token = scanner.next()) {
    if (scanner.name === 'cellXfs' && token !== 'text') inside = token === 'open';
    if (token !== 'open') continue;
    const id = Number(scanner.attribute('numFmtId') ?? '0');
    if (scanner.name === 'numFmt') written.set(id, formatOf(scanner.attribute('formatCode') ?? ''));
    if (scanner.name === 'xf' && inside) styles.push(written.get(id) ?? builtIn(id));
    if (styles.length + written.size > limits.formats) throw tooMuch(`at most ${limits.formats} cell styles`, 'more');
  }
  return styles;
}

function builtIn(id: number): NumberFormat {
  if (builtInDates.has(id)) return { ...general, isDate: true };
  return id === 9 || id === 10 ? { ...general, isPercent: true } : general;
}

/** A format as it is written, such as `0.0" in"`, `d-mmm` or `0%`: only its first part is for numbers above nought. */
function formatOf(code: string): NumberFormat {
  const [first = ''] = code.slice(0, 300).split(/;(?=(?:[^"]*"[^"]*")*[^"]*$)/);
  const bare = first
    .replace(/"[^"]*"|\\./g, '')
    .replace(/\[(?!(?:h+|m+|s+)\])[^\]]*\]/gi, '')
    .replace(/[_*]./g, '');
  if (/[dmyhs]/i.test(bare) && !/[0#?]/.test(bare.replace(/\.0+/g, ''))) return { ...general, isDate: true };
  const [, before = '', behind = ''] =
    /^((?:"[^"]*"|\\.|\[[^\]]*\]|[_*].|[^0#?])*)[0#?][0#?.,/ E+-]*(.*)$/.exec(first) ?? [];
  return { isDate: false, isPercent: /%/.test(bare), before: literal(before), behind: literal(behind) };
}

/** The letters and signs that a part of a format shows as they stand; a currency’s sign stands in a bracket. */
function literal(part: string): string {
  const shown = [...part.matchAll(/"([^"]*)"|\\(.)|\[\$([^\]-]*)[^\]]*\]|([€£$])/g)].map((found) =>
    found.slice(1).join(''),
  );
  const text = shown.join('');
  return text.trim().length <= 12 ? text : '';
}

/** A number of a cell as a person sees it, but with all its digits; a date is marked. */
export function shownNumber(value: number, format: NumberFormat, is1904: boolean): string {
  if (format.isDate) return shownDate(value, is1904);
  const digits = plainDigits(format.isPercent ? value * 100 : value);
  return `${format.before}${digits}${format.isPercent ? '%' : ''}${format.behind}`.trim();
}

/** Fifteen digits are what spreadsheets keep: 26.300000000000001 is 26.3. */
function plainDigits(value: number): string {
  const text = String(Number(value.toPrecision(15)));
  return text.includes('e') ? String(Number(value.toPrecision(15)).toFixed(20)).replace(/\.?0+$/, '') : text;
}

const dayMs = 86_400_000;
/** Days from 1899-12-30 to 1970-01-01, and from there to the other day that some workbooks count from. */
const daysTo1970 = 25_569;
const daysTo1904 = 1462;
const lastDay = 2_958_465;

function shownDate(serial: number, is1904: boolean): string {
  const days = serial + (is1904 ? daysTo1904 : 0);
  if (!(days >= 1) || days > lastDay) return plainDigits(serial);
  return markedDate(new Date(Math.floor(days - daysTo1970) * dayMs).toISOString().slice(0, 10));
}
