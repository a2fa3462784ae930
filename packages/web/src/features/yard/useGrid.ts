import type { SetupDocument } from '@hitchwright/core/records';
import { useEffect, useState } from 'react';
import type { Reply } from '../check/assessor.ts';
import type { AnswerBook } from './answerBook.ts';

/** Setups in rows and columns with their answers; null where one is still to come. */
export interface Grid {
  readonly documents: readonly (readonly SetupDocument[])[];
  readonly replies: Replies;
}

type Replies = readonly (readonly (Reply | null)[])[];

/** How far the work on a grid is. */
export interface Progress {
  readonly done: number;
  readonly total: number;
  readonly isRunning: boolean;
  readonly stop: () => void;
  readonly goOn: () => void;
}

/** Works through setups one after another; it can be stopped and goes on where it was. */
export function useGrid(book: AnswerBook, begin: () => Grid['documents']): Grid & Progress {
  const [documents] = useState(begin);
  const [replies, setReplies] = useState<Replies>(() => documents.map((row) => row.map(() => null)));
  const [isWanted, setWanted] = useState(true);
  const all = replies.flat();
  const done = all.filter((reply) => reply !== null).length;
  const isRunning = isWanted && done < all.length;
  // The replies are what it goes on from, not what starts it: only the wish does.
  // eslint-disable-next-line react-hooks/exhaustive-deps
  useEffect(() => (isWanted ? workThrough(book, { documents, replies }, setReplies) : undefined), [isWanted]);
  return {
    documents,
    replies,
    done,
    total: all.length,
    isRunning,
    stop: () => setWanted(false),
    goOn: () => setWanted(true),
  };
}

type SetReplies = (change: (replies: Replies) => Replies) => void;

/** Starts the work and returns what ends it. */
function workThrough(book: AnswerBook, { documents, replies }: Grid, setReplies: SetReplies): () => void {
  let isStopped = false;
  const work = async (): Promise<void> => {
    for (const [i, row] of documents.entries()) {
      for (const [j, document] of row.entries()) {
        if (replies[i]?.[j] !== null) continue;
        const reply = await book.ask(document);
        if (isStopped) return;
        setReplies((before) => withReply(before, i, j, reply));
      }
    }
  };
  void work();
  return () => {
    isStopped = true;
  };
}

function withReply(replies: Replies, i: number, j: number, reply: Reply): Replies {
  return replies.map((row, r) => (r === i ? row.map((before, c) => (c === j ? reply : before)) : row));
}
