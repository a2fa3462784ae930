import type { Dimension } from '../../../units/index.ts';
import { unitOf } from '../headings/headingUnit.ts';
import { hasOddFraction, takeFigure, type Figure } from './figure.ts';
import { plainText } from './plainText.ts';

/** One amount: a figure, perhaps with its tolerance, or the two figures that it lies between. */
export interface Amount {
  readonly figures: readonly [Figure] | readonly [Figure, Figure];
  readonly plusMinus: Figure | null;
}

/** What a cell says of a quantity. */
export interface Phrase {
  readonly shape: 'amount' | 'adjustable' | 'holes';
  /** One amount; the two ends of what somebody can set; or one for each hole. */
  readonly amounts: readonly Amount[];
  readonly perPosition: boolean;
  /** The word that says it is not exact, such as `ish`. */
  readonly approximate: string | null;
  /** The same figure in another unit, to be held against the first. */
  readonly again: Figure | null;
  readonly note: string | null;
}

/** Why a cell can't be taken apart. */
export interface Problem {
  readonly code: 'not-a-quantity' | 'ambiguous' | 'wrong-unit';
  readonly hint: string;
}

/** Whether taking a cell apart failed. */
export function isProblem(result: object): result is Problem {
  return 'hint' in result;
}

const twoFigures: Problem = {
  code: 'ambiguous',
  hint: 'Two figures stand here: keep one, or write a range as 26-27 in; put anything else in brackets.',
};
const oneEnd: Problem = { code: 'ambiguous', hint: 'Only one end is given: write both, as in 26-28 in.' };
const noFigure: Problem = {
  code: 'not-a-quantity',
  hint: 'Write one figure with its unit; put a note in brackets behind it.',
};
const loneBracket: Problem = {
  code: 'ambiguous',
  hint: 'A figure in brackets may be negative or a note: write it without.',
};
/** No figure is longer than this with all that is said about it [characters]. */
const longestText = 300;
const tooLong: Problem = {
  code: 'not-a-quantity',
  hint: 'This is too long for a figure: keep the figure, and a short note in brackets.',
};
const oddFraction: Problem = {
  code: 'ambiguous',
  hint: 'No tape has such a fraction: are these two figures? Keep one, or write a range as 26-27 in.',
};

const oneSided =
  /^(?:[<>≤≥]|(?:up to|at least|at most|less than|more than|over|under|above|below|min|max|minimum|maximum)\b)|(?:\+|(?<![/\w])(?:min|max|minimum|maximum|or more|or less|plus))\.?$/i;

/** Takes apart what a cell says of a quantity: which figures, how sure, and what else stands there. Nothing is dropped. */
export function phraseOf(text: string, dimension: Dimension): Phrase | Problem {
  if (text.length > longestText) return tooLong;
  const bracket = withoutBracket(plainText(text));
  if (bracket.before === '' && bracket.inner !== null) return loneBracket;
  const loose = withoutHedges(bracket.before);
  if (oneSided.test(loose.text)) return oneEnd;
  const body = bodyOf(loose.text, dimension);
  if (isProblem(body)) return body;
  const inner = innerOf(bracket.inner, dimension);
  const hedge = loose.hedge ?? inner.hedge;
  if (body.again !== null && inner.again !== null) return twoFigures;
  const note = [body.note, inner.note].filter((each) => each !== null).join('; ');
  return { ...body, approximate: hedge, again: body.again ?? inner.again, note: note === '' ? null : note };
}

/** Metric horsepower is written hp (metric). */
const isPartOfUnit = /^(?:m|metric)$/i;

function withoutBracket(text: string): { before: string; inner: string | null } {
  const [, before, inner] = /^(.*?) ?[([]([^()[\]]*)[)\]]\.?$/.exec(text) ?? [];
  if (before === undefined || isPartOfUnit.test(inner ?? '')) return { before: text, inner: null };
  return { before, inner: (inner ?? '').trim() };
}

/** A bracket holds a doubt, the same figure in another unit, or a note. */
function innerOf(
  inner: string | null,
  dimension: Dimension,
): { hedge: string | null; again: Figure | null; note: string | null } {
  const nothing = { hedge: null, again: null, note: null };
  if (inner === null || inner === '') return nothing;
  const hedged = withoutHedges(`${inner} `);
  if (hedged.text === '' && hedged.hedge !== null) return { ...nothing, hedge: hedged.hedge };
  const taken = takeFigure(inner, dimension);
  const isFigure = taken !== null && taken.rest.trim() === '' && taken.figure.unit !== null;
  return isFigure ? { ...nothing, again: taken.figure } : { ...nothing, note: inner };
}

const hedgesBefore =
  /^(about|approximately|approx\.?|appr\.?|circa|ca\.?|c\.|roughly|around|estimated|est\.?|say|maybe|probably|guess(?:ed)?|~|≈|∼)(?=[^a-z]) ?/i;
const hedgesBehind =
  / ?(-?ish|\?+|or so|and a bit|approximately|approx\.?|estimated|est\.?|give or take|roughly|guess(?:ed)?)[ .]*$/i;
