import { chartSteps, type Chart, type ChartProgress } from '@hitchwright/core/handover';
import { useEffect, useRef, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { today } from '../../app/today.ts';
import type { Problem } from '../handover/made.ts';
import type { AnswerBook } from './answerBook.ts';
import type { YardPart } from './yardInView.ts';

/** Where a wall chart stands. */
type WallChartState =
  | { readonly at: 'start' }
  | { readonly at: 'running' | 'stopped'; readonly progress: ChartProgress | null }
  | { readonly at: 'made'; readonly chart: Chart; readonly leftOut: readonly string[] }
  | { readonly at: 'problem'; readonly problem: Problem };

const start: WallChartState = { at: 'start' };

/** A wall chart that is made here. */
export interface WallChartDesk {
  readonly state: WallChartState;
  /** Makes the chart of a yard, which may have to be fetched first. */
  make(part: () => Promise<YardPart>): void;
  /** Stops it; nothing half done stays. */
  stop(): void;
  /** Lets go of what was made, and of why something was not: another one is wanted. */
  forget(): void;
}

/** Makes wall charts out of the answers of a book, one pairing after the other; the page does everything else in between. */
export function useWallChart(book: AnswerBook): WallChartDesk {
  const { system } = usePreferences();
  const [state, setState] = useState<WallChartState>(start);
  const stopping = useRef<AbortController | null>(null);
  useEffect(() => () => stopping.current?.abort(), []);
  const worked = async (fetchPart: () => Promise<YardPart>, { signal }: AbortController): Promise<void> => {
    const show = (next: WallChartState): void => {
      if (!signal.aborted) setState(next);
    };
    show({ at: 'running', progress: null });
    try {
      const { yard, leftOut } = await fetchPart();
      if (signal.aborted) return;
      const steps = chartSteps(yard, { system, date: today(), leftOut });
      let step = steps.next();
      while (step.done !== true) {
        const { document, ...progress } = step.value;
        show({ at: 'running', progress });
        const cell = await book.cell(document, system);
        if (signal.aborted) return;
        step = steps.next(cell);
      }
      const { value } = step;
      show(
        value.ok
          ? { at: 'made', chart: value.chart, leftOut }
          : { at: 'problem', problem: { kind: 'errors', errors: value.errors } },
      );
    } catch (problem) {
      const message = problem instanceof Error ? problem.message : String(problem);
      show({ at: 'problem', problem: { kind: 'fault', message } });
    }
  };
  return {
    // In other units it is another chart.
    state: state.at === 'made' && state.chart.system !== system ? start : state,
    make(part) {
      stopping.current?.abort();
      stopping.current = new AbortController();
      void worked(part, stopping.current);
    },
    stop() {
      stopping.current?.abort();
      setState((before) => (before.at === 'running' ? { ...before, at: 'stopped' } : before));
    },
    forget() {
      stopping.current?.abort();
      setState(start);
    },
  };
}
