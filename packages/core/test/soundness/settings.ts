import type { CheckId } from '../../src/engine/findings/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import { spaceIn, type Case } from './case.ts';
import { openSampler, readerOf, type Point } from './samples.ts';

/** Everything that somebody can set: all of it for core checks, for limits only what no core check asks for. */
export function settingsFor({ question, findings }: Case, isCore: boolean): readonly number[] {
  const settings = question.ledger.entries.filter(({ role, range }) => role !== 'uncertain' && range.high > range.low);
  const core = new Set(
    question.checks
      .filter(({ id }) => findings.some((finding) => finding.id === id && finding.core))
      .flatMap((check) => [...question.field.reads(check)]),
  );
  return settings.map(({ index }) => index).filter((index) => isCore || !core.has(index));
}

/** The ranges of the truths of a case with some settings drawn as well. */
function rangesWith({ space, question }: Case, settings: readonly number[]): readonly Interval[] {
  return space.ranges.map((range, index) =>
    settings.includes(index) ? (question.ledger.entries[index] as { range: Interval }).range : range,
  );
}

/** The least margin of some checks at a point, each in its own steps; at zero only rounding is missing. */
function leastAt({ truths, space, scaleOf, roundingOf }: Case, point: Point, ids: ReadonlySet<CheckId>): number {
  const { margins } = truths.look(readerOf(point, space.entries), ids);
  return Math.min(...[...ids].map((id) => ((margins.get(id) ?? NaN) + roundingOf(id)) / scaleOf(id)));
}

/** Settings besides the reported one, for truths that it does not serve. */
export interface OtherSettings {
  /** Is there a setting at which all the checks hold together? A search that finds none is told as a violation. */
  readonly serve: (truth: Point) => boolean;
}

const starts = 60;
const climbed = 4;
const finest = 1e-9;

/**
 * Opens the search for settings at which some checks hold together: first those that served an earlier truth, then many
 * drawn ones, then along each of what can be set from the best of them.
 */
export function openOtherSettings(one: Case, checks: readonly CheckId[], settings: readonly number[]): OtherSettings {
  const ids = new Set(checks);
  const ranges = rangesWith(one, settings);
  const sampler = openSampler({ ...spaceIn(ranges, one.space.entries, one.question), free: settings }, 1);
  const served: Point[] = [];
  let inVain = 0;
  const placed = (point: Point): Place => ({ point, least: leastAt(one, point, ids) });
  const search = (truth: Point): Point | null => {
    for (const other of served) {
      if (placed(withSettings(truth, other, settings)).least >= 0) return other;
    }
    const drawn = Array.from({ length: starts }, () => withSettings(truth, sampler.anywhere(), settings));
    const best = [truth, ...drawn].map(placed).sort((a, b) => b.least - a.least);
    for (const from of best.slice(0, climbed)) {
      const { point, least } = climb(one, from, ids, { settings, ranges });
      if (least >= 0) return point;
    }
    return null;
  };
  return {
    serve: (truth) => {
      const found = settings.length === 0 || inVain >= enough ? null : search(truth);
      if (found === null) {
        inVain += 1;
        return false;
      }
      const [known] = served.splice(served.indexOf(found), served.includes(found) ? 1 : 0);
      served.unshift(known ?? found);
      served.splice(remembered);
      return true;
    },
  };
}

/** Settings that served a truth and are tried first for the next ones. */
const remembered = 8;
/** After so many searches in vain there is something to be told of a setup anyhow. */
const enough = 3;

function withSettings(truth: Point, other: Point, settings: readonly number[]): Point {
  const point = truth.slice();
  for (const index of settings) point[index] = other[index] as number;
  return point;
}

interface Place {
  readonly point: Point;
  readonly least: number;
}

/** Goes up along each of what can be set in ever smaller steps, until all the checks hold. */
function climb(
  one: Case,
  from: Place,
  ids: ReadonlySet<CheckId>,
  { settings, ranges }: { readonly settings: readonly number[]; readonly ranges: readonly Interval[] },
): Place {
  let best = from;
  for (let reach = 0.5; reach > finest && best.least < 0;) {
    const before = best.least;
    for (const index of settings) {
      for (const side of [-1, 1]) {
        const point = best.point.slice();
        const { low, high } = ranges[index] as Interval;
        const isChoice = one.space.whole.has(index);
        const step = isChoice ? 1 : reach * (high - low);
        point[index] = Math.min(high, Math.max(low, (point[index] as number) + side * step));
        const least = leastAt(one, point, ids);
        if (least > best.least) best = { point, least };
      }
    }
    if (best.least === before) reach /= 2;
  }
  return best;
}

/** Checks that fail together: at no truth and no setting are all of them kept. */
export interface Group {
  readonly id: CheckId;
  readonly ids: readonly CheckId[];
}

/** A failing group that was kept after all. */
export interface Kept {
  readonly id: CheckId;
  readonly sample: number;
  readonly margin: number;
  readonly point: Point;
}

/**
 * Draws truths and settings together, toward where failing checks come nearest to being kept.
 *
 * @returns every truth and setting at which a failing group is kept
 */
export function keptElsewhere(
  one: Case,
  groups: readonly Group[],
  settings: readonly number[],
  { samples, seed }: { readonly samples: number; readonly seed: number },
): Kept[] {
  if (groups.length === 0 || settings.length === 0) return [];
  const space = spaceIn(rangesWith(one, settings), one.space.entries, one.question);
  const sampler = openSampler(space, seed);
  const ids = new Set(groups.flatMap((group) => group.ids));
  const nearest = new Map<CheckId, Place>();
  const found: Kept[] = [];
  for (let sample = 0; sample < samples; sample += 1) {
    const from = nearest.get((groups[sampler.pick(groups.length)] as Group).id);
    const way = sample % 4;
    const point =
      way === 0
        ? sampler.anywhere()
        : way === 1 || from === undefined
          ? sampler.corner()
          : sampler.near(from.point, space.free);
    const { margins } = one.truths.look(readerOf(point, space.entries), ids);
    for (const group of groups) {
      const least = Math.min(...group.ids.map((id) => (margins.get(id) ?? NaN) - one.roundingOf(id)));
      if (least > (nearest.get(group.id)?.least ?? -Infinity)) nearest.set(group.id, { point, least });
      if (!(least <= 0)) found.push({ id: group.id, sample, margin: least, point });
    }
  }
  return found;
}
