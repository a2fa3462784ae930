export { checkIds, topicOf, type CheckId, type Topic } from './checkIds.ts';
export type {
  Driver,
  Finding,
  FindingStatus,
  Mismatch,
  OpenInterval,
  Reason,
  RuledOut,
  Standing,
  Threshold,
} from './finding.ts';
export {
  allHoldAt,
  judgeLines,
  openQuestion,
  standingAlone,
  standingsOf,
  type Depth,
  type Judgement,
  type Question,
} from './judgeLines.ts';
export { atLeastZero, playWithin, type Line, type NamedCheck, type Need, type NotNeeded } from './line.ts';
