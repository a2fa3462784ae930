import { readSetup, withChosen, withEdits, type Setup, type SetupDocument } from '../../records/index.ts';
import { topicOf, type Driver, type Finding, type OpenInterval, type Topic } from '../findings/index.ts';
import { summariseCategory } from '../hookup/index.ts';
import { basisOf } from '../lift/index.ts';
import { reader } from '../proof/index.ts';
import type { Alternative, Answer, Assessment, CautionId, Cure } from './answer.ts';
import type { Candidate } from './candidate.ts';
import { countedOn } from './counted.ts';
import { usedFigures } from './figures.ts';
import { judgeSetup, type SetupJudgement } from './judgeSetup.ts';
import { outcomesByRules } from './otherRules.ts';
import { leadOf, outcomeOf } from './outcomes.ts';
import { steeringByRules } from './steering.ts';
import { balanceSweepAt, shaftSweepAt, shaftWantedAt, sweepAt } from './sweeps.ts';

/** What to work out beyond the findings. */
export interface AssessOptions {
  /** Measurements and thresholds for what is open, and other ways to hook up. Bulk answers leave them out. */
  readonly full?: boolean;
  /** Other couplers at hand, as they stand in setup documents. */
  readonly couplers?: readonly SetupDocument[];
}

/**
 * Decides whether a setup hooks up, runs, lifts and stays upright.
 *
 * @param document a setup document [JSON]
 * @param options what to work out beyond the findings [flags]
 * @returns the answer, or every error in the input [InputError codes]
 * @example assess({ hitchwright: 1, tractor: { category: '1' }, implement: { category: '1' } })
 */
export function assess(document: SetupDocument, options: AssessOptions = { full: true }): Assessment {
  const reading = readSetup(document);
  if (!reading.ok) return reading;
  const judgement = judgeSetup(reading.setup, { thresholds: options.full === true });
  return { ok: true, answer: answerFrom(document, judgement, options) };
}

/**
 * Forms the answer to a setup that was judged.
 *
 * @param document the setup as written [JSON]
 * @param judgement the same, judged [record]
 * @param options what to work out beyond the findings [flags]
 * @returns the answer [record]
 */
export function answerFrom(document: SetupDocument, judgement: SetupJudgement, options: AssessOptions): Answer {
  const { setup } = judgement.question.joint;
  const counted = countedOn(document, judgement, { thresholds: options.full === true });
  const { cures, searched, perhaps } = counted;
  const mayBeCured = perhaps.length > 0;
  const failing = counted.findings.filter(({ core, status }) => core && status === 'fail');
  const findings = counted.findings.map((finding) => cured(finding, cures, failing));
  const figures = usedFigures(judgement);
  return {
    hold: judgement.question.joint.hold,
    outcomes: {
      hooksUp: outcomeOf(onTopic(findings, 'hooksUp'), mayBeCured),
      runs: outcomeOf(onTopic(findings, 'runs'), mayBeCured),
      lifts: outcomeOf(onTopic(findings, 'lifts'), mayBeCured),
      staysUpright: outcomeOf(onTopic(findings, 'staysUpright'), mayBeCured),
    },
    verdict: outcomeOf(findings, mayBeCured),
    lead: leadOf(findings),
    findings,
    cures,
    perhaps: mayBeCured ? { cures: perhaps, open: openWith(counted.document, perhaps, options) } : null,
    everySetTried: searched,
    alternatives:
      options.full === true ? alternativesTo(withChosen(document, []), setup, findings, options.couplers ?? []) : [],
    turn: turnOf(judgement),
    liftBasis: basisOf(judgement.question.lift),
    figures,
    sweep: options.full === true ? sweepAt(judgement) : null,
    shaft: options.full === true ? shaftSweepAt(judgement) : null,
    shaftWanted: options.full === true ? shaftWantedAt(judgement) : null,
    balance: options.full === true ? balanceSweepAt(judgement) : null,
    steeringRules: options.full === true ? steeringByRules(judgement) : [],
    otherRules: options.full === true ? outcomesByRules(judgement) : [],
    category: summariseCategory(setup),
    cautions: cautionsFor(setup, findings, cures),
    assumed: assumedBy(findings),
  };
}

/** What is open once candidates are applied. */
function openWith(document: SetupDocument, candidates: readonly Candidate[], options: AssessOptions): Finding[] {
  const reading = readSetup(
    withEdits(
      document,
      candidates.flatMap(({ edits }) => edits),
    ),
  );
  if (!reading.ok) return [];
  const { findings } = judgeSetup(reading.setup, { thresholds: options.full === true });
  return findings.filter(({ core, status }) => core && status === 'undecided');
}

/**
 * A failure is cured if it is set right together with everything else. Where something else can't be cured at all, what can
 * be is told so by itself; where each could be but nothing cures them together, nothing is cured.
 */
