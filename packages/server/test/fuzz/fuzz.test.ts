import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apiDescription } from '../../src/index.ts';
import { said, served, until, withSample, type Served } from '../served.ts';
import { requestsTo, type FuzzRequest } from './requests.ts';

/** Tables that a request does not write by itself: answers are checked again in the background. */
const inBackground = ['answer_check', 'answer_use', 'answer'];
const runs = 1500;

/** Statuses that came. */
const seen = new Set<number>();

/** A yard with something of everything; ids of all of it. */
async function fullYard(yard: Served): Promise<string[]> {
  const { send, address, store } = yard;
  const ids = [...(await withSample(yard)).values()];
  const post = async (path: string, body: object): Promise<string> =>
    (await said<{ id: string }>(send('POST', path, body), 201)).id;
  const customer = await post('/api/records', { kind: 'customer', name: 'Ada' });
  const tractor = await post('/api/records', { kind: 'tractor', name: 'Ostrey', fields: { category: '1' } });
  const rake = await post('/api/records', { kind: 'implement', name: 'rake', fields: { category: '1' } });
  const machine = await post('/api/records', { kind: 'machine', name: 'Ada’s', model: tractor, owner: customer });
  const answer = await post('/api/answers', {
    title: 'does it?',
    customer,
    refs: { tractor: machine, implement: rake },
  });
  const jpeg = {
    method: 'POST',
    body: Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]),
    headers: { 'content-type': 'image/jpeg' },
  };
  const photo = await said<{ id: string }>(fetch(new URL(`/api/records/${rake}/photos`, address), jpeg), 201);
  const csv = {
    method: 'POST',
    body: 'Implement,Category,Mast height (in)\nblade,1,18\n',
    headers: { 'content-type': 'text/csv' },
  };
  const held = await said<{ id: string }>(fetch(new URL('/api/imports', address), csv), 201);
  const small = { hitchwright: 1, tractors: [{ category: '1' }], couplers: [], implements: [{ category: '1' }] };
  const chart = await said<{ id: string }>(send('POST', '/api/charts', small), 202);
  const full = await store.records.get(ids[0] ?? '');
  const groups = (await store.history.groups()).items.map(({ id }) => id);
  const own = [customer, tractor, rake, machine, answer, photo.id, held.id, chart.id];
  return [...ids.slice(0, 6), ...own, ...own, ...full.readings.slice(0, 2).map(({ id }) => id), ...groups.slice(0, 3)];
}

interface OpenFile {
  prepare(statement: string): { all(): Record<string, unknown>[] };
  close(): void;
}

/** Counts the rows of every table, beside the server: the store’s own driver on the store’s own file. */
function counting({ folder }: Served) {
  const require = createRequire(new URL('../../../store/package.json', import.meta.url));
  const Driver = require('better-sqlite3') as new (file: string, options: object) => OpenFile;
  const file = new Driver(join(folder, 'yard.db'), { readonly: true });
  const tables = file
    .prepare("select name from sqlite_schema where type = 'table' and name not like 'sqlite%'")
    .all()
    .map(({ name }) => String(name))
    .filter((name) => !inBackground.includes(name));
  const statement = file.prepare(
    tables.map((name) => `select '${name}' as name, count(*) as n from "${name}"`).join(' union all '),
  );
  return {
    now: (): Record<string, unknown> => Object.fromEntries(statement.all().map(({ name, n }) => [String(name), n])),
    close: () => file.close(),
  };
}

async function quiet({ send }: Served, path: string): Promise<void> {
  const id = /^\/api\/imports\/([^/]+)\/commit/.exec(path)?.[1];
  if (id === undefined) return;
  const look = async (): Promise<string> =>
    ((await (await send('GET', `/api/imports/${id}`)).json()) as { state?: string }).state ?? '';
  await until(look, (state) => state !== 'running');
}

const noInsides = new RegExp(`\\n\\s+at |node_modules|\\.ts:\\d|${tmpdir()}/|${process.cwd()}|SQLITE|sqlite_|zod|Zod`);

async function sendAndLook(yard: Served, asked: FuzzRequest, counts: () => Record<string, unknown>): Promise<void> {
  const { operation, path, headers, body } = asked;
  const where = `${operation.method} ${path}`;
  const before = counts();
  const answer = await fetch(new URL(path, yard.address), {
    method: operation.method,
    headers,
    ...(body === null ? {} : { body }),
  });
  seen.add(answer.status);
  const type = answer.headers.get('content-type') ?? '';
  const text = await answer.text();
  expect(operation.statuses, where).toContain(answer.status);
  expect(answer.status, `${where} ${text}`).not.toBe(500);
  if (/json|text/.test(type)) expect(text, where).not.toMatch(noInsides);
  await quiet(yard, path);
  if (answer.status < 400) return;
  const refusal = JSON.parse(text) as { hitchwright: number; errors: Record<string, unknown>[]; trouble?: string };
  expect(refusal.hitchwright, where).toBe(1);
  expect(refusal.errors.length > 0 || refusal.trouble !== undefined, where).toBe(true);
  for (const error of refusal.errors)
    expect(Object.keys(error).sort(), where).toEqual(['code', 'expected', 'got', 'hint', 'path']);
  expect(counts(), where).toEqual(before);
}

describe('requests made of the description of the API', () => {
  it(
    'get documented statuses, errors in one shape, nothing of our insides, and write wholly or nothing',
    { timeout: 900_000 },
    async () => {
      const yard = await served();
      const ids = await fullYard(yard);
      const document = JSON.parse(JSON.stringify(apiDescription())) as Record<string, unknown>;
      const counts = counting(yard);
      const send = (asked: FuzzRequest): Promise<void> => sendAndLook(yard, asked, counts.now);
      await fc.assert(fc.asyncProperty(requestsTo(document, ids), send), {
        seed: 20_260_914,
        numRuns: runs,
        endOnFailure: true,
      });
      counts.close();
      expect([200, 201, 202, 400, 404, 409, 412, 415].filter((status) => !seen.has(status))).toEqual([]);
    },
  );
});
