import { openAsker } from '../../app/asker.ts';
import type { Asked, Made } from './made.ts';

/** Makes things in a worker of its own, which begins when the first is asked for. */
export function openMaker() {
  return openAsker<Asked, Made>(
    new Worker(new URL('./handover.worker.ts', import.meta.url), { type: 'module' }),
    (message) => ({ kind: 'fault', message }),
  );
}
