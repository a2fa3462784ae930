import { adviceFrom } from '@hitchwright/core/advice';
import { answerFrom, judgeSetup, type Answer } from '@hitchwright/core/assess';
import { answerJson } from '@hitchwright/core/contract';
import { parseSetup, readSetupText, type InputError, type Setup, type SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import type { ChartWanted, HandOverAsked } from '@hitchwright/print';
import { restWords, suggestionDetails, suggestionText, verdictWords } from '@hitchwright/core/words';

/** What is asked of a setup: its answer, what to measure next, or what is kept of a saved answer. */
export type Question =
  | { readonly kind: 'check'; readonly full: boolean; readonly units: UnitSystem | null }
  | { readonly kind: 'advice'; readonly units: UnitSystem | null }
  | { readonly kind: 'keep'; readonly units: UnitSystem | null };

/** What a thread is asked: a question about a setup, something to be handed over of it, a pairing of a wall chart, or such a chart as a file. */
export type Message =
  | { readonly text: string; readonly question: Question }
  | { readonly handOver: HandOverAsked }
  | { readonly pairing: SetupDocument; readonly system: UnitSystem }
  | { readonly chart: ChartWanted };

/** What is kept of a saved answer. */
export interface Kept {
  readonly verdict: string;
  readonly reason: string;
  /** [JSON] */
  readonly summary: unknown;
}

/** The answer as JSON text, or everything that is wrong with the setup. */
export type Worked =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * Works one question out.
 *
 * @param text the setup document [JSON text]
 * @param question what is asked of it [record]
 * @returns the answer as JSON text, or every error in the setup [InputError codes]
 */
export function worked(text: string, question: Question): Worked {
  const reading = readSetupText(text);
  if (!reading.ok) return reading;
  const { setup } = reading;
  const document = parseSetup(text) as SetupDocument;
  const system = question.units ?? setup.units ?? 'us';
  const full = question.kind === 'check' && question.full;
  const depth = { thresholds: full || question.kind === 'advice' };
  const judgement = judgeSetup(setup, depth);
  const answer = answerFrom(document, judgement, { full });
  if (question.kind === 'check') return done(answerJson(answer, setup, system));
  if (question.kind === 'keep') return done(keptOf(answer, setup, system));
  const advice = adviceFrom(document, judgement, answer, depth);
  return done({
    hitchwright: 1,
    verdict: answer.verdict,
    headline: verdictWords(answer),
    settled: advice.settled,
    next: advice.next.map((suggestion) => ({
      ...suggestion,
      text: suggestionText(suggestion, system),
      details: suggestionDetails(suggestion, system),
    })),
    tooClose: advice.tooClose,
    needless: advice.needless,
    remarks: restWords(advice),
  });
}

function done(answer: unknown): Worked {
  return { ok: true, text: JSON.stringify(answer) };
}

/** What is kept of an answer is what was said: every check with its sentence, not how its figure came about, which the same setup gives again. */
function keptOf(answer: Answer, setup: Setup, system: UnitSystem): Kept {
  const { headline, because, outcomes, findings, cures, remarks, assumed, cautions } = answerJson(
    answer,
    setup,
    system,
  );
  const summary = {
    headline,
    outcomes,
    findings: findings.map(({ id, status, why }) => ({ id, status, why })),
    cures: cures.map(({ text }) => text),
    remarks,
    assumed,
    cautions: cautions.map(({ id }) => id),
  };
  return { verdict: answer.verdict, reason: (because ?? headline).slice(0, 2000), summary };
}
