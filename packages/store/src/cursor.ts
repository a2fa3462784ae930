import { Refused } from './trouble.ts';
import { refusal } from './records/text.ts';

/** One page of a list, and where the next one begins; null at the end. */
export interface Page<T> {
  readonly items: readonly T[];
  readonly next: string | null;
}

/** Which page is wanted. */
export interface PageWanted {
  /** How many at most; 100 where it is left out, never more than 1000. */
  readonly limit?: number;
  /** `next` of the page before. */
  readonly cursor?: string;
}

/** How many rows a page has. */
export function limitOf({ limit = 100 }: PageWanted): number {
  return Number.isInteger(limit) ? Math.min(Math.max(limit, 1), 1000) : 100;
}

/** Where a page begins: after the row with these sort keys; null for the first page. */
export function startOf({ cursor }: PageWanted, keys: number): string[] | null {
  if (cursor === undefined) return null;
  const found = parsed(cursor);
  if (Array.isArray(found) && found.length === keys && found.every((key) => typeof key === 'string')) return found;
  throw new Refused([
    refusal('not-a-choice', 'cursor', 'the cursor of a page before', 'another', 'Start from the first page.'),
  ]);
}

function parsed(cursor: string): unknown {
  try {
    return JSON.parse(Buffer.from(cursor, 'base64url').toString('utf8'));
  } catch {
    return null;
  }
}

/** One page of rows, of which one more than the page was asked for. */
export function pageOf<R, T>(
  rows: readonly R[],
  limit: number,
  read: (row: R) => T,
  keysOf: (row: R) => string[],
): Page<T> {
  const last = rows.length > limit ? rows[limit - 1] : undefined;
  const next = last === undefined ? null : Buffer.from(JSON.stringify(keysOf(last))).toString('base64url');
  return { items: rows.slice(0, limit).map(read), next };
}
