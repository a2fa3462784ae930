import {
  chartSteps,
  type Chart,
  type ChartCell,
  type ChartOptions,
  type ChartProgress,
} from '@hitchwright/core/handover';
import type { SetupDocument, YardDocument } from '@hitchwright/core/records';
import { NotFound, Refused } from '@hitchwright/store';
import type { Assessors } from '../assessing/assessors.ts';
import { HttpRefusal } from '../http/refusal.ts';

/** Where a chart stands. */
export const chartStates = ['waiting', 'running', 'done', 'stopped', 'failed'] as const;
type ChartState = (typeof chartStates)[number];

/** A wall chart that somebody wants. It is held until it is stopped, or left alone when it is made; the yard keeps nothing of it. */
export interface HeldChart {
  readonly id: string;
  state: ChartState;
  progress: ChartProgress;
  /** Why it failed, in a sentence. */
  message: string | null;
  chart: Chart | null;
  touchedAt: string;
}

/** The charts that are wanted. */
export interface HeldCharts {
  /** Begins one, or has it wait for those before it. Throws Refused with every error of the yard. */
  begin(yard: YardDocument, options: ChartOptions): HeldChart;
  get(id: string): HeldChart;
  /** One that the same request began before; a conflict where it was let go of, for it is not made twice. */
  again(id: string): HeldChart;
  /** The chart once it is made; a conflict that says how far it is before. */
  made(id: string): Chart;
  /** Stops one, of which nothing stays, and lets go of it. */
  stop(id: string): HeldChart;
  /** Stops them all. */
  close(): void;
}

/** Charts that are held at once, those of them that are not finished, and how long one is held that nobody looks at [ms]. */
const mostHeld = 16;
const mostOpen = 4;
const longestHeld = 3_600_000;
/** One that is not finished and that nobody asked about for so long gives its place to somebody who wants one [ms]. */
const longestLeft = 120_000;
/** Pairings of one chart: at half a second each a quarter of an hour. */
export const mostPairings = 2000;

/** What holding charts takes. */
export interface Charting {
  readonly assessors: Pick<Assessors, 'chartCell'>;
  readonly clock: () => string;
  readonly ids: () => string;
}

/** Makes charts one after the other, one pairing at a time, where nobody waits for anything else. */
export function holdCharts({ assessors, clock, ids }: Charting): HeldCharts {
  const held = new Map<string, HeldChart>();
  let line: Promise<void> = Promise.resolve();
  const get = (id: string): HeldChart => {
    const one = held.get(id);
    if (one === undefined) throw new NotFound('chart', id);
    one.touchedAt = clock();
    return one;
  };
  return {
    begin(yard, options) {
      const steps = chartSteps(yard, options);
      const first = steps.next();
      if (first.done === true && !first.value.ok) throw new Refused(first.value.errors);
      const total = first.done === true ? 0 : first.value.total;
      if (total > mostPairings) throw tooMany(total);
      makeRoom(held, clock());
      const one: HeldChart = { ...fresh, id: ids(), progress: { done: 0, total }, touchedAt: clock() };
      held.set(one.id, one);
      line = line.then(() =>
        worked(one, { steps, first }, (document) => assessors.chartCell(document, options.system)),
      );
      return one;
    },
    get,
    again(id) {
      if (held.has(id)) return get(id);
      const message = 'The chart of this Idempotency-Key was let go of. None was begun; take a new key for a new one.';
      throw new HttpRefusal(409, { trouble: 'conflict', message, current: { id } });
    },
    made(id) {
      const { state, progress, message, chart } = get(id);
      if (chart !== null) return chart;
      const how = state === 'failed' ? (message ?? '') : `So far ${progress.done} of ${progress.total} are judged.`;
      throw new HttpRefusal(409, {
        trouble: 'conflict',
        message: `The chart is not made. ${how}`,
        current: { state, progress },
      });
    },
    stop(id) {
      const one = get(id);
      stopped(one);
      held.delete(id);
      return one;
    },
    close() {
      for (const one of held.values()) stopped(one);
    },
  };
}

const fresh = { state: 'waiting', message: null, chart: null } as const;

function isOpen({ state }: HeldChart): boolean {
  return state === 'waiting' || state === 'running';
}

function stopped(one: HeldChart): void {
  if (isOpen(one)) one.state = 'stopped';
}

function tooMany(total: number): Refused {
  const hint = 'Leave machines out, or chart one tractor after the other.';
  const expected = `at most ${mostPairings} pairings`;
  return new Refused([{ code: 'too-large', path: 'implements', expected, got: String(total), hint }]);
}

/** Stops what nobody asks about where somebody else wants its place, and lets go of the oldest that is finished. */
function makeRoom(held: Map<string, HeldChart>, now: string): void {
  const untouched = ({ touchedAt }: HeldChart): number => Date.parse(now) - Date.parse(touchedAt);
  const open = [...held.values()].filter(isOpen);
  if (open.length >= mostOpen) for (const one of open) if (untouched(one) > longestLeft) stopped(one);
  const finished = [...held.values()].filter((one) => !isOpen(one));
  if (held.size - finished.length >= mostOpen)
    throw new HttpRefusal(503, { trouble: 'busy', message: 'Too many charts are being made; try again.' });
  finished.sort((a, b) => (a.touchedAt < b.touchedAt ? -1 : 1));
  for (const one of finished) if (held.size >= mostHeld || untouched(one) > longestHeld) held.delete(one.id);
}

type Steps = ReturnType<typeof chartSteps>;

/** Makes a chart and notes on it how it ended; it never throws. */
async function worked(
  one: HeldChart,
  { steps, first }: { readonly steps: Steps; readonly first: ReturnType<Steps['next']> },
  judge: (document: SetupDocument) => Promise<ChartCell>,
): Promise<void> {
  let step = first;
  try {
    while (step.done !== true && isOpen(one)) {
      one.state = 'running';
      const { document, done, total } = step.value;
      const cell = await judge(document);
      one.progress = { done: done + 1, total };
      step = steps.next(cell);
    }
    if (step.done === true && step.value.ok && isOpen(one))
      Object.assign(one, { state: 'done', chart: step.value.chart });
  } catch (problem) {
    // Whoever stopped it wants to hear nothing more of it.
    if (!isOpen(one)) return;
    const isTold = problem instanceof HttpRefusal;
    if (!isTold) console.error('A chart failed:', problem);
    const { done, total } = one.progress;
    const why = isTold ? problem.message : 'The server’s own output says why.';
    Object.assign(one, { state: 'failed', message: `Pairing ${done + 1} of ${total} could not be judged. ${why}` });
  }
}
