import type { FullRecord } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { said, served, until, type Refusal, type Served } from './served.ts';

const csv = `Implement,Category,Mast height (in),Weight (lb),Shelf
Harl rake,1,18,310,B2
Wickset tiller,1,18 1/4,640,C1
Dunmore blade,1,about a yard,480,
`;

interface Import {
  readonly id: string;
  readonly state: string;
  readonly progress: { readonly done: number; readonly total: number };
  readonly result: {
    readonly group: string;
    readonly created: number;
    readonly updated: number;
    readonly unchanged: number;
  } | null;
  readonly errors: Refusal['errors'];
  readonly mapping: {
    readonly mapping: {
      readonly kind: string;
      readonly columns: readonly { letter: string; target: object; unit: string | null }[];
    } | null;
    readonly asks: readonly object[];
    readonly samples: Readonly<Record<string, readonly string[]>>;
  };
}

interface Row {
  readonly row: number;
  readonly outcome: string;
  readonly does: string | null;
  readonly errors: readonly { readonly path: string }[];
  readonly changes: readonly { readonly field: string }[];
}

function upload(
  { address }: Served,
  text: string | Uint8Array<ArrayBuffer>,
  name = 'shelf.csv',
  type = 'text/csv',
): Promise<Response> {
  const path = `/api/imports?${new URLSearchParams({ name }).toString()}`;
  return fetch(new URL(path, address), { method: 'POST', body: text, headers: { 'content-type': type } });
}

function ended({ send }: Served, id: string): Promise<Import> {
  return until(
    () => said<Import>(send('GET', `/api/imports/${id}`)),
    ({ state }) => state !== 'running',
  );
}

function table(rows: number): string {
  const lines = Array.from({ length: rows }, (_, i) => `Rake ${i},1,${17 + (i % 8) / 8},${300 + i}`);
  return `Implement,Category,Mast height (in),Weight (lb)\n${lines.join('\n')}\n`;
}

