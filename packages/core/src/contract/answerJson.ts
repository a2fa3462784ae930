import type { Alternative, Answer, Cure, RuledOutcome, SteeredOutcome } from '../engine/assess/index.ts';
import type { Finding } from '../engine/findings/index.ts';
import type { InputError, Setup } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
import {
  alternativeText,
  askOf,
  becauseOf,
  cautionWords,
  cureText,
  remarksOn,
  ruledText,
  sentenceOf,
  setPriceText,
  steeredText,
  titleOf,
  verdictWords,
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
    saysSafeToRun: false,
    headline: verdictWords(answer),
    verdict: answer.verdict,
    because: becauseOf(answer, setup, system),
    leadFinding: answer.lead?.id ?? null,
    outcomes: answer.outcomes,
    findings: answer.findings.map((finding) => findingJson(finding, setup, system)),
    cures: answer.cures.map((cure) => cureJson(cure, system)),
    perhaps: perhapsJson(answer, setup, system),
    setPrice: setPriceText(answer.cures),
    everySetTried: answer.everySetTried,
    alternatives: answer.alternatives.map((alternative) => alternativeJson(alternative, system)),
    turnDeg: answer.turn,
    liftBasis: answer.liftBasis,
    sweep: answer.sweep,
    shaft: answer.shaft,
    shaftWanted: answer.shaftWanted,
    otherRules: answer.otherRules.map((ruled) => ruledJson(ruled, system)),
    balance: answer.balance,
    steeringRules: answer.steeringRules.map((steered) => steeredJson(steered, system)),
    category: answer.category,
    remarks: remarksOn(answer, system, setup),
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

function cureJson(cure: Cure, system: UnitSystem) {
  return { ...cure, text: cureText(cure, system) };
}

function perhapsJson({ perhaps }: Answer, setup: Setup, system: UnitSystem) {
  if (perhaps === null) return null;
  return {
    cures: perhaps.cures.map((cure) => ({ ...cure, text: cureText(cure, system) })),
    open: perhaps.open.map((finding) => findingJson(finding, setup, system)),
  };
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

function ruledJson(ruled: RuledOutcome, system: UnitSystem) {
  return { ...ruled, lead: ruled.lead?.id ?? null, text: ruledText(ruled, system) };
}

function steeredJson(steered: SteeredOutcome, system: UnitSystem) {
  const { status, margin, unit } = steered.finding;
  return { rule: steered.rule, chosen: steered.chosen, status, margin, unit, text: steeredText(steered, system) };
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
