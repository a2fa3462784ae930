import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import type { FullRecord } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { said, served, until, withSample, type Refusal, type Served } from './served.ts';

async function bytesOf(response: Response | Promise<Response>): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await response;
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  return new Uint8Array(await answer.arrayBuffer());
}

function restore({ address }: Served, body: Uint8Array<ArrayBuffer>, query = ''): Promise<Response> {
  const headers = { 'content-type': 'application/octet-stream' };
  return fetch(new URL(`/api/restore${query}`, address), { method: 'POST', body, headers });
}

async function namesIn({ store }: Served): Promise<string[]> {
  return (await store.records.list({ limit: 1000 })).items.map(({ name }) => name);
}

describe('taking everything elsewhere', () => {
  it('as an archive or a backup, and back, keeps every record; what was there is kept as a backup', async () => {
    const first = await served();
    await withSample(first);
    const names = await namesIn(first);
    for (const path of ['/api/archive', '/api/backup']) {
      const kept = await bytesOf(first.send('GET', path));
      const second = await served();
      expect((await said<{ counts: { record: number } }>(restore(second, kept))).counts.record).toBe(names.length);
      expect(await namesIn(second)).toEqual(names);
      await said(second.send('POST', '/api/records', { kind: 'customer', name: 'Ada' }), 201);
      const looked = await said<{ counts: { record: number }; kept: null }>(restore(second, kept, '?look=true'));
      expect([looked.counts.record, looked.kept]).toEqual([names.length, null]);
      const occupied = await restore(second, kept);
      expect([occupied.status, await namesIn(second)]).toEqual([409, [...names, 'Ada'].sort(byName)]);
      const replaced = await said<{ kept: string }>(restore(second, kept, '?replace=true'));
      expect(await namesIn(second)).toEqual(names);
      expect(readdirSync(second.folder)).toContain(replaced.kept);
    }
  });

  it('says by the hash in its last line that it is whole', async () => {
    const yard = await served();
    await withSample(yard);
    const text = Buffer.from(await bytesOf(yard.send('GET', '/api/archive'))).toString('utf8');
    const lines = text.trimEnd().split('\n');
    const end = JSON.parse(lines.pop() ?? '') as { sha256: string };
    expect(
      createHash('sha256')
        .update(`${lines.join('\n')}\n`)
        .digest('hex'),
    ).toBe(end.sha256);
  });

  it('a damaged, cut or other file is refused and nothing is changed', async () => {
    const yard = await served();
    await withSample(yard);
    const names = await namesIn(yard);
    const [archive, backup] = [
      await bytesOf(yard.send('GET', '/api/archive')),
      await bytesOf(yard.send('GET', '/api/backup')),
    ];
    const changed = Uint8Array.from(archive);
    changed[Math.floor(changed.length / 2)] = 0x7e;
    const cutPages = Uint8Array.from(backup.subarray(0, backup.length - 5000));
    for (const wrong of [
      changed,
      archive.subarray(0, 5000),
      cutPages,
      new TextEncoder().encode('PK nothing'),
      new Uint8Array(),
    ]) {
      const refused = await said<Refusal>(restore(yard, Uint8Array.from(wrong), '?replace=true'), 400);
      expect(refused.errors).toHaveLength(1);
      expect(await namesIn(yard)).toEqual(names);
    }
  });
});

function byName(a: string, b: string): number {
  return a.toLowerCase() < b.toLowerCase() ? -1 : 1;
}

