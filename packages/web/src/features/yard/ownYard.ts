import type { YardDocument } from '@hitchwright/core/records';
import { said, yard as server } from '../../app/server/yard.ts';
import { columnsOf, type YardInView } from './yardInView.ts';

/** A tractor of the records, perhaps with a state laid over it. */
export interface TractorAsked {
  readonly tractor: string;
  readonly state: string | null;
}

/** Which part of the yard is looked at. */
export interface YardAsked {
  readonly tractor: TractorAsked;
  /** Words that the names must have. */
  readonly implements: string;
  readonly couplers: string;
  /** Where the implements begin; null for the first. */
  readonly cursor: string | null;
}

/** The yard around a tractor as the server has it. */
export type FetchedYard = Awaited<ReturnType<typeof fetchYard>>;

/** The tractor that the page begins with: the first one by name, an invented one only where there is no other; null for none. */
export async function firstTractor(): Promise<TractorAsked | null> {
  for (const sample of ['false', 'true'] as const) {
    const { items } = await said(server.records.$get({ query: { kind: 'tractor', sample, limit: '1' } }));
    const [first] = items;
    if (first !== undefined) return { tractor: first.id, state: null };
  }
  return null;
}

/** Fetches the yard around a tractor, or around it and every other. */
export async function fetchYard({ tractor, cursor, ...words }: YardAsked, every: boolean) {
  const query = {
    tractor: tractor.tractor,
    ...(tractor.state === null ? {} : { state: tractor.state }),
    ...(words.implements === '' ? {} : { implements: words.implements }),
    ...(words.couplers === '' ? {} : { couplers: words.couplers }),
    ...(cursor === null ? {} : { cursor }),
    ...(every ? ({ every: 'true' } as const) : {}),
  };
  const fetched = await said(server.yard.$get({ query }));
  // What may be left out is never there as undefined: it came as JSON.
  return { ...fetched, yard: fetched.yard as YardDocument };
}

/** A fetched yard as the page shows it. */
export function recordsInView(asked: YardAsked, { yard, records, next, more }: FetchedYard): YardInView {
  return {
    yard,
    tractor: yard.tractors[0] ?? {},
    columns: columnsOf(yard),
    isPart: next !== null || more.couplers || asked.cursor !== null || asked.implements !== '' || asked.couplers !== '',
    async everyTractor() {
      const all = await fetchYard(asked, true);
      return { yard: all.yard, hasMore: all.more.tractors };
    },
    questionAt(row, column) {
      const implement = records.implements[row];
      const coupler = records.couplers[column - 1];
      if (implement === undefined) return null;
      const { tractor, state } = asked.tractor;
      return {
        tractor,
        ...(state === null ? {} : { state }),
        ...(coupler === undefined ? {} : { coupler: coupler.id }),
        implement: implement.id,
      };
    },
  };
}
