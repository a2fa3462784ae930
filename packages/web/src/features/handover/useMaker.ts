import type { SetupDocument } from '@hitchwright/core/records';
import type { PaperName, Wanted } from '@hitchwright/print/pure';
import { useEffect, useRef, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { today } from '../../app/today.ts';
import type { Made, Problem } from './made.ts';
import { openMaker } from './maker.ts';

/** What makes things of a setup, and what it has made last. */
export interface MakerDesk {
  readonly paper: PaperName;
  /** What is being made. */
  readonly making: Wanted['kind'] | null;
  readonly problem: Problem | null;
  choosePaper(paper: PaperName): void;
  /** Makes something; null where it could not be made, which then is the problem. */
  make(wanted: Wanted): Promise<Exclude<Made, Problem> | null>;
}

/** Letter is usual where inches are. */
export function useMaker(document: SetupDocument): MakerDesk {
  const { system } = usePreferences();
  const [paper, choosePaper] = useState<PaperName>(system === 'us' ? 'letter' : 'a4');
  const [making, setMaking] = useState<MakerDesk['making']>(null);
  const [problem, setProblem] = useState<MakerDesk['problem']>(null);
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
    async make(wanted) {
      setProblem(null);
      setMaking(wanted.kind);
      maker.current ??= openMaker();
      const made = await maker.current.ask({ document, system, paper, date: today(), wanted });
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
