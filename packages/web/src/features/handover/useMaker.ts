import type { Chart } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import type { ChartFormat, PaperName, Wanted } from '@hitchwright/print/pure';
import { useEffect, useRef, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { today } from '../../app/today.ts';
import type { Asked, Made, Problem } from './made.ts';
import { openMaker } from './maker.ts';

/** Where things are made: for which paper, what is being made, and why something was not. */
export interface Making<What> {
  readonly paper: PaperName;
  /** What is being made. */
  readonly making: What | null;
  readonly problem: Problem | null;
  choosePaper(paper: PaperName): void;
}

/** What makes things of a setup. */
export interface MakerDesk extends Making<Wanted['kind']> {
  /** Makes something; null where it could not be made, which then is the problem. */
  make(wanted: Wanted): Promise<Exclude<Made, Problem> | null>;
}

/** What makes files of a wall chart. */
export interface ChartDesk extends Making<ChartFormat> {
  /** Makes a file; null where it could not be made, which then is the problem. */
  make(chart: Chart, format: ChartFormat): Promise<Exclude<Made, Problem> | null>;
}

/** Makes what is handed over of a setup. */
export function useMaker(document: SetupDocument): MakerDesk {
  const { system } = usePreferences();
  const { made, ...desk } = useMaking<Wanted['kind']>();
  return {
    ...desk,
    make: (wanted) => made(wanted.kind, { document, system, paper: desk.paper, date: today(), wanted }),
  };
}

/** Makes files of wall charts. */
export function useChartMaker(): ChartDesk {
  const { made, ...desk } = useMaking<ChartFormat>();
  return { ...desk, make: (chart, format) => made(format, { chart, format, paper: desk.paper }) };
}

interface Worked<What> extends Making<What> {
  made(what: What, asked: Asked): Promise<Exclude<Made, Problem> | null>;
}

/** Letter is usual where inches are. */
function useMaking<What>(): Worked<What> {
  const { system } = usePreferences();
  const [paper, choosePaper] = useState<PaperName>(system === 'us' ? 'letter' : 'a4');
  const [making, setMaking] = useState<What | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const maker = useRef<ReturnType<typeof openMaker> | null>(null);
  useEffect(
    () => () => {
      maker.current?.close();
      maker.current = null;
    },
    [],
  );
  return {
    paper,
    making,
    problem,
    choosePaper,
    async made(what, asked) {
      setProblem(null);
      setMaking(() => what);
      maker.current ??= openMaker();
      const made = await maker.current.ask(asked);
      setMaking(null);
      if (made.kind !== 'refused' && made.kind !== 'errors' && made.kind !== 'fault') return made;
      if (made.kind === 'fault') {
        maker.current?.close();
        maker.current = null;
      }
      setProblem(made);
      return null;
    },
  };
}
