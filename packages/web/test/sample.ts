import { linkOf, readLink } from '@hitchwright/core/exchange';
import { atPath, chosenIn, setupFrom, type SetupDocument, type YardDocument } from '@hitchwright/core/records';
import { readFileSync } from 'node:fs';

const file = new URL('../../../examples/sample-yard.json', import.meta.url);

/** The yard that the built site carries. */
export const yard = JSON.parse(readFileSync(file, 'utf8')) as YardDocument;

/** The first record whose name holds the words. */
export function named(records: readonly SetupDocument[], words: string): SetupDocument {
  const found = records.find(({ name }) => String(name).toLowerCase().includes(words.toLowerCase()));
  if (found === undefined) throw new Error(`the sample yard has no ${words}`);
  return found;
}

/** The fragment of a check of the sample yard, by words in the names; no words, no coupler. */
export function checkOf(implement: string, tractor: string, coupler: string): string {
  return linked(documentOf(implement, tractor, coupler));
}

/** The setup of such a check. */
export function documentOf(implement: string, tractor: string, coupler: string): SetupDocument {
  const between = coupler === '' ? null : named(yard.couplers, coupler);
  return setupFrom(yard, named(yard.tractors, tractor), between, named(yard.implements, implement));
}

/** The fragment of a setup. */
export function linked(document: SetupDocument): string {
  return linkOf(document);
}

/** The tiller on the 35 with a drive shaft of the shelf in the place of its own. */
export function tillerWith(shaft: string): SetupDocument {
  return { ...documentOf('tiller', '35', ''), shaft: named(yard.parts ?? [], shaft)['shaft'] };
}

/** What a link carries at a path. */
export function valueIn(address: string, path: string): unknown {
  const link = readLink(new URL(address).hash);
  return link.ok ? atPath(link.document, path) : link.errors;
}

/** The fragment of a check whose tractor has a lift rating, but no links placed on it. */
export function unplaced(): string {
  return linkOf({
    hitchwright: 1,
    tractor: { category: '1', liftAt610: '900 kg' },
    implement: { category: '1', mass: '300 kg' },
  });
}

/** What the cures that an address counts on set, by field. */
export function countedOn(url: string): Readonly<Record<string, unknown>> {
  const reading = readLink(new URL(url).hash);
  const chosen = reading.ok ? chosenIn(reading.document) : [];
  return Object.fromEntries(chosen.flatMap(({ edits }) => edits.map(({ path, value }) => [path, value])));
}
