import { cellOf, type ChartCell } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { useLayoutEffect, useState } from 'react';
import { openAssessor, type Assessor, type Reply } from '../check/assessor.ts';

/** Answers setups in a worker of its own, one at a time, and none twice for a chart. */
export interface AnswerBook {
  ask(document: SetupDocument): Promise<Reply>;
  /** What a setup says in a chart; it is worked out where it was not before. A fault is thrown. */
  cell(document: SetupDocument, system: UnitSystem): Promise<ChartCell>;
  open(): void;
  /** Ends the worker; what is asked of a closed book is never answered. */
  close(): void;
}

type Cells = Readonly<Record<UnitSystem, ChartCell>>;

/**
 * Opens a book; its worker begins with the first question. Whole answers are large: of those that were given it keeps what a chart says. A worker
 * that breaks may never answer again: everything that waits for it is told of the fault, and the next question has a fresh one.
 */
function openBook(): AnswerBook {
  let assessor: Assessor | null = null;
  let isClosed = false;
  const asked = new Map<string, Waiting>();
  const cells = new Map<string, Cells>();
  const end = (): readonly Waiting[] => {
    const waiting = [...asked.values()];
    assessor?.close();
    assessor = null;
    asked.clear();
    return waiting;
  };
  const work = async (worker: Assessor, document: SetupDocument, key: string): Promise<void> => {
    const given = await worker.ask({ document, couplers: [], full: null });
    if (worker !== assessor) return;
    if (given.kind === 'fault') {
      for (const { settle } of end()) settle(given);
      return;
    }
    cells.set(key, cellsOf(given));
    asked.get(key)?.settle(given);
    asked.delete(key);
  };
  const ask = (document: SetupDocument): Promise<Reply> => {
    const key = JSON.stringify(document);
    const before = asked.get(key);
    if (before !== undefined) return before.reply;
    const waiting = waitingForReply();
    if (isClosed) return waiting.reply;
    assessor ??= openAssessor();
    asked.set(key, waiting);
    void work(assessor, document, key);
    return waiting.reply;
  };
  return {
    ask,
    async cell(document, system) {
      const known = cells.get(JSON.stringify(document));
      if (known !== undefined) return known[system];
      const reply = await ask(document);
      if (reply.kind === 'fault') throw new Error(reply.message);
      return cellsOf(reply)[system];
    },
    open() {
      isClosed = false;
    },
    close() {
      isClosed = true;
      end();
    },
  };
}

/** A reply that is still to come, and what gives it. */
interface Waiting {
  readonly reply: Promise<Reply>;
  readonly settle: (reply: Reply) => void;
}

function waitingForReply(): Waiting {
  let settle: Waiting['settle'] = () => undefined;
  const reply = new Promise<Reply>((resolve) => {
    settle = resolve;
  });
  return { reply, settle };
}

function cellsOf(reply: Exclude<Reply, { kind: 'fault' }>): Cells {
  const answer = reply.kind === 'answer' ? reply.answer : null;
  return { us: cellOf(answer, 'us'), metric: cellOf(answer, 'metric') };
}

/** A book for as long as what uses it is on the page. It is open before anything on the page asks it, also where effects are run twice. */
export function useBook(): AnswerBook {
  const [book] = useState(openBook);
  useLayoutEffect(() => {
    book.open();
    return () => book.close();
  }, [book]);
  return book;
}
