import type { InUse } from '@hitchwright/core/records';
import type { Queries } from '../database/database.ts';
import type { DocumentKind } from '../records/document.ts';
import { inUseByField } from '../records/full.ts';
import type { Fields, Reading, RecordState, YardRecord } from '../records/kinds.ts';
import { edited, flattened, isPlainObject } from '../records/paths.ts';
import { statesOf } from '../records/states.ts';
import { NotFound } from '../trouble.ts';

/** Records that were fetched, with those that they stand on, for one moment of the store. */
export type Shelf = ReadonlyMap<string, RecordState>;

/** A record with what it stands on: a state before its tractor, a machine before its model. */
export interface Layered {
  readonly kind: DocumentKind;
  readonly name: string;
  readonly layers: readonly RecordState[];
  /** Plain fields, each of the first layer that has it [JSON]. */
  readonly fields: Fields;
  readonly values: readonly LayeredValue[];
}

/** The value in use of one field, and the layer that it comes from. */
interface LayeredValue {
  readonly field: string;
  readonly leaf: unknown;
  readonly layer: number;
  readonly reading: Reading;
  readonly because: InUse['because'];
  readonly conflicts: InUse['conflicts'];
}

/** Fetches records and everything that they stand on. */
export async function shelfOf(queries: Queries, ids: readonly string[]): Promise<Shelf> {
  const shelf = new Map<string, RecordState>();
  let wanted = [...new Set(ids)];
  while (wanted.length > 0) {
    const states = await statesOf(queries, wanted);
    for (const [id, state] of states) shelf.set(id, state);
    const below = [...states.values()].flatMap(({ record }) => [record.model, record.parent]);
    wanted = [...new Set(below)].filter((id) => id !== null).filter((id) => !shelf.has(id));
  }
  return shelf;
}

/** A record as it stands in a setup. Throws NotFound where it, or what it stands on, is not there. */
export function layered(shelf: Shelf, id: string, state?: string): Layered | null {
  const own = layersOf(shelf, id);
  const [first] = own;
  const kind = kindOf(own.at(-1)?.record);
  if (first === undefined || kind === null) return null;
  const layers = state === undefined ? own : [stateOver(shelf, state, own), ...own];
  return { kind, name: first.record.name, layers, fields: fieldsOf(layers), values: valuesOf(layers, kind) };
}

function layersOf(shelf: Shelf, id: string): RecordState[] {
  const state = shelf.get(id);
  if (state === undefined) throw new NotFound('record', id);
  return state.record.model === null ? [state] : [state, ...layersOf(shelf, state.record.model)];
}

/** A state is laid over its own tractor, or over any machine that is one of it. */
function stateOver(shelf: Shelf, id: string, own: readonly RecordState[]): RecordState {
  const state = shelf.get(id);
  const isOver = own.some(({ record }) => record.id === state?.record.parent);
  if (state?.record.kind !== 'state' || !isOver) throw new NotFound('state of this tractor', id);
  return state;
}

function kindOf(record: YardRecord | undefined): DocumentKind | null {
  const kind = record?.kind;
  return kind === undefined || kind === 'customer' || kind === 'machine' || kind === 'state' ? null : kind;
}

function fieldsOf(layers: readonly RecordState[]): Fields {
  return [...layers].reverse().reduce<Fields>((below, { record }) => {
    const edits = [...flattened(record.fields)].map(([path, value]) => ({ path, value }));
    return edited(below, edits);
  }, {});
}

/** For each field the first layer whose value in use is a figure; where none is, the first that says it is not known. */
function valuesOf(layers: readonly RecordState[], kind: DocumentKind): LayeredValue[] {
  const values = new Map<string, LayeredValue>();
  layers.forEach((state, layer) => {
    for (const [field, { id, because, conflicts }] of inUseByField(state, kind)) {
      const reading = state.readings.get(id);
      const known = values.get(field);
      if (reading === undefined || (known !== undefined && (isFigure(known.leaf) || !isFigure(reading.leaf)))) continue;
      values.set(field, { field, leaf: reading.leaf, layer, reading, because, conflicts });
    }
  });
  return [...values.values()].sort((a, b) => (a.field < b.field ? -1 : 1));
}

function isFigure(leaf: unknown): boolean {
  return leaf !== null && !(isPlainObject(leaf) && leaf['unknown'] === true);
}
