import { setupFrom, type SetupDocument } from '@hitchwright/core/records';
import type { Reply } from '../check/assessor.ts';
import { sampleYard } from './sampleYard.ts';
import { useGrid, type Progress } from './useGrid.ts';

/** The columns of the yard: no coupler, then each coupler. */
export const couplerColumns: readonly (SetupDocument | null)[] = [null, ...sampleYard.couplers];

/** One implement with its setup and answer for every column; null where it is still to come. */
export interface YardRow {
  readonly implement: SetupDocument;
  readonly documents: readonly SetupDocument[];
  readonly replies: readonly (Reply | null)[];
}

/** The yard on one tractor, as far as it has been worked out. */
export interface YardState extends Progress {
  readonly rows: readonly YardRow[];
}

/** Works through every implement of the yard with every coupler. */
export function useYard(tractor: SetupDocument): YardState {
  const { documents, replies, ...progress } = useGrid(() =>
    sampleYard.implements.map((implement) =>
      couplerColumns.map((coupler) => setupFrom(sampleYard, tractor, coupler, implement)),
    ),
  );
  const rows = sampleYard.implements.map((implement, i) => ({
    implement,
    documents: documents[i] ?? [],
    replies: replies[i] ?? [],
  }));
  return { ...progress, rows };
}
