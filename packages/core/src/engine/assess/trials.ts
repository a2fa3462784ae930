import { readSetup, withEdits, type Setup, type SetupDocument } from '../../records/index.ts';
import { judgeLines, type CheckId, type Finding } from '../findings/index.ts';
import type { Candidate } from './candidate.ts';
import { prepareSetup, type Scope } from './judgeSetup.ts';

/** Parts of a setup that can be judged by themselves, the quickest first. What fails in a part fails in the whole. */
const parts = ['joints', 'balance', 'lift', 'drive'] as const;

/** One of `parts`. */
type Part = (typeof parts)[number];

/** What a change reaches beyond the joints themselves, by the field that it changes; anything else may reach all of it. */
const reaches: readonly (readonly [RegExp, readonly Part[]])[] = [
  [/^shaft(\.|$)|^tractor\.stubBehindAxle$/, ['drive']],
  [/^tractor\.(frontWeightMass|wheelWeightMass|loader)$/, ['balance']],
  [/(Bushing(Inside|Outside|Length)|\.clevisGap)$/, ['joints']],
];

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
  /** Every finding with some candidates applied; null where they can’t be applied together. */
  readonly findingsWith: (set: readonly Candidate[]) => readonly Finding[] | null;
  /** What the parts that one candidate reaches come to with it alone; null where it can’t be applied. */
  readonly reachedBy: (candidate: Candidate) => ReadonlyMap<CheckId, Finding> | null;
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
  const judged = new Map<string, readonly Finding[] | null>();
  const numbers = new Map<Candidate, number>();
  const was = new Map(before.map((finding) => [finding.id, finding]));
  let spent = 0;
  const numberOf = (candidate: Candidate): number => {
    const number = numbers.get(candidate) ?? numbers.size;
    numbers.set(candidate, number);
    return number;
  };
  const findings = (set: readonly Candidate[], scope: Scope): readonly Finding[] | null => {
    const that = scope === 'everything' ? set : set.filter((candidate) => canReach(candidate, scope));
    const key = `${scope} ${that
      .map(numberOf)
      .sort((a, b) => a - b)
      .join(' ')}`;
    const found = judged.get(key);
    if (found !== undefined) return found;
    spent += 1;
    const setup = setupWith(document, that);
    const made = setup === null ? null : judgeLines(prepareSetup(setup, scope), { thresholds: false }).findings;
    judged.set(key, made);
    return made;
  };
  const isLeft =
    (demand: Demand) =>
    (finding: Finding): boolean =>
      unsatisfied[demand](was.get(finding.id), finding);
  return {
    leftWith: (set, demand) => {
      for (const part of parts) {
        const left = findings(set, part)?.filter(isLeft(demand)) ?? null;
        if (left === null) return null;
        if (left.length > 0) return left.map((finding) => leftIn(part, finding));
      }
      // What fails only together fails by a setting that is shared: anything may help.
      return (
        findings(set, 'everything')
          ?.filter(isLeft(demand))
          .map(({ id }) => ({ id, mayHelp: () => true })) ?? null
      );
    },
    leftOf: (id) => (set, demand) => {
      const part = partOf(id);
      return (
        findings(set, part)
          ?.filter((finding) => finding.id === id && isLeft(demand)(finding))
          .map((finding) => leftIn(part, finding)) ?? null
      );
    },
    findingsWith: (set) => findings(set, 'everything'),
    reachedBy: (candidate) => {
      const all = parts.filter((part) => canReach(candidate, part)).map((part) => findings([candidate], part));
      return all.includes(null) ? null : new Map(all.flatMap((one) => one ?? []).map((one) => [one.id, one]));
    },
    spent: () => spent,
  };
}

/** The part that a check is judged in. */
function partOf(id: CheckId): Part {
  const group = id.slice(0, id.indexOf('.'));
  if (group === 'shaft') return 'drive';
  if (group === 'balance') return 'balance';
  return ['pickUp', 'work', 'contact', 'lift'].includes(group) || id === 'front.topLink' ? 'lift' : 'joints';
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
function leftIn(part: Part, { id, conflictsWith }: Finding): Left {
  const helps = (candidate: Candidate, check: CheckId): boolean => {
    const field = helpedBy[check];
    if (field === undefined) return canReach(candidate, part);
    return field !== null && candidate.edits.some(({ path }) => field.test(path));
  };
  return { id, mayHelp: (candidate) => [id, ...conflictsWith].some((check) => helps(candidate, check)) };
}

function canReach({ edits }: Candidate, part: Part): boolean {
  return edits.some(({ path }) => reaches.find(([pattern]) => pattern.test(path))?.[1].includes(part) ?? true);
}

function setupWith(document: SetupDocument, candidates: readonly Candidate[]): Setup | null {
  const edits = candidates.flatMap((candidate) => candidate.edits);
  const isTwice = new Set(edits.map(({ path }) => path)).size < edits.length;
  const reading = isTwice ? null : readSetup(withEdits(document, edits));
  return reading?.ok === true ? reading.setup : null;
}

const unsatisfied: Readonly<Record<Demand, (before: Finding | undefined, after: Finding) => boolean>> = {
  holds: (before, after) => before !== undefined && (isWorse(before, after) || (isToCure(before) && !isMet(after))),
  mayHold: (before, after) =>
    before !== undefined && after.status === 'fail' && (isToCure(before) || before.status !== 'fail'),
};

/** What stands beside the verdict may go on failing: no part is asked to cure it. */
export function isToCure({ core, status }: Finding): boolean {
  return core && status === 'fail';
}

/** Does a check hold, or is it needed no more? */
export function isMet(finding: Finding | undefined): boolean {
  return finding?.status === 'pass' || finding?.status === 'notNeeded';
}

/** Has a finding become worse? One that failed can’t. */
export function isWorse(before: Finding, after: Finding | undefined): boolean {
  if (before.status === 'fail') return false;
  if (before.status === 'undecided') return after?.status === 'fail';
  return after?.status === 'fail' || after?.status === 'undecided';
}
