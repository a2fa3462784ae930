import type { Advice } from '@hitchwright/core/advice';
import type { InputError, Setup, SetupDocument } from '@hitchwright/core/records';
import { openAsker, type Asker } from '../../app/asker.ts';

/** A setup of which is asked what to read next. */
export interface AdviceQuestion {
  readonly document: SetupDocument;
}

export type AdviceReply =
  | { readonly kind: 'advice'; readonly advice: Advice; readonly setup: Setup }
  | { readonly kind: 'errors'; readonly errors: readonly InputError[] }
  | { readonly kind: 'fault'; readonly message: string };

/** Opens a worker that says what to read next. */
export function openAdvisor(): Asker<AdviceQuestion, AdviceReply> {
  const worker = new Worker(new URL('./advise.worker.ts', import.meta.url), { type: 'module' });
  return openAsker(worker, (message): AdviceReply => ({ kind: 'fault', message }));
}
