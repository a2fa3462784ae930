import { mostParts, type SetupDocument, type YardDocument } from '@hitchwright/core/records';
import type { Page, RecordKind, Store, YardRecord } from '@hitchwright/store';
import { mostPairings } from '../charts/held.ts';
import { mostPartsOfYard } from '../schemas/charts.ts';
import { withRoom } from './room.ts';

/** Which part of the yard is wanted. */
export interface YardWanted {
  /** The tractor, a record or a customer’s. */
  readonly tractor: string;
  /** A state that is laid over it. */
  readonly state?: string;
  /** Every tractor of the yard after it, as many as there is room for. */
  readonly every: boolean;
  /** Words that the names of implements, of couplers must have. */
  readonly implements?: string;
  readonly couplers?: string;
  /** Where the next implements begin, and how many. */
  readonly cursor?: string;
  readonly limit: number;
}

/** A record of which the yard has made part. */
interface Stood {
  readonly id: string;
  readonly name: string;
}

/** A yard made of the values in use, with the records that it is made of in the same order. */
export interface YardOf {
  readonly yard: YardDocument;
  readonly records: {
    readonly tractors: readonly Stood[];
    readonly couplers: readonly Stood[];
    readonly implements: readonly Stood[];
  };
  /** Where the next implements begin; null after the last. */
  readonly next: string | null;
  /** More of a kind than there is room for; tractors and parts are counted. */
  readonly more: { readonly tractors: number; readonly couplers: boolean; readonly parts: number };
}

/** Tractors and couplers of one yard: as many columns as a table has room for, as many tractors as anybody waits for. */
const mostTractors = 12;
const mostCouplers = 8;

/**
 * The yard around one tractor: its couplers and implements by name, and what lies on the shelf for them. What is invented never stands among
 * what is not: around a sample tractor is the sample, around any other the rest.
 */
export async function yardFor(store: Store, wanted: YardWanted): Promise<YardOf> {
  const tractor = await store.records.get(wanted.tractor);
  const { sample } = tractor;
  const listed = (kind: RecordKind | readonly RecordKind[], of: object): Promise<Page<YardRecord>> =>
    store.records.list({ kind, sample, ...of });
  const [couplers, machines, parts, others] = await Promise.all([
    listed('coupler', { limit: mostCouplers, ...searchFor(wanted.couplers) }),
    listed('implement', {
      limit: wanted.limit,
      ...searchFor(wanted.implements),
      ...(wanted.cursor === undefined ? {} : { cursor: wanted.cursor }),
    }),
    everyPart(store, sample),
    wanted.every ? every(store, 'tractor', sample) : [],
  ]);
  const first = await firstTractor(store, wanted);
  const setups = async (role: 'tractor' | 'coupler' | 'implement', of: readonly Stood[]): Promise<SetupDocument[]> => {
    const made = await Promise.all(of.map(({ id }) => store.setupFor({ [role]: id, shaft: null })));
    return made.map(({ setup }) => setup[role] as SetupDocument);
  };
  const besides = others.filter(({ id }) => id !== tractor.id);
  const kept = besides.slice(0, tractorsFor(machines.items.length * (couplers.items.length + 1)) - 1);
  const shelf = withRoom(
    parts,
    machines.items.map(({ name }) => name),
    { most: mostParts, inAll: mostPartsOfYard },
  );
  return {
    yard: {
      hitchwright: 1,
      ...(sample ? { sample } : {}),
      tractors: [first, ...(await setups('tractor', kept))],
      couplers: await setups('coupler', couplers.items),
      implements: await setups('implement', machines.items),
      parts: shelf.kept,
    },
    records: {
      tractors: [tractor, ...kept].map(named),
      couplers: couplers.items.map(named),
      implements: machines.items.map(named),
    },
    next: machines.next,
    more: { tractors: besides.length - kept.length, couplers: couplers.next !== null, parts: shelf.leftOut },
  };
}

/** How many tractors there is room for with so many pairings of each: the chart of the whole yard is one that can be made. */
function tractorsFor(pairings: number): number {
  return Math.max(1, Math.min(mostTractors, Math.floor(mostPairings / Math.max(1, pairings))));
}

function named({ id, name }: Stood): Stood {
  return { id, name };
}

function searchFor(search: string | undefined): { readonly search?: string } {
  return search === undefined || search.trim() === '' ? {} : { search };
}

/** The tractor as it stands with the state that is laid over it, which its name then says. */
async function firstTractor(store: Store, { tractor, state }: YardWanted): Promise<SetupDocument> {
  const { setup } = await store.setupFor({ tractor, ...(state === undefined ? {} : { state }) });
  const document = setup['tractor'] as SetupDocument;
  if (state === undefined) return document;
  const { name } = await store.records.get(state);
  return { ...document, name: `${String(document['name'])}, ${name}`.slice(0, 200) };
}

/** Everything on the shelf by name, in the form that a yard has it. */
async function everyPart(store: Store, sample: boolean): Promise<readonly SetupDocument[]> {
  const ids = (await every(store, ['part', 'weight', 'shaft'], sample)).map(({ id }) => id);
  const batches = Array.from({ length: Math.ceil(ids.length / mostParts) }, (_, i) =>
    store.setupFor({ parts: ids.slice(i * mostParts, (i + 1) * mostParts) }),
  );
  return (await Promise.all(batches)).flatMap(({ setup }) => setup['parts'] as SetupDocument[]);
}

/** Every record of a kind by name, page by page. */
async function every(
  store: Store,
  kind: RecordKind | readonly RecordKind[],
  sample: boolean,
): Promise<readonly Stood[]> {
  const found: Stood[] = [];
  for (let cursor: string | null | undefined; cursor !== null;) {
    const of: object = cursor === undefined ? {} : { cursor };
    const page: Page<YardRecord> = await store.records.list({ kind, sample, limit: 1000, ...of });
    found.push(...page.items.map(named));
    cursor = page.next;
  }
  return found;
}
