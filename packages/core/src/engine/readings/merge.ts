import { atPath, type Bound, type Edit, type SetupDocument, type Value } from '../../records/index.ts';
import { interval, type Interval } from '../geometry/index.ts';
import { boundsOf, valueAt, valueIn, wholeOf } from './known.ts';
import { betweenOwnPoints } from './points.ts';

/** What becomes of one reading that comes from somebody else. */
export interface Merged {
  readonly path: string;
  readonly before: unknown;
  readonly after: unknown;
  /** `new`: nothing was known; `agrees`: both can be true; `differs`: they can’t both be true; `same`: it says nothing that doesn’t stand here. */
  readonly state: 'new' | 'agrees' | 'differs' | 'same';
}

/**
 * What readings from somebody else change in a setup. Nothing is taken over by itself where a figure that was given differs:
 * that is for a person to decide.
 *
 * @param document the setup as it stands here [JSON]
 * @param readings changes by field [list]
 * @returns one entry for each reading, in their order [list]
 */
export function mergeOf(document: SetupDocument, readings: readonly Edit[]): Merged[] {
  return readings.map(({ path, value }): Merged => {
    const before = atPath(document, path);
    return { path, before, after: value, state: stateOf(document, { path, value }, before) };
  });
}

function stateOf(document: SetupDocument, { path, value }: Edit, before: unknown): Merged['state'] {
  if (saysNothing(value) || isAlike(before, value)) return 'same';
  if (saysNothing(before)) return 'new';
  const here = valueAt(document, path);
  const there = valueIn(document, path, value);
  return here !== null && there !== null && canBothBe(document, path, here, there) ? 'agrees' : 'differs';
}

/** Neither what is left open nor a range out of a class or a habit is a figure of this machine. */
function saysNothing(raw: unknown): boolean {
  if (raw === undefined || raw === null) return true;
  return typeof raw === 'object' && ('default' in raw || 'unknown' in raw);
}

/** The same JSON, in whichever order its keys stand. */
function isAlike(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const [keys, others] = [Object.keys(a), Object.keys(b)];
  const at = (node: object, key: string): unknown => (node as Record<string, unknown>)[key];
  return keys.length === others.length && keys.every((key) => Object.hasOwn(b, key) && isAlike(at(a, key), at(b, key)));
}

/** Range by range: the figure itself, both ends that it can be set to, or hole by hole; else all that each leaves open. */
function canBothBe(document: SetupDocument, path: string, here: Value, there: Value): boolean {
  const inPoints = ({ provenance }: Value, { low, high }: Bound): Interval =>
    betweenOwnPoints(document, path, provenance.from, interval(low, high));
  const [mine, theirs] = [here, there].map((value) => boundsOf(value).map((bound) => inPoints(value, bound)));
  if (mine === undefined || theirs === undefined) return false;
  const isPaired = isSettable(here) === isSettable(there);
  return isPaired
    ? mine.length === theirs.length && mine.every((range, i) => meets(range, theirs[i]))
    : meets(wholeOf(mine), wholeOf(theirs));
}

function isSettable({ kind }: Value): boolean {
  return kind === 'adjustable' || kind === 'stops';
}

function meets(a: Interval, b: Interval | undefined): boolean {
  return b !== undefined && a.low <= b.high && b.low <= a.high;
}
