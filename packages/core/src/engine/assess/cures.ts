import { readSetup, withEdits, type Setup, type SetupDocument } from '../../records/index.ts';
import { judgeLines, topicOf, type CheckId, type Finding } from '../findings/index.ts';
import type { Cure } from './answer.ts';
import { candidatesFor, type Candidate } from './candidates.ts';
import { judgeSetup, prepareSetup, type SetupJudgement } from './judgeSetup.ts';
import { shaftCandidates } from './shaftCandidates.ts';
import { shaftSweepAt } from './sweeps.ts';

/** Candidates tried together at most, and trials made at most: a shelf is short and a set is small. */
const largestSet = 4;
const mostTrials = 400;

interface Trial {
  readonly candidate: Candidate;
  readonly cures: readonly CheckId[];
}

/**
 * Seeks cures for what fails. Each candidate is applied to the setup and everything is checked again; it is offered only
 * where it turns a failure into a pass and makes nothing else worse. Then the smallest set that leaves no failure is sought,
 * sizes in order, returnable parts first.
 *
 * @param document the setup as written [JSON]
 * @param judgement the same, judged [record]
 * @returns cures that were tried and hold [list]
 */
export function seekCures(document: SetupDocument, judgement: SetupJudgement): Cure[] {
  const { findings, question } = judgement;
  const { setup } = question.joint;
  const failing = findings.filter((finding) => finding.core && finding.status === 'fail');
  if (failing.length === 0) return [];
  const sweep = failing.some(({ id }) => topicOf(id) === 'runs') ? shaftSweepAt(judgement) : null;
  const candidates = [...candidatesFor(setup, failing), ...shaftCandidates({ document, setup, failing, sweep })];
  const tried = triedOut(document, findings, candidates).sort(
    (a, b) => Number(b.candidate.returnable) - Number(a.candidate.returnable),
  );
  const set = smallestSet(document, findings, tried, failing);
  return tried.map(({ candidate, cures }) => ({
    ...candidate,
    cures,
    inSmallestSet: set.some((one) => one.candidate === candidate),
  }));
}

/** What is tried by how much, the least that may serve first: what cures all that it can is enough. */
const byAmount: readonly Candidate['kind'][] = ['liftStop', 'longerTubes', 'cutShaft'];

/** Every candidate that cures something; of those that differ by how much, the one that cures most. */
function triedOut(document: SetupDocument, before: readonly Finding[], candidates: readonly Candidate[]): Trial[] {
  const failing = before.filter(({ core, status }) => core && status === 'fail').map(({ id }) => id);
  const found: Trial[] = [];
  for (const candidate of candidates) {
    const same = byAmount.includes(candidate.kind)
      ? found.find((trial) => trial.candidate.kind === candidate.kind)
      : undefined;
    const isEnough =
      same !== undefined && failing.filter(isOf[candidate.kind] ?? (() => true)).every((id) => same.cures.includes(id));
    const trial = isEnough ? null : tryOut(document, before, [candidate], candidate);
    if (trial === null || (same !== undefined && trial.cures.length <= same.cures.length)) continue;
    if (same === undefined) found.push(trial);
    else found[found.indexOf(same)] = trial;
  }
  return found;
}

/** What each of them is tried for. */
const isOf: Readonly<Partial<Record<Candidate['kind'], (id: CheckId) => boolean>>> = {
  liftStop: (id) => id.includes('Joint'),
  longerTubes: (id) => id === 'shaft.overlap' || id === 'shaft.apart',
  cutShaft: (id) => id === 'shaft.bottoming',
};

function tryOut(
  document: SetupDocument,
  before: readonly Finding[],
  together: readonly Candidate[],
  candidate: Candidate,
): Trial | null {
  if (!isWorthTrying(document, before, together)) return null;
  const after = findingsWith(document, together);
  if (after === null || before.some((finding, i) => isWorse(finding, after[i]))) return null;
  const cures = before
    .filter((finding, i) => finding.status === 'fail' && isMet(after[i]))
    .map((finding) => finding.id);
  return cures.length === 0 ? null : { candidate, cures };
}

/** Most candidates show by a part of the checks that they make something worse or change nothing: the rest is not asked for those. */
function isWorthTrying(document: SetupDocument, before: readonly Finding[], together: readonly Candidate[]): boolean {
  const setup = setupWith(document, together);
  if (setup === null) return false;
  const isOfDrive = together.every(({ kind, on }) => on === 'shaft' || kind === 'liftStop' || kind === 'stubExtender');
  const seen = judgedIn(setup, isOfDrive ? 'drive' : 'joints');
  const after = new Map(seen.map((finding) => [finding.id, finding]));
  const touched = before.filter(({ id }) => after.has(id));
  if (touched.some((finding) => isWorse(finding, after.get(finding.id)))) return false;
  const others = before.filter(({ id, core, status }) => core && status === 'fail' && !after.has(id));
  const canHelpElsewhere = others.length > 0 && !isOfDrive;
  return canHelpElsewhere || touched.some((finding) => finding.status === 'fail' && isMet(after.get(finding.id)));
}

function judgedIn(setup: Setup, scope: 'joints' | 'drive'): readonly Finding[] {
  return judgeLines(prepareSetup(setup, scope), { thresholds: false }).findings;
}

function setupWith(document: SetupDocument, candidates: readonly Candidate[]): Setup | null {
  const reading = readSetup(
    withEdits(
      document,
      candidates.flatMap((candidate) => candidate.edits),
    ),
  );
  return reading.ok ? reading.setup : null;
}

function findingsWith(document: SetupDocument, candidates: readonly Candidate[]): readonly Finding[] | null {
  const setup = setupWith(document, candidates);
  return setup === null ? null : judgeSetup(setup, { thresholds: false }).findings;
}

function isMet(finding: Finding | undefined): boolean {
  return finding?.status === 'pass' || finding?.status === 'notNeeded';
}

function isWorse(before: Finding, after: Finding | undefined): boolean {
  if (before.status === 'fail') return false;
  if (before.status === 'undecided') return after?.status === 'fail';
  return after?.status === 'fail' || after?.status === 'undecided';
}

function smallestSet(
  document: SetupDocument,
  before: readonly Finding[],
  tried: readonly Trial[],
  failing: readonly Finding[],
): readonly Trial[] {
  let trials = 0;
  for (let size = 1; size <= Math.min(largestSet, tried.length); size += 1) {
    for (const set of setsOf(tried, size)) {
      if (!failing.every(({ id }) => set.some((trial) => trial.cures.includes(id)))) continue;
      trials += 1;
      if (trials > mostTrials) return [];
      if (curesAll(document, before, set)) return set;
    }
  }
  return [];
}

function curesAll(document: SetupDocument, before: readonly Finding[], set: readonly Trial[]): boolean {
  const paths = set.flatMap((trial) => trial.candidate.edits.map((edit) => edit.path));
  if (new Set(paths).size < paths.length) return false;
  const after = findingsWith(
    document,
    set.map((trial) => trial.candidate),
  );
  return (
    after !== null &&
    before.every((finding, i) => !isWorse(finding, after[i]) && (!isToCure(finding) || isMet(after[i])))
  );
}

/** What stands beside the verdict may go on failing: no part is asked to cure it. */
function isToCure({ core, status }: Finding): boolean {
  return core && status === 'fail';
}

function* setsOf(trials: readonly Trial[], size: number, from = 0): Generator<readonly Trial[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let i = from; i < trials.length; i += 1) {
    for (const rest of setsOf(trials, size - 1, i + 1)) yield [trials[i] as Trial, ...rest];
  }
}
