import { width } from '../geometry/index.ts';
import { nearlyZero, rankOf, type Check } from './check.ts';
import { decide, type Decision } from './decide.ts';
import {
  combinations,
  leastCertain,
  leastRanked,
  midpoint,
  rangeOf,
  reader,
  workShare,
  type Box,
  type ChoiceRange,
  type Problem,
  type Work,
} from './problem.ts';
import { bestSetting, likelySetting } from './setting.ts';

/** What can vary in a set of checks: every range, which of them can be set, and what each check reads. */
export interface Field {
  readonly box: Box;
  readonly isSetting: (index: number) => boolean;
  readonly choices: readonly ChoiceRange[];
  readonly reads: (check: Check) => ReadonlySet<number>;
  /** Work that is left for all problems over this field; see `Problem`. */
  readonly work?: Work;
}

/** Pieces of costly settings that one check by itself, and the search for the conflicts of a group, may look at: past them they stay unresolved. */
const aloneWork = 250;
const conflictWork = 120;

function within(field: Field, left: number): Field {
  return { ...field, work: { left } };
}

/** The standing of one check once everything it hangs together with is taken into account. */
export interface Judged {
  readonly check: Check;
  readonly status: 'pass' | 'fail' | 'undecided';
  /** True where the work limit was met: shown as undecided. */
  readonly unresolved: boolean;
  /** The other checks that can't be met together with this one. */
  readonly conflictsWith: readonly string[];
  /** The box with every adjuster at the reported setting. */
  readonly setting: Box;
  /** One truth for each side, where it is undecided. */
  readonly passing: Box | null;
  readonly failing: Box | null;
}

/**
 * Judges checks that must all hold. Checks that share something uncertain or an adjuster are decided together; where
 * together they do not pass, each is decided alone, and what only a group can explain is laid on the smallest such group.
 *
 * @param checks the checks [their own units]
 * @param field what can vary [ranges by index]
 * @returns the standing of each check, in the order given [status]
 */
export function judge(checks: readonly Check[], field: Field): Judged[] {
  const judged = new Map(
    groups(checks, field).flatMap((group) => judgeGroup(group, field).map((one) => [one.check, one])),
  );
  return checks.map((check) => judged.get(check) as Judged);
}

function judgeGroup(group: readonly Check[], field: Field): Judged[] {
  const whole = settableOf(group, field);
  const likely = bestForAll(whole);
  const together = new Set(group.filter((check) => leastCertain([check], likely) >= -nearlyZero));
  const alone = group.map((check) => ({
    check,
    decision: together.has(check) ? passes : decideAlone(check, field),
  }));
  const conflicts = conflictsIn(alone, together, within(field, conflictWork));
  const standing = alone.map(({ check, decision }) => {
    const conflict = conflicts.find(({ members }) => members.includes(check));
    return { check, conflict, verdict: conflict?.decision ?? decision };
  });
  const passing = standing.filter(({ verdict }) => verdict.outcome === 'passes').map(({ check }) => check);
  const setting = reportedSetting(whole, passing, likely);
  return standing.map(({ check, conflict, verdict }) => ({
    check,
    status: statusOf(verdict),
    unresolved: verdict.outcome === 'unresolved',
    conflictsWith: (conflict?.members ?? []).filter((other) => other !== check).map((other) => other.id),
    setting,
    passing: 'passing' in verdict ? verdict.passing : null,
    failing: 'failing' in verdict ? verdict.failing : null,
  }));
}

const passes: Decision = { outcome: 'passes' };

/**
 * The standing of one check by itself, whatever others it hangs together with.
 *
 * @param check the check [its own units]
 * @param field what can vary [ranges by index]
 * @returns how it stands [status]
 */
export function statusAlone(check: Check, field: Field): Judged['status'] {
  return statusOf(decideAlone(check, field));
}

function decideAlone(check: Check, field: Field): Decision {
  return decide(problemOf([check], within(field, aloneWork)));
}

/** The best setting for all that a setting can change. What holds there passes, and all of it together. */
function bestForAll(whole: Problem): Box {
  return whole.checks.length === 0 ? whole.box : bestSetting(whole, whole.box).box;
}

/**
 * The best setting; where what passes would not hold at it but does at some other, in the middle of every range at least,
 * the best one of those.
 */
function reportedSetting(whole: Problem, passing: readonly Check[], best: Box): Box {
  if (whole.checks.length === 0 || leastCertain(passing, best) >= -nearlyZero) return best;
  const guarded = bestSetting({ ...whole, guarded: passing }, whole.box).box;
  return leastRanked(passing, midpoint(whole, guarded)) >= -nearlyZero ? guarded : best;
}

/** The problem of those checks of a group that a setting can change. */
function settableOf(group: readonly Check[], field: Field): Problem {
  return problemOf(
    group.filter((check) => isSettable(check, field)),
    field,
  );
}

function isSettable(check: Check, field: Field): boolean {
  const { settings, choices } = problemOf([check], field);
  return settings.length + choices.length > 0;
}

/** Checks that can't be met together, with what was decided of the group they stand in. */
interface Conflict {
  readonly members: readonly Check[];
  readonly decision: Decision;
}

/**
 * The conflicts of a group: first among the checks that are quick to bound, then among those that pass alone, then in the
 * whole, unless a member explains its outcome alone. Checks that hold together at one setting are at odds with each other in
 * no part.
 */