describe('a kind as a file', () => {
  it('comes as CSV and XLSX that can be imported again without a change, and as JSON lines', async () => {
    const yard = await served();
    await withSample(yard);
    const { send, address } = yard;
    for (const [format, type] of [
      ['csv', 'text/csv'],
      ['xlsx', 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet'],
    ] as const) {
      const sheet = await bytesOf(send('GET', `/api/export/implement?format=${format}`));
      const sent = { method: 'POST', body: sheet, headers: { 'content-type': type } };
      const { id } = await said<{ id: string }>(fetch(new URL('/api/imports?name=again', address), sent), 201);
      const rows = await said<{ items: { does: string | null; errors: unknown[]; changes: unknown[] }[] }>(
        send('GET', `/api/imports/${id}/rows`),
      );
      expect(rows.items.length).toBeGreaterThan(3);
      expect(rows.items.filter(({ does }) => does === 'create' || does === 'refuse')).toEqual([]);
      expect(rows.items.flatMap(({ errors }) => errors)).toEqual([]);
    }
    const lines = Buffer.from(await bytesOf(send('GET', '/api/export/tractor?format=json')))
      .toString('utf8')
      .trimEnd();
    const tractors = lines.split('\n').map((line) => JSON.parse(line) as FullRecord);
    expect(tractors.every(({ kind, readings }) => kind === 'tractor' && readings.length > 0)).toBe(true);
    expect((await send('GET', '/api/export/machine?format=csv')).status).toBe(400);
    expect((await send('GET', '/api/export/boat?format=csv')).status).toBe(400);
  });
});

describe('the sample yard', () => {
  it('goes in once and out again, and leaves what is the yard’s own', async () => {
    const yard = await served();
    const { send } = yard;
    await said(send('POST', '/api/records', { kind: 'customer', name: 'Ada' }), 201);
    const made = await said<{ created: number }>(
      send('POST', '/api/sample', undefined, { 'idempotency-key': 's' }),
      201,
    );
    expect(made.created).toBeGreaterThan(10);
    expect(await said(send('POST', '/api/sample', undefined, { 'idempotency-key': 's' }), 201)).toEqual(made);
    expect(await said(send('DELETE', '/api/sample'))).toMatchObject({ records: made.created });
    expect(await namesIn(yard)).toEqual(['Ada']);
  });
});

describe('photos', () => {
  it('are JPEG, come back byte by byte, and belong to a record', async () => {
    const { send, address } = await served();
    const { id } = await said<FullRecord>(send('POST', '/api/records', { kind: 'customer', name: 'Ada' }), 201);
    const jpeg = Uint8Array.from([0xff, 0xd8, 0xff, 0xe0, ...Array.from({ length: 2000 }, (_, i) => i % 251)]);
    const post = (body: Uint8Array<ArrayBuffer>, of = id): Promise<Response> =>
      fetch(new URL(`/api/records/${of}/photos?field=mastHeight`, address), {
        method: 'POST',
        body,
        headers: { 'content-type': 'image/jpeg', 'idempotency-key': `p${body.length}${of}` },
      });
    const made = await said<{ id: string }>(post(jpeg), 201);
    expect(await said(post(jpeg), 201)).toEqual(made);
    const back = await send('GET', `/api/photos/${made.id}`);
    expect([back.headers.get('content-type'), back.headers.get('x-content-type-options')]).toEqual([
      'image/jpeg',
      'nosniff',
    ]);
    expect(new Uint8Array(await back.arrayBuffer())).toEqual(jpeg);
    const tag = back.headers.get('etag') ?? '';
    expect((await send('GET', `/api/photos/${made.id}`, undefined, { 'if-none-match': tag })).status).toBe(304);
    expect(await said(send('GET', `/api/records/${id}/photos`))).toMatchObject({
      items: [{ id: made.id, field: 'mastHeight' }],
    });
    expect((await said<Refusal>(post(new Uint8Array([0x89, 0x50, 0x4e, 0x47])), 400)).errors[0]?.code).toBe(
      'wrong-type',
    );
    expect((await post(jpeg, 'nobody')).status).toBe(404);
    expect((await send('GET', '/api/records/nobody/photos')).status).toBe(404);
  });
});

describe('what was done long ago', () => {
  it('is looked for again when the server starts', async () => {
    const yard = await served();
    const state = await until(
      () => said<{ state: string; endedAt: string | null }>(yard.send('GET', '/api/recheck')),
      ({ state: now, endedAt }) => now === 'idle' && endedAt !== null,
    );
    expect(state.endedAt).not.toBeNull();
    expect((await said<{ state: string }>(yard.send('POST', '/api/recheck'), 202)).state).toBe('running');
  });
});
