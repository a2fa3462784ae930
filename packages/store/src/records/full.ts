import { inUse, type InUse } from '@hitchwright/core/records';
import type { DocumentKind } from './document.ts';
import type { FullRecord, Reading, RecordState } from './kinds.ts';
import { ruleAt } from './sizes.ts';

/** A record as it is handed out: its readings that were not withdrawn, and which of them are in use. */
export function fullRecord(state: RecordState, standsFor: DocumentKind | null): FullRecord {
  const readings = [...state.readings.values()].filter(({ withdrawnAt }) => withdrawnAt === null);
  return { ...state.record, readings, inUse: Object.fromEntries(inUseByField(state, standsFor)) };
}

/** The value in use of every field of a record that has a reading of its own. */
export function inUseByField(state: RecordState, standsFor: DocumentKind | null): Map<string, InUse> {
  const byField = new Map<string, Reading[]>();
  for (const reading of state.readings.values()) {
    if (reading.withdrawnAt !== null) continue;
    byField.set(reading.field, [...(byField.get(reading.field) ?? []), reading]);
  }
  return new Map([...byField].flatMap(([field, readings]) => chosen(state, standsFor, field, readings)));
}

function chosen(
  { record }: RecordState,
  standsFor: DocumentKind | null,
  field: string,
  readings: readonly Reading[],
): [string, InUse][] {
  const rule = standsFor === null ? undefined : ruleAt(standsFor, record.fields, field);
  if (rule === undefined) return [];
  const use = inUse(
    readings.map((reading) => ({ ...reading, isPinned: reading.pinnedAt !== null })),
    rule,
  );
  return use === null ? [] : [[field, use]];
}
