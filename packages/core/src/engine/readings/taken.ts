import { fieldRules, type SetupDocument } from '../../records/index.ts';
import type { Tool } from '../advice/index.ts';
import { add, interval, multiply, type Interval } from '../geometry/index.ts';
import { agreementOf, type Agreement } from './agreement.ts';
import { besideOf, givenAt, knownAt } from './known.ts';
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
  /** The tractor may not have stood level. */
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
      /** Figures beside it that it was worked out with and that nobody has read. */
      readonly unread: readonly string[];
    }
  | { readonly ok: false; readonly hint: string; readonly instead?: string };

/**
 * What was read, turned into the field’s own figure with everything that it leaves open.
 *
 * @param document the setup as far as it is known [JSON]
 * @param taking what was read, and how [record]
 * @returns the range [canonical unit], or why nothing follows and what to read instead [text]
 */
export function takenAs(document: SetupDocument, taking: Taking): Taken {
  const field = fieldOfPart(taking.path);
  const way = wayOf(taking);
  if (way?.kind === 'again') return { ok: false, hint: way.hint };
  if (way?.kind === 'other') return { ok: false, hint: way.hint, instead: besideOf(field, way.field) };
  const agreement = agreementOf(document, field, valuesOf(taking), taking.tool);
  const needs = way?.kind === 'turned' ? way.needs.map((need) => besideOf(field, need)) : [];
  const read = turnedBy(document, way, needs, agreement.range);
  const range = taking.aslant === true ? add(read, slantOf(document, field)) : read;
  if (!isInField(field, range)) return { ok: false, hint: outOfField };
  const unread = needs.filter((path) => givenAt(document, path) === null);
  return { ok: true, range, agreement, ...saidBy(way), unread };
}

const outOfField = 'Read that way, no figure follows that the field can take.';

function valuesOf({ typed: [first, ...others] }: Taking): [number, ...number[]] {
  return [first.value, ...others.map(({ value }) => value)];
}

function turnedBy(document: SetupDocument, way: Way | undefined, needs: readonly string[], read: Interval): Interval {
  if (way?.kind !== 'turned') return read;
  const beside = needs.map((path) => knownAt(document, path));
  return way.turn(read, beside);
}

/** What the record is told of the way. */
function saidBy(way: Way | undefined): Pick<Extract<Taken, { ok: true }>, 'from' | 'method'> {
  if (way?.kind === 'turned') return { method: way.words };
  return way?.kind === 'as' && way.from !== undefined ? { from: way.from } : {};
}

/** The field that a path, or one end of what can be set, belongs to. */
export function fieldOfPart(path: string): string {
  return path.split('.adjustable.')[0] ?? path;
}

function wayOf({ path, way }: Taking): Way | undefined {
  return wayQuestion(fieldOfPart(path))?.ways.find(({ key }) => key === way);
}

function isInField(path: string, { low, high }: Interval): boolean {
  const rule = fieldRules.get(path);
  return rule !== undefined && Number.isFinite(low) && Number.isFinite(high) && high >= rule.min && low <= rule.max;
}

/** Three degrees: a tractor on ground that looks level. Common practice, no source. */
const slant = interval(-Math.tan(Math.PI / 60), Math.tan(Math.PI / 60));
/** How far from the axle something lies that nobody has read [mm]. Our own. */
const usualLever = interval(0, 1000);

/** What a slant adds to a height, by how far behind the axle it is read, and to a distance behind the axle, by its height. */
function slantOf(document: SetupDocument, path: string): Interval {
  const lever = leverOf(document, path);
  return lever === null ? interval(0, 0) : multiply(slant, lever);
}

function leverOf(document: SetupDocument, path: string): Interval | null {
  if (!path.startsWith('tractor.')) return null;
  if (path.includes('ballHeight')) return usualLever;
  const partner = path.endsWith('Height')
    ? path.replace(/Height$/, 'BehindAxle')
    : path.replace(/BehindAxle$/, 'Height');
  if (partner === path) return null;
  return givenAt(document, partner) ?? usualLever;
}
