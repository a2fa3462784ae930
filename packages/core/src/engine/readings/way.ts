import type { Tool } from '../advice/index.ts';
import type { Interval } from '../geometry/index.ts';

/** What a length was read beside: the fields that its way needs, and which way the lower pins point. */
export interface Beside {
  readonly ranges: readonly Interval[];
  /** +1 where the pins point outward, −1 inward. */
  readonly sign: 1 | -1;
}

/** How a figure was read, as a person is asked: between which points, or how it came about. */
export type Way = {
  readonly key: string;
  /** What a person chooses, in a few words. */
  readonly words: string;
} & (
  | {
      /** The field’s own reading, perhaps between other points that the record may name. */
      readonly kind: 'as';
      readonly from?: string;
    }
  | {
      /** Another length, from which the field’s own follows: the range that was read, and what stands beside it. */
      readonly kind: 'turned';
      readonly needs: readonly string[];
      readonly turn: (read: Interval, beside: Beside) => Interval;
      /** Where it isn’t read with the usual tool at all. */
      readonly by?: Tool;
    }
  | {
      /** No figure of the field follows from it. */
      readonly kind: 'again';
      readonly hint: string;
    }
  | {
      /** It is the figure of another field of the same machine. */
      readonly kind: 'other';
      readonly field: string;
      readonly hint: string;
    }
);

/** What a person is asked about a reading, with the ways to choose from; the first is the field’s own. */
export interface WayQuestion {
  readonly ask: string;
  readonly ways: readonly Way[];
}

/** The field’s own reading. */
export function asIs(key: string, words: string): Way {
  return { key, words, kind: 'as' };
}

/** A reading between other points that the record may name. */
export function between(from: string, words: string): Way {
  return { key: from, words, kind: 'as', from };
}

/** A reading from which the field’s own follows. */
export function turned(key: string, words: string, needs: readonly string[], turn: TurnedWay['turn']): Way {
  return { key, words, kind: 'turned', needs, turn };
}

/** A figure that was not read here, from which the field’s own follows. */
export function told(key: string, words: string, by: Tool, turn: (told: Interval) => Interval): Way {
  return { key, words, kind: 'turned', needs: [], turn, by };
}

/** A reading from which nothing follows. */
export function again(key: string, words: string, hint: string): Way {
  return { key, words, kind: 'again', hint };
}

/** The figure of another field of the same machine. */
export function another(key: string, words: string, field: string, hint: string): Way {
  return { key, words, kind: 'other', field, hint };
}

type TurnedWay = Extract<Way, { kind: 'turned' }>;

/** What was read of the one neighbour that a way needs. */
export function only({ ranges }: Beside): Interval {
  const [range] = ranges;
  if (range === undefined) throw new Error('invariant: the way names what it needs');
  return range;
}
