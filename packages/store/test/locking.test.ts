import { describe, expect, it } from 'vitest';
import { Conflict, type Store } from '../src/index.ts';
import { databases, opened } from './databases.ts';
import { counted } from './faults/victim.ts';
import { ida, tiller } from './yard.ts';

/** Two servers over one yard. */
async function twoServers(fresh: () => Promise<string>): Promise<[Store, Store]> {
  const url = await fresh();
  return [await opened(url, 'a'), await opened(url, 'b')];
}

/** Adds one to the number in the note, again and again until nobody was in between. */
async function addOne(store: Store, id: string): Promise<number> {
  for (let conflicts = 0; ; conflicts += 1) {
    const { revision, fields } = await store.records.get(id);
    try {
      await store.records.change(ida, id, revision, { fields: { note: String(Number(fields['note']) + 1) } });
      return conflicts;
    } catch (problem) {
      if (!(problem instanceof Conflict)) throw problem;
    }
  }
}

describe.each(databases)('two servers on $name', ({ fresh }) => {
  it('lose nobody’s change of one record', async () => {
    const [here, there] = await twoServers(fresh);
    const { id } = await here.records.create(ida, { ...tiller, fields: { note: '0' } });
    const people = [here, there, here, there];
    const conflicts = await Promise.all(
      people.map(async (store) => {
        let met = 0;
        for (let i = 0; i < 10; i += 1) met += await addOne(store, id);
        return met;
      }),
    );
    expect(await there.records.get(id)).toMatchObject({ fields: { note: '40' }, revision: 41 });
    expect((await here.history.of(id)).filter(({ key }) => key === 'note')).toHaveLength(40);
    expect(conflicts.reduce((sum, met) => sum + met, 0)).toBeGreaterThan(0);
  });

  it('lose nobody’s change of one record as processes of their own', async () => {
    const url = await fresh();
    const store = await opened(url);
    const { id } = await store.records.create(ida, { ...tiller, fields: { note: '0' } });
    expect(await counted(url, id, 3)).toBeGreaterThan(0);
    expect(await store.records.get(id)).toMatchObject({ fields: { note: '75' }, revision: 76 });
  });

  it('keep every reading that anybody adds', async () => {
    const [here, there] = await twoServers(fresh);
    const { id } = await here.records.create(ida, { ...tiller, readings: [] });
    const adding = Array.from({ length: 20 }, (_, i) =>
      (i % 2 === 0 ? here : there).readings.add(ida, id, [{ field: 'mastHeight', leaf: 440 + i, grade: 'measured' }]),
    );
    await Promise.all(adding);
    const { readings, revision } = await here.records.get(id);
    expect(readings.map(({ leaf }) => leaf).sort()).toEqual(Array.from({ length: 20 }, (_, i) => 440 + i));
    expect(revision).toBe(21);
  });

  it('pin one reading where both want to pin another', async () => {
    const [here, there] = await twoServers(fresh);
    const leaves = [450, 451, 452, 453].map((leaf) => ({ field: 'mastHeight', leaf, grade: 'measured' as const }));
    const { id, readings } = await here.records.create(ida, { ...tiller, readings: leaves });
    const pins = await Promise.allSettled(
      readings.map((one, i) => (i % 2 === 0 ? here : there).readings.pin(ida, id, 1, one.id)),
    );
    const [won, ...others] = pins.filter(({ status }) => status === 'fulfilled');
    expect(others).toEqual([]);
    expect(pins.filter((pin) => pin.status === 'rejected').every(({ reason }) => reason instanceof Conflict)).toBe(
      true,
    );
    expect(await there.records.get(id)).toEqual((won as PromiseFulfilledResult<unknown>).value);
  });

  it('take one group of changes back once', async () => {
    const [here, there] = await twoServers(fresh);
    const { id } = await here.records.create(ida, tiller);
    await here.records.change(ida, id, 1, { name: 'tiller' });
    const [group] = (await here.history.groups({ limit: 1 })).items;
    const undone = await Promise.allSettled(
      [here, there, here, there].map((store) => store.history.undo(ida, group?.id ?? '')),
    );
    expect(undone.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    expect(await here.records.get(id)).toMatchObject({ name: tiller.name, revision: 3 });
  });

  it.each(['key', 'name'])('make one record of one row that both import, by its %s', async (by) => {
    const [here, there] = await twoServers(fresh);
    const rows = Array.from({ length: 120 }, (_, i) => ({
      kind: 'implement' as const,
      name: `n ${i}`,
      ...(by === 'key' ? { key: `k ${i}` } : {}),
    }));
    const results = await Promise.all([here, there].map((store) => store.imports.write(ida, { source: 's', rows })));
    expect(results.map(({ created, unchanged }) => [created, unchanged]).sort()).toEqual([
      [0, 120],
      [120, 0],
    ]);
    expect((await here.records.list({ limit: 1000 })).items).toHaveLength(120);
  });

  it('make one record of one key that both give', async () => {
    const [here, there] = await twoServers(fresh);
    const made = await Promise.allSettled(
      [here, there, here, there].map((store) => store.records.create(ida, { ...tiller, key: 'K' })),
    );
    expect(made.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    for (const one of made)
      if (one.status === 'rejected') expect(one.reason).toMatchObject({ errors: [{ path: 'key' }] });
  });

  it('write while the other one imports, and both are kept', async () => {
    const [here, there] = await twoServers(fresh);
    const row = (i: number) => ({
      kind: 'implement' as const,
      name: `n ${i}`,
      key: `k ${i}`,
      fields: { note: 'imported' },
    });
    await here.imports.write(ida, {
      source: 's',
      rows: Array.from({ length: 300 }, (_, i) => ({ ...row(i), fields: {} })),
    });
    const { items } = await here.records.list({ limit: 1000 });
    const importing = here.imports.write(ida, { source: 's', rows: Array.from({ length: 300 }, (_, i) => row(i)) });
    const edits = items
      .slice(0, 20)
      .map(({ id }) => there.readings.add(ida, id, [{ field: 'mastHeight', leaf: 457, grade: 'measured' }]));
    await Promise.all([importing, ...edits]);
    for (const { id } of items.slice(0, 20)) {
      const { fields, readings, revision } = await there.records.get(id);
      expect([fields['note'], readings.length, revision]).toEqual(['imported', 1, 3]);
    }
  });
});
