import { chartSteps, type Chart, type ChartProgress } from '@hitchwright/core/handover';
import type { InputError, YardDocument } from '@hitchwright/core/records';
import { useEffect, useRef, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { today } from '../../app/today.ts';
import type { AnswerBook } from './answerBook.ts';

/** Where a wall chart stands. */
type WallChartState =
  | { readonly at: 'start' }
  | { readonly at: 'running' | 'stopped'; readonly progress: ChartProgress | null }
  | { readonly at: 'made'; readonly chart: Chart }
  | { readonly at: 'errors'; readonly errors: readonly InputError[] }
  | { readonly at: 'fault'; readonly message: string };

/** A wall chart that is made here. */
export interface WallChartDesk {
  readonly state: WallChartState;
  /** Makes the chart of a yard, which may have to be fetched first. */
  make(yard: () => Promise<YardDocument>): void;
  /** Stops it; nothing half done stays. */
  stop(): void;
}

/** Makes wall charts out of the answers of a book, one pairing after the other; the page does everything else in between. */
export function useWallChart(book: AnswerBook): WallChartDesk {
  const { system } = usePreferences();
  const [state, setState] = useState<WallChartState>({ at: 'start' });
  const stopping = useRef<AbortController | null>(null);
  useEffect(() => () => stopping.current?.abort(), []);
  const worked = async (fetchYard: () => Promise<YardDocument>, { signal }: AbortController): Promise<void> => {
    const show = (next: WallChartState): void => {
      if (!signal.aborted) setState(next);
    };
    show({ at: 'running', progress: null });
    try {
      const steps = chartSteps(await fetchYard(), { system, date: today() });
      let step = steps.next();
      while (step.done !== true) {
        const { document, ...progress } = step.value;
        show({ at: 'running', progress });
        const cell = await book.cell(document, system);
        if (signal.aborted) return;
        step = steps.next(cell);
      }
      show(step.value.ok ? { at: 'made', chart: step.value.chart } : { at: 'errors', errors: step.value.errors });
    } catch (problem) {
      show({ at: 'fault', message: problem instanceof Error ? problem.message : String(problem) });
    }
  };
  return {
    state,
    make(yard) {
      stopping.current?.abort();
      stopping.current = new AbortController();
      void worked(yard, stopping.current);
    },
    stop() {
      stopping.current?.abort();
      setState((before) => (before.at === 'running' ? { ...before, at: 'stopped' } : before));
    },
  };
}
