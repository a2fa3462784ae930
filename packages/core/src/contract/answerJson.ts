import type { Alternative, Answer, Cure } from '../engine/assess/index.ts';
import type { Finding } from '../engine/hookup/index.ts';
import type { InputError, Setup } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
import {
  alternativeText,
  askOf,
  becauseOf,
  cautionWords,
  cureText,
  hookUpWords,
  remarksOn,
  sentenceOf,
  titleOf,
} from '../words/index.ts';

/**
 * The answer as it leaves the house: numbers in canonical units, sentences in the person's.
 *
 * @param answer the answer [record]
 * @param setup a setup that was read [record]
 * @param system unit system to write in [us | metric]
 * @returns a plain object [JSON]
 */
export function answerJson(answer: Answer, setup: Setup, system: UnitSystem) {
  return {
    hitchwright: 1,
    scope: 'hook-up only',
    saysSafeToRun: false,
    headline: `Hook-up only: ${hookUpWords[answer.outcomes.hooksUp]}`,
    because: becauseOf(answer, setup, system),
    leadFinding: answer.lead?.id ?? null,
    outcomes: answer.outcomes,
    findings: answer.findings.map((finding) => findingJson(finding, setup, system)),
    cures: answer.cures.map(cureJson),
    alternatives: answer.alternatives.map((alternative) => alternativeJson(alternative, system)),
    turnDeg: answer.turn,
    category: answer.category,
    remarks: remarksOn(answer, system),
    assumed: answer.assumed,
    cautions: answer.cautions.map((id) => ({ id, text: cautionWords[id] })),
  };
}

function findingJson(finding: Finding, setup: Setup, system: UnitSystem) {
  return {
    ...finding,
    title: titleOf(finding),
    why: sentenceOf(finding, setup, system),
    measure: askOf(finding, system),
  };
}

function cureJson(cure: Cure) {
  return { ...cure, text: cureText(cure) };
}

function alternativeJson(alternative: Alternative, system: UnitSystem) {
  return {
    kind: alternative.kind,
    coupler: alternative.coupler,
    outcome: alternative.outcome,
    leadFinding: alternative.lead?.id ?? null,
    text: alternativeText(alternative, system),
  };
}

/**
 * Input errors as they leave the house.
 *
 * @param errors input errors [list]
 * @returns a plain object [JSON]
 */
export function inputErrorsJson(errors: readonly InputError[]) {
  return { hitchwright: 1, errors };
}
