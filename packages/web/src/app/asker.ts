/** A worker that answers questions, one at a time, in the order in which it is asked. */
export interface Asker<Question, Reply> {
  ask(question: Question): Promise<Reply>;
  close(): void;
}

/**
 * Takes charge of a worker. A worker that breaks answers with what `faulty` makes of it: a fault never looks like an answer.
 */
export function openAsker<Question, Reply>(worker: Worker, faulty: (message: string) => Reply): Asker<Question, Reply> {
  const waiting: ((reply: Reply) => void)[] = [];
  const settle = (reply: Reply): void => waiting.shift()?.(reply);
  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => settle(data));
  worker.addEventListener('error', ({ message }) => settle(faulty(message)));
  return {
    ask: (question) =>
      new Promise((resolve) => {
        waiting.push(resolve);
        worker.postMessage(question);
      }),
    close: () => worker.terminate(),
  };
}

/** Asks only the newest question once a reply is there; replies to older ones are dropped. */
export function latestOnly<Question extends object, Reply>(
  asker: Asker<Question, Reply>,
  onReply: (reply: Reply, question: Question) => void,
): { ask(question: Question): void; close(): void } {
  let next: Question | null = null;
  let isBusy = false;
  const work = async (): Promise<void> => {
    isBusy = true;
    while (next !== null) {
      const question: Question = next;
      next = null;
      const reply = await asker.ask(question);
      if (next === null) onReply(reply, question);
    }
    isBusy = false;
  };
  return {
    ask: (question) => {
      next = question;
      if (!isBusy) void work();
    },
    close: () => asker.close(),
  };
}
