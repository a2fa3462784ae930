import type { Ask, Mapping, MappingChange, MappingTold, RowError, RowTold } from '@hitchwright/core/exchange';
import type { InputError } from '@hitchwright/core/records';
import type { Grade } from '../records/recordTypes.ts';
import { said, yard } from '../../app/server/yard.ts';

type Spoken = Awaited<ReturnType<typeof spokenImport>>;
type SpokenRow = Awaited<ReturnType<typeof spokenRows>>['items'][number];

/** An import as the server holds it. */
export type Import = Omit<Spoken, 'mapping'> & {
  readonly mapping: {
    /** Null where the sheet is no list of records. */
    readonly mapping: Mapping | null;
    readonly told: readonly MappingTold[];
    readonly asks: readonly Ask[];
    readonly errors: readonly InputError[];
    /** The first few different texts of each column, by its letter. */
    readonly samples: Readonly<Record<string, readonly string[]>>;
  };
};

/** One row of the sheet and what becomes of it. */
export type Row = Omit<SpokenRow, 'record' | 'errors' | 'told'> & {
  readonly record: ProposedRow | null;
  readonly errors: readonly (RowError | InputError)[];
  readonly told: readonly RowTold[];
};

/** What a row proposes. */
export interface ProposedRow {
  readonly kind: string;
  readonly name: string;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly readings: Readonly<Record<string, { readonly leaf: unknown; readonly grade: Grade }>>;
}

/** Another sheet, or something else that a person chose. */
export interface Choice {
  readonly sheet?: number;
  readonly change?: MappingChange;
}

export type { Ask, Mapping };
export type Column = Mapping['columns'][number];

function spokenImport(id: string, signal?: AbortSignal) {
  return said(yard.imports[':id'].$get({ param: { id } }, signal === undefined ? {} : { init: { signal } }));
}

function spokenRows(id: string, cursor: string | null, signal: AbortSignal) {
  const query = { limit: cursor === null ? firstRows : moreRows, ...(cursor === null ? {} : { cursor }) };
  return said(yard.imports[':id'].rows.$get({ param: { id }, query }, { init: { signal } }));
}

/** A page is there soon; the rest comes in larger ones. */
const firstRows = '200';
const moreRows = '1000';

/** The import with this id. */
export async function importOf(id: string, signal?: AbortSignal): Promise<Import> {
  return asImport(await spokenImport(id, signal));
}

/** Columns and questions go over the wire as any JSON; they are what the reader of sheets makes. */
export function asImport(spoken: Spoken): Import {
  return spoken as unknown as Import;
}

/** A page of rows with what would become of each. */
export async function rowsOf(id: string, cursor: string | null, signal: AbortSignal) {
  const { items, next } = await spokenRows(id, cursor, signal);
  return { items: items as unknown as readonly Row[], next };
}
