import { linkOf } from '@hitchwright/core/exchange';
import { setupFrom, type SetupDocument, type YardDocument } from '@hitchwright/core/records';
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
  const between = coupler === '' ? null : named(yard.couplers, coupler);
  return linkOf(setupFrom(yard, named(yard.tractors, tractor), between, named(yard.implements, implement)));
}

/** The fragment of a check whose tractor has a lift rating, but no links placed on it. */
export function unplaced(): string {
  return linkOf({
    hitchwright: 1,
    tractor: { category: '1', liftAt610: '900 kg' },
    implement: { category: '1', mass: '300 kg' },
  });
}
