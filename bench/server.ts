// Speeds of the server within one run: `npx tsx bench/server.ts [records]`. Answers against a bare route of the same server, rows of an import, searches.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore, type ImportRow } from '@hitchwright/store';
import { openServer } from '@hitchwright/server';
import autocannon from 'autocannon';
import { medianOf } from './timing.ts';

const most = Number(process.argv[2] ?? 100_000);
const folder = mkdtempSync(join(tmpdir(), 'hitchwright-bench-'));
let given = 0;
const ids = (): string => String((given += 1)).padStart(9, '0');
const clock = (): string => new Date().toISOString();
const store = await openStore({ url: `sqlite:${join(folder, 'yard.db')}`, clock, ids });
const server = await openServer({ store, site: null, folder, sample: null, clock, ids });

/** Requests per second of a few at once, sent from a thread of their own, over some seconds [1/s]. */
async function rate(path: string, bodies: readonly string[] = []): Promise<number> {
  const [body] = bodies;
  const { requests, non2xx, errors } = await autocannon({
    url: server.address + path,
    connections: 4,
    duration: 3,
    workers: 1,
    headers: { 'accept-encoding': 'gzip', ...(body === undefined ? {} : json) },
    ...(body === undefined ? {} : { requests: bodies.map((one) => ({ method: 'POST' as const, body: one })) }),
  });
  if (non2xx + errors > 0) throw new Error(`${path}: ${non2xx} refused, ${errors} failed`);
  return requests.average;
}

const json = { 'content-type': 'application/json' };
const get = (path: string): Promise<Response> => fetch(server.address + path);
async function answers(): Promise<void> {
  const text = readFileSync('examples/setups/tiller-direct.json', 'utf8');
  const setup = JSON.parse(text) as { implement: Record<string, unknown> };
  const small = { hitchwright: 1, tractor: { category: '1' }, implement: { category: '1' } };
  const anew = (of: { implement: Record<string, unknown> }): string[] =>
    Array.from({ length: 4000 }, (_, i) =>
      JSON.stringify({ ...of, implement: { ...of.implement, name: `rake ${i}` } }),
    );
  await rate('api/check', [text]);
  const hello = await rate('api/recheck');
  const rows = [
    ['bare route', hello],
    ['answer to a setup that was asked before', await rate('api/check', [text])],
    ['the same, quick', await rate('api/check?full=false', [text])],
    ['answer anew, category only, quick', await rate('api/check?full=false', anew(small))],
    ['answer anew, category only, full', await rate('api/check', anew(small))],
    ['answer anew, tiller, quick', await rate('api/check?full=false', anew(setup))],
    ['answer anew, tiller, full', await rate('api/check', anew(setup))],
  ] as const;
  for (const [name, value] of rows) console.log(`${name}: ${value.toFixed(0)}/s, ratio ${(value / hello).toFixed(3)}`);
}

function rowsFrom(start: number, count: number): ImportRow[] {
  return Array.from({ length: count }, (_, i) => ({
    kind: 'implement',
    name: `Rake ${start + i}`,
    fields: { category: '1', note: `bay ${(start + i) % 97}` },
    readings: [
      { field: 'mastHeight', leaf: { value: 440 + ((start + i) % 40), plusMinus: 2 }, grade: 'listed' as const },
      { field: 'mass', leaf: 100 + ((start + i) % 300), grade: 'listed' as const },
    ],
  }));
}

/** An import of a file over HTTP, until it is written [rows/s]. */
async function importOf(rows: number): Promise<number> {
  const lines = Array.from({ length: rows }, (_, i) => `Plough ${i},1,${17 + (i % 8) / 8},${300 + (i % 200)}`);
  const csv = `Implement,Category,Mast height (in),Weight (lb)\n${lines.join('\n')}\n`;
  const start = performance.now();
  const sent = { method: 'POST', body: csv, headers: { 'content-type': 'text/csv' } };
  const { id } = (await (await fetch(`${server.address}api/imports?name=x.csv`, sent)).json()) as { id: string };
  await fetch(`${server.address}api/imports/${id}/commit`, { method: 'POST', body: '{}', headers: json });
  for (;;) {
    const { state } = (await (await get(`api/imports/${id}`)).json()) as { state: string };
    if (state === 'done') return rows / ((performance.now() - start) / 1000);
    if (state !== 'running') throw new Error(`the import is ${state}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

/** The middle one of some searches [ms]. */
async function search(): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < 21; i += 1) {
    const start = performance.now();
    await (await get(`api/records?limit=50&search=${encodeURIComponent(`rake ${100 + i * 37} bay`)}`)).arrayBuffer();
    times.push(performance.now() - start);
  }
  return medianOf(times);
}

async function fillTo(count: number, from: number): Promise<void> {
  for (let start = from; start < count; start += 10_000)
    await store.imports.write(
      { who: 'bench' },
      { source: 'bench', rows: rowsFrom(start, Math.min(10_000, count - start)) },
    );
}

try {
  await answers();
  console.log(`import over HTTP: ${(await importOf(5000)).toFixed(0)} rows/s`);
  await fillTo(10_000, 0);
  console.log(`search among 10,000 (and 5,000 more): ${(await search()).toFixed(1)} ms`);
  if (most > 10_000) {
    await fillTo(most, 10_000);
    console.log(`search among ${most} (and 5,000 more): ${(await search()).toFixed(1)} ms`);
  }
} finally {
  await server.close();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
}
