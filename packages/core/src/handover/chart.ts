import { assess, type Answer, type Outcome } from '../engine/assess/index.ts';
import type { Driver, Finding } from '../engine/findings/index.ts';
import { setupFrom, yardErrors, type InputError, type SetupDocument, type YardDocument } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { cautionWords, cellText, labelOf, verdictWords } from '../words/index.ts';
import { nameOr } from './plainText.ts';

/** What a chart cell comes to: a verdict, or that no answer could be formed. */
export type ChartOutcome = Outcome | 'noAnswer';

/** One implement on one coupler (or none) behind one tractor. */
export interface ChartCell {
  readonly outcome: ChartOutcome;
  /** The verdict in the trade’s words: `Works with parts`. */
  readonly verdict: string;
  /** The first reason in a few words; empty where everything fits. */
  readonly reason: string;
  /** What would have to be measured or found out for the first open finding; none unless the outcome is `measureFirst`. */
  readonly measure: readonly string[];
}

/** How many cells come to each outcome. */
export type ChartCounts = Readonly<Record<ChartOutcome, number>>;

/** All the implements of the yard behind one tractor. */
export interface ChartTable {
  readonly tractor: string;
  /** Headings of the columns: without a coupler, then each coupler by its name. */
  readonly columns: readonly string[];
  /** One row for each implement, its cells in the order of `columns`. */
  readonly rows: readonly ChartRow[];
  readonly counts: ChartCounts;
  /** The counts in words: `12 pairings: 3 work, …`. */
  readonly countText: string;
}

/** One implement with every coupler. */
export interface ChartRow {
  readonly implement: string;
  readonly cells: readonly ChartCell[];
}

/** The wall chart of a yard: text only, for any writer. Names are plain text, not escaped for any format. */
export interface Chart {
  readonly title: string;
  /** The day it is of, as it was passed in [ISO 8601]. */
  readonly date: string;
  readonly system: UnitSystem;
  /** The yard says that it is a sample; `notes` says so too. */
  readonly sample: boolean;
  readonly tables: readonly ChartTable[];
  readonly counts: ChartCounts;
  readonly countText: string;
  /** What each outcome means, in the order to show them. */
  readonly legend: readonly { readonly outcome: ChartOutcome; readonly verdict: string; readonly means: string }[];
  /** What the chart rests on and does not say. */
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
}

/** What a chart is made with. */
export interface ChartOptions {
  readonly system: UnitSystem;
  /** The day of the chart [ISO 8601]. */
  readonly date: string;
  /** Name of the one tractor that is charted; every tractor of the yard unless given. */
  readonly tractor?: string;
  /** What of the whole yard is not in the chart, in sentences; they stand among its notes. */
  readonly leftOut?: readonly string[];
}

/** How far the work on a chart is [pairings]. */
export interface ChartProgress {
  readonly done: number;
  readonly total: number;
}

/** The next pairing of a chart, which is still to be judged. */
export interface ChartStep extends ChartProgress {
  /** Its setup [JSON]. */
  readonly document: SetupDocument;
}

/** A chart, or everything that is wrong with the yard. */
export type ChartReading =
  { readonly ok: true; readonly chart: Chart } | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * Charts a yard: every implement with every coupler and without one, tractor by tractor.
 *
 * @param yard the yard [JSON]
 * @param options units, date, tractor [record]
 * @param onProgress told after every pairing [pairings]
 * @returns the chart, or every error in the yard's records [InputError codes]
 */
export function chartOf(
  yard: YardDocument,
  options: ChartOptions,
  onProgress?: (progress: ChartProgress) => void,
): ChartReading {
  const steps = chartSteps(yard, options);
  let step = steps.next();
  while (step.done !== true) {
    const { document, done, total } = step.value;
    const cell = chartCell(document, options.system);
    onProgress?.({ done: done + 1, total });
    step = steps.next(cell);
  }
  return step.value;
}

/**
 * The same one pairing at a time: it hands out each setup and is given the cell that it comes to, whoever judges it, wherever and
 * however long that takes. Whoever stops in between has nothing.
 *
 * @param yard the yard [JSON]
 * @param options units, date, tractor [record]
 * @returns yields the next setup and how many are done [JSON, pairings], takes its cell, returns the chart or the errors
 */
export function* chartSteps(yard: YardDocument, options: ChartOptions): Generator<ChartStep, ChartReading, ChartCell> {
  const errors = [...yardErrors(yard), ...unknownTractor(yard, options)];
  if (errors.length > 0) return { ok: false, errors };
  const tractors = yard.tractors.filter((one) => options.tractor === undefined || one['name'] === options.tractor);
  const work: Work = {
    yard,
    couplers: [null, ...yard.couplers],
    total: tractors.length * yard.implements.length * (yard.couplers.length + 1),
    done: 0,
  };
  const tables: ChartTable[] = [];
  for (const [i, tractor] of tractors.entries()) tables.push(yield* tableOf(work, tractor, `Tractor ${i + 1}`));
  return { ok: true, chart: chartWith(yard, options, tables) };
}

/**
 * Judges one pairing of a chart.
 *
 * @param document its setup [JSON]
 * @param system unit system to write in [us | metric]
 * @returns the cell [texts]
 */
export function chartCell(document: SetupDocument, system: UnitSystem): ChartCell {
  const assessment = assess(document, { full: false });
  return cellOf(assessment.ok ? assessment.answer : null, system);
}

