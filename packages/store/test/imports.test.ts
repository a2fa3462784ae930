import { describe, expect, it } from 'vitest';
import { Refused, yardRows, type ImportRow, type Store } from '../src/index.ts';
import { databases, opened, thrownBy } from './databases.ts';
import { bo, ida, sampleYard, tractor } from './yard.ts';

const source = 'prices.csv';

function row(name: string, mastHeight: unknown, more: Partial<ImportRow> = {}): ImportRow {
  return { kind: 'implement', name, readings: [{ field: 'mastHeight', leaf: mastHeight, grade: 'listed' }], ...more };
}

async function counts(store: Store) {
  const head = await store.exportAll(() => undefined);
  return head.counts;
}

describe.each(databases)('imports on $name', ({ fresh }) => {
  it('bring the sample yard in, and again change nothing', async () => {
    const store = await opened(await fresh());
    const rows = yardRows(sampleYard);
    const result = await store.imports.write(ida, { source: 'sample yard', rows });
    expect(result).toMatchObject({ created: rows.length, updated: 0, restored: 0, unchanged: 0 });
    const before = await counts(store);
    const again = await store.imports.write(bo, { source: 'sample yard', rows });
    expect(again).toEqual({ group: null, created: 0, updated: 0, restored: 0, unchanged: rows.length });
    expect(await counts(store)).toEqual(before);
  });

  it('update what they know by key, by name, or by id; what a row doesn’t say stays', async () => {
    const store = await opened(await fresh());
    await store.imports.write(ida, {
      source,
      rows: [row('by key', 457, { key: 'K' }), row('by name', 457, { fields: { note: 'old' } }), row('by id', 457)],
    });
    const ids = new Map((await store.records.list()).items.map(({ name, id }) => [name, id]));
    const result = await store.imports.write(bo, {
      source,
      rows: [
        row('renamed', 460, { key: 'K' }),
        row('BY NAME', 460, { key: 'N', fields: { price: { amount: 5, currency: 'USD' } } }),
        row('other', 460, { id: ids.get('by id') ?? '' }),
        row('new', 460),
      ],
    });
    expect(result).toMatchObject({ created: 1, updated: 3 });
    const renamed = await store.records.get(ids.get('by key') ?? '');
    expect(renamed).toMatchObject({ name: 'renamed', key: 'K', revision: 2 });
    expect(renamed.readings.map(({ leaf }) => leaf)).toEqual([460]);
    const named = await store.records.get(ids.get('by name') ?? '');
    expect(named).toMatchObject({ name: 'BY NAME', key: 'N', fields: { note: 'old', price: { amount: 5 } } });
    expect((await store.records.get(ids.get('by id') ?? '')).name).toBe('other');
  });

  it('replace their own readings and nobody else’s, nor a pinned one', async () => {
    const store = await opened(await fresh());
    await store.imports.write(ida, { source, rows: [row('a', 457), row('b', 457)] });
    const [a, b] = (await store.records.list()).items;
    await store.readings.add(bo, a?.id ?? '', [{ field: 'mastHeight', leaf: 470, grade: 'measured' }]);
    const { readings } = await store.records.get(b?.id ?? '');
    await store.readings.pin(bo, b?.id ?? '', 1, readings[0]?.id ?? '');
    await store.imports.write(ida, { source, rows: [row('a', 460), row('b', 460)] });
    const leaves = async (id: string | undefined): Promise<unknown[]> =>
      (await store.records.get(id ?? '')).readings.map(({ leaf }) => leaf).sort();
    expect(await leaves(a?.id)).toEqual([460, 470]);
    expect(await leaves(b?.id)).toEqual([457, 460]);
    await store.imports.write(ida, { source: 'another.csv', rows: [row('a', 455)] });
    expect(await leaves(a?.id)).toEqual([455, 460, 470]);
  });

  it('are undone as one', async () => {
    const store = await opened(await fresh());
    await store.imports.write(ida, { source, rows: [row('a', 457), row('b', 457)] });
    const before = await Promise.all((await store.records.list()).items.map(({ id }) => store.records.get(id)));
    const { group } = await store.imports.write(bo, { source, rows: [row('a', 460), row('c', 460), row('d', 460)] });
    const undone = await store.history.undo(ida, group ?? '');
    expect(undone.records).toBe(3);
    expect((await store.records.list()).items.map(({ name }) => name)).toEqual(['a', 'b']);
    for (const record of before) {
      const now = await store.records.get(record.id);
      expect(now).toEqual({ ...record, revision: now.revision, updatedAt: now.updatedAt });
    }
  });

  it('make a new record of a name whose record was removed', async () => {
    const store = await opened(await fresh());
    await store.imports.write(ida, { source, rows: [row('a', 457)] });
    const [a] = (await store.records.list()).items;
    await store.records.remove(bo, a?.id ?? '', 1);
    expect(await store.imports.write(ida, { source, rows: [row('a', 458)] })).toMatchObject({ created: 1 });
    expect((await store.records.list()).items.map(({ id }) => id)).not.toContain(a?.id);
  });

  it('bring back what was removed, by its key', async () => {
    const store = await opened(await fresh());
    await store.imports.write(ida, { source, rows: [row('a', 457, { key: 'A' })] });
    const [a] = (await store.records.list()).items;
    await store.records.remove(bo, a?.id ?? '', 1);
    expect(await store.imports.write(ida, { source, rows: [row('a', 458, { key: 'A' })] })).toMatchObject({
      restored: 1,
    });
    expect((await store.records.get(a?.id ?? '')).readings.map(({ leaf }) => leaf)).toEqual([458]);
  });

  it('are written wholly or not at all, and every wrong row is named', async () => {
    const store = await opened(await fresh());
    await store.records.create(ida, tractor);
    await store.records.create(ida, tractor);
    const before = await counts(store);
    const good = Array.from({ length: 250 }, (_, i) => row(`good ${i}`, 457));
    const rows = [
      ...good,
      row('bad', 19),
      row('good 7', 457),
      row('', 457, { fields: { mounting: 'sideways' } }),
      { kind: 'tractor' as const, name: 'Ostrey 35' },
      row('x', 457, { id: 'nobody' }),
    ];
    const problem = (await thrownBy(store.imports.write(ida, { source, rows }))) as Refused;
    expect(problem).toBeInstanceOf(Refused);
    expect(problem.errors.map(({ path, code }) => `${path} ${code}`)).toEqual([
      'rows.250.mastHeight out-of-range',
      'rows.251.name ambiguous',
      'rows.252.name missing',
      'rows.253.name ambiguous',
      'rows.254.id not-a-choice',
    ]);
    expect(await counts(store)).toEqual(before);
  });

  it('tell before what they would do, and do nothing', async () => {
    const store = await opened(await fresh());
    await store.imports.write(ida, { source, rows: [row('a', 457), row('b', 457)] });
    const before = await counts(store);
    const rows = [row('a', 460, { fields: { note: 'n' } }), row('b', 457), row('c', 457), row('d', 19)];
    expect(await store.imports.preview({ source, rows })).toMatchObject([
      {
        row: 0,
        does: 'update',
        changes: [
          { field: 'note', before: null, after: 'n' },
          { field: 'mastHeight', before: 457, after: null },
          { field: 'mastHeight', before: null, after: 460 },
        ],
      },
      { row: 1, does: 'nothing', changes: [] },
      { row: 2, does: 'create', recordId: null },
      { row: 3, does: 'refuse', errors: [{ path: 'mastHeight', code: 'out-of-range' }] },
    ]);
    expect(await counts(store)).toEqual(before);
  });

  it('tell how far they are, let others read meanwhile, and leave nothing when they are stopped', async () => {
    const store = await opened(await fresh());
    const made = await store.records.create(ida, tractor);
    const before = await counts(store);
    const rows = Array.from({ length: 1000 }, (_, i) => row(`n ${i}`, 457));
    const stop = new AbortController();
    const told: number[] = [];
    const reads: Promise<unknown>[] = [];
    const onProgress = ({ done, total }: { done: number; total: number }): void => {
      expect(total).toBe(1000);
      told.push(done);
      reads.push(store.records.get(made.id).then(({ id }) => [id, told.length]));
      if (done === 500) stop.abort(new Error('enough'));
    };
    const problem = await thrownBy(store.imports.write(bo, { source, rows }, { signal: stop.signal, onProgress }));
    expect(problem).toMatchObject({ message: 'enough' });
    expect(told).toEqual([100, 200, 300, 400, 500]);
    expect(await reads[0]).toEqual([made.id, expect.toSatisfy((seen: number) => seen < 5)]);
    expect(await counts(store)).toEqual(before);
  });
});
