export {
  alternativeText,
  askOf,
  becauseOf,
  cellText,
  scopeWords,
  topicLine,
  topicWords,
  verdictWords,
} from './answer.ts';
export { cureText } from './cures.ts';
export { driveLead, driveSpare, serveText, serveWords, type Driven } from './drive.ts';
export { driveRuleText, driveRuleWords, ruledText, ruledWords } from './rules.ts';
export { cautionWords } from './cautions.ts';
export { missOf, sentenceOf, shortOf, titleOf } from './findings.ts';
export { fieldOf, howToMeasure, labelOf } from './labels.ts';
export { mountingNames, mountingReasons } from './mounting.ts';
export { remarksOn } from './remarks.ts';
