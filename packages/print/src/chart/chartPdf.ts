import type { Outcome } from '@hitchwright/core/assess';
import type { Chart, ChartCell, ChartTable } from '@hitchwright/core/handover';
import type { Fonts } from '../fonts/fonts.ts';
import { openPdf } from '../pdf/openPdf.ts';
import { frameMargin, papers, type Box, type PaperName } from '../pdf/paper.ts';
import { bold, settings, span, words, type Block } from '../sheet/block.ts';
import type { FlowItem, TwoLists } from '../sheet/flow.ts';
import { footStrip, paintPages } from '../sheet/pages.ts';
import { Plan } from '../sheet/plan.ts';
import type { Press } from '../sheet/press.ts';
import { paintMark } from '../sheet/regions/marks.ts';
import { Table, textCell, type Cell, type TableColumn } from '../sheet/regions/table.ts';
import type { SheetPdf } from '../sheet/sheetPdf.ts';
import { titleBlock } from '../sheet/titleBlock.ts';

/** What a chart is printed with. */
export interface ChartPdfOptions {
  readonly fonts: Fonts;
  readonly paper: PaperName;
}

/**
 * Prints the wall chart of a yard on lying paper: for each tractor every implement with every coupler, each cell with its
 * mark, its verdict and the first reason; then what the marks mean, what it rests on, and the cautions.
 *
 * @param chart the chart [record]
 * @param options fonts and paper [record]
 * @returns the document, always the same for the same input, and where everything lies [bytes of PDF, mm]
 */
export async function chartPdf(chart: Chart, { fonts, paper: name }: ChartPdfOptions): Promise<SheetPdf> {
  const { width, height } = papers[name];
  const paper = { name, width: height, height: width };
  const frame: Box = {
    x: frameMargin,
    y: frameMargin,
    width: paper.width - 2 * frameMargin,
    height: paper.height - 2 * frameMargin,
  };
  const pdf = openPdf(fonts, paper, { title: chart.title, date: chart.date });
  pdf.addPage();
  const strip = (page: number, pages: number): Block =>
    footStrip(pdf, [chart.title, chart.date, `page ${page} of ${pages}`], frame.width);
  const title = (page: string): Block => titleBlock(pdf, cellsOf(chart, page), frame.width);
  const plan = new Plan(pdf, frame, strip(1, 1).height);
  for (const table of chart.tables)
    for (const part of inWidths(table, frame.width)) plan.table('table', tableOf(pdf, part, frame.width));
  const lists: TwoLists = {
    left: legendOf(pdf, chart, frame.width),
    right: [
      ...linesUnder(pdf, 'Notes', [chart.countText, ...chart.notes], frame.width),
      ...linesUnder(pdf, 'Cautions', chart.cautions, frame.width),
    ],
    begun: [],
  };
  plan.flow('notes', lists, (group) => heading(pdf, group, frame.width / 2));
  plan.addLast('title', { height: 0, paint: () => undefined }, title('1 of 1').height);
  paintPages(plan, pdf, frame, (page) =>
    page < plan.pages ? strip(page, plan.pages) : title(`${page} of ${plan.pages}`),
  );
  return { bytes: await pdf.close(), pages: plan.pages, blocks: plan.blocks };
}

/** Width of the names of implements, and the least of a cell [mm]. */
const [nameWidth, leastCell] = [46, 40];

/** A table that is wider than the paper goes on with its other couplers under it. */
function inWidths(table: ChartTable, width: number): ChartTable[] {
  const most = Math.floor((width - nameWidth) / leastCell);
  const parts = Math.max(1, Math.ceil(table.columns.length / most));
  const each = Math.ceil(table.columns.length / parts);
  return Array.from({ length: parts }, (_, i): ChartTable => ({
    ...table,
    columns: table.columns.slice(i * each, (i + 1) * each),
    rows: table.rows.map((row) => ({ ...row, cells: row.cells.slice(i * each, (i + 1) * each) })),
  }));
}

