import { describe, expect, it } from 'vitest';
import { Conflict, Refused } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, tiller, tractor, withSampleYard, idOf } from './yard.ts';

describe.each(databases)('column mappings on $name', ({ fresh }) => {
  it('are remembered by the set of their headers', async () => {
    const store = await opened(await fresh());
    expect(await store.mappings.get(['Name', 'Mast'])).toBeNull();
    await store.mappings.put(ida, ['Name', 'Mast'], { Mast: 'mastHeight' });
    await store.mappings.put(bo, ['MAST', 'Name'], { Mast: 'mastHeight', unit: 'in' });
    expect(await store.mappings.get(['name', 'mast', 'Mast'])).toMatchObject({
      columns: { Mast: 'mastHeight', unit: 'in' },
      who: 'Bo',
    });
    expect(await store.mappings.get(['name'])).toBeNull();
  });
});

describe.each(databases)('requests on $name', ({ fresh }) => {
  it('are done once, however often they are sent', async () => {
    const url = await fresh();
    const [here, there] = [await opened(url, 'a'), await opened(url, 'b')];
    const send = (store: typeof here) =>
      store.requests.once('key-1', { name: 'tiller', at: 1 }, (within) => within.records.create(ida, tiller));
    const done = await Promise.all([send(here), send(there), send(here), send(there)]);
    expect(done.filter(({ again }) => !again)).toHaveLength(1);
    expect(new Set(done.map(({ response }) => response.id)).size).toBe(1);
    expect((await here.records.list()).items).toHaveLength(1);
    expect(await thrownBy(there.requests.once('key-1', { name: 'other' }, () => Promise.resolve(1)))).toBeInstanceOf(
      Conflict,
    );
  });

  it('are not noted where their work fails, and leave nothing of it', async () => {
    const store = await opened(await fresh());
    const work = store.requests.once('key', {}, async (within) => {
      await within.records.create(ida, tractor);
      await within.records.create(ida, { ...tiller, name: '' });
    });
    expect(await thrownBy(work)).toBeInstanceOf(Refused);
    expect((await store.records.list()).items).toEqual([]);
    expect((await store.requests.once('key', {}, () => Promise.resolve(7))).again).toBe(false);
    expect(await store.requests.forget('2030-01-01T00:00:00Z')).toBe(1);
  });
});

describe.each(databases)('the sample on $name', ({ fresh }) => {
  it('leaves with one call, with its answers, and comes back with one undo', async () => {
    const store = await opened(await fresh());
    const ids = await withSampleYard(store);
    const own = await store.records.create(ida, tiller);
    const refs = { tractor: idOf(ids, 'Ostrey 35'), implement: own.id };
    const { uses } = await store.setupFor(refs);
    const draft = { title: 't', refs, verdict: 'works', reason: '', summary: null, uses };
    await store.answers.save(ida, { ...draft, sample: true });
    const real = await store.answers.save(ida, draft);
    const gone = await store.records.removeSamples(bo);
    expect(gone).toMatchObject({ records: ids.size, answers: 1 });
    expect((await store.records.list()).items.map(({ id }) => id)).toEqual([own.id]);
    expect((await store.answers.list()).items.map(({ id }) => id)).toEqual([real.id]);
    expect(await store.records.removeSamples(bo)).toEqual({ group: null, records: 0, answers: 0 });
    await store.history.undo(ida, gone.group ?? '');
    expect((await store.records.list({ limit: 1000 })).items).toHaveLength(ids.size + 1);
  });

  it('stays where a customer’s machine is one of it', async () => {
    const store = await opened(await fresh());
    const ids = await withSampleYard(store);
    await store.records.create(ida, { kind: 'machine', name: 'one of it', model: idOf(ids, 'Ostrey 35') });
    expect(await thrownBy(store.records.removeSamples(bo))).toBeInstanceOf(Conflict);
    expect((await store.records.list({ sample: true, limit: 1000 })).items).toHaveLength(ids.size);
  });
});
