import type { Advice, Suggestion } from '@hitchwright/core/advice';
import { isReadable } from '../measure/steps.ts';

/** What somebody at the machine can read or say, best first. */
export function readableIn({ next }: Advice): Suggestion[] {
  return next.filter(({ path }) => isReadable(path));
}
