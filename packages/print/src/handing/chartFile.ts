import { chartHtml, type Chart } from '@hitchwright/core/handover';
import { chartPdf } from '../chart/chartPdf.ts';
import type { Fonts } from '../fonts/fonts.ts';
import type { PaperName } from '../pdf/paper.ts';
import type { HandedOver } from './handOver.ts';

/** Formats of a wall chart. */
export type ChartFormat = 'pdf' | 'html' | 'json';

/** A chart, and how it is to be written. */
export interface ChartWanted {
  readonly chart: Chart;
  readonly format: ChartFormat;
  /** The paper that a PDF is for; any other format is on none. */
  readonly paper: PaperName;
}

/**
 * Writes a wall chart as a file: for paper, as a page by itself, or for programs.
 *
 * @param wanted the chart, its format and paper [record]
 * @param fonts hands over the bytes of a font file [function]
 * @returns the file [bytes]
 */
export async function chartFile(
  { chart, format, paper }: ChartWanted,
  fonts: Fonts,
): Promise<Extract<HandedOver, { kind: 'file' }>> {
  const name = `wall chart ${chart.date}.${format}`;
  const text = (type: string, content: string) =>
    ({ kind: 'file', bytes: new TextEncoder().encode(content), name, type }) as const;
  if (format === 'html') return text('text/html', chartHtml(chart));
  if (format === 'json') return text('application/json', JSON.stringify({ hitchwright: 1, ...chart }));
  const { bytes } = await chartPdf(chart, { fonts, paper });
  return { kind: 'file', bytes, name, type: 'application/pdf' };
}
