import type { SetupDocument, YardDocument } from '@hitchwright/core/records';
import { createContext, use } from 'react';
import type { YardQuestion } from '../check/usePicked.ts';
import { nameOf, sampleYard } from './sampleYard.ts';

/** Couplers of a table: none, then each of the yard. */
export type Columns = readonly (SetupDocument | null)[];

/** A yard, and what of the whole yard is not in it, in sentences. */
export interface YardPart {
  readonly yard: YardDocument;
  readonly leftOut: readonly string[];
}

/** What a yard page shows: one tractor with couplers, implements and shelf. */
export interface YardInView extends YardPart {
  readonly tractor: SetupDocument;
  readonly columns: Columns;
  /** The same yard with its other tractors. */
  everyTractor(): Promise<YardPart>;
  /** The question of a cell by the yard’s records; null where it is not made of them. */
  questionAt(row: number, column: number): YardQuestion | null;
}

/** The sample yard that comes with the site, around one of its tractors. */
export function sampleInView(tractor: SetupDocument): YardInView {
  return {
    yard: sampleYard,
    tractor,
    columns: columnsOf(sampleYard),
    leftOut: [],
    everyTractor: () => Promise.resolve({ yard: sampleYard, leftOut: [] }),
    questionAt: () => null,
  };
}

/** The columns of a yard: no coupler, then each coupler. */
export function columnsOf({ couplers }: YardDocument): Columns {
  return [null, ...couplers];
}

/** What a column is called. */
export function columnName(columns: Columns, column: number): string {
  const coupler = columns[column] ?? null;
  return coupler === null ? 'No coupler' : nameOf(coupler, `coupler ${column}`);
}

/** The yard that the page around shows. */
export const YardContext = createContext<YardInView | null>(null);

/** The yard that the page shows. */
export function useYardInView(): YardInView {
  const view = use(YardContext);
  if (view === null) throw new Error('invariant: a yard page says which yard it shows');
  return view;
}
