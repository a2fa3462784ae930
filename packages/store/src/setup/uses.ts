import { createHash } from 'node:crypto';
import { flattened, isPlainObject, ordered } from '../records/paths.ts';
import type { Layered } from './layers.ts';

/** That an answer rests on a field of a record: where the field becomes another, the answer is to be checked again. */
export interface Use {
  readonly recordId: string;
  /** Field path below the record; empty for the record as a whole. */
  readonly field: string;
  /** What was used, shortened; the record’s revision for the record as a whole. */
  readonly used: string;
}

/** What people note about a figure and no check reads. */
const notes = ['method', 'tool', 'who', 'when', 'source', 'note'];

/**
 * Everything that an answer over these records rests on. A field that comes from a lower layer is used of the upper ones too: a reading of
 * their own would be used instead.
 */
export function usesOf(all: readonly Layered[]): Use[] {
  const uses = all.flatMap((one) => [...wholes(one), ...values(one), ...plain(one)]);
  return [...new Map(uses.map((use) => [`${use.recordId} ${use.field}`, use])).values()];
}

function wholes({ layers }: Layered): Use[] {
  return layers.map(({ record }) => ({ recordId: record.id, field: '', used: String(record.revision) }));
}

function values({ values: all, layers }: Layered): Use[] {
  return all.flatMap(({ field, leaf, layer }) =>
    layers.slice(0, layer + 1).map(({ record }) => ({ recordId: record.id, field, used: shortened(meaning(leaf)) })),
  );
}

function plain({ fields, layers }: Layered): Use[] {
  const from = layers.map(({ record }) => flattened(record.fields));
  return [...flattened(fields)].flatMap(([field, value]) => {
    const layer = from.findIndex((paths) => paths.has(field));
    return layers.slice(0, layer + 1).map(({ record }) => ({ recordId: record.id, field, used: shortened(value) }));
  });
}

function meaning(leaf: unknown): unknown {
  return isPlainObject(leaf) ? Object.fromEntries(Object.entries(leaf).filter(([key]) => !notes.includes(key))) : leaf;
}

function shortened(value: unknown): string {
  return createHash('sha256').update(ordered(value)).digest('base64url').slice(0, 22);
}
