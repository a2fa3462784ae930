export {
  cellOf,
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
  type ChartTable,
} from './chart.ts';