const hedgeWithin = /(?<=[\d"'¼-¾⅐-⅞]) ?-?ish\b/i;

/** A text without the words that say it is not exact. */
function withoutHedges(text: string): { text: string; hedge: string | null } {
  let rest = text;
  let hedge: string | null = null;
  for (const pattern of [hedgesBefore, hedgesBehind, hedgeWithin, hedgesBehind]) {
    const found = pattern.exec(rest);
    if (found === null) continue;
    hedge ??= found[0].trim();
    rest = rest.replace(pattern, '').trim();
  }
  return { text: rest, hedge };
}

type Body = Omit<Phrase, 'approximate'>;

function bodyOf(text: string, dimension: Dimension): Body | Problem {
  const [settable, perPosition] = [/,? per position$/i.test(text), text.replace(/,? per position$/i, '')];
  const adjustable = /^(?:adjustable|adj\.?|settable)(?: from)? (.+?) (?:to|-) (.+)$/i.exec(perPosition);
  if (adjustable !== null) return severalOf('adjustable', adjustable.slice(1), settable, dimension);
  const between = /^(?:adjustable|adj\.?|settable) between (.+) and (.+)$/i.exec(perPosition);
  if (between !== null) return severalOf('adjustable', between.slice(1), settable, dimension);
  const holes = /^holes?(?: at)? (.+)$/i.exec(perPosition);
  if (holes !== null) return severalOf('holes', (holes[1] as string).split(/; ?/), settable, dimension);
  return oneOf(text, dimension);
}

function severalOf(
  shape: Phrase['shape'],
  texts: readonly string[],
  perPosition: boolean,
  dimension: Dimension,
): Body | Problem {
  const amounts: Amount[] = [];
  for (const text of texts) {
    const body = oneOf(text.trim(), dimension);
    if (isProblem(body)) return body;
    if (body.note !== null || body.again !== null) return noFigure;
    amounts.push(...body.amounts);
  }
  return { shape, amounts, perPosition, again: null, note: null };
}

const rangeSign = /^ ?(?:-|to\b|thru\b|through\b|\.{2,3}) ?(?=[\d.,+¼-¾⅐-⅞-])/i;
const toleranceSign = /^ ?(?:±|\+ ?\/? ?-|plus or minus\b) ?/i;

/** One amount with what follows it. */
function oneOf(text: string, dimension: Dimension): Body | Problem {
  const [, low, high] = /^(?:between|from) (.+?) (?:and|to) (.+)$/i.exec(text) ?? [];
  const said = low === undefined ? text : `${low} to ${high as string}`;
  const first = takeFigure(said, dimension);
  if (first === null) return noFigure;
  const second = ranged(first.rest, dimension);
  const [figures, afterFigures] =
    second === null ? [[first.figure] as const, first.rest] : [[first.figure, second.figure] as const, second.rest];
  const tolerance = tolerated(afterFigures, dimension);
  const rest = tolerance === null ? afterFigures : tolerance.rest;
  const amount = amountOf(figures, tolerance?.figure ?? null);
  return isProblem(amount) ? amount : withRest(amount, rest, dimension);
}

/** `26-27 in` and `683 ± 2 mm` say the unit once for both. */
function amountOf(figures: Amount['figures'], plusMinus: Figure | null): Amount | Problem {
  const [first, second] = figures;
  const all = [first, second, plusMinus].filter((figure) => figure != null);
  if (all.some(hasOddFraction)) return oddFraction;
  if (second !== undefined) return plusMinus === null ? rangeOf(first, second) : twoFigures;
  if (plusMinus === null) return { figures: [first], plusMinus };
  const figure = { ...first, unit: first.unit ?? shareable(plusMinus.unit) };
  const inches = figure.unit === '' ? 'in' : figure.unit;
  return { figures: [figure], plusMinus: { ...plusMinus, unit: plusMinus.unit ?? inches } };
}

/** The ends of a range are in one unit: in two they say the same figure twice, or two figures. */
function rangeOf(low: Figure, high: Figure): Amount | Problem {
  const named = [low.unit, high.unit].map((unit) => (unit === null || unit === '' ? null : unitOf(unit)?.unit));
  if (named[0] != null && named[1] != null && named[0] !== named[1]) return twoFigures;
  const figures = [
    { ...low, unit: low.unit ?? shareable(high.unit) },
    { ...high, unit: high.unit ?? shareable(low.unit) },
  ] as const;
  return { figures, plusMinus: null };
}

/** A unit that holds for the figure beside it too; feet and inches carry their own marks. */
function shareable(unit: string | null): string | null {
  return unit === '' ? null : unit;
}

function ranged(rest: string, dimension: Dimension) {
  const found = rangeSign.exec(rest);
  return found === null ? null : takeFigure(rest.slice(found[0].length), dimension);
}

function tolerated(rest: string, dimension: Dimension) {
  const found = toleranceSign.exec(rest);
  return found === null ? null : takeFigure(rest.slice(found[0].length), dimension);
}

/** What follows an amount: nothing, the same in another unit, or a note set apart from it. */
function withRest(amount: Amount, rest: string, dimension: Dimension): Body | Problem {
  const body: Body = { shape: 'amount', amounts: [amount], perPosition: false, again: null, note: null };
  const left = rest.trim();
  if (left === '') return body;
  const isApart = /^[,;:/=-]/.test(left);
  const words = left.replace(/^[,;:/=-]+ ?/, '');
  const hasUnit = amount.figures[0].unit !== null;
  if (/\d/.test(words)) {
    const again = takeFigure(words, dimension);
    const isWhole = isApart && hasUnit && again !== null && again.rest.trim() === '' && again.figure.unit !== null;
    return isWhole && !left.startsWith('-') ? { ...body, again: again.figure } : twoFigures;
  }
  if (hasUnit || isApart) return { ...body, note: words };
  const [unknown = ''] = words.split(' ');
  return { code: 'wrong-unit', hint: `“${unknown.slice(0, 20)}” is no unit known here; put a note in brackets.` };
}
