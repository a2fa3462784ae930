import { readFileSync } from 'node:fs';
import { setupFrom, withEdits, type Edit, type SetupDocument, type YardDocument } from '../../src/records/index.ts';

/** The sample yard that the stories are told in. */
export const yard = JSON.parse(
  readFileSync(new URL('../../../../examples/sample-yard.json', import.meta.url), 'utf8'),
) as YardDocument;

/** The record whose name holds some words. */
export function named(records: readonly SetupDocument[], words: string): SetupDocument {
  const found = records.find(({ name }) => String(name).includes(words));
  if (found === undefined) throw new Error(`no ${words} in the yard`);
  return found;
}

/** A pairing of the yard, with whatever a story changes of it. */
export function setup(
  tractor: string,
  coupler: string | null,
  implement: string,
  edits: readonly Edit[] = [],
): SetupDocument {
  const between = coupler === null ? null : named(yard.couplers, coupler);
  const document = setupFrom(yard, named(yard.tractors, tractor), between, named(yard.implements, implement));
  return withEdits(document, edits);
}
