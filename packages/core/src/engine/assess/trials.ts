import type { SetupDocument } from '../../records/index.ts';
import type { CheckId, Finding, Standing } from '../findings/index.ts';
import type { Candidate } from './candidate.ts';
import { openJudgedSets } from './judgedSets.ts';
import { canReach, partOf, parts, type Part } from './reach.ts';

/**
 * What is asked of a set: that everything holds with it, or only that nothing is shown to fail, so that readings may yet show
 * that it cures.
 */
export type Demand = 'holds' | 'mayHold';

/** Setups with some candidates applied, each judged once; a change judges again only what it can reach. */
export interface Trials {
  /** What of the failures is left, and what has become worse, with some candidates applied; null where they can’t be applied together. */
  readonly leftWith: (set: readonly Candidate[], demand: Demand) => readonly Left[] | null;
  /** The same of one check by itself, as far as it shows in its own part. */
  readonly leftOf: (id: CheckId) => (set: readonly Candidate[], demand: Demand) => readonly Left[] | null;
  /** How every check stands with some candidates applied; null where they can’t be applied together. */
  readonly allWith: (set: readonly Candidate[]) => readonly Standing[] | null;
  /** What the parts that one candidate reaches come to with it alone; null where it can’t be applied, or meets no failure even by itself. */
  readonly reachedBy: (candidate: Candidate) => ReadonlyMap<CheckId, Standing> | null;
  /** Setups judged so far, wholly or in part. */
  readonly spent: () => number;
}

/** A check that some candidates leave unsatisfied, and what could still help. */
export interface Left {
  readonly id: CheckId;
  readonly mayHelp: (candidate: Candidate) => boolean;
}

/**
 * Opens trials on a setup.
 *
 * @param document the setup as written [JSON]
 * @param before its findings [list]
 * @returns trials [record]
 */
export function openTrials(document: SetupDocument, before: readonly Finding[]): Trials {
  const judged = openJudgedSets(document);
  const was = new Map(before.map((finding) => [finding.id, finding]));
  const toCure = before.filter(isToCure).map(({ id }) => id);
  const isLeft =
    (demand: Demand) =>
    (finding: Standing): boolean =>
      unsatisfied[demand](was.get(finding.id), finding);
  /** What is to be cured is asked for by itself first: what is left so is left in the part as well. */
  const leftIn = (
    part: Part,
    ids: readonly CheckId[],
    set: readonly Candidate[],
    demand: Demand,
  ): Standing[] | null => {
    const alone = ids.flatMap((id) => judged.alone(set, part, id) ?? []).filter(isLeft(demand));
    return alone.length > 0 ? alone : (judged.all(set, part)?.filter(isLeft(demand)) ?? null);
  };
  return {
    leftWith: (set, demand) => {
      for (const part of parts) {
        const ids = toCure.filter((id) => partOf(id) === part);
        const left = leftIn(part, ids, set, demand);
        if (left === null) return null;
        if (left.length > 0) return left.map((finding) => helped(part, finding));
      }
      // What fails only together fails by a setting that is shared: anything may help.
      return (
        judged
          .all(set, 'everything')
          ?.filter(isLeft(demand))
          .map(({ id }) => ({ id, mayHelp: () => true })) ?? null
      );
    },
    leftOf: (id) => (set, demand) => {
      const part = partOf(id);
      return (
        leftIn(part, [id], set, demand)
          ?.filter((finding) => finding.id === id)
          .map((finding) => helped(part, finding)) ?? null
      );
    },
    allWith: (set) => judged.all(set, 'everything'),
    reachedBy: (candidate) => {
      const reached = parts.filter((part) => canReach(candidate, part));
      const meets = (part: Part): boolean =>
        toCure.some((id) => partOf(id) === part && isMet(judged.alone([candidate], part, id)));
      if (!reached.some(meets)) return null;
      const all = reached.map((part) => judged.all([candidate], part));
      return all.includes(null) ? null : new Map(all.flatMap((one) => one ?? []).map((one) => [one.id, one]));
    },
    spent: judged.spent,
  };
}

const lowerPins = /\.(lower(Pin|Bushing)|pinBall|shoulder|standOut|pinsPoint)/;
const upperPins = /\.upper(Pin|Bushing)/;

/** Checks that nothing on a list changes, or only what sets certain fields. */
const helpedBy: Readonly<Partial<Record<CheckId, RegExp | null>>> = {
  mounting: null,
  'front.lowerPin': lowerPins,
  'front.bushingBore': lowerPins,
  'front.bushingLength': lowerPins,
  'front.span': lowerPins,
  'front.retention': lowerPins,
  'front.upperPin': upperPins,
  'front.upperBushing': upperPins,
  'front.clevis': /\.clevis/,
  'rear.lowerPin': lowerPins,
  'rear.bushingBore': lowerPins,
  'rear.bushingLength': lowerPins,
  'rear.shoulders': lowerPins,
  'rear.pinSeat': lowerPins,
  'rear.retention': lowerPins,
  'rear.upperPin': upperPins,
  'rear.upperBushing': upperPins,
  'rear.clevis': /\.clevis/,
  'rear.mast': /\.mast/,
  'shaft.speed': null,
  'shaft.direction': null,
  'shaft.power': null,
  'shaft.splines': /^shaft$/,
  'shaft.series': /^shaft$/,
};

/** What fails by a setting that it shares is helped by whatever helps one of those that it shares it with. */
function helped(part: Part, { id, conflictsWith }: Standing): Left {
  const helps = (candidate: Candidate, check: CheckId): boolean => {
    const field = helpedBy[check];
    if (field === undefined) return canReach(candidate, part);
    return field !== null && candidate.edits.some(({ path }) => field.test(path));
  };
  return { id, mayHelp: (candidate) => [id, ...conflictsWith].some((check) => helps(candidate, check)) };
}

const unsatisfied: Readonly<Record<Demand, (before: Standing | undefined, after: Standing) => boolean>> = {
  holds: (before, after) => before !== undefined && (isWorse(before, after) || (isToCure(before) && !isMet(after))),
  mayHold: (before, after) =>
    before !== undefined && after.status === 'fail' && (isToCure(before) || before.status !== 'fail'),
};

/** What stands beside the verdict may go on failing: no part is asked to cure it. */
export function isToCure({ core, status }: Standing): boolean {
  return core && status === 'fail';
}

/** Does a check hold, or is it needed no more? */
export function isMet(finding: Standing | null | undefined): boolean {
  return finding?.status === 'pass' || finding?.status === 'notNeeded';
}

/** Has a finding become worse? One that failed can’t. */
export function isWorse(before: Standing, after: Standing | undefined): boolean {
  if (before.status === 'fail') return false;
  if (before.status === 'undecided') return after?.status === 'fail';
  return after?.status === 'fail' || after?.status === 'undecided';
}