function conflictsIn(all: readonly Alone[], together: ReadonlySet<Check>, field: Field): Conflict[] {
  if (all.every(({ check }) => together.has(check))) return [];
  for (const part of [all.filter(isQuick), all.filter(passesAlone)]) {
    const found = part.length < all.length ? conflictsIn(part, together, field) : [];
    if (found.length > 0) return found;
  }
  if (all.some(({ decision }) => decision.outcome === 'fails')) return [];
  const alone = all.filter(({ check }) => !holdsAtEverySetting(check, field));
  if (alone.length < 2) return [];
  const group = alone.map(({ check }) => check);
  const { outcome, decision } = decideTogether(problemOf(group, field), alone);
  const isExplained = alone.some((one) => one.decision.outcome === outcome);
  if (outcome === 'passes' || isExplained || decision === null) return [];
  return blame(group, field, outcome).map((members) => ({ members, decision }));
}

function isQuick({ check }: Alone): boolean {
  return check.estimate === undefined;
}

function passesAlone({ decision }: Alone): boolean {
  return decision.outcome === 'passes';
}

/** A check that is certain whatever is set can be at odds with no other. */
function holdsAtEverySetting(check: Check, field: Field): boolean {
  const problem = problemOf([check], field);
  return combinations(problem, problem.box).every((box) => leastCertain([check], box) >= -nearlyZero);
}

interface Alone {
  readonly check: Check;
  readonly decision: Decision;
}

/**
 * The outcome of a group. One member that fails alone fails the group; without adjusters a group passes where all members
 * do and is open where just one is. Only what is left needs the joint search.
 */
function decideTogether(
  problem: Problem,
  alone: readonly Alone[],
): { outcome: Decision['outcome']; decision: Decision | null } {
  const [first] = alone;
  if (alone.length === 1 && first !== undefined) return { outcome: first.decision.outcome, decision: first.decision };
  if (alone.some(({ decision }) => decision.outcome === 'fails')) return { outcome: 'fails', decision: null };
  const open = alone.filter(({ decision }) => decision.outcome !== 'passes');
  const fixed = problem.settings.length === 0 && problem.choices.length === 0;
  if (fixed && open.length === 0) return { outcome: 'passes', decision: null };
  if (fixed && open.length === 1) return { outcome: (open[0] as Alone).decision.outcome, decision: null };
  const failing = alone
    .map(({ decision }) => ('failing' in decision ? decision.failing : null))
    .find((box) => box !== null);
  const decision = decide(problem, failing ?? null);
  return { outcome: decision.outcome, decision };
}

function statusOf(decision: Decision): Judged['status'] {
  if (decision.outcome === 'passes') return 'pass';
  return decision.outcome === 'fails' ? 'fail' : 'undecided';
}

/** The smallest sets of checks that show the outcome of the whole group. */
function blame(group: readonly Check[], field: Field, outcome: Decision['outcome']): Check[][] {
  if (workShare(problemOf(group, field)) < 1) return [blameWorst(group, field, outcome)];
  for (let size = 2; size <= Math.min(group.length, 3); size += 1) {
    const guilty = subsets(group, size).filter((set) => decide(problemOf(set, field)).outcome === outcome);
    if (guilty.length > 0) return guilty;
  }
  return [[...group]];
}

/** Where checks are costly, only the ones that are worst off at the likeliest setting are looked at. */
function blameWorst(group: readonly Check[], field: Field, outcome: Decision['outcome']): Check[] {
  const problem = problemOf(group, field);
  const at = reader(likelySetting(problem, problem.box).box);
  const rank = new Map(group.map((check) => [check, rankOf(check, at) / check.scale]));
  const worst = [...group].sort((a, b) => (rank.get(a) as number) - (rank.get(b) as number));
  const sets = [2, 3].map((size) => worst.slice(0, size));
  return sets.find((set) => decide(problemOf(set, field)).outcome === outcome) ?? [...group];
}

function subsets<T>(items: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return items.flatMap((item, i) => subsets(items.slice(i + 1), size - 1).map((rest) => [item, ...rest]));
}

/** The problem of some checks: only what they read, and only where it has a width or can be set. */
export function problemOf(checks: readonly Check[], field: Field): Problem {
  const read = [...new Set(checks.flatMap((check) => [...field.reads(check)]))].sort((a, b) => a - b);
  const choices = field.choices.filter(({ index }) => read.includes(index));
  const ranges = read.filter(
    (index) => !choices.some((choice) => choice.index === index) && width(rangeOf(field.box, index)) > 0,
  );
  return {
    checks,
    box: field.box,
    choices,
    settings: ranges.filter((index) => field.isSetting(index)),
    uncertain: ranges.filter((index) => !field.isSetting(index)),
    ...(field.work === undefined ? {} : { work: field.work }),
  };
}

/** Checks that share anything that can vary belong to one group. */
function groups(checks: readonly Check[], field: Field): Check[][] {
  const found: { members: Check[]; reads: Set<number> }[] = [];
  for (const check of checks) {
    const { uncertain, settings, choices } = problemOf([check], field);
    const reads = new Set([...uncertain, ...settings, ...choices.map((choice) => choice.index)]);
    const touching = found.filter((group) => [...reads].some((index) => group.reads.has(index)));
    const merged = {
      members: [...touching.flatMap((group) => group.members), check],
      reads: new Set([...touching.flatMap((group) => [...group.reads]), ...reads]),
    };
    found.splice(0, found.length, ...found.filter((group) => !touching.includes(group)), merged);
  }
  return found.map((group) => group.members);
}
