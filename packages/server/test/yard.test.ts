import { setupFrom, yardErrors, type SetupDocument, type YardDocument } from '@hitchwright/core/records';
import { describe, expect, it } from 'vitest';
import { mostPairings } from '../src/charts/held.ts';
import { withRoom } from '../src/yards/room.ts';
import { said, sample, served, withSample, type Served } from './served.ts';

interface Stood {
  readonly id: string;
  readonly name: string;
}

interface YardOf {
  readonly yard: YardDocument;
  readonly records: Readonly<Record<'tractors' | 'couplers' | 'implements', readonly Stood[]>>;
  readonly next: string | null;
  readonly more: { readonly tractors: number; readonly couplers: boolean; readonly parts: number };
}

function yardAt({ send }: Served, query: string): Promise<YardOf> {
  return said<YardOf>(send('GET', `/api/yard?${query}`));
}

async function made({ send }: Served, draft: object): Promise<string> {
  return (await said<{ id: string }>(send('POST', '/api/records', draft), 201)).id;
}

function namesIn(documents: readonly SetupDocument[]): unknown[] {
  return documents.map(({ name }) => name);
}

/** A question’s parts name its own implement only; nobody reads in a setup whom else they fit. */
function withoutFits(setup: SetupDocument): object {
  const parts = setup['parts'] as readonly SetupDocument[];
  return { ...setup, parts: parts.map((part) => ({ ...part, fits: null })) };
}

describe('the yard of a tractor over HTTP', () => {
  it('has every setup as a question to the records has it', { timeout: 60_000 }, async () => {
    const here = await served();
    const ids = await withSample(here);
    const tractor = ids.get('Ostrey 35') ?? '';
    const { yard, records, next, more } = await yardAt(here, `tractor=${tractor}`);
    expect(yardErrors(yard)).toEqual([]);
    expect([next, more]).toEqual([null, { tractors: 0, couplers: false, parts: 0 }]);
    expect(yard.sample).toBe(true);
    expect(namesIn(yard.tractors)).toEqual(['Ostrey 35']);
    expect(namesIn(yard.implements).sort()).toEqual(namesIn(sample.implements).sort());
    expect(namesIn(yard.couplers).sort()).toEqual(namesIn(sample.couplers).sort());
    expect(records.implements.map(({ name }) => name)).toEqual(namesIn(yard.implements));
    for (const [i, implement] of yard.implements.entries())
      for (const [c, coupler] of [null, ...yard.couplers].entries()) {
        const refs = {
          tractor,
          implement: records.implements[i]?.id,
          ...(c === 0 ? {} : { coupler: records.couplers[c - 1]?.id }),
          parts: 'fitting',
        };
        const { setup } = await said<{ setup: SetupDocument }>(here.send('POST', '/api/setups', refs));
        const made = setupFrom(yard, yard.tractors[0] ?? {}, coupler, implement);
        expect(withoutFits(made)).toEqual(withoutFits(setup));
      }
  });

  it('never has what is invented among what is not', async () => {
    const here = await served();
    const ids = await withSample(here);
    const own = await made(here, { kind: 'tractor', name: 'Own 40', fields: { category: '1' } });
    await made(here, { kind: 'implement', name: 'Own rake', fields: { category: '1' } });
    await made(here, { kind: 'shaft', name: 'Own shaft', fields: { fits: ['Own rake'] } });
    const { yard, records } = await yardAt(here, `tractor=${own}&every=true`);
    expect(yard.sample).toBeUndefined();
    expect([yard.tractors, yard.implements, yard.couplers, yard.parts ?? []].map(namesIn)).toEqual([
      ['Own 40'],
      ['Own rake'],
      [],
      ['Own shaft'],
    ]);
    expect(yard.parts?.[0]).toMatchObject({ kind: 'driveShaft', fits: ['Own rake'] });
    const around = await yardAt(here, `tractor=${ids.get('Ostrey 35') ?? ''}&every=true`);
    expect(around.records.tractors.map(({ name }) => name)).toEqual(['Ostrey 35', 'Ostrey 24', 'Ostrey 55']);
    expect(namesIn(around.yard.implements)).not.toContain('Own rake');
    expect(records.tractors).toEqual([{ id: own, name: 'Own 40' }]);
  });

  it('comes a page of implements at a time, found by words, and says what there is no room for', async () => {
    const here = await served();
    const tractor = await made(here, { kind: 'tractor', name: 'Own 40', fields: { category: '1' } });
    for (let i = 0; i < 13; i += 1) await made(here, { kind: 'tractor', name: `Other ${i}` });
    for (let i = 0; i < 9; i += 1)
      await made(here, { kind: 'coupler', name: `frame ${i}`, fields: { kind: 'uFrame' } });
    for (const name of ['blade', 'cutter', 'rake', 'tiller']) await made(here, { kind: 'implement', name });
    const first = await yardAt(here, `tractor=${tractor}&limit=3&every=true`);
    expect(namesIn(first.yard.implements)).toEqual(['blade', 'cutter', 'rake']);
    expect([first.yard.tractors.length, first.yard.couplers.length]).toEqual([12, 8]);
    expect(first.more).toEqual({ tractors: 2, couplers: true, parts: 0 });
    const second = await yardAt(here, `tractor=${tractor}&limit=3&cursor=${encodeURIComponent(first.next ?? '')}`);
    expect([namesIn(second.yard.implements), second.next]).toEqual([['tiller'], null]);
    const found = await yardAt(here, `tractor=${tractor}&implements=RAK&couplers=8`);
    expect([namesIn(found.yard.implements), namesIn(found.yard.couplers)]).toEqual([['rake'], ['frame 8']]);
    expect(found.more.couplers).toBe(false);
  });

  it(
    'is with every tractor no more than a chart takes, and counts those that are left out',
    { timeout: 60_000 },
    async () => {
      const here = await served();
      const tractor = await made(here, { kind: 'tractor', name: 'Own 40', fields: { category: '1' } });
      for (let i = 0; i < 5; i += 1) await made(here, { kind: 'tractor', name: `Other ${i}` });
      for (let i = 0; i < 8; i += 1)
        await made(here, { kind: 'coupler', name: `frame ${i}`, fields: { kind: 'uFrame' } });
      for (let i = 0; i < 60; i += 1) await made(here, { kind: 'implement', name: `rake ${i}` });
      const { yard, more } = await yardAt(here, `tractor=${tractor}&limit=60&every=true`);
      expect([yard.implements.length, yard.couplers.length]).toEqual([60, 8]);
      expect(yard.tractors.length).toBe(Math.floor(mostPairings / (60 * 9)));
      expect(more).toEqual({ tractors: 3, couplers: false, parts: 0 });
      const { id } = await said<{ id: string }>(here.send('POST', '/api/charts', yard), 202);
      await said(here.send('DELETE', `/api/charts/${id}`));
    },
  );

  it('has the tractor in a state, which its name says, and a customer’s too', async () => {
    const here = await served();
    const tractor = await made(here, { kind: 'tractor', name: 'Own 40', fields: { category: '1' } });
    const state = await made(here, { kind: 'state', name: 'loader on', parent: tractor, fields: { loader: 'loaded' } });
    const { yard } = await yardAt(here, `tractor=${tractor}&state=${state}`);
    expect(yard.tractors).toMatchObject([{ name: 'Own 40, loader on', category: '1', loader: 'loaded' }]);
    const owner = await made(here, { kind: 'customer', name: 'Ada' });
    const theirs = await made(here, { kind: 'machine', name: 'Ada’s 40', model: tractor, owner });
    expect((await yardAt(here, `tractor=${theirs}`)).yard.tractors).toMatchObject([
      { name: 'Ada’s 40', category: '1' },
    ]);
  });

  it('is of a tractor that is there', async () => {
    const here = await served();
    const rake = await made(here, { kind: 'implement', name: 'rake' });
    await said(here.send('GET', '/api/yard?tractor=nobody'), 404);
    await said(here.send('GET', `/api/yard?tractor=${rake}`), 400);
    await said(here.send('GET', `/api/yard?tractor=${rake}&limit=1000`), 400);
    await said(here.send('GET', '/api/yard'), 400);
  });
});