function unknownTractor(yard: YardDocument, { tractor }: ChartOptions): InputError[] {
  if (tractor === undefined || yard.tractors.some((one) => one['name'] === tractor)) return [];
  const names = yard.tractors.map((one, i) => nameOr(one['name'], `tractor ${i + 1}`).slice(0, 60));
  const expected = names.length === 0 ? 'a yard with a tractor' : `one of: ${names.slice(0, 12).join(', ')}`;
  const got = nameOr(tractor, 'nothing').slice(0, 60);
  return [
    { code: 'not-a-choice', path: 'tractors', expected, got, hint: 'Name a tractor of the yard as it is written.' },
  ];
}

interface Work {
  readonly yard: YardDocument;
  readonly couplers: readonly (SetupDocument | null)[];
  readonly total: number;
  done: number;
}

function* tableOf(work: Work, tractor: SetupDocument, otherwise: string): Generator<ChartStep, ChartTable, ChartCell> {
  const rows: ChartRow[] = [];
  for (const [i, implement] of work.yard.implements.entries()) {
    const cells: ChartCell[] = [];
    for (const coupler of work.couplers) {
      const document = setupFrom(work.yard, tractor, coupler, implement);
      cells.push(yield { document, done: work.done, total: work.total });
      work.done += 1;
    }
    rows.push({ implement: nameOr(implement['name'], `Implement ${i + 1}`), cells });
  }
  const counts = countsOf(rows.flatMap(({ cells }) => cells));
  return {
    tractor: nameOr(tractor['name'], otherwise),
    columns: work.couplers.map((coupler, i) =>
      coupler === null ? 'Without a coupler' : nameOr(coupler['name'], `Coupler ${i}`),
    ),
    rows,
    counts,
    countText: countText(counts),
  };
}

/**
 * What one pairing says in a chart.
 *
 * @param answer its answer; null where none could be formed [record]
 * @param system unit system to write in [us | metric]
 * @returns the cell [texts]
 */
export function cellOf(answer: Answer | null, system: UnitSystem): ChartCell {
  if (answer === null) return { outcome: 'noAnswer', verdict: noAnswer, reason: '', measure: [] };
  const { lead, verdict } = answer;
  const isOpen = verdict === 'measureFirst' && lead !== null;
  return {
    outcome: verdict,
    verdict: verdictWords(answer),
    reason: lead === null ? '' : cellText(answer, system),
    measure: isOpen ? toMeasure(lead) : [],
  };
}

const noAnswer = 'No answer';

/** Inputs that nobody measured, of those that a finding depends on. */
const notMeasured: readonly string[] = ['class', 'habit', 'unknown'];
const mostNamed = 3;

function toMeasure({ asks, drivers }: Finding): readonly string[] {
  const open = drivers.filter(({ origin }) => notMeasured.includes(origin)).map(({ path }) => path);
  const labels = new Set([...asks.map(({ path }) => path), ...open].map((path) => labelOf(path)));
  return (labels.size > 0 ? [...labels] : toMeasureCloser(drivers)).slice(0, mostNamed);
}

/** Where everything was measured and it is open all the same: the figures that are known most coarsely for their size. */
function toMeasureCloser(drivers: Finding['drivers']): string[] {
  const coarseness = ({ range: { low, high } }: Driver): number => (high - low) / Math.max(1, Math.abs(low + high) / 2);
  const coarse = drivers.filter(({ range }) => range.high > range.low);
  return coarse.sort((a, b) => coarseness(b) - coarseness(a)).map(({ path }) => `${labelOf(path)}, more closely`);
}

const order = ['works', 'withParts', 'measureFirst', 'willNot', 'notChecked', 'notNeeded', 'noAnswer'] as const;

function countsOf(cells: readonly ChartCell[]): ChartCounts {
  const count = (outcome: ChartOutcome): number => cells.filter((cell) => cell.outcome === outcome).length;
  return Object.fromEntries(order.map((outcome) => [outcome, count(outcome)])) as Record<ChartOutcome, number>;
}

function countText(counts: ChartCounts): string {
  const total = order.reduce((sum, outcome) => sum + counts[outcome], 0);
  const rest = counts.notChecked + counts.notNeeded + counts.noAnswer;
  return [
    `${total} ${total === 1 ? 'pairing' : 'pairings'}: ${counts.works} work as they stand`,
    `${counts.withParts} with parts`,
    `${counts.measureFirst} to be measured first`,
    `${counts.willNot} will not`,
    ...(rest === 0 ? [] : [`${rest} without an answer`]),
  ].join(', ');
}

const legend: Chart['legend'] = [
  { outcome: 'works', verdict: 'Works', means: 'hooks up, runs where it is driven, lifts and stays upright' },
  { outcome: 'withParts', verdict: 'Works with parts', means: 'a part on the list of parts cures what is told' },
  {
    outcome: 'measureFirst',
    verdict: 'Measure first',
    means: 'neither yes nor no until what is told has been measured',
  },
  { outcome: 'willNot', verdict: 'Will not', means: 'and why' },
];

function chartWith(yard: YardDocument, options: ChartOptions, tables: readonly ChartTable[]): Chart {
  const { system, date, leftOut = [] } = options;
  const counts = countsOf(tables.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells)));
  return {
    title: tables.length === 1 ? `What goes on ${tables[0]?.tractor ?? ''}` : 'What goes on what',
    date,
    system,
    sample: yard.sample === true,
    tables,
    counts,
    countText: countText(counts),
    legend,
    notes: [
      ...(yard.sample === true ? ['A sample yard: every machine, name and figure in it is invented.'] : []),
      ...(leftOut.length === 0 ? [] : [`A part of the yard. ${leftOut.join(' ')}`]),
      `By the yard’s figures of ${date}. A machine that is measured again, altered or set up otherwise has to be judged again.`,
      'A cell tells only the first reason. The sheet of a pairing tells all of them.',
    ],
    cautions: (['standClear', 'firstLift', 'manualPrevails'] as const).map((id) => cautionWords[id]),
  };
}
