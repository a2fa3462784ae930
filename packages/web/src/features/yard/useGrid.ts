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
  /** How many have an answer; a fault is none. */
  readonly done: number;
  readonly total: number;
  readonly isRunning: boolean;
  readonly stop: () => void;
  readonly goOn: () => void;
}

/** Works through setups one after another; it can be stopped and goes on where it was, with faults tried again at the end. */
export function useGrid(book: AnswerBook, begin: () => Grid['documents']): Grid & Progress {
  const [documents] = useState(begin);
  const [replies, setReplies] = useState<Replies>(() => documents.map((row) => row.map(() => null)));
  const [isWanted, setWanted] = useState(true);
  const all = replies.flat();
  const done = all.filter((reply) => reply !== null && reply.kind !== 'fault').length;
  const isRunning = isWanted && done < all.length;
  useEffect(() => {
    if (!isWanted) return undefined;
    const show = ({ row, column }: Place, reply: Reply): void =>
      setReplies((before) => withReply(before, row, column, reply));
    return workThrough(book, openIn({ documents, replies }), show, () => setWanted(false));
    // The replies are what it goes on from, not what starts it: only the wish does.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [isWanted]);
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

/** A setup that is still to be answered, and where it stands. */
interface Place {
  readonly document: SetupDocument;
  readonly row: number;
  readonly column: number;
}

/** What is still to be answered: first what never was asked, then what came to a fault. */
function openIn({ documents, replies }: Grid): readonly Place[] {
  const places = documents.flatMap((of, row) => of.map((document, column) => ({ document, row, column })));
  const replyAt = ({ row, column }: Place): Reply | null => replies[row]?.[column] ?? null;
  return [
    ...places.filter((place) => replyAt(place) === null),
    ...places.filter((place) => replyAt(place)?.kind === 'fault'),
  ];
}

/** Starts the work and returns what ends it. */
function workThrough(
  book: AnswerBook,
  open: readonly Place[],
  show: (place: Place, reply: Reply) => void,
  onEnd: () => void,
): () => void {
  let isStopped = false;
  const work = async (): Promise<void> => {
    for (const place of open) {
      const reply = await book.ask(place.document);
      if (isStopped) return;
      show(place, reply);
    }
    onEnd();
  };
  void work();
  return () => {
    isStopped = true;
  };
}

function withReply(replies: Replies, i: number, j: number, reply: Reply): Replies {
  return replies.map((row, r) => (r === i ? row.map((before, c) => (c === j ? reply : before)) : row));
}