describe('an import over HTTP', () => {
  it('is read, looked at, written in one transaction, and undone as one', async () => {
    const yard = await served();
    const { send, store } = yard;
    const opened = await said<Import>(upload(yard, csv), 201);
    expect(opened.mapping.mapping).toMatchObject({ kind: 'implement' });
    expect(opened.mapping.samples).toMatchObject({ A: ['Harl rake', 'Wickset tiller', 'Dunmore blade'], B: ['1'] });
    const rows = await said<{ items: Row[]; next: string | null }>(
      send('GET', `/api/imports/${opened.id}/rows?limit=2`),
    );
    expect(rows.items.map(({ row, outcome, does }) => [row, outcome, does])).toEqual([
      [2, 'record', 'create'],
      [3, 'record', 'create'],
    ]);
    const rest = await said<{ items: Row[] }>(send('GET', `/api/imports/${opened.id}/rows?cursor=${rows.next}`));
    expect(rest.items[0]?.errors.map(({ path }) => path)).toEqual(['implement.mastHeight']);
    expect((await store.records.list()).items).toEqual([]);
    const begun = await said<Import>(send('POST', `/api/imports/${opened.id}/commit`, {}), 202);
    expect(['running', 'done']).toContain(begun.state);
    const done = await ended(yard, opened.id);
    expect(done).toMatchObject({ state: 'done', result: { created: 3, updated: 0 }, errors: [] });
    const { items } = await store.records.list({ kind: 'implement' });
    expect(items.map(({ name }) => name)).toEqual(['Dunmore blade', 'Harl rake', 'Wickset tiller']);
    const blade = await said<FullRecord>(send('GET', `/api/records/${items[2]?.id}`));
    expect(blade.readings.find(({ field }) => field === 'mastHeight')).toMatchObject({
      origin: 'shelf.csv',
      grade: 'listed',
    });
    await said(send('POST', `/api/history/${done.result?.group}/undo`));
    expect((await store.records.list()).items).toEqual([]);
  });

  it('is begun once however often it is asked for, and again it updates', async () => {
    const yard = await served();
    const { send, store } = yard;
    const { id } = await said<Import>(upload(yard, csv), 201);
    const key = { 'idempotency-key': 'import-1' };
    await Promise.all([1, 2, 3].map(() => said(send('POST', `/api/imports/${id}/commit`, {}, key), 202)));
    expect((await ended(yard, id)).result?.created).toBe(3);
    expect((await send('POST', `/api/imports/${id}/commit`, { leaveOut: [2] }, key)).status).toBe(422);
    const again = await said<Import>(upload(yard, csv.replace('310', '320')), 201);
    const rows = await said<{ items: Row[] }>(send('GET', `/api/imports/${again.id}/rows`));
    expect(rows.items.map(({ does }) => does)).toEqual(['update', 'nothing', 'nothing']);
    expect(rows.items[0]?.changes.map(({ field }) => field)).toContain('mass');
    await said(send('POST', `/api/imports/${again.id}/commit`, {}), 202);
    expect((await ended(yard, again.id)).result).toMatchObject({ created: 0, updated: 1, unchanged: 2 });
    expect((await store.records.list()).items).toHaveLength(3);
  });

  it('lets a person say what a column is, and remembers it for the same headings', async () => {
    const yard = await served();
    const { send, store } = yard;
    const { id } = await said<Import>(upload(yard, csv), 201);
    const change = { column: 'E', target: { role: 'extra' } };
    const chosen = await said<Import>(send('POST', `/api/imports/${id}/mapping`, { change }));
    expect(chosen.mapping.mapping?.columns[4]).toMatchObject({ letter: 'E', target: { role: 'extra' } });
    expect((await send('POST', `/api/imports/${id}/mapping`, { change: { column: 'ZZ' } })).status).toBe(400);
    expect((await send('POST', `/api/imports/${id}/mapping`, { sheet: 4 })).status).toBe(400);
    await said(send('POST', `/api/imports/${id}/commit`, { leaveOut: [4] }), 202);
    expect((await ended(yard, id)).result?.created).toBe(2);
    const [, rake] = (await store.records.list({ kind: 'implement' })).items.map(({ fields }) => fields);
    expect(rake).toMatchObject({ extra: [{ label: 'Shelf', text: 'C1' }] });
    const later = await said<Import>(upload(yard, csv, 'later.csv'), 201);
    expect(later.mapping.mapping?.columns[4]).toMatchObject({ target: { role: 'extra' } });
    const headers = csv.split('\n')[0]?.split(',').reverse();
    expect(await said(send('POST', '/api/mappings/find', { headers }))).toMatchObject({ who: 'this computer' });
    expect((await send('POST', '/api/mappings/find', { headers: ['x'] })).status).toBe(404);
    const put = { headers: ['x', 'y'], columns: { any: 'thing' } };
    expect(await said(send('PUT', '/api/mappings', put, { 'hitchwright-who': 'Bo' }))).toMatchObject({
      ...put,
      who: 'Bo',
    });
    expect((await send('POST', `/api/imports/${id}/mapping`, { change })).status).toBe(409);
  });

  it('stopped while it is written leaves nothing, and other requests are answered meanwhile', async () => {
    const yard = await served();
    const { send, store } = yard;
    const { id } = await said<Import>(upload(yard, table(3000)), 201);
    await said(send('POST', `/api/imports/${id}/commit`, {}), 202);
    await until(
      () => said<Import>(send('GET', `/api/imports/${id}`)),
      ({ progress, state }) => state !== 'running' || progress.done > 0,
    );
    await said(send('GET', '/api/records'));
    expect((await said<Import>(send('DELETE', `/api/imports/${id}`))).state).toBe('cancelled');
    expect((await store.records.list()).items).toEqual([]);
    expect((await store.history.groups()).items).toEqual([]);
    expect((await send('GET', `/api/imports/${id}`)).status).toBe(404);
  });

  it('that is no sheet is refused', async () => {
    const yard = await served();
    expect((await said<Refusal>(upload(yard, ''), 400)).errors).toHaveLength(1);
    const binary = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]);
    expect((await said<Refusal>(upload(yard, binary, 'old.xls', 'application/octet-stream'), 400)).errors).toHaveLength(
      1,
    );
    expect((await upload(yard, csv, 'x.csv', 'image/png')).status).toBe(415);
    const { id, mapping } = await said<Import>(upload(yard, 'nothing,of,this\n1,2,3\n'), 201);
    expect(mapping.mapping).toBeNull();
    expect((await yard.send('POST', `/api/imports/${id}/commit`, {})).status).toBe(400);
  });
});
