export { axleBalance, axlePlots } from './balance/pictures.ts';
export { slopeSketch, type SlopeOptions } from './balance/slope.ts';
export { balloonParts, type BalloonParts } from './balloonParts.ts';
export { balloonsOf } from './balloonsOf.ts';
export { dimensionParts, type DimensionParts } from './dimensionParts.ts';
export { diameterSign, type DiameterSign } from './diameterSign.ts';
export { hatchLines } from './hatchLines.ts';
export { fractionRise, fractionSize, haloWidth, runsOf, secondGap, type Run } from './lettering.ts';
export { lineDashes, lineWidths } from './lineStyles.ts';
export { machineDrawing, type MachineOptions } from './listing/machineDrawing.ts';
export { plainSvg } from './listing/plainSvg.ts';
export { pinPlanDrawing } from './pinPlan/pinPlanDrawing.ts';
export { rearView, type ViewOptions } from './rearView.ts';
export { liftPlots, liftStrip, openLiftPictures, sideView, type LiftPictures } from './side/pictures.ts';
export type { LiftOptions, StationOptions } from './side/options.ts';
export { shaftDrawing, shaftPlots, topView, type ShaftOptions } from './shaft/pictures.ts';
export { stationWords } from './side/stationWords.ts';
export { scaleBarParts, type BarBox } from './scaleBarParts.ts';
export type {
  Balloon,
  Bounds,
  Circle,
  Dimension,
  Hatch,
  Item,
  Lettering,
  LineRole,
  Point,
  PointName,
  ScaleBar,
  Scene,
  Stroke,
  Tone,
} from './scene.ts';
export type { Format, SheetFormat } from './sheet.ts';
export { sceneToSvg, type SvgOptions } from './svg/sceneToSvg.ts';
export { trueViews, undrawnWords, viewNames, viewOf, type DrawnHow, type ViewName } from './views.ts';
export { verdictMark, type VerdictMark } from './verdictMark.ts';
export { tapeDrawing, tapeWords, type TapeOptions } from './tape/tapeDrawing.ts';
export type { TapeWords } from './tape/words.ts';
