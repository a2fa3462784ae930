/** Published figures about hitches, couplers and PTO shafts: data with their source, edition and status. */
export { bushings, bushingsFor, type Bushing } from './bushings.ts';
export { suitcaseFigures, wheelWeights, type WheelWeight } from './castWeights.ts';
export { categories, fullCategory, isNarrow, spanCategory, type Category } from './category.ts';
export { categoryPower } from './categoryPower.ts';
export { classFields, classRange, type ClassField, type ClassRange } from './classRange.ts';
export { convergenceHalfAngle, frontSpacing, linkPlanLength } from './convergence.ts';
export { couplerKindFacts, couplerKinds, type CouplerKind, type CouplerKindFacts } from './couplerKinds.ts';
export { couplerFigures, type CouplerField } from './couplers.ts';
export {
  clayLoamDrafts,
  draftMachines,
  draftRow,
  soils,
  type DraftMachine,
  type DraftRow,
  type Soil,
} from './draft.ts';
export {
  clearanceFigures,
  jointAngleFigures,
  overlapFigures,
  type JointAngle,
  type OverlapRule,
} from './driveBands.ts';
export {
  driveRuleNames,
  driveRules,
  type DriveRuleField,
  type DriveRuleName,
  type DriveRuleSet,
  type SharedFigure,
} from './driveRules.ts';
export {
  seriesCross,
  seriesLengths,
  seriesNumbers,
  seriesPower,
  type SeriesCross,
  type SeriesNumber,
  type ShaftLength,
} from './driveSeries.ts';
export {
  cutterPowers,
  drawbarShare,
  drivenMachines,
  driveTypes,
  fieldPace,
  fieldWorks,
  ptoDemand,
  ptoShare,
  surfaces,
  type CutterPower,
  type DrivenMachine,
  type DriveType,
  type FieldPace,
  type FieldWork,
  type Surface,
} from './fieldWork.ts';
export {
  bestFigure,
  chooseFigures,
  highestOf,
  lowestOf,
  type Figure,
  type FigureChoice,
  type FigureStatus,
  type MastGeneration,
  type MemoryConfidence,
} from './figure.ts';
export { implementFigures, type ImplementField } from './implementSide.ts';
export { linkageClassFields, linkageClassRange, type LinkageClassField } from './linkageClass.ts';
export { linkageFigures, type LinkageField } from './linkage.ts';
export { disputedIndices, loadIndexFigure, loadIndexMass, type DisputedIndex } from './loadIndex.ts';
export { narrowSpan } from './narrow.ts';
export { operatorMass } from './operator.ts';
export { ptoSpeedBand, ptoSpeedCap, ptoType, ptoTypeNumbers, type PtoType, type PtoTypeNumber } from './ptoTypes.ts';
export {
  drawbarPinDistance,
  endToCrossCentres,
  guardOverlap,
  passageClearance,
  sixSplinePowerCap,
  stubClearZone,
} from './shaftSurroundings.ts';
export { sourceIds, type SourceId } from './sources.ts';
export { speedSymbolFigure, speedSymbols, type SpeedSymbol } from './speedSymbol.ts';
export { ballCentreSpan, shoulderSpanFromCentres } from './spanConventions.ts';
export {
  axleShareFigures,
  rearRuleNames,
  rearRules,
  standingParts,
  steeringRuleNames,
  steeringRules,
  type AxleRule,
  type RearRuleName,
  type StandingPart,
  type SteeringRuleName,
} from './steeringShare.ts';
export { tractorFigures, type TractorField } from './tractorSide.ts';
export {
  fillSpread,
  fullestFill,
  tyreFillFigure,
  tyreFluid,
  tyreFluids,
  tyreLiquidMass,
  tyreSizes,
  type TyreFluid,
  type TyreFluidFacts,
  type TyreSize,
} from './tyreLiquid.ts';
