import { onceKey, said, yard } from '../../app/server/yard.ts';
import type { Answered } from './recordTypes.ts';

/** A record like another one: its fields, and the readings that are in use, each as it was read. */
export function copied(record: Answered, called: string): Promise<{ id: string }> {
  const { kind, owner, model, parent, fields, readings, inUse } = record;
  const used = readings.filter(({ id, field }) => inUse[field]?.id === id);
  const drafts = used.map(({ field, leaf, grade, who, readAt }) => ({
    field,
    leaf,
    grade,
    ...(who === null ? {} : { who }),
    ...(readAt === null ? {} : { readAt }),
  }));
  return said(
    yard.records.$post({
      header: { 'idempotency-key': onceKey() },
      json: {
        kind,
        name: called,
        ...(owner === null ? {} : { owner }),
        ...(model === null ? {} : { model }),
        ...(parent === null ? {} : { parent }),
        fields,
        readings: drafts,
      },
    }),
  );
}
