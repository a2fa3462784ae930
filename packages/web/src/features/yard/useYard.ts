import { setupFrom, type SetupDocument } from '@hitchwright/core/records';
import type { Reply } from '../check/assessor.ts';
import type { AnswerBook } from './answerBook.ts';
import { useGrid, type Progress } from './useGrid.ts';
import { useYardInView } from './yardInView.ts';

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
export function useYard(book: AnswerBook): YardState {
  const { yard, tractor, columns } = useYardInView();
  const { documents, replies, ...progress } = useGrid(book, () =>
    yard.implements.map((implement) => columns.map((coupler) => setupFrom(yard, tractor, coupler, implement))),
  );
  const rows = yard.implements.map((implement, i) => ({
    implement,
    documents: documents[i] ?? [],
    replies: replies[i] ?? [],
  }));
  return { ...progress, rows };
}
