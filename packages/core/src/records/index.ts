export { couplerFields, fieldRules, implementFields, pinFields, shaftFields, tractorFields } from './fields.ts';
export {
  chosenIn,
  editedByHand,
  overlap,
  withChosen,
  withChosenDone,
  withOneLess,
  withOneMore,
  type CureRecord,
} from './chosen.ts';
export { atPath, withEdits, type Edit } from './edit.ts';
export { errorLine, excerpt, type InputError, type InputErrorCode } from './inputError.ts';
export {
  inUse,
  inUseRule,
  readingGrades,
  type GradedReading,
  type InUse,
  type ReadingConflict,
  type ReadingGrade,
} from './inUse.ts';
export { largestSetup, parseSetup, readSetup, readSetupText, type SetupReading } from './readSetup.ts';
export type {
  ChosenRules,
  Coupler,
  Implement,
  LiftAllowance,
  OutlineRecord,
  Part,
  PinRow,
  PinSet,
  Price,
  Setup,
  SetupDocument,
  Shaft,
  Tractor,
} from './setup.ts';
export {
  alterations,
  couplerKinds,
  jointKinds,
  liftAllowances,
  limiters,
  loaderStates,
  mountingStyles,
  pinFixings,
  rotations,
  type Alteration,
  type CouplerKind,
  type JointKind,
  type Limiter,
  type LoaderState,
  type MountingStyle,
  type PinFixing,
  type Rotation,
} from './choices.ts';
export { givenRange } from './givenRange.ts';
export { partSizesOf } from './partSizes.ts';
export { readReply, readRequest, type MeasuringReply, type MeasuringRequest } from './request.ts';
export { readValue } from './readValue.ts';
export { setByNature } from './settable.ts';
export { leafRules } from './leafSchema.ts';
export { mostParts, setupSchema } from './setupSchema.ts';
export type { Bound, FieldRule, Provenance, Setting, Value } from './value.ts';
export { setupFrom, yardErrors, type YardDocument } from './yard.ts';
