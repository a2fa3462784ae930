import { markupText } from '../words/index.ts';
import type { Chart, ChartCell, ChartTable } from './chart.ts';
import { htmlList } from './html.ts';

/** Black on white, a verdict by its words and by its frame: nothing depends on colour. */
const style = [
  'body{font:11pt/1.35 sans-serif;color:#000;background:#fff;margin:12mm}',
  'h1{font-size:18pt;margin:0 0 2mm}h2{font-size:14pt;margin:8mm 0 2mm;break-after:avoid}',
  'table{border-collapse:collapse;width:100%}th,td{border:.25mm solid #000;padding:1.5mm 2mm;text-align:left;vertical-align:top}',
  'tr{break-inside:avoid}thead{display:table-header-group}strong{display:block}',
  'td[data-outcome=works]{border-width:.7mm}td[data-outcome=measureFirst]{outline:.4mm dashed #000;outline-offset:-1mm}',
  '@page{size:landscape;margin:10mm}@media print{body{margin:0}section{break-before:page}section:first-of-type{break-before:auto}}',
].join('\n');

/**
 * A chart as a page by itself, ready to print: no scripts and nothing from elsewhere.
 *
 * @param chart the chart [record]
 * @returns the page [HTML text]
 */
export function chartHtml(chart: Chart): string {
  return [
    '<!doctype html>',
    '<html lang="en">',
    `<head><meta charset="utf-8"><title>${markupText(chart.title)}</title><style>\n${style}\n</style></head>`,
    '<body>',
    `<h1>${markupText(chart.title)}</h1>`,
    `<p>${markupText(chart.date)}. ${markupText(chart.countText)}.</p>`,
    htmlList(chart.legend.map(({ verdict, means }) => `${verdict}: ${means}`)),
    ...chart.tables.map(tableHtml),
    htmlList([...chart.notes, ...chart.cautions]),
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function tableHtml({ tractor, columns, rows, countText }: ChartTable): string {
  const heads = ['Implement', ...columns].map((text) => `<th scope="col">${markupText(text)}</th>`).join('');
  return [
    `<section><h2>${markupText(tractor)}</h2>`,
    `<p>${markupText(countText)}.</p>`,
    `<table><thead><tr>${heads}</tr></thead>`,
    '<tbody>',
    ...rows.map(
      ({ implement, cells }) => `<tr><th scope="row">${markupText(implement)}</th>${cells.map(cellHtml).join('')}</tr>`,
    ),
    '</tbody></table></section>',
  ].join('\n');
}

function cellHtml({ outcome, verdict, reason, measure }: ChartCell): string {
  const words = [reason, measure.length === 0 ? '' : `Measure: ${measure.join(', ')}.`].filter((text) => text !== '');
  return `<td data-outcome="${outcome}"><strong>${markupText(verdict)}</strong>${markupText(words.join('. '))}</td>`;
}