function cured(finding: Finding, cures: readonly Cure[], failing: readonly Finding[]): Finding {
  const isHelped = (one: Finding): boolean => cures.some((cure) => cure.cures.includes(one.id));
  const hasSet = cures.some((cure) => cure.inSmallestSet);
  const isHopeless = failing.some((one) => !isHelped(one));
  const isCured = failing.includes(finding) && (hasSet || (isHopeless && isHelped(finding)));
  return isCured ? { ...finding, status: 'cured' } : finding;
}

function onTopic(findings: readonly Finding[], topic: Topic): readonly Finding[] {
  return findings.filter((finding) => topicOf(finding.id) === topic);
}

function alternativesTo(
  document: SetupDocument,
  setup: Setup,
  findings: readonly Finding[],
  couplers: readonly SetupDocument[],
): Alternative[] {
  const isGood = findings.every((finding) => !finding.core || !['fail', 'cured'].includes(finding.status));
  if (isGood) return [];
  const without = setup.coupler === undefined ? [] : [tried(document, undefined)];
  return [
    ...without,
    ...couplers.filter((coupler) => coupler['name'] !== setup.coupler?.name).map((coupler) => tried(document, coupler)),
  ];
}

function tried(document: SetupDocument, coupler: SetupDocument | undefined): Alternative {
  const assessment = assess(withEdits(document, [{ path: 'coupler', value: coupler }]), { full: false });
  const answer = assessment.ok ? assessment.answer : null;
  return {
    kind: coupler === undefined ? 'leaveCouplerOff' : 'otherCoupler',
    coupler: typeof coupler?.['name'] === 'string' ? coupler['name'] : null,
    outcome: answer?.verdict ?? 'notChecked',
    lead: answer?.lead ?? null,
  };
}

function turnOf({ question: { joint }, setting, findings }: SetupJudgement): OpenInterval | null {
  const mast = findings.find((finding) => finding.id === 'rear.mast');
  if (joint.hold !== 'uFrame' || mast?.margin == null) return null;
  const turn = joint.turn(reader(setting));
  const degrees = (angle: number): number => (angle * 180) / Math.PI;
  return { low: degrees(turn.low), high: degrees(turn.high) };
}

function cautionsFor(setup: Setup, findings: readonly Finding[], cures: readonly Cure[]): CautionId[] {
  const failed = (id: Finding['id']): boolean =>
    findings.some((finding) => finding.id === id && ['fail', 'cured'].includes(finding.status));
  const inSet = cures.filter((cure) => cure.inSmallestSet);
  return [
    'standClear',
    'raisedLoad',
    'ratingCompares',
    ...(failed('limit.hooks') ? (['mayUnhook'] as const) : []),
    ...(failed('rear.retention') || failed('front.retention') ? (['notRetained'] as const) : []),
    ...(failed('front.lowerPin') || failed('rear.lowerPin') ? (['pinRoundSmall'] as const) : []),
    ...(inSet.some((cure) => cure.altersMachine) ? (['boltedPlate'] as const) : []),
    ...(inSet.some((cure) => !cure.returnable) ? (['cutPart'] as const) : []),
    ...shaftCautions(setup, findings, cures),
    ...balanceCautions(setup, failed),
    'firstLift',
    'manualPrevails',
  ];
}

function shaftCautions(setup: Setup, findings: readonly Finding[], cures: readonly Cure[]): CautionId[] {
  const statusOf = (id: Finding['id']): Finding['status'] | undefined => findings.find((one) => one.id === id)?.status;
  const drive = statusOf('shaft.direction');
  const isDriven = drive === 'pass' || drive === 'fail';
  const isMismatched = statusOf('shaft.splines') === 'fail' || statusOf('shaft.speed') === 'fail';
  return [
    ...(isDriven ? (['shaftEntangles'] as const) : []),
    ...(isMismatched ? (['noAdaptors'] as const) : []),
    ...(cures.some(({ kind }) => kind === 'stubExtender') ? (['stubExtender'] as const) : []),
    ...(setup.coupler === undefined || drive === 'notNeeded' ? [] : (['shaftMovesBack'] as const)),
  ];
}

function balanceCautions({ tractor }: Setup, failed: (id: Finding['id']) => boolean): CautionId[] {
  const hasLoader = tractor.loader !== undefined && tractor.loader !== 'absent';
  return [
    ...(failed('balance.frontShare') ? (['frontMayLift'] as const) : []),
    'steeringNeedsWeight',
    ...(hasLoader ? (['loaderCounterweight'] as const) : []),
    'rollBarUp',
    'weighIt',
  ];
}

function assumedBy(findings: readonly Finding[]): Driver[] {
  const assumed = new Map<string, Driver>();
  for (const driver of findings.flatMap((finding) => finding.drivers)) {
    if (['class', 'habit', 'default', 'unknown'].includes(driver.origin)) assumed.set(driver.path, driver);
  }
  return [...assumed.values()];
}
