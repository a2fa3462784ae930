import { isRefused, readingText, refuseAmbiguous } from './attempt.ts';
import type { Attempt, Reading, ReadOptions, RefusalCode, Refused } from './attempt.ts';
import { unitNameIn } from './dimensions.ts';
import { figureIn } from './figure.ts';
import { unitNamed } from './findUnit.ts';
import { readText } from './readText.ts';
import { expectedText, isInRange, outOfRangeHint, refuseFigure } from './refusal.ts';
import { excerpt, tidy } from './tidy.ts';

/** A figure that was read, or why it was refused and what to do about it. */
export type ReadResult =
  | { readonly ok: true; readonly value: number; readonly unit: string }
  | {
      readonly ok: false;
      readonly code: RefusalCode;
      readonly expected: string;
      readonly got: string;
      readonly hint: string;
      readonly readings?: readonly string[];
    };

const longestText = 200;
const notFinite: Refused = { code: 'not-finite', hint: 'Give a finite number.' };
const severalMeanings = 'Write it so that it has one meaning.';

/**
 * Reads what a person typed, or a number from a record, as a quantity. It never throws and never guesses between two meanings.
 *
 * @param text what was typed, up to 200 characters, e.g. `26 7/8"`, `2' 2 7/8"`, `68,3 cm`; or a number, which is in the canonical unit [name]
 * @param options the dimension, the range that the field takes [canonical unit] and the system to assume where no unit is written
 * @returns the value [canonical unit of the dimension] and the unit read; or a refusal by code: `empty`, `not-a-quantity`, `wrong-unit`, `ambiguous` (with
 *   the readings), `out-of-range` (the hint asks about another unit where the same figure would fit) or `not-finite`
 * @example readQuantity('26 7/8"', { dimension: 'length' }) // { ok: true, value: 682.625, unit: 'in' }
 * @source nist-sp-811 (2008), appendix B, for the factors in factors.ts
 */
export function readQuantity(text: string | number, options: ReadOptions): ReadResult {
  const got = excerpt(String(text));
  return typeof text === 'number'
    ? readNumber(text, got, { ...options, assume: 'metric' })
    : readTyped(text, got, options);
}

function readNumber(value: number, got: string, options: ReadOptions): ReadResult {
  if (!Number.isFinite(value)) return refusal(notFinite, got, options);
  const unit = unitNamed(unitNameIn('metric', options.dimension));
  const figure = { text: String(Math.abs(value)), denominator: 1, label: got };
  if (isInRange(value, options)) return { ok: true, value: value + 0, unit: unit.name };
  return refuseRange({ figure, unit, unitRead: unit.name, written: false }, Math.sign(value), got, options);
}

function readTyped(text: string, got: string, options: ReadOptions): ReadResult {
  if (text.length > longestText) return refusal(refuseFigure('', options.dimension), got, options);
  const tidied = tidy(text);
  if (tidied === '') return refusal({ code: 'empty', hint: 'Nothing was written.' }, got, options);
  if (/^[-+]? ?(nan|inf|infinity|∞)$/i.test(tidied)) return refusal(notFinite, got, options);
  const sign = tidied.startsWith('-') ? -1 : 1;
  return settle(readText(tidied.replace(/^[-+] ?/, ''), options), sign, got, options);
}

/** Chooses the one reading that the field's range leaves, or refuses. */
function settle(attempt: Attempt, sign: number, got: string, options: ReadOptions): ReadResult {
  if (isRefused(attempt)) return refusal(attempt, got, options);
  const [first] = attempt;
  if (first === undefined) return refusal(refuseFigure('', options.dimension), got, options);
  const fitting = attempt.filter((reading) => isInRange(valueOf(reading, sign), options));
  const [only] = fitting;
  if (only === undefined) return refuseRange(first, sign, got, options);
  return fitting.length === 1 ? accept(only, sign, got, options) : refuseSeveral(fitting, sign, got, options);
}

/** `+ 0` turns −0 into 0. */
function valueOf(reading: Reading, sign: number): number {
  return sign * figureIn(reading.figure, reading.unit) + 0;
}

function accept(reading: Reading, sign: number, got: string, options: ReadOptions): ReadResult {
  const value = valueOf(reading, sign);
  return Number.isFinite(value) ? { ok: true, value, unit: reading.unitRead } : refusal(notFinite, got, options);
}

function refuseSeveral(readings: readonly Reading[], sign: number, got: string, options: ReadOptions): ReadResult {
  const minus = sign < 0 ? '−' : '';
  const texts = readings.map((reading) => minus + readingText(reading));
  return refusal(refuseAmbiguous(texts, severalMeanings), got, options);
}

function refuseRange(reading: Reading, sign: number, got: string, options: ReadOptions): ReadResult {
  const hint = outOfRangeHint(reading.figure, sign, reading.unit, options);
  return refusal({ code: 'out-of-range', hint }, got, options);
}

function refusal(refused: Refused, got: string, options: ReadOptions): ReadResult {
  return { ok: false, expected: expectedText(options), got, ...refused };
}