function tableOf(press: Press, { tractor, columns, rows, countText }: ChartTable, width: number): Table {
  const each = (width - nameWidth) / Math.max(1, columns.length);
  const heads: TableColumn[] = [
    { heading: 'Implement', width: nameWidth },
    ...columns.map((coupler) => ({ heading: coupler, width: each })),
  ];
  const cells = rows.map(({ implement, cells: own }) => [
    textCell(press, [bold(implement, settings.small)], nameWidth),
    ...own.map((cell) => cellBlock(press, cell, each)),
  ]);
  const title = (goesOn: boolean): Block =>
    tractorHeading(press, `${tractor}${goesOn ? ', continued' : ''}`, goesOn ? '' : countText, width);
  return new Table(press, heads, cells, title);
}

const pad = 2.5;

function tractorHeading({ ink, tags }: Press, tractor: string, counts: string, width: number): Block {
  const name = words(ink.faces, [span(tractor, settings.unchecked)], settings.unchecked, width - 2 * pad);
  const count = words(ink.faces, [span(counts, settings.small)], settings.small, width - 2 * pad);
  return {
    height: name.height + count.height + 2,
    paint: ([x, y]) => {
      tags.leaf('H2', () => name.write(ink, [x + pad, y + 1]));
      if (count.height > 0) tags.leaf('P', () => count.write(ink, [x + pad, y + 1 + name.height]));
    },
  };
}

const mark = 5;

function cellBlock(press: Press, { outcome, verdict, reason, measure }: ChartCell, width: number): Cell {
  const { ink } = press;
  const { small } = settings;
  const measured = measure.length === 0 ? '' : `. To measure: ${measure.join(', ')}.`;
  const spans = [bold(`${verdict}${reason === '' ? '' : ': '}`, small), span(reason + measured, small)];
  const set = words(ink.faces, spans, small, width - 2 * pad - mark - 1);
  return {
    height: Math.max(set.height, mark),
    paint: ([x, y]) => {
      if (outcome !== 'noAnswer') paintMark(ink, outcome, [x + pad, y], mark);
      set.write(ink, [x + pad + mark + 1, y]);
    },
  };
}

function heading({ ink, tags }: Press, group: string, width: number): Block {
  const set = words(ink.faces, [span(group, settings.heading)], settings.heading, width - 10);
  return { height: set.height, paint: (at) => tags.leaf('H2', () => set.write(ink, at)) };
}

function legendOf(press: Press, { legend }: Chart, width: number): FlowItem[] {
  const { ink, tags } = press;
  return legend.map(({ outcome, verdict, means }): FlowItem => {
    const spans = [bold(`${verdict}: `, settings.small), span(`${means}.`, settings.small)];
    const set = words(ink.faces, spans, settings.small, width / 2 - 7 - mark - 2);
    const paint: Block['paint'] = ([x, y]) =>
      tags.leaf('P', () => {
        if (outcome !== 'noAnswer') paintMark(ink, outcome satisfies Outcome, [x, y], mark);
        set.write(ink, [x + mark + 2, y + 0.6]);
      });
    return { group: 'What the marks mean', block: { height: Math.max(set.height, mark) + 0.6, paint } };
  });
}

/** Lines of a group, each a paragraph. */
function linesUnder({ ink, tags }: Press, group: string, texts: readonly string[], width: number): FlowItem[] {
  return texts.map((text): FlowItem => {
    const set = words(ink.faces, [span(text, settings.small)], settings.small, width / 2 - 7);
    return { group, block: { height: set.height, paint: (at) => tags.leaf('P', () => set.write(ink, at)) } };
  });
}

function cellsOf({ title, date, system }: Chart, page: string) {
  return [
    { label: 'Chart', text: title, share: 6, isHeading: true },
    { label: 'Date', text: date, share: 1.6 },
    { label: 'Units', text: system === 'us' ? 'in\u00a0(mm)' : 'mm\u00a0(in)', share: 1.3 },
    { label: 'Page', text: page.replaceAll(' ', '\u00a0'), share: 1 },
  ];
}
