import { partSizesOf, withEdits, type SetupDocument } from '@hitchwright/core/records';
import type { Fields, RecordKind } from './kinds.ts';

/** What the yard keeps beside what a setup document knows. */
const besideSetup = ['price', 'contact', 'extra', 'fits'];
const besidePart = ['note', 'contact', 'extra'];

/** Kinds that stand in a setup document as themselves. */
export type DocumentKind = Exclude<RecordKind, 'customer' | 'machine' | 'state'>;

/** Where a record of a kind stands in a setup document. */
export function placeOf(kind: DocumentKind): string {
  return kind === 'part' || kind === 'weight' ? 'parts.0' : kind;
}

/**
 * A record in the form it takes inside a setup: its name, its plain fields, and a leaf for each field.
 *
 * @param kind what it stands for [name]
 * @param name its name [text]
 * @param fields plain fields [JSON]
 * @param leaves a leaf by field path [JSON]
 * @returns part of a setup document [JSON]
 */
export function documentOf(
  kind: DocumentKind,
  name: string,
  fields: Fields,
  leaves: ReadonlyMap<string, unknown>,
): SetupDocument {
  const isPart = kind === 'part' || kind === 'weight';
  const beside = isPart ? besidePart : besideSetup;
  const plain = Object.fromEntries(Object.entries(fields).filter(([key]) => !beside.includes(key)));
  const unknown = isPart ? Object.fromEntries(Object.keys(partSizesOf(fields['kind'])).map((key) => [key, null])) : {};
  const given = [...leaves].map(([path, value]) => ({ path, value }));
  return { ...unknown, ...withEdits({ name, ...plain }, given) };
}
