export { restWords, standingText, suggestionDetails, suggestionText, toolWords } from './advice.ts';
export { alternativeText, becauseOf, cellText, openFindings, topicLine, topicWords, verdictWords } from './answer.ts';
export { askOf, asksOf, type Ask } from './asks.ts';
export { cureText } from './cures.ts';
export { asksWhetherDriven, driveLead, driveSpare, serveText, serveWords, type Driven } from './drive.ts';
export {
  driveRuleText,
  driveRuleWords,
  ruledText,
  ruledWords,
  steeredText,
  steeredWords,
  steeringRuleText,
  steeringRuleWords,
} from './rules.ts';
export { balanceRemarks } from './balanceRemarks.ts';
export { agreementText, doubtText, secondReadingText } from './readings.ts';
export { setPriceText } from './setPrice.ts';
export { cautionWords } from './cautions.ts';
export { missOf, sentenceOf, shortOf, spareOf, titleOf } from './findings.ts';
export { fieldOf, howToMeasure, labelOf } from './labels.ts';
export { sentenceCase } from './sentenceCase.ts';
export { markupText } from './markup.ts';
export { mountingNames, mountingReasons } from './mounting.ts';
export { pinPlanWords, pinRefusalWords, targetFigures, type PinPlanWords, type PinRefusalWords } from './pinPlan.ts';
export { remarksBesideAxles, remarksOn } from './remarks.ts';
export { topicAnswer } from './topicAnswer.ts';
export { uncheckedText, waitsForDriven } from './unchecked.ts';
