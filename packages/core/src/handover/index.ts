export { chartHtml } from './chartHtml.ts';
export {
  cellOf,
  chartCell,
  chartOf,
  chartSteps,
  type Chart,
  type ChartCell,
  type ChartCounts,
  type ChartOptions,
  type ChartOutcome,
  type ChartProgress,
  type ChartReading,
  type ChartRow,
  type ChartStep,
  type ChartTable,
} from './chart.ts';
export { pinPlan } from './pinPlan.ts';
export { replyTo, type Reply, type ReplyOptions, type ReplyReading } from './reply.ts';
export type { Judged } from './judged.ts';
export type { ClearZone, MovablePath, PinPlan, PinPlanResult, PinRefusal, PinTarget } from '../engine/pinplan/index.ts';
export { listingOf, type Listing, type ListingOptions, type ListingReading } from './listing/listing.ts';
export type { ListedFact, ListedMachine } from './listing/facts.ts';
export type { ProductJson, PropertyValueJson } from './listing/structured.ts';
