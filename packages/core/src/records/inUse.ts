import { readValue } from './readValue.ts';
import type { Bound, FieldRule, Value } from './value.ts';

/** How well a reading is founded, the best first; `class` is what machines of its class usually have. */
export const readingGrades = ['measured', 'maker', 'listed', 'guessed', 'class'] as const;
/** One of `readingGrades`. */
export type ReadingGrade = (typeof readingGrades)[number];

/** What the rule looks at in one reading of a field. */
export interface GradedReading {
  readonly id: string;
  /** What was read, exactly as a setup document has it [JSON]. */
  readonly leaf: unknown;
  readonly grade: ReadingGrade;
  /** When it was read, where that is known [ISO 8601]. */
  readonly readAt: string | null;
  /** When it was written down here [ISO 8601]. */
  readonly enteredAt: string;
  /** A person said: use this one. */
  readonly isPinned: boolean;
}

/** Two readings whose ranges are apart, and by how much [canonical unit of the field]. */
export interface ReadingConflict {
  readonly readings: readonly [string, string];
  readonly apartBy: number;
}

/** The reading whose value is in use, what it won by, and every conflict among the readings of the field. */
export interface InUse {
  readonly id: string;
  readonly because: 'only' | 'pinned' | 'figure' | 'grade' | 'latest';
  readonly conflicts: readonly ReadingConflict[];
}

/** The rule in words, for the pages. */
export const inUseRule =
  'A reading that a person pinned is in use. Else, of those that give a figure, the one of the best grade: measured, then from the maker, then listed, ' +
  'then guessed, then usual for the class. Of those, the one that was read last. Readings whose ranges are apart are shown as a conflict, whichever is in use.';

/**
 * Chooses which of the readings of one field is in use: pinned by a person, then one that gives a figure, then the best grade,
 * then the latest reading. Readings of one moment go by when they were written down, then by their ids, so the order in which they come never
 * matters. Ranges are compared where both readings lie between the same points; ends of what can be set with their like.
 *
 * @param readings the readings of the field that were not withdrawn [list]
 * @param rule what the field accepts [canonical unit]
 * @returns the reading in use and the conflicts, or null where there is no reading [record]
 */
export function inUse(readings: readonly GradedReading[], rule: FieldRule): InUse | null {
  const read = readings.map((reading) => figured(reading, rule)).sort(firstInUse);
  const [first, second] = read;
  if (first === undefined) return null;
  return { id: first.id, because: wonBy(first, second), conflicts: conflictsAmong(read, rule) };
}

interface Figured extends GradedReading {
  readonly value: Value | null;
  readonly ranks: readonly [pinned: number, figure: number, grade: number];
  /** When it was read, else when it was written down; then that; an unreadable time is the earliest [ms]. */
  readonly times: readonly [number, number];
}

function figured(reading: GradedReading, rule: FieldRule): Figured {
  const { value } = readValue(reading.leaf, rule, '', 'us');
  const known = value !== null && value.kind !== 'unknown';
  const entered = moment(reading.enteredAt) ?? -Infinity;
  const read = reading.readAt === null ? null : readMoment(reading.readAt, entered);
  return {
    ...reading,
    value: known ? value : null,
    ranks: [reading.isPinned ? 0 : 1, known ? 0 : 1, readingGrades.indexOf(reading.grade)],
    times: [read ?? entered, entered],
  };
}

/** When something was read: of a day without its time the latest moment at which it can have been, which is when it was written down [ms]. */
function readMoment(readAt: string, entered: number): number | null {
  const start = moment(readAt);
  if (start === null || readAt.includes('T')) return start;
  return Math.max(start, Math.min(start + dayMs - 1, entered));
}

const dayMs = 86_400_000;

/** A time as people and machines write it: a day, or a day with its time [ms]. */
function moment(iso: string): number | null {
  const ms = /^\d{4}-\d\d-\d\d(T|$)/.test(iso) ? Date.parse(iso) : NaN;
  return Number.isNaN(ms) ? null : ms;
}

function firstInUse(a: Figured, b: Figured): number {
  const ranked = a.ranks.map((rank, i) => rank - (b.ranks[i] ?? 0)).find((difference) => difference !== 0);
  if (ranked !== undefined) return ranked;
  const later = a.times.map((time, i) => compared(b.times[i] ?? time, time)).find((difference) => difference !== 0);
  return later ?? compared(b.id, a.id);
}

function compared<T extends number | string>(a: T, b: T): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const winners = ['pinned', 'figure', 'grade'] as const;

function wonBy(first: Figured, second: Figured | undefined): InUse['because'] {
  if (first.isPinned) return 'pinned';
  if (second === undefined) return 'only';
  return winners.find((_, i) => first.ranks[i] !== second.ranks[i]) ?? 'latest';
}

function conflictsAmong(read: readonly Figured[], rule: FieldRule): readonly ReadingConflict[] {
  const ordered = [...read].sort((a, b) => compared(a.id, b.id));
  return ordered.flatMap((a, i) =>
    ordered.slice(i + 1).flatMap((b): ReadingConflict[] => {
      const apartBy = samePoints(a, b, rule) ? distance(endsOf(a.value), endsOf(b.value)) : 0;
      return apartBy > 0 ? [{ readings: [a.id, b.id], apartBy }] : [];
    }),
  );
}

function samePoints(a: Figured, b: Figured, rule: FieldRule): boolean {
  const points = (one: Figured): string | undefined => one.value?.provenance.from ?? rule.from?.[0];
  return points(a) === points(b);
}

function endsOf(value: Value | null): readonly Bound[] {
  if (value === null || value.kind === 'unknown') return [];
  if (value.kind === 'adjustable') return [value.lowest, value.highest];
  return value.kind === 'stops' ? value.at : [value.bound];
}

/** How far two readings are apart: the farthest of their ends, or their whole ranges where they don't have as many. */
function distance(a: readonly Bound[], b: readonly Bound[]): number {
  if (a.length === 0 || b.length === 0) return 0;
  if (a.length !== b.length) return gap(whole(a), whole(b));
  return Math.max(...a.map((end, i) => gap(end, b[i] ?? end)));
}

function gap(a: Bound, b: Bound): number {
  const between = Math.max(a.low - b.high, b.low - a.high, 0);
  return between > rounding ? between : 0;
}

function whole(ends: readonly Bound[]): Bound {
  return { low: Math.min(...ends.map(({ low }) => low)), high: Math.max(...ends.map(({ high }) => high)) };
}

/** Less than any tape or text can tell: two ways to write one figure don't conflict. */
const rounding = 1e-9;
