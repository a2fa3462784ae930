import { edited } from '../records/paths.ts';
import type { Reading, RecordState, YardRecord } from '../records/kinds.ts';

/** One thing that changed: a column of a record, a plain field by its path, or a reading by its id. Null where there was nothing. */
export interface Entry {
  readonly what: 'record' | 'field' | 'reading';
  readonly key: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** Key of the entry with which a record begins; after it stands the record as it was made. */
export const begins = 'created';

/** Columns whose changes are told one by one. */
export const toldColumns = ['name', 'owner', 'model', 'parent', 'key', 'removedAt'] as const;

/**
 * A record after one more thing changed. The present state of every record is what its entries come to, one after the other.
 *
 * @param state the record before; null before its first entry [record]
 * @param entry what changed [record]
 * @returns the record after it [record]
 */
export function applied(state: RecordState | null, entry: Entry): RecordState {
  if (entry.what === 'record' && entry.key === begins)
    return { record: entry.after as YardRecord, readings: new Map<string, Reading>() };
  if (state === null) throw new Error('A history begins with the record as it was made.');
  const { record, readings } = state;
  if (entry.what === 'record') return { record: { ...record, [entry.key]: entry.after }, readings };
  if (entry.what === 'field') {
    const fields = edited(record.fields, [{ path: entry.key, value: entry.after }]);
    return { record: { ...record, fields }, readings };
  }
  return { record, readings: new Map([...readings, [entry.key, entry.after as Reading]]) };
}

/**
 * The entry that takes another one back. What was made is not unmade: a record is removed, a reading withdrawn.
 *
 * @param entry what changed [record]
 * @param now time of taking it back [ISO 8601]
 * @returns what changes now [record]
 */
export function inverse({ what, key, before, after }: Entry, now: string): Entry {
  if (what === 'record' && key === begins) return { what, key: 'removedAt', before: null, after: now };
  if (what === 'reading' && before === null) {
    const gone = { ...(after as Reading), withdrawnAt: now, pinnedAt: null };
    return { what, key, before: after, after: gone };
  }
  return { what, key, before: after, after: before };
}
