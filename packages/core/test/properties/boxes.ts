import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import { exactly, middle } from '../../src/engine/geometry/index.ts';
import type { Box, Reading } from '../../src/engine/proof/index.ts';

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

/** Reads the middle of every range and the first of every choice, of inputs too that are opened only when they are first read. */
export function middleOfAll({ ledger }: SetupQuestion): Reading {
  return (index) => {
    const entry = ledger.entries[index];
    if (entry === undefined) throw new Error(`no entry ${index}`);
    return exactly(entry.role === 'choice' ? entry.range.low : middle(entry.range));
  };
}