describe('the room for parts', () => {
  const part = (name: string, fits?: readonly string[]): SetupDocument => ({
    kind: 'pinBalls',
    name,
    ...(fits && { fits }),
  });
  const room = (most: number) => ({ most, inAll: 1000 });
  const all = [part('a'), part('b', ['rake']), part('c', ['blade']), part('d', ['rake', 'blade']), part('e')];

  it('is there for all of a small shelf, in its order', () => {
    expect(withRoom(all, ['rake', 'blade'], room(60))).toEqual({ kept: all, leftOut: 0 });
  });
  it('leaves out what is meant for others, and counts only what would have been of use', () => {
    expect(namesIn(withRoom(all, ['rake'], room(60)).kept)).toEqual(['a', 'b', 'd', 'e']);
    expect(withRoom([part('f', ['tiller'])], ['rake'], room(60))).toEqual({ kept: [], leftOut: 0 });
  });
  it('goes to what is meant for an implement first; no implement gets more than a setup takes', () => {
    const { kept, leftOut } = withRoom(all, ['rake', 'blade'], room(3));
    expect([namesIn(kept), leftOut]).toEqual([['a', 'b', 'c', 'd'], 1]);
    expect(namesIn(withRoom(all, ['rake', 'blade'], room(1)).kept)).toEqual(['b', 'c']);
  });
  it('ends where a yard takes no more, and what did not go in is counted', () => {
    const inAll = (most: number) => withRoom(all, ['rake', 'blade'], { most: 60, inAll: most });
    expect([namesIn(inAll(4).kept), inAll(4).leftOut]).toEqual([['a', 'b', 'c', 'd'], 1]);
    expect([namesIn(inAll(2).kept), inAll(2).leftOut]).toEqual([['b', 'c'], 3]);
  });
});
