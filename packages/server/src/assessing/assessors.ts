import { Worker } from 'node:worker_threads';
import { gzip } from 'node:zlib';
import { HttpRefusal } from '../http/refusal.ts';
import { hashOf } from '../http/once.ts';
import type { ChartCell } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import type { ChartWanted, HandedOver, HandOverAsked } from '@hitchwright/print';
import type { Message, Question, Worked } from './work.ts';

/** An answer that was worked out; once it is remembered, with the bytes of its text packed for whoever takes them so. */
export type Answered = Worked & { packed?: Uint8Array };

/** Works out answers in threads of their own, so that every other request is answered meanwhile. */
export interface Assessors {
  /** For somebody who waits. */
  ask(text: string, question: Question): Promise<Answered>;
  /** For nobody in particular: never in the way of somebody who waits. */
  askInBackground(text: string, question: Question): Promise<Worked>;
  /** Makes what is handed over of a setup. */
  handOver(asked: HandOverAsked): Promise<HandedOver>;
  /** Judges one pairing of a wall chart, never in the way of somebody who waits. */
  chartCell(document: SetupDocument, system: UnitSystem): Promise<ChartCell>;
  /** Writes a wall chart that is made. */
  chartFile(wanted: ChartWanted): Promise<HandedOver>;
  close(): Promise<void>;
}

interface Asked {
  readonly message: Message;
  readonly resolve: (reply: never) => void;
  readonly reject: (problem: unknown) => void;
}

/** Longer than any sensible setup takes [ms]. */
const longest = 120_000;
/** More than this many who wait are sent away. */
const mostWaiting = 200;

/** Two threads, one for people and one for what nobody waits for at once; each begins when it is first needed. */
export function openAssessors(): Assessors {
  const front = openThread();
  const back = openThread();
  const known = answersKnown();
  return {
    async ask(text, question) {
      const key = hashOf(`${JSON.stringify(question)} ${text}`);
      const before = known.get(key);
      if (before !== undefined) return before;
      const answer = await front.ask<Answered>({ text, question });
      known.put(key, answer);
      return answer;
    },
    askInBackground: (text, question) => back.ask({ text, question }),
    handOver: (asked) => front.ask({ handOver: asked }),
    chartCell: (document, system) => back.ask({ pairing: document, system }),
    chartFile: (wanted) => front.ask({ chart: wanted }),
    close: async () => {
      await Promise.all([front.close(), back.close()]);
    },
  };
}

/** One thread with its queue: one question at a time. */
function openThread() {
  const waiting: Asked[] = [];
  let worker: Worker | null = null;
  let now: Asked | null = null;
  let timer: NodeJS.Timeout | undefined;

  const settle = (finish: (asked: Asked) => void): void => {
    clearTimeout(timer);
    const asked = now;
    now = null;
    if (asked !== null) finish(asked);
    next();
  };
  const broken = (of: Worker, problem: unknown): void => {
    if (worker !== of) return;
    worker = null;
    settle(({ reject }) => reject(problem));
  };
  const started = (): Worker => {
    const made = new Worker(new URL('./thread.mjs', import.meta.url));
    made.on('message', (reply: object) => {
      // A thread that took too long was given up: what it still says answers nobody.
      if (worker !== made) return;
      settle(({ resolve, reject }) =>
        'fault' in reply ? reject(new Error(`The engine is broken: ${String(reply.fault)}`)) : resolve(reply as never),
      );
    });
    made.on('error', (problem) => broken(made, problem));
    made.on('exit', () => broken(made, new Error('The thread of the engine has ended.')));
    made.unref();
    return made;
  };
  const next = (): void => {
    if (now !== null) return;
    now = waiting.shift() ?? null;
    if (now === null) return;
    worker ??= started();
    worker.postMessage(now.message);
    const slow = worker;
    timer = setTimeout(() => {
      broken(slow, tooLong);
      void slow.terminate();
    }, longest);
  };
  return {
    ask: <Reply>(message: Message): Promise<Reply> =>
      new Promise((resolve, reject) => {
        if (waiting.length >= mostWaiting) {
          reject(tooMany);
          return;
        }
        waiting.push({ message, resolve, reject });
        next();
      }),
    async close(): Promise<void> {
      for (const { reject } of waiting.splice(0)) reject(tooMany);
      await worker?.terminate();
    },
  };
}

const tooLong = new HttpRefusal(503, {
  trouble: 'tooLong',
  message: 'Working it out takes too long. Give fewer parts or closer figures.',
});
const tooMany = new HttpRefusal(503, { trouble: 'busy', message: 'Too many are waiting for an answer; try again.' });

/** Most text of answers that is remembered [characters], and the longest single one. */
const mostKnown = 40_000_000;
const longestKnown = 2_000_000;

/** Answers to setups that were asked before, the latest asked kept longest: the engine is pure, the same setup has the same answer. */
function answersKnown() {
  const known = new Map<string, Answered>();
  let size = 0;
  const sizeOf = (answer: Worked): number => (answer.ok ? answer.text.length : 0);
  return {
    get(key: string): Answered | undefined {
      const answer = known.get(key);
      if (answer === undefined) return undefined;
      known.delete(key);
      known.set(key, answer);
      return answer;
    },
    put(key: string, answer: Answered): void {
      if (!answer.ok || sizeOf(answer) > longestKnown || known.has(key)) return;
      gzip(answer.text, (problem, packed) => {
        if (problem === null) answer.packed = packed;
      });
      known.set(key, answer);
      size += sizeOf(answer);
      for (const [oldest, one] of known) {
        if (size <= mostKnown) break;
        known.delete(oldest);
        size -= sizeOf(one);
      }
    },
  };
}
