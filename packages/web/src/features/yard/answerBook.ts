import { cellOf, type ChartCell } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import { useEffect, useState } from 'react';
import { openAssessor, type Assessor, type Reply } from '../check/assessor.ts';

/** Answers setups in a worker of its own, one at a time, and none twice for a chart. */
export interface AnswerBook {
  ask(document: SetupDocument): Promise<Reply>;
  /** What a setup says in a chart; it is worked out where it was not before. A fault is thrown. */
  cell(document: SetupDocument, system: UnitSystem): Promise<ChartCell>;
  close(): void;
}

type Cells = Readonly<Record<UnitSystem, ChartCell>>;

/** Opens a book; its worker begins with the first question. Whole answers are large: of those that were given it keeps what a chart says. */
function openBook(): AnswerBook {
  let assessor: Assessor | null = null;
  const asked = new Map<string, Promise<Reply>>();
  const cells = new Map<string, Cells>();
  const ask = (document: SetupDocument): Promise<Reply> => {
    const key = JSON.stringify(document);
    const before = asked.get(key);
    if (before !== undefined) return before;
    assessor ??= openAssessor();
    const reply = assessor.ask({ document, couplers: [], full: null }).then((given) => {
      asked.delete(key);
      if (given.kind !== 'fault') cells.set(key, cellsOf(given));
      return given;
    });
    asked.set(key, reply);
    return reply;
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
    close() {
      assessor?.close();
      assessor = null;
      asked.clear();
    },
  };
}

function cellsOf(reply: Exclude<Reply, { kind: 'fault' }>): Cells {
  const answer = reply.kind === 'answer' ? reply.answer : null;
  return { us: cellOf(answer, 'us'), metric: cellOf(answer, 'metric') };
}

/** A book for as long as what uses it is on the page. */
export function useBook(): AnswerBook {
  const [book] = useState(openBook);
  useEffect(() => () => book.close(), [book]);
  return book;
}
