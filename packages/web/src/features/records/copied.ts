import { onceOf, said, yard } from '../../app/server/yard.ts';
import type { Answered } from './recordTypes.ts';

/**
 * A record like another one: its fields, and the readings that are in use. Nobody measured the new one: its figures are guesses, and say
 * after what.
 */
export function copied(record: Answered, called: string): Promise<{ id: string }> {
  const { kind, owner, model, parent, fields, readings, inUse } = record;
  const used = readings.filter(({ id, field }) => inUse[field]?.id === id);
  const json = {
    kind,
    name: called,
    ...(owner === null ? {} : { owner }),
    ...(model === null ? {} : { model }),
    ...(parent === null ? {} : { parent }),
    fields,
    readings: used.map(({ field, leaf }) => ({ field, leaf: likeOf(leaf, record.name), grade: 'guessed' as const })),
  };
  return onceOf({ like: record.id, json }, (key) =>
    said(yard.records.$post({ header: { 'idempotency-key': key }, json })),
  );
}

/** What a figure says of its own reading. */
const ofReading = ['who', 'when', 'tool', 'method', 'photo'];

/** The figure without who read it how and when, and with what it is like. */
function likeOf(leaf: unknown, name: string): unknown {
  const source = `like ${name}`.slice(0, 200);
  if (leaf === null) return null;
  if (typeof leaf !== 'object' || Array.isArray(leaf)) return { value: leaf, source };
  const kept = Object.entries(leaf).filter(([key]) => !ofReading.includes(key));
  return { ...Object.fromEntries(kept), source };
}
