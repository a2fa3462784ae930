export { couplerFields, fieldRules, implementFields, pinFields, tractorFields } from './fields.ts';
export { atPath, withEdits, type Edit } from './edit.ts';
export { errorLine, excerpt, type InputError, type InputErrorCode } from './inputError.ts';
export { largestSetup, parseSetup, readSetup, readSetupText, type SetupReading } from './readSetup.ts';
export type {
  Coupler,
  Implement,
  LiftAllowance,
  OutlineRecord,
  Part,
  PinRow,
  PinSet,
  Setup,
  SetupDocument,
  Tractor,
} from './setup.ts';
export {
  alterations,
  leafRules,
  setupSchema,
  couplerKinds,
  liftAllowances,
  mountingStyles,
  pinFixings,
  type Alteration,
  type CouplerKind,
  type MountingStyle,
  type PinFixing,
} from './setupSchema.ts';
export type { Bound, FieldRule, Provenance, Setting, Value } from './value.ts';
export { setupFrom, yardErrors, type YardDocument } from './yard.ts';
