import type { Outcome } from '../../src/engine/assess/index.ts';
import { outcomeOf } from '../../src/engine/assess/outcomes.ts';
import { topicOf, type CheckId, type Finding, type Topic } from '../../src/engine/findings/index.ts';
import type { Case } from './case.ts';
import type { Answer, Answers, Violation, Violations } from './held.ts';
import type { Seen } from './margins.ts';
import type { Point } from './samples.ts';
import { keptElsewhere, openOtherSettings, settingsFor, type Group, type OtherSettings } from './settings.ts';

const topics: readonly Topic[] = ['hooksUp', 'runs', 'lifts', 'staysUpright'];
const all: readonly Answer[] = [...topics, 'verdict'];

/** The findings that one of the four answers, or the verdict, is made from. */
function behind(findings: readonly Finding[], answer: Answer): readonly Finding[] {
  return answer === 'verdict' ? findings : findings.filter(({ id }) => topicOf(id) === answer);
}

/** The four answers and the verdict, before any part is sought that would cure what fails. */
export function answersOf(findings: readonly Finding[]): Answers {
  const entries = all.map((answer): [Answer, Outcome] => [answer, outcomeOf(behind(findings, answer))]);
  return Object.fromEntries(entries) as Record<Answer, Outcome>;
}

/** Findings of one standing that truths stand behind. */
function standing({ findings, truths }: Case, status: 'pass' | 'fail', core: boolean): readonly Finding[] {
  return findings.filter(
    (finding) => finding.status === status && finding.core === core && truths.ids.includes(finding.id),
  );
}

/** Checks that fail, each with those that it can’t be met together with. */
function failing(one: Case, core: boolean): readonly Group[] {
  return standing(one, 'fail', core).map(({ id, conflictsWith }) => ({ id, ids: [id, ...conflictsWith] }));
}

/** What was told of the checks of one rank, core or limits, with what may be set for their sake. */
interface Rank {
  readonly passing: readonly CheckId[];
  readonly failing: readonly Group[];
  readonly others: OtherSettings;
}

function rankOf(one: Case, core: boolean): Rank {
  const passing = standing(one, 'pass', core).map(({ id }) => id);
  return { passing, failing: failing(one, core), others: openOtherSettings(one, passing, settingsFor(one, core)) };
}

/** An answer of “will not” that truths could speak against: every core check behind it is a number. */
interface Refusal {
  readonly answer: Answer;
  readonly ids: readonly CheckId[];
}

function refusals({ findings, truths }: Case, answers: Answers): Refusal[] {
  return all.flatMap((answer) => {
    const core = behind(findings, answer).filter((finding) => finding.core);
    const fails = core.filter(({ status }) => status === 'fail');
    const isOfNumbers = fails.every(({ id }) => truths.ids.includes(id));
    if (answers[answer] !== 'willNot' || !isOfNumbers) return [];
    return [{ answer, ids: core.map(({ id }) => id).filter((id) => truths.ids.includes(id)) }];
  });
}

/** Holds what was told of checks and answers against truths at the reported setting. */
export interface Judge {
  readonly look: (point: Point, seen: Seen, sample: number) => void;
  /** Truths that are served by another setting than the reported one. */
  readonly resettled: () => number;
}

/** Opens the judge of a case. */
export function openJudge(one: Case, violations: Violations): Judge {
  const ranks = [rankOf(one, true), rankOf(one, false)];
  const answers = answersOf(one.findings);
  const refused = refusals(one, answers);
  /** Answers that are told to work and that a check has a say in; a limit has none. */
  const claimsBehind = (id: CheckId): readonly Answer[] =>
    all.filter(
      (answer) =>
        answers[answer] === 'works' && !id.startsWith('limit.') && (answer === 'verdict' || answer === topicOf(id)),
    );
  let resettled = 0;
  const look = (point: Point, { margins }: Seen, sample: number): void => {
    const note = (id: Violation['id'], what: Violation['what'], margin: number): void =>
      violations.note({ id, what, sample, elsewhere: false, margin, low: null, high: null }, point);
    const at = (id: CheckId): number => margins.get(id) ?? NaN;
    const least = (ids: readonly CheckId[]): number => Math.min(...ids.map((id) => at(id) - one.roundingOf(id)));
    for (const { passing, failing, others } of ranks) {
      const short = passing.filter((id) => !(at(id) >= -one.roundingOf(id)));
      const isServed = short.length > 0 && others.serve(point);
      resettled += isServed ? 1 : 0;
      for (const id of isServed ? [] : short) {
        note(id, 'passes, yet missed', at(id));
        for (const answer of claimsBehind(id)) note(answer, 'works, yet missed', at(id));
      }
      for (const { id, ids } of failing) if (!(least(ids) <= 0)) note(id, 'fails, yet kept', least(ids));
    }
    for (const { answer, ids } of refused) if (!(least(ids) <= 0)) note(answer, 'will not, yet kept', least(ids));
  };
  return { look, resettled: () => resettled };
}

/** What fails is held against other settings too, drawn together with the truths; gives how many were drawn. */
export function failsElsewhere(one: Case, violations: Violations, samples: number): number {
  let drawn = 0;
  for (const core of [true, false]) {
    const [groups, settings] = [failing(one, core), settingsFor(one, core)];
    if (groups.length === 0 || settings.length === 0) continue;
    drawn += samples;
    for (const { point, ...kept } of keptElsewhere(one, groups, settings, { samples, seed: one.setup.number + 1 }))
      violations.note({ ...kept, what: 'fails, yet kept', elsewhere: true, low: null, high: null }, point);
  }
  return drawn;
}
