import type { Interval } from '../geometry/index.ts';

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
      /** Another length, from which the field’s own follows: the range that was read, and those of the fields beside it that it needs. */
      readonly kind: 'turned';
      readonly needs: readonly string[];
      readonly turn: (read: Interval, beside: readonly Interval[]) => Interval;
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
export function turned(
  key: string,
  words: string,
  needs: readonly string[],
  turn: (read: Interval, beside: readonly Interval[]) => Interval,
): Way {
  return { key, words, kind: 'turned', needs, turn };
}

/** A reading from which nothing follows. */
export function again(key: string, words: string, hint: string): Way {
  return { key, words, kind: 'again', hint };
}
