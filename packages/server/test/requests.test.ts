import { request } from 'node:http';
import type { FullRecord } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { openServer } from '../src/index.ts';
import { said, served, type Refusal } from './served.ts';

const rake = { kind: 'implement', name: 'rake' } as const;

/** The status of a request with headers that fetch does not let through. */
function raw(address: string, path: string, headers: Record<string, string>, method = 'GET'): Promise<number> {
  return new Promise((resolve, reject) => {
    const { hostname, port } = new URL(address);
    const sent = request({ hostname, port, path, headers, method, setHost: !('host' in headers) }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('requests', () => {
  it('sent twice with one Idempotency-Key are done once and answered the same; another body is refused', async () => {
    const { send, store } = await served();
    const key = { 'idempotency-key': 'k1' };
    const first = await said<FullRecord>(send('POST', '/api/records', rake, key), 201);
    const again = await send('POST', '/api/records', rake, key);
    expect([again.headers.get('etag'), again.headers.get('location')]).toEqual(['"1"', `/api/records/${first.id}`]);
    expect(await said(again, 201)).toEqual(first);
    const other = await send('POST', '/api/records', { ...rake, name: 'other' }, key);
    expect([other.status, ((await other.json()) as Refusal).trouble]).toEqual([422, 'otherRequest']);
    expect((await store.records.list()).items).toHaveLength(1);
  });

  it('sent at the same time with one key make one record', async () => {
    const { send, store } = await served();
    const all = await Promise.all(
      Array.from({ length: 6 }, () => said(send('POST', '/api/records', rake, { 'idempotency-key': 'k' }), 201)),
    );
    expect(new Set(all.map((one) => JSON.stringify(one))).size).toBe(1);
    expect((await store.records.list()).items).toHaveLength(1);
  });

  it('that were refused are not remembered: put right, they are done under the same key', async () => {
    const { send } = await served();
    const key = { 'idempotency-key': 'k2' };
    expect((await send('POST', '/api/records', { ...rake, name: '' }, key)).status).toBe(400);
    await said(send('POST', '/api/records', rake, key), 201);
  });

  it('are remembered for 30 days', async () => {
    const { send, store, folder } = await served();
    const key = { 'idempotency-key': 'k3' };
    await said(send('POST', '/api/records', rake, key), 201);
    for (const [day, records] of [
      ['2026-10-13', 1],
      ['2026-10-20', 2],
    ] as const) {
      const clock = (): string => `${day}T08:00:00.000Z`;
      const later = await openServer({ store, folder, site: null, sample: null, clock, ids: () => `${day}later` });
      const body = JSON.stringify(rake);
      const headers = { ...key, 'content-type': 'application/json' };
      await said(fetch(`${later.address}api/records`, { method: 'POST', body, headers }), 201);
      await later.close();
      expect((await store.records.list()).items).toHaveLength(records);
    }
  });

  it('of what was read before are answered 304 until it is another', async () => {
    const { send } = await served();
    const { id } = await said<FullRecord>(send('POST', '/api/records', rake), 201);
    for (const path of [`/api/records/${id}`, '/api/records', `/api/records/${id}/history`, '/api/openapi.json']) {
      const first = await send('GET', path);
      const tag = first.headers.get('etag') ?? '';
      expect(tag, path).toMatch(/^"[\w-]+"$/);
      expect(first.headers.get('cache-control')).toBe('private, no-cache');
      const again = await send('GET', path, undefined, { 'if-none-match': tag });
      expect([again.status, await again.text(), again.headers.get('etag')], path).toEqual([304, '', tag]);
    }
    const tag = (await send('GET', '/api/records')).headers.get('etag') ?? '';
    await said(send('PATCH', `/api/records/${id}`, { name: 'other' }, { 'if-match': '"1"' }));
    expect((await send('GET', '/api/records', undefined, { 'if-none-match': tag })).status).toBe(200);
    expect((await send('GET', `/api/records/${id}`, undefined, { 'if-none-match': '"1"' })).status).toBe(200);
  });

  it('to another name than this machine’s are refused, whatever port it names', async () => {
    const { address } = await served();
    const { port } = new URL(address);
    for (const host of [
      'example.org',
      `example.org:${port}`,
      'localhost.example.org',
      '127.0.0.1.example.org',
      '10.0.0.1',
      '',
    ])
      for (const path of ['/', '/api/records'])
        expect([400, 403], `${host} ${path}`).toContain(await raw(address, path, { host }));
    for (const host of ['localhost', `localhost:${port}`, '127.0.0.1', `[::1]:${port}`])
      expect(await raw(address, '/api/records', { host }), host).toBe(200);
  });

  it('of another site are refused, and no other site is told that it may', async () => {
    const { address, send, store } = await served();
    const { port } = new URL(address);
    const origins = ['http://example.org', 'null', `http://127.0.0.1:${Number(port) + 1}`, `https://127.0.0.1:${port}`];
    for (const origin of origins) {
      const answer = await send('POST', '/api/records', rake, { origin });
      expect([answer.status, ((await answer.json()) as Refusal).trouble], origin).toEqual([403, 'origin']);
      expect(answer.headers.get('access-control-allow-origin')).toBeNull();
      expect(await raw(address, '/api/records', { origin }, 'OPTIONS'), origin).toBe(403);
    }
    for (const site of ['cross-site', 'same-site'])
      expect(await raw(address, '/api/backup', { 'sec-fetch-site': site })).toBe(403);
    expect((await store.records.list()).items).toEqual([]);
    await said(
      send('POST', '/api/records', rake, { origin: `http://127.0.0.1:${port}`, 'sec-fetch-site': 'same-origin' }),
      201,
    );
  });

  it('that are too large, of another kind, no JSON or nested too deep are refused', async () => {
    const { address, send } = await served();
    const post = (body: string, type = 'application/json', path = '/api/records'): Promise<Response> =>
      fetch(new URL(path, address), { method: 'POST', body, headers: { 'content-type': type } });
    const large = { ...rake, fields: { note: 'x'.repeat(4_000_001) } };
    expect((await said<Refusal>(send('POST', '/api/records', large), 413)).errors[0]?.code).toBe('too-large');
    expect(
      (await said<Refusal>(post('x'.repeat(1_500_001), 'image/jpeg', '/api/records/x/photos'), 413)).errors,
    ).toHaveLength(1);
    expect((await said<Refusal>(post('{}', 'text/plain'), 415)).errors[0]?.code).toBe('wrong-type');
    expect((await said<Refusal>(post('{}', 'text/plain', '/api/check'), 415)).errors[0]?.code).toBe('wrong-type');
    expect((await said<Refusal>(post('GIF89a', 'image/gif', '/api/records/x/photos'), 415)).errors).toHaveLength(1);
    expect((await said<Refusal>(post('{"kind":'), 400)).errors[0]?.code).toBe('not-json');
    expect((await said<Refusal>(post('[]'), 400)).errors[0]?.code).toBe('wrong-type');
    const deep = `{"kind":"implement","name":"x","fields":${'{"a":'.repeat(90_000)}1${'}'.repeat(90_000)}}`;
    expect((await said<Refusal>(post(deep), 400)).errors[0]?.code).toBe('too-large');
  });

  it('for what is not there are told so, as a refusal like any other', async () => {
    const { send } = await served();
    for (const path of [
      '/api/nothing',
      '/api/records/nobody',
      '/api/photos/x',
      '/api/answers/x',
      '/api/imports/x',
      '/nothing',
    ])
      expect(await said<Refusal>(send('GET', path), 404), path).toMatchObject({ errors: [], trouble: 'notFound' });
  });

  it('are taken on this machine only: a server that others could reach does not open', async () => {
    const { store, folder } = await served();
    const opening = (host: string) =>
      openServer({ store, folder, site: null, sample: null, clock: () => '', ids: () => '', host });
    for (const host of ['0.0.0.0', '::', '192.168.1.5', 'example.org', ''])
      await expect(opening(host), host).rejects.toThrow('There are no accounts yet');
  });
});
