import { fieldRules, type SetupDocument } from '../../records/index.ts';
import type { Tool } from '../advice/index.ts';
import { add, interval, type Interval } from '../geometry/index.ts';
import { agreementOf, type Agreement } from './agreement.ts';
import { besideOf, givenAt, knownAt, signOf } from './known.ts';
import { fieldOfPart } from './parts.ts';
import { slantOf } from './slant.ts';
import type { Way } from './way.ts';
import { wayQuestion } from './ways.ts';

/** One number as a person typed it. */
export interface Typed {
  readonly text: string;
  /** [canonical unit] */
  readonly value: number;
}

/** Everything that was read for one figure. */
export interface Taking {
  /** The field, or one end of what can be set: `tractor.ballSpan.adjustable.between.0`. */
  readonly path: string;
  readonly typed: readonly [Typed, ...Typed[]];
  /** Key of the way that it was read; none where nobody was asked. */
  readonly way?: string;
  /** What it was read with, where another tool than usual. */
  readonly tool?: Tool;
  /** What was read may not have stood level. */
  readonly aslant?: boolean;
}

/** What a taking comes to. */
export type Taken =
  | {
      readonly ok: true;
      readonly range: Interval;
      readonly agreement: Agreement;
      readonly from?: string;
      /** The way, in words, where it was no plain reading. */
      readonly method?: string;
      /** What the figure was read with or taken from, where not the usual tool. */
      readonly tool?: Tool;
      /** Figures beside it that it was worked out with and that nobody has read. */
      readonly unread: readonly string[];
    }
  | { readonly ok: false; readonly hint: string; readonly instead?: string };

/**
 * What was read, turned into the field’s own figure with everything that it leaves open, as far as the field takes it.
 *
 * @param document the setup as far as it is known [JSON]
 * @param taking what was read, and how [record]
 * @returns the range [canonical unit], or why nothing follows and what to read instead [text]
 */
export function takenAs(document: SetupDocument, taking: Taking): Taken {
  const field = fieldOfPart(taking.path);
  const way = wayOf(taking);
  if (way === undefined && taking.way !== undefined) return { ok: false, hint: noSuchWay };
  if (way?.kind === 'again') return { ok: false, hint: way.hint };
  if (way?.kind === 'other') return { ok: false, hint: way.hint, instead: besideOf(field, way.field) };
  const tool = taking.tool ?? (way?.kind === 'turned' ? way.by : undefined);
  const agreement = agreementOf(document, field, valuesOf(taking), tool);
  const needs = way?.kind === 'turned' ? way.needs.map((need) => besideOf(field, need)) : [];
  const range = inField(field, rangeRead(document, taking, way, agreement.range));
  if (range === null) return { ok: false, hint: outOfField };
  const unread = needs.filter((path) => givenAt(document, path) === null);
  return { ok: true, range, agreement, ...saidBy(way), ...(tool === undefined ? {} : { tool }), unread };
}

const noSuchWay = 'Say again how it was read.';
const outOfField = 'Read that way, no figure follows that the field can take.';

function valuesOf({ typed: [first, ...others] }: Taking): [number, ...number[]] {
  return [first.value, ...others.map(({ value }) => value)];
}

function rangeRead(document: SetupDocument, { path, aslant }: Taking, way: Way | undefined, read: Interval): Interval {
  const field = fieldOfPart(path);
  const standing = aslant === true ? add(read, slantOf(document, field, read)) : read;
  if (way?.kind !== 'turned') return standing;
  const ranges = way.needs.map((need) => knownAt(document, besideOf(field, need)));
  return way.turn(standing, { ranges, sign: signOf(document, field) });
}

/** What the record is told of the way. */
function saidBy(way: Way | undefined): Pick<Extract<Taken, { ok: true }>, 'from' | 'method'> {
  if (way?.kind === 'turned') return { method: way.words };
  return way?.kind === 'as' && way.from !== undefined ? { from: way.from } : {};
}

function wayOf({ path, way }: Taking): Way | undefined {
  return wayQuestion(path)?.ways.find(({ key }) => key === way);
}

/** The part of a range that the field takes; null where it takes none of it. */
function inField(path: string, { low, high }: Interval): Interval | null {
  const rule = fieldRules.get(path);
  if (rule === undefined || !Number.isFinite(low) || !Number.isFinite(high)) return null;
  if (high < rule.min || low > rule.max) return null;
  return interval(Math.max(low, rule.min), Math.min(high, rule.max));
}
