import type { Answer } from '../engine/assess/index.ts';
import type { CheckId, Finding, FindingStatus } from '../engine/findings/index.ts';

/** Passes that a person looks for on the drawing. */
const passesThatMatter: readonly CheckId[] = [
  'rear.mast',
  'rear.shoulders',
  'rear.retention',
  'rear.lowerPin',
  'front.span',
  'front.retention',
  'front.topLink',
  'rear.claw',
  'rear.receiverAngle',
  'rear.receiverWidth',
  'rear.jaw',
  'rear.jawSpan',
];

/**
 * Numbers of the notes, as they stand in the balloons of the drawing: what fails first (with the lead finding at the head),
 * then what is undecided, then the passes that matter.
 *
 * @param answer the answer [record]
 * @returns the number of each note by check [from 1]
 */
export function balloonsOf(answer: Answer): ReadonlyMap<CheckId, number> {
  const of = (...statuses: FindingStatus[]): Finding[] =>
    answer.findings.filter(({ core, status }) => core && statuses.includes(status));
  const passes = of('pass').filter(({ id }) => passesThatMatter.includes(id));
  const ordered = [...of('fail'), ...of('cured'), ...of('undecided'), ...passes].map(({ id }) => id);
  const lead = answer.lead === null ? [] : [answer.lead.id];
  return new Map([...new Set([...lead, ...ordered])].map((id, i) => [id, i + 1]));
}
