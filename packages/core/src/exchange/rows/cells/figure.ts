import type { Dimension } from '../../../units/index.ts';
import { unitOf } from '../headings/headingUnit.ts';

/** One figure of a cell as typed: its digits, and its unit where one is written. Feet and inches carry their own marks. */
export interface Figure {
  readonly digits: string;
  readonly unit: string | null;
}

/** A figure at the start of a text, and what follows it. */
interface Taken {
  readonly figure: Figure;
  readonly rest: string;
}

const fraction = String.raw`\d{1,6}\/\d{1,6}`;
const glyph = '[¼-¾⅐-⅞]';
const whole = String.raw`\d{1,3}(?: \d{3})+(?:[.,]\d+)?|\d+(?:[.,]\d+)*`;
const plain = String.raw`(?:(?:${whole})(?:[ -]${fraction}| ?${glyph})|${fraction}|${whole}|[.,]\d+|${glyph})`;
const sign = '[-+]? ?';
const feet = new RegExp(
  String.raw`^(${sign}\d+(?:[.,]\d+)?(?: ${fraction}| ?${glyph})? ?(?:'|(?:ft|feet|foot)(?![a-z])\.?)(?:[ -]*${plain} ?(?:"|(?:inches|inch|in)(?![a-z])\.?)?)?)`,
  'i',
);
const figureAtStart = new RegExp(`^(${sign}${plain})`);

/** Takes the figure that a text starts with, with its unit; null where it starts with none. */
export function takeFigure(text: string, dimension: Dimension): Taken | null {
  const inFeet = dimension === 'length' ? feet.exec(text)?.[1] : undefined;
  if (inFeet !== undefined) return { figure: { digits: inFeet.trim(), unit: '' }, rest: text.slice(inFeet.length) };
  const digits = figureAtStart.exec(text)?.[1];
  if (digits === undefined) return null;
  const after = text.slice(digits.length);
  const unit = unitAtStart(after, dimension);
  const figure = { digits: digits.trim(), unit: unit === null ? null : unit.trim() };
  return { figure, rest: after.slice(unit?.length ?? 0) };
}

const words = /^ ?[a-z°#][a-z°/·.⋅*-]*(?: [a-z(][a-z/·.)-]*){0,2}/i;
const mark = /^ ?["'°#]/;
const letters = /^ ?[a-z°]+(?:[/·][a-z]+)?\.?/i;

/** The unit that a text starts with: the longest that is one, of the dimension looked for if there is one. */
function unitAtStart(text: string, dimension: Dimension): string | null {
  const run = words.exec(text)?.[0] ?? '';
  const parts = run.trimStart().split(' ');
  const lead = run.length - run.trimStart().length;
  const runs = parts.map((_, i) => run.slice(0, lead + parts.slice(0, parts.length - i).join(' ').length));
  const found = [...runs, letters.exec(text)?.[0] ?? '', mark.exec(text)?.[0] ?? ''].filter(
    (each) => each.trim() !== '',
  );
  const fitting = found.find((each) => unitOf(each)?.dimension === dimension);
  return fitting ?? found.find((each) => isUnitOfElse(each)) ?? null;
}

/** A unit of something else stands where the unit belongs, such as `kg` behind a length; a single letter may be anything. */
function isUnitOfElse(text: string): boolean {
  const unit = unitOf(text);
  return unit !== null && unit.dimension !== 'money' && text.trim().length > 1;
}

const denominators = new Set([2, 3, 4, 5, 8, 10, 16, 32, 64, 128]);

/** Whether a fraction in a figure is one that no tape has, such as 22/28: then two figures may be meant. */
export function hasOddFraction({ digits }: Figure): boolean {
  const [, bottom] = /\/(\d+)/.exec(digits) ?? [];
  return bottom !== undefined && !denominators.has(Number(bottom));
}

/** Whether a figure has a fraction in it, which nobody writes in millimetres. */
export function hasFraction({ digits }: Pick<Figure, 'digits'>): boolean {
  return /[/¼-¾⅐-⅞]/.test(digits);
}
