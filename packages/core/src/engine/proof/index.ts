export {
  marginOf,
  nearlyZero,
  rankOf,
  withCare,
  type Care,
  type Check,
  type Measured,
  type Reading,
  type Term,
} from './check.ts';
export { decide, type Decision } from './decide.ts';
export { judge, problemOf, statusAlone, type Field, type Judged } from './judge.ts';
export {
  atPoint,
  leastCertain,
  midpoint,
  rangeOf,
  reader,
  withRange,
  workShare,
  type Box,
  type ChoiceRange,
  type Problem,
} from './problem.ts';
export { bestSetting, everySettingFails, likelySetting } from './setting.ts';
