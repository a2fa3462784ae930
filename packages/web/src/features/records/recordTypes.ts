import type { Refusal, yard } from '../../app/server/yard.ts';

type Spoken<T> = T extends Promise<infer R> ? (R extends { json(): Promise<infer B> } ? B : never) : never;
type Said<T> = Exclude<Spoken<T>, { hitchwright: 1; errors: unknown[] }>;

/** A record with its readings and what it stands on, as the server has it. */
export type Answered = Said<ReturnType<(typeof yard.records)[':id']['$get']>>;
/** A page of records. */
type RecordPage = Said<ReturnType<(typeof yard.records)['$get']>>;
/** A record without its readings. */
export type ListedRecord = RecordPage['items'][number];
/** One value that somebody gave for a field. */
export type Reading = Answered['readings'][number];
/** How a reading is founded. */
export type Grade = Reading['grade'];
/** A change of a record, as the server takes it. */
export type Change = Parameters<(typeof yard.records)[':id']['$patch']>[0]['json'];
/** A reading that is to be written down. */
export type Draft = NonNullable<Change['add']>[number];

/** A change that met another one: how the record stands now. */
export interface Meeting {
  readonly change: Change;
  readonly refusal: Refusal;
  readonly now: Answered | null;
}
