import type { SetupDocument } from '../../records/index.ts';
import { topicOf, type CheckId, type Finding } from '../findings/index.ts';
import type { Cure } from './answer.ts';
import { balanceCandidates } from './balanceCandidates.ts';
import type { Candidate } from './candidate.ts';
import { candidatesFor } from './candidates.ts';
import type { SetupJudgement } from './judgeSetup.ts';
import { shaftCandidates } from './shaftCandidates.ts';
import { smallestSet } from './smallestSet.ts';
import { balanceSweepAt, shaftSweepAt } from './sweeps.ts';
import { isMet, isToCure, isWorse, openTrials, type Trials } from './trials.ts';

/** Cures that were tried and hold, and whether every set of what is on the list was tried. */
export interface Cures {
  readonly cures: readonly Cure[];
  readonly searched: boolean;
  /** Candidates that nothing shows to fail together, where no set is shown to hold: readings may yet tell. */
  readonly perhaps: readonly Candidate[];
}

interface Trial {
  readonly candidate: Candidate;
  readonly cures: readonly CheckId[];
}

/**
 * Seeks cures for what fails. Each candidate is applied to the setup and everything is checked again; it is offered only
 * where it turns a failure into a pass and makes nothing else worse. The smallest set that leaves no failure is sought among
 * all candidates: one may help only together with another.
 *
 * @param document the setup as written [JSON]
 * @param judgement the same, judged [record]
 * @returns cures that were tried and hold [list]
 */
export function seekCures(document: SetupDocument, judgement: SetupJudgement): Cures {
  const { findings } = judgement;
  if (!findings.some(isToCure)) return { cures: [], searched: true, perhaps: [] };
  const candidates = candidatesOf(document, judgement);
  const trials = openTrials(document, findings);
  const failing = findings.filter(isToCure).map(({ id }) => id);
  const { set, searched } = smallestSet(trials, candidates, failing, 'holds');
  // Of what differs by how much, the most may cure where less is too little.
  const mostFirst = [...candidates].sort((a, b) => b.count - a.count);
  const perhaps = set === null ? smallestSet(trials, mostFirst, failing, 'mayHold').set : null;
  const offered = triedOut(trials, findings, candidates, set ?? []);
  const cures = offered.map(({ candidate, cures: ids }): Cure => {
    const inSmallestSet = set?.includes(candidate) ?? false;
    return { ...candidate, cures: ids, inSmallestSet };
  });
  return { cures, searched, perhaps: perhaps ?? [] };
}

/** Everything on the list that could help, what can be given back and alters nothing first. */
export function candidatesOf(document: SetupDocument, judgement: SetupJudgement): readonly Candidate[] {
  const { findings, question } = judgement;
  const { setup } = question.joint;
  const failing = findings.filter(isToCure);
  const isOn = (topic: ReturnType<typeof topicOf>): boolean => failing.some(({ id }) => topicOf(id) === topic);
  const sweep = isOn('runs') ? shaftSweepAt(judgement) : null;
  const likes = ({ returnable, altersMachine }: Candidate): number => (returnable ? 0 : 2) + (altersMachine ? 1 : 0);
  return [
    ...candidatesFor(setup, failing),
    ...shaftCandidates({ document, setup, failing, sweep }),
    ...(isOn('staysUpright') ? balanceCandidates(setup, balanceSweepAt(judgement)) : []),
  ].sort((a, b) => likes(a) - likes(b));
}

/** What is tried by how much, the least that may serve first: what cures all that it can is enough. */
const byAmount: Readonly<Partial<Record<Candidate['kind'], (id: CheckId) => boolean>>> = {
  liftStop: (id) => id.includes('Joint'),
  longerTubes: (id) => id === 'shaft.overlap' || id === 'shaft.apart',
  cutShaft: (id) => id === 'shaft.bottoming',
  frontWeights: (id) => id === 'balance.frontShare',
};

/** Every candidate that cures something, and those of the set; of those that differ by how much, the one that cures most. */
function triedOut(
  trials: Trials,
  before: readonly Finding[],
  candidates: readonly Candidate[],
  set: readonly Candidate[],
): Trial[] {
  const failing = before.filter(isToCure).map(({ id }) => id);
  const found: Trial[] = set.map((candidate) => tried(trials, before, candidate) ?? { candidate, cures: [] });
  for (const candidate of candidates.filter((one) => !set.includes(one))) {
    const isFor = byAmount[candidate.kind];
    const same = isFor === undefined ? undefined : found.find((trial) => differByAmount(trial.candidate, candidate));
    const isEnough =
      same !== undefined &&
      (set.includes(same.candidate) || failing.filter(isFor ?? isAny).every((id) => same.cures.includes(id)));
    const trial = isEnough ? null : tried(trials, before, candidate);
    if (trial === null || (same !== undefined && trial.cures.length <= same.cures.length)) continue;
    if (same === undefined) found.push(trial);
    else found[found.indexOf(same)] = trial;
  }
  return found.sort((a, b) => candidates.indexOf(a.candidate) - candidates.indexOf(b.candidate));
}

const isAny = (): boolean => true;

function differByAmount(a: Candidate, b: Candidate): boolean {
  return a.kind === b.kind && a.part === b.part;
}

/** A candidate by itself: what it reaches is judged first, and everything only where that promises something. */
function tried(trials: Trials, before: readonly Finding[], candidate: Candidate): Trial | null {
  const reached = trials.reachedBy(candidate);
  if (reached === null) return null;
  const touched = before.filter(({ id }) => reached.has(id));
  if (touched.some((finding) => isWorse(finding, reached.get(finding.id)))) return null;
  if (!touched.some((finding) => isToCure(finding) && isMet(reached.get(finding.id)))) return null;
  const after = trials.allWith([candidate]);
  if (after === null || before.some((finding, i) => isWorse(finding, after[i]))) return null;
  const cures = before.filter((finding, i) => isToCure(finding) && isMet(after[i])).map(({ id }) => id);
  return cures.length === 0 ? null : { candidate, cures };
}
