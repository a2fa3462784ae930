import { applied, toldColumns, type Entry } from '../history/entries.ts';
import { NotFound } from '../trouble.ts';
import type { Fields, Reading, RecordChange, RecordState } from './kinds.ts';
import { edited, flattened, ordered } from './paths.ts';

/** What a change comes to, one entry for each thing that becomes another; nothing where all stays as it is. */
export function entriesOf(state: RecordState, change: RecordChange, added: readonly Reading[], now: string): Entry[] {
  const plain = [...columnEntries(state, change), ...fieldEntries(state.record.fields, change.fields ?? {})];
  const steps: ((state: RecordState) => Entry[])[] = [
    ...(change.withdraw ?? []).map((id) => (s: RecordState) => withdrawn(s, id, now)),
    ...added.map((reading) => (s: RecordState) => entered(s, reading, now)),
    ...(change.unpin ?? []).map((id) => (s: RecordState) => pinned(s, id, null)),
    ...(change.pin ?? []).map((id) => (s: RecordState) => pinned(s, id, now)),
  ];
  return steps.reduce<{ state: RecordState; entries: Entry[] }>(
    (made, step) => {
      const entries = step(made.state);
      return { state: after(made.state, entries), entries: [...made.entries, ...entries] };
    },
    { state: after(state, plain), entries: plain },
  ).entries;
}

/** A record after a list of entries. */
export function after(state: RecordState, entries: readonly Entry[]): RecordState {
  return entries.reduce<RecordState>(applied, state);
}

function columnEntries({ record }: RecordState, change: RecordChange): Entry[] {
  return toldColumns.flatMap((key): Entry[] => {
    const value = key === 'removedAt' ? undefined : change[key];
    return value === undefined || value === record[key]
      ? []
      : [{ what: 'record', key, before: record[key], after: value }];
  });
}

/** What plain fields become, path by path; what goes stands before what comes, so that a word can make room for an object. */
function fieldEntries(fields: Fields, edits: Readonly<Record<string, unknown>>): Entry[] {
  const before = flattened(fields);
  const next = flattened(
    edited(
      fields,
      Object.entries(edits).map(([path, value]) => ({ path, value })),
    ),
  );
  const gone = [...before].filter(([path]) => !next.has(path));
  const come = [...next].filter(([path, value]) => ordered(value) !== ordered(before.get(path)));
  return [
    ...gone.map(([key, value]): Entry => ({ what: 'field', key, before: value, after: null })),
    ...come.map(([key, value]): Entry => ({ what: 'field', key, before: before.get(key) ?? null, after: value })),
  ];
}

function entered(state: RecordState, reading: Reading, now: string): Entry[] {
  const loose: Entry = { what: 'reading', key: reading.id, before: null, after: { ...reading, pinnedAt: null } };
  return reading.pinnedAt === null ? [loose] : [loose, ...pinned(after(state, [loose]), reading.id, now)];
}

function withdrawn(state: RecordState, id: string, now: string): Entry[] {
  const reading = standing(state, id);
  return [turned(reading, { withdrawnAt: now, pinnedAt: null })];
}

/** Pins a reading and takes the pin off the one that had it; or takes it off. */
function pinned(state: RecordState, id: string, at: string | null): Entry[] {
  const reading = standing(state, id);
  if ((reading.pinnedAt === null) === (at === null)) return [];
  const others = [...state.readings.values()].filter(
    ({ field, pinnedAt }) => at !== null && field === reading.field && pinnedAt !== null,
  );
  return [...others.map((other) => turned(other, { pinnedAt: null })), turned(reading, { pinnedAt: at })];
}

function turned(reading: Reading, to: Partial<Reading>): Entry {
  return { what: 'reading', key: reading.id, before: reading, after: { ...reading, ...to } };
}

function standing({ readings }: RecordState, id: string): Reading {
  const reading = readings.get(id);
  if (reading === undefined || reading.withdrawnAt !== null) throw new NotFound('reading', id);
  return reading;
}
