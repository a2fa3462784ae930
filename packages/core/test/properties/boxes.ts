import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { Box } from '../../src/engine/proof/index.ts';

/** Settings at one place each, a share of the way along their range; what is uncertain keeps its range. */
export function boxOf({ ledger }: SetupQuestion, share: number): Box {
  return ledger.entries.map(({ role, range }) => {
    if (role === 'uncertain') return range;
    const set = role === 'choice' ? range.low : range.low + share * (range.high - range.low);
    return { low: set, high: set };
  });
}

/** A point drawn from a box. */
export function pointIn(box: Box, stream: Generator<number, never>): Box {
  return box.map(({ low, high }) => {
    const value = low === high ? low : low + stream.next().value * (high - low);
    return { low: value, high: value };
  });
}
