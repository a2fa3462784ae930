import { readFileSync } from 'node:fs';
import type { YardDocument } from '@hitchwright/core/records';
import { yardRows, type By, type RecordDraft, type Store } from '../src/index.ts';

/** The sample yard of the house. */
export const sampleYard = JSON.parse(
  readFileSync(new URL('../../../examples/sample-yard.json', import.meta.url), 'utf8'),
) as YardDocument;

/** Who changes things in the tests. */
export const ida: By = { who: 'Ida' };
/** Somebody else. */
export const bo: By = { who: 'Bo' };

/** A tractor with a few readings. */
export const tractor: RecordDraft = {
  kind: 'tractor',
  name: 'Ostrey 35',
  fields: { category: '1', ptoSpeeds: [540], note: 'two doors down' },
  readings: [
    { field: 'lowerBallBore', leaf: { value: 22.4, plusMinus: 0.1, tool: 'caliper' }, grade: 'measured' },
    { field: 'ballSpan', leaf: { adjustable: { between: [640, 760] } }, grade: 'maker' },
  ],
};

/** A tiller with a few readings. */
export const tiller: RecordDraft = {
  kind: 'implement',
  name: 'Wickset 60-in tiller',
  fields: { mounting: 'threePoint', driven: true, price: { amount: 2150, currency: 'USD' } },
  readings: [
    { field: 'mastHeight', leaf: { value: 457, plusMinus: 1.5 }, grade: 'measured', readAt: '2026-09-01' },
    { field: 'shoulderSpan', leaf: '26 7/8', grade: 'listed' },
  ],
};

/** Puts the sample yard into a store; ids by name. */
export async function withSampleYard(store: Store): Promise<Map<string, string>> {
  await store.imports.write(ida, { source: 'sample yard', rows: yardRows(sampleYard) });
  const { items } = await store.records.list({ limit: 1000 });
  return new Map(items.map(({ name, id }) => [name, id]));
}

/** An id by name that has to be there. */
export function idOf(ids: ReadonlyMap<string, string>, name: string): string {
  const id = ids.get(name);
  if (id === undefined) throw new Error(`There is no ${name}.`);
  return id;
}
