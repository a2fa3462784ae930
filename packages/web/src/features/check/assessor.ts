import type { Answer } from '@hitchwright/core/assess';
import type { InputError, Setup, SetupDocument } from '@hitchwright/core/records';

/** One setup to be answered. */
export interface Request {
  readonly document: SetupDocument;
  /** Other couplers at hand. */
  readonly couplers: readonly SetupDocument[];
  /** With measurements, thresholds and other ways to hook up. */
  readonly full: boolean;
}

export type Reply =
  | { readonly kind: 'answer'; readonly answer: Answer; readonly setup: Setup }
  | { readonly kind: 'errors'; readonly errors: readonly InputError[] }
  | { readonly kind: 'fault'; readonly message: string };

/** A worker that answers setups, one at a time. */
export interface Assessor {
  ask(request: Request): Promise<Reply>;
  close(): void;
}

/** Opens a worker; it answers in the order in which it is asked. */
export function openAssessor(): Assessor {
  const worker = new Worker(new URL('./assess.worker.ts', import.meta.url), { type: 'module' });
  const waiting: ((reply: Reply) => void)[] = [];
  const settle = (reply: Reply): void => waiting.shift()?.(reply);
  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => settle(data));
  worker.addEventListener('error', ({ message }) => settle({ kind: 'fault', message }));
  return {
    ask: (request) =>
      new Promise((resolve) => {
        waiting.push(resolve);
        worker.postMessage(request);
      }),
    close: () => worker.terminate(),
  };
}
