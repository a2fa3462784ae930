import { cautionWords, remarksOn } from '@hitchwright/core/words';
import { openPdf } from '../pdf/openPdf.ts';
import { frameOf, frameWidth, papers } from '../pdf/paper.ts';
import type { Block } from './block.ts';
import { basisLists, cureLists } from './content/cures.ts';
import { notesOf } from './content/notes.ts';
import { readingsOf } from './content/readings.ts';
import { referenceOf } from './content/reference.ts';
import { arrangements, rowsOf } from './content/scenes.ts';
import type { HeadingFor, TwoLists } from './flow.ts';
import type { Judged, SheetOptions } from './options.ts';
import { footStrip, paintPages } from './pages.ts';
import { drawingName, Plan, type PlacedBlock } from './plan.ts';
import type { Press } from './press.ts';
import { closing } from './regions/closing.ts';
import { drawingRow } from './regions/drawings.ts';
import { head } from './regions/head.ts';
import { groupHeading, listItems, notCheckedItems, noteItems, readingItems, sentenceItems } from './regions/notes.ts';
import { titleBlock, type TitleCell } from './titleBlock.ts';

/** A sheet that was printed. */
export interface SheetPdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Where everything lies, page by page [mm]. */
  readonly blocks: readonly Pick<PlacedBlock, 'page' | 'name' | 'x' | 'y' | 'width' | 'height'>[];
}

/**
 * Prints the sheet that is handed over: the verdict and the four answers, the drawings at true scale, what was found with
 * its margins beside what cures it, what was assumed and not checked, the rules gone by, the readings with who took them,
 * the cautions, the way back to the setup, lines to sign, and the title block last.
 *
 * @param judged the setup as it was written and read, and its full answer [record]
 * @param options fonts, paper, units, date, names [record]
 * @returns the document, always the same for the same input, and where everything lies [bytes of PDF, mm]; rejects with a
 *   RangeError where a name of the options is too long or the date is none
 * @example const { bytes } = await sheetPdf({ document, setup, answer }, { fonts: bundledFonts, paper: 'letter', system: 'us', date: '2026-11-26' })
 */
export async function sheetPdf(judged: Judged, options: SheetOptions): Promise<SheetPdf> {
  checkNames(options);
  const reference = await referenceOf(judged.document, judged.answer.verdict, options);
  const paper = papers[options.paper];
  const pdf = openPdf(options.fonts, paper, { title: setupName(judged), date: options.date });
  const press: Press = pdf;
  const frame = frameOf(paper);
  pdf.addPage();
  const strip = runningFoot(press, judged, options);
  const title = (page: string): Block => titleBlock(press, cellsOf(judged, options, page), frameWidth);
  const words = wordsOf(press, judged, options);
  const planned = (way: (typeof arrangements)[number]): Plan => {
    const plan = new Plan(press, frame, strip(1, 1).height);
    plan.add('head', head(press, judged, options));
    for (const row of rowsOf(judged, options, way)) plan.float(drawingName, drawingRow(press, row));
    plan.flow('words', words, headingOf(press));
    plan.flushFloats();
    plan.addLast('closing', closing(press, reference, options), title('1 of 1').height);
    return plan;
  };
  const plan = shortest(arrangements, planned);
  paintPages(plan, pdf, frame, (page) =>
    page < plan.pages ? strip(page, plan.pages) : title(`${page} of ${plan.pages}`),
  );
  return { bytes: await pdf.close(), pages: plan.pages, blocks: plan.blocks };
}

/** A sheet has one page or two, printed on both sides of one leaf. */
const mostPages = 2;

/** The first plan that is no longer than a sheet may be; where there is none, the first of the shortest. */
function shortest<Way>(ways: readonly Way[], planned: (way: Way) => Plan): Plan {
  let best: Plan | null = null;
  for (const way of ways) {
    const plan = planned(way);
    if (best === null || plan.pages < best.pages) best = plan;
    if (best.pages <= mostPages) break;
  }
  if (best === null) throw new Error('invariant: there is a way to lay out a sheet');
  return best;
}

/** Longest text of a name that is written by hand: a line or two of the title block [characters]. */
const longest = 80;

function checkNames({ customer = '', issuer = '', number = '', revision = '' }: SheetOptions): void {
  for (const text of [customer, issuer, number, revision])
    if (text.length > longest) throw new RangeError(`A name on the sheet has at most ${longest} characters.`);
}

function headingOf(press: Press): HeadingFor {
  return (group, goesOn) => groupHeading(press, group, goesOn);
}

/** What was found and the cautions; beside them what cures it, what it rests on, what was read. */
function wordsOf(press: Press, judged: Judged, options: SheetOptions): TwoLists {
  const { answer, setup } = judged;
  const notes = notesOf(judged, options);
  const remarks = remarksOn(answer, options.system, setup);
  const cautions = answer.cautions.map((id) => cautionWords[id]);
  return {
    left: [
      ...noteItems(press, notes),
      ...listItems(press, [{ heading: 'Cautions', entries: cautions, mark: 'caution' }]),
    ],
    right: [
      ...listItems(press, cureLists(judged, options)),
      ...notCheckedItems(press, notes),
      ...basisLists(judged, options).flatMap((list) => sentenceItems(press, list)),
      ...sentenceItems(press, { heading: 'Worth knowing', entries: remarks, mark: null }),
      ...readingItems(press, readingsOf(setup, options.system)),
    ],
    begun: [],
  };
}

/** The strip at the foot of every page but the last: which sheet this is a page of. */
function runningFoot(press: Press, judged: Judged, options: SheetOptions): (page: number, pages: number) => Block {
  const of = [setupName(judged), sheetNumber(options), options.date].filter((part) => part !== null);
  return (page, pages) => footStrip(press, [...of, `page ${page} of ${pages}`], frameWidth);
}

function setupName({ setup: { implement, tractor, coupler } }: Judged): string {
  return [
    implement.name ?? 'implement',
    tractor.name ?? 'tractor',
    ...(coupler === undefined ? [] : [coupler.name ?? 'coupler']),
  ].join(', ');
}

function sheetNumber({ number, revision }: SheetOptions): string | null {
  const parts = [number, revision === undefined ? undefined : `rev\u00a0${revision}`].filter(
    (part) => part !== undefined,
  );
  return parts.length === 0 ? null : parts.join(', ');
}

function cellsOf(judged: Judged, options: SheetOptions, page: string): TitleCell[] {
  const number = sheetNumber(options);
  return [
    { label: 'Setup', text: setupName(judged), share: 6 },
    ...(options.customer === undefined ? [] : [{ label: 'For', text: options.customer, share: 2.4 }]),
    ...(number === null ? [] : [{ label: 'Sheet', text: number, share: 2 }]),
    { label: 'Date', text: options.date, share: 2.5 },
    { label: 'Units', text: options.system === 'us' ? 'in\u00a0(mm)' : 'mm\u00a0(in)', share: 1.8 },
    { label: 'Page', text: page.replaceAll(' ', '\u00a0'), share: 1.5 },
  ];
}
