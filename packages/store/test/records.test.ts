import { describe, expect, it } from 'vitest';
import { Conflict, NotFound, Refused } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, tiller, tractor } from './yard.ts';

describe.each(databases)('records on $name', ({ fresh }) => {
  it('come back as they were made, after the store was closed too', async () => {
    const url = await fresh();
    const store = await opened(url);
    const made = await store.records.create(ida, tiller);
    expect(made).toMatchObject({
      kind: 'implement',
      name: tiller.name,
      fields: tiller.fields,
      revision: 1,
      removedAt: null,
    });
    expect(made.readings.map(({ field, leaf, grade }) => [field, leaf, grade])).toEqual([
      ['mastHeight', { value: 457, plusMinus: 1.5 }, 'measured'],
      ['shoulderSpan', '26 7/8 in', 'listed'],
    ]);
    await store.close();
    expect(await (await opened(url)).records.get(made.id)).toEqual(made);
  });

  it('keep a text without a unit in the unit it was typed in', async () => {
    const store = await opened(await fresh());
    const draft = {
      ...tiller,
      units: 'metric' as const,
      readings: [{ field: 'mastHeight', leaf: { value: '457', plusMinus: '2' }, grade: 'measured' as const }],
    };
    const [reading] = (await store.records.create(ida, draft)).readings;
    expect(reading?.leaf).toEqual({ value: '457 mm', plusMinus: '2 mm' });
  });

  it('take who read it and when from the leaf', async () => {
    const store = await opened(await fresh());
    const leaf = { value: 457, who: 'Bo', when: '2026-08-30', tool: 'tape' };
    const made = await store.records.create(ida, {
      ...tiller,
      readings: [{ field: 'mastHeight', leaf, grade: 'measured' }],
    });
    expect(made.readings[0]).toMatchObject({ who: 'Bo', readAt: '2026-08-30', enteredBy: 'Ida' });
  });

  it('change field by field; null takes one away', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    const changed = await store.records.change(bo, id, 1, {
      name: 'Wickset tiller',
      fields: { 'price.amount': 1990, mounting: null, note: 'paint is worn' },
    });
    expect(changed).toMatchObject({ name: 'Wickset tiller', revision: 2 });
    expect(changed.fields).toEqual({ driven: true, price: { amount: 1990, currency: 'USD' }, note: 'paint is worn' });
    expect(await store.records.get(id)).toEqual(changed);
  });

  it('stay at their revision where a change changes nothing', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    expect((await store.records.change(ida, id, 1, { name: tiller.name, fields: { driven: true } })).revision).toBe(1);
    expect((await store.history.groups()).items).toHaveLength(1);
  });

  it('are not changed by somebody who saw an earlier revision, who gets what stands now', async () => {
    const store = await opened(await fresh());
    const { id } = await store.records.create(ida, tiller);
    const now = await store.records.change(ida, id, 1, { name: 'first' });
    const problem = await thrownBy(store.records.change(bo, id, 1, { name: 'second' }));
    expect(problem).toBeInstanceOf(Conflict);
    expect((problem as Conflict).current).toEqual(now);
    expect(await store.records.get(id)).toEqual(now);
  });

  it('are refused with every error in them, and nothing is kept', async () => {
    const store = await opened(await fresh());
    const problem = await thrownBy(
      store.records.create(ida, {
        kind: 'implement',
        name: ' ',
        fields: { mounting: 'sideways', mastHeight: 457, colour: 'red' },
        readings: [
          { field: 'mastHeight', leaf: 19, grade: 'measured' },
          { field: 'mastheight', leaf: 457, grade: 'measured' },
          { field: 'standOut', leaf: 60, grade: 'measured', readAt: '2062-01-01' },
        ],
      }),
    );
    expect(problem).toBeInstanceOf(Refused);
    expect((problem as Refused).errors.map(({ path, code }) => `${path} ${code}`)).toEqual([
      'name missing',
      'readings.2.readAt out-of-range',
      'mastheight unknown-key',
      'mastHeight out-of-range',
    ]);
    const fields = await thrownBy(
      store.records.create(ida, { ...tiller, fields: { mounting: 'sideways', mastHeight: 457, colour: 'red' } }),
    );
    expect((fields as Refused).errors.map(({ path, code }) => `${path} ${code}`).sort()).toEqual([
      'colour unknown-key',
      'mastHeight wrong-type',
      'mounting not-a-choice',
    ]);
    expect((await store.records.list()).items).toEqual([]);
    expect((await store.history.groups()).items).toEqual([]);
  });

  it('leave the lists when they are removed and come back with all they had', async () => {
    const store = await opened(await fresh());
    const made = await store.records.create(ida, tiller);
    await store.records.remove(bo, made.id, 1);
    expect(await thrownBy(store.records.get(made.id))).toBeInstanceOf(NotFound);
    expect((await store.records.list()).items).toEqual([]);
    expect((await store.records.list({ removed: true })).items.map(({ id }) => id)).toEqual([made.id]);
    const back = await store.records.restore(bo, made.id, 2);
    expect(back).toEqual({ ...made, revision: 3, updatedAt: back.updatedAt });
  });

  it('stay while others stand on them', async () => {
    const store = await opened(await fresh());
    const model = await store.records.create(ida, tractor);
    const owner = await store.records.create(ida, {
      kind: 'customer',
      name: 'Ada Brook',
      fields: { contact: { phone: '555 0100' } },
    });
    const machine = await store.records.create(ida, {
      kind: 'machine',
      name: 'Ada’s Ostrey',
      model: model.id,
      owner: owner.id,
    });
    for (const { id } of [model, owner]) {
      const problem = await thrownBy(store.records.remove(ida, id, 1));
      expect(problem).toBeInstanceOf(Conflict);
      expect((problem as Conflict).current).toMatchObject([{ id: machine.id, name: 'Ada’s Ostrey' }]);
    }
    await store.records.remove(ida, machine.id, 1);
    await store.records.remove(ida, model.id, 1);
    expect(await thrownBy(store.records.restore(ida, machine.id, 2))).toBeInstanceOf(Refused);
  });

  it('point only at what they can stand on', async () => {
    const store = await opened(await fresh());
    const model = await store.records.create(ida, tractor);
    const other = await store.records.create(ida, tiller);
    const pathsOf = async (draft: Parameters<typeof store.records.create>[1]): Promise<string[]> =>
      ((await thrownBy(store.records.create(ida, draft))) as Refused).errors.map(({ path }) => path);
    expect(await pathsOf({ kind: 'machine', name: 'm' })).toEqual(['model']);
    expect(await pathsOf({ kind: 'machine', name: 'm', model: 'nobody' })).toEqual(['model']);
    expect(await pathsOf({ kind: 'machine', name: 'm', model: model.id, owner: other.id })).toEqual(['owner']);
    expect(await pathsOf({ kind: 'state', name: 's', parent: other.id })).toEqual(['parent']);
    expect(await pathsOf({ ...tractor, model: model.id })).toEqual(['model']);
    const machine = await store.records.create(ida, { kind: 'machine', name: 'm', model: other.id });
    expect(await pathsOf({ kind: 'state', name: 's', parent: machine.id })).toEqual(['parent']);
    const turned = await thrownBy(store.records.change(ida, machine.id, 1, { model: model.id }));
    expect((turned as Refused).errors.map(({ path }) => path)).toEqual(['model']);
  });

  it('are found by words of name, note, owner and model, capitals and accents aside', async () => {
    const store = await opened(await fresh());
    const model = await store.records.create(ida, { ...tractor, name: 'Östrey 35' });
    await store.records.create(ida, { ...tiller, name: '100%_wide "blade"' });
    const owner = await store.records.create(ida, { kind: 'customer', name: 'Ada Brook' });
    await store.records.create(ida, { kind: 'machine', name: 'the red one', model: model.id, owner: owner.id });
    const found = async (search: string): Promise<string[]> =>
      (await store.records.list({ search })).items.map(({ name }) => name);
    expect(await found('ostrey')).toEqual(['Östrey 35', 'the red one']);
    expect(await found('BROOK red')).toEqual(['the red one']);
    expect(await found('two doors')).toEqual(['Östrey 35', 'the red one']);
    expect(await found('100%')).toEqual(['100%_wide "blade"']);
    expect(await found('100__wide')).toEqual([]);
    expect(await found("'; drop table record; --")).toEqual([]);
  });

  it('come page by page in the same order on both databases, each once', async () => {
    const store = await opened(await fresh());
    const names = ['b', 'a', 'Ä', 'z', 'Z', 'ß', '10', '9', ' x', 'é', 'a'];
    for (const name of names) await store.records.create(ida, { kind: 'customer', name });
    const seen: string[] = [];
    let cursor: string | undefined;
    do {
      const page = await store.records.list({
        kind: 'customer',
        limit: 4,
        ...(cursor === undefined ? {} : { cursor }),
      });
      seen.push(...page.items.map(({ name }) => name));
      cursor = page.next ?? undefined;
    } while (cursor !== undefined);
    expect(seen).toEqual(['10', '9', 'a', 'Ä', 'a', 'b', 'é', 'ß', ' x', 'z', 'Z']);
    expect(await thrownBy(store.records.list({ cursor: 'nonsense' }))).toBeInstanceOf(Refused);
  });

  it('lie on the shelf as what they are', async () => {
    const store = await opened(await fresh());
    const pathsOf = async (draft: Parameters<typeof store.records.create>[1]): Promise<string[]> =>
      ((await thrownBy(store.records.create(ida, draft))) as Refused).errors.map(({ path }) => path);
    expect(await pathsOf({ kind: 'part', name: 'p', fields: { kind: 'frontWeights', count: 4 } })).toEqual(['kind']);
    expect(await pathsOf({ kind: 'weight', name: 'w', fields: { kind: 'upperBushing' } })).toEqual(['kind']);
    expect(await pathsOf({ ...tiller, fields: { fits: ['x'] } })).toEqual(['fits']);
    expect(await pathsOf({ ...tiller, fields: { price: { amount: 5 }, extra: [{ label: 1 }], contact: 'x' } })).toEqual(
      ['price', 'contact', 'extra'],
    );
    await store.records.create(ida, { kind: 'weight', name: 'w', fields: { kind: 'frontWeights', count: 4 } });
  });

  it('keep a key to themselves', async () => {
    const store = await opened(await fresh());
    await store.records.create(ida, { ...tiller, key: 'T-60' });
    const problem = await thrownBy(store.records.create(ida, { ...tiller, name: 'another', key: 'T-60' }));
    expect((problem as Refused).errors.map(({ path }) => path)).toEqual(['key']);
    await store.records.create(ida, { ...tractor, key: 'T-60' });
  });
});
