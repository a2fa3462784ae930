import { describe, expect, it } from 'vitest';
import { Conflict, type FullRecord, type LaterChange, type Store } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, tiller, tractor } from './yard.ts';

/** What people see of a record: everything but how often and when it was changed. */
function seen(record: FullRecord): unknown {
  return { ...record, revision: 0, updatedAt: '' };
}

async function lastGroup(store: Store): Promise<string> {
  return (await store.history.groups({ limit: 1 })).items[0]?.id ?? '';
}

describe.each(databases)('history on $name', ({ fresh }) => {
  it('tells what changed, from what to what, by whom and when', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    await store.records.change({ who: 'Bo', title: 'a new price' }, id, 1, {
      name: 'tiller',
      fields: { 'price.amount': 1990 },
    });
    const lines = (await store.history.of(id)).filter(({ revision }) => revision === 2);
    expect(lines).toMatchObject([
      { what: 'record', key: 'name', before: tiller.name, after: 'tiller' },
      { what: 'field', key: 'price.amount', before: 2150, after: 1990 },
    ]);
    expect(lines[0]?.group).toMatchObject({
      kind: 'edit',
      title: 'a new price',
      who: 'Bo',
      records: 1,
      undoneBy: null,
    });
    expect((await store.history.groups()).items.map(({ title }) => title)).toEqual(['a new price', '']);
  });

  it('shows a record as it was', async () => {
    const store = await opened(await fresh());
    const made = await store.records.create(ida, tiller);
    const named = await store.records.change(ida, made.id, 1, { name: 'tiller' });
    const withdrawn = await store.readings.withdraw(ida, made.id, 2, made.readings[0]?.id ?? '');
    expect(await store.history.at(made.id, 1)).toEqual(made);
    expect(await store.history.at(made.id, 2)).toEqual(named);
    expect(await store.history.at(made.id, 3)).toEqual(withdrawn);
  });

  it('takes a change back with a new one', async () => {
    const store = await opened(await fresh());
    const made = await store.records.create(ida, tiller);
    const first = made.readings[0]?.id ?? '';
    await store.records.change(ida, made.id, 1, {
      name: 'tiller',
      fields: { mounting: null, note: 'worn', 'price.amount': 1 },
      withdraw: [first],
      add: [{ field: 'mastHeight', leaf: 470, grade: 'guessed', pin: true }],
    });
    const { group } = await store.history.undo(bo, await lastGroup(store));
    expect(seen(await store.records.get(made.id))).toEqual(seen(made));
    expect(
      (await store.history.of(made.id))
        .filter((line) => line.group.id === group)
        .every((line) => line.group.who === 'Bo'),
    ).toBe(true);
    expect((await store.history.of(made.id)).length).toBeGreaterThan(8);
  });

  it('takes an undo back too, and again', async () => {
    const store = await opened(await fresh());
    const made = await store.records.create(ida, tiller);
    const changed = await store.records.change(ida, made.id, 1, { name: 'tiller' });
    const change = await lastGroup(store);
    const states = [made, changed];
    let group = change;
    for (const round of [1, 2, 3, 4]) {
      ({ group } = await store.history.undo(ida, group));
      expect(seen(await store.records.get(made.id))).toEqual(seen(states[(round + 1) % 2] as FullRecord));
      const { items } = await store.history.groups();
      expect(items.find(({ id }) => id === change)?.undoneBy === null).toBe(round % 2 === 0);
    }
    await store.history.undo(ida, change);
    expect(seen(await store.records.get(made.id))).toEqual(seen(made));
  });

  it('is taken back once', async () => {
    const store = await opened(await fresh());
    await store.records.create(ida, tiller);
    const group = await lastGroup(store);
    await store.history.undo(ida, group);
    expect((await store.records.list()).items).toEqual([]);
    expect(await thrownBy(store.history.undo(bo, group))).toBeInstanceOf(Conflict);
  });

  it('is not taken back over somebody’s later change of the same thing, which is named', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    await store.records.change(ida, id, 1, { name: 'tiller', fields: { note: 'one' } });
    const group = await lastGroup(store);
    await store.records.change({ who: 'Bo', title: 'note' }, id, 2, { fields: { note: 'two' } });
    const problem = (await thrownBy(store.history.undo(ida, group))) as Conflict;
    expect(problem).toBeInstanceOf(Conflict);
    expect(problem.message).toContain('Bo');
    expect(problem.current).toMatchObject([
      { recordId: id, what: 'field', key: 'note', group: { who: 'Bo', title: 'note' } },
    ] satisfies Partial<Record<keyof LaterChange, unknown>>[]);
    expect((await store.records.get(id)).fields['note']).toBe('two');
    await store.history.undo(bo, await lastGroup(store));
    await store.history.undo(ida, group);
    expect((await store.records.get(id)).name).toBe(tiller.name);
  });

  it('is not taken back where somebody has confirmed the same value since', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    await store.records.change(ida, id, 1, { name: 'tiller' });
    const group = await lastGroup(store);
    await store.records.change(bo, id, 2, { name: 'other' });
    await store.records.change(bo, id, 3, { name: 'tiller' });
    expect(await thrownBy(store.history.undo(ida, group))).toBeInstanceOf(Conflict);
  });

  it('is not brought back over an undo that reached further', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    await store.records.change(ida, id, 1, { name: 'b' });
    const first = await lastGroup(store);
    await store.records.change(ida, id, 2, { name: 'c' });
    const second = await store.history.undo(ida, await lastGroup(store));
    await store.history.undo(ida, first);
    expect((await store.records.get(id)).name).toBe(tiller.name);
    expect(await thrownBy(store.history.undo(bo, second.group))).toBeInstanceOf(Conflict);
  });

  it('is taken back beside somebody’s later change of something else', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    await store.records.change(ida, id, 1, { name: 'tiller' });
    const group = await lastGroup(store);
    await store.records.change(bo, id, 2, { fields: { note: 'two' } });
    await store.readings.add(bo, id, [{ field: 'mastHeight', leaf: 470, grade: 'guessed' }]);
    await store.history.undo(ida, group);
    expect(await store.records.get(id)).toMatchObject({ name: tiller.name, fields: { note: 'two' }, revision: 5 });
  });

  it('does not hide what others have added to a record since it was made', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    const group = await lastGroup(store);
    await store.readings.add(bo, id, [{ field: 'mastHeight', leaf: 470, grade: 'guessed' }]);
    expect(await thrownBy(store.history.undo(ida, group))).toBeInstanceOf(Conflict);
    expect((await store.records.get(id)).id).toBe(id);
  });

  it('leaves nothing standing on what it takes away', async () => {
    const store = await opened(await fresh());
    const model = await store.records.create(ida, tractor);
    const group = await lastGroup(store);
    const machine = await store.records.create(bo, { kind: 'machine', name: 'one of it', model: model.id });
    expect(((await thrownBy(store.history.undo(ida, group))) as Conflict).current).toMatchObject([{ id: machine.id }]);
    expect((await store.records.get(model.id)).removedAt).toBeNull();
  });
});
