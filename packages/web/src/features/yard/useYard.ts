import { setupFrom, type SetupDocument } from '@hitchwright/core/records';
import { useEffect, useState } from 'react';
import { openAssessor, type Reply } from '../check/assessor.ts';
import { sampleYard } from './sampleYard.ts';

/** The columns of the yard: no coupler, then each coupler. */
export const couplerColumns: readonly (SetupDocument | null)[] = [null, ...sampleYard.couplers];

/** One implement with its setup and answer for every column; null where it is still to come. */
export interface YardRow {
  readonly implement: SetupDocument;
  readonly documents: readonly SetupDocument[];
  readonly replies: readonly (Reply | null)[];
}

/** The yard on one tractor, as far as it has been worked out. */
export interface YardState {
  readonly rows: readonly YardRow[];
  readonly done: number;
  readonly total: number;
  readonly isRunning: boolean;
  readonly stop: () => void;
  readonly goOn: () => void;
}

/** Works through the yard one cell after another in a worker; it can be stopped and goes on where it was. */
export function useYard(tractor: SetupDocument): YardState {
  const [rows, setRows] = useState(() => emptyRows(tractor));
  const [isWanted, setWanted] = useState(true);
  const done = rows.flatMap(({ replies }) => replies).filter((reply) => reply !== null).length;
  const total = rows.length * couplerColumns.length;
  const isRunning = isWanted && done < total;
  // The rows are what it goes on from, not what starts it: only the wish does.
  // eslint-disable-next-line react-hooks/exhaustive-deps
  useEffect(() => (isWanted ? workThrough(rows, setRows) : undefined), [isWanted]);
  return { rows, done, total, isRunning, stop: () => setWanted(false), goOn: () => setWanted(true) };
}

function emptyRows(tractor: SetupDocument): YardRow[] {
  return sampleYard.implements.map((implement) => ({
    implement,
    documents: couplerColumns.map((coupler) => setupFrom(sampleYard, tractor, coupler, implement)),
    replies: couplerColumns.map(() => null),
  }));
}

type SetRows = (change: (rows: readonly YardRow[]) => YardRow[]) => void;

/** Starts the work and returns what ends it. */
function workThrough(rows: readonly YardRow[], setRows: SetRows): () => void {
  const assessor = openAssessor();
  let isStopped = false;
  const work = async (): Promise<void> => {
    for (const [i, { documents, replies }] of rows.entries()) {
      for (const [j, document] of documents.entries()) {
        if (replies[j] !== null) continue;
        const reply = await assessor.ask({ document, couplers: [], full: null });
        if (isStopped) return;
        setRows((before) => withReply(before, i, j, reply));
      }
    }
    assessor.close();
  };
  void work();
  return () => {
    isStopped = true;
    assessor.close();
  };
}

function withReply(rows: readonly YardRow[], i: number, j: number, reply: Reply): YardRow[] {
  return rows.map((row, r) =>
    r === i ? { ...row, replies: row.replies.map((before, c) => (c === j ? reply : before)) } : row,
  );
}
