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
export function recordsInView(asked: YardAsked, fetched: FetchedYard): YardInView {
  const { yard, records } = fetched;
  return {
    yard,
    tractor: yard.tractors[0] ?? {},
    columns: columnsOf(yard),
    leftOut: leftOutOf(asked, fetched),
    async everyTractor() {
      const all = await fetchYard(asked, true);
      return { yard: all.yard, leftOut: leftOutOf(asked, all) };
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

/** What of the yard is not in a fetched part of it, in sentences. */
function leftOutOf(asked: YardAsked, { records, next, more }: FetchedYard): string[] {
  const [first, last] = [records.implements[0]?.name, records.implements.at(-1)?.name];
  const isPage = (next !== null || asked.cursor !== null) && first !== undefined;
  return [
    ...(more.tractors === 0 ? [] : [countLeftOut(more.tractors, 'tractor')]),
    ...(asked.implements === '' ? [] : [`Only implements called “${asked.implements}”.`]),
    ...(isPage ? [`Only implements from ${first} to ${last ?? first}, by name.`] : []),
    ...(asked.couplers === '' ? [] : [`Only couplers called “${asked.couplers}”.`]),
    ...(more.couplers ? [`Only the first ${records.couplers.length} couplers, by name.`] : []),
    ...(more.parts === 0 ? [] : [countLeftOut(more.parts, 'part')]),
  ];
}

function countLeftOut(count: number, what: 'tractor' | 'part'): string {
  return count === 1 ? `1 ${what} is left out.` : `${count} ${what}s are left out.`;
}
