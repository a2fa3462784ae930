import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { YardDocument } from '@hitchwright/core/records';
import { openStore, type Store } from '@hitchwright/store';
import { afterEach } from 'vitest';
import { clientOf } from '../src/client.ts';
import { openServer } from '../src/index.ts';

const leaving: (() => void | Promise<void>)[] = [];

afterEach(async () => {
  while (leaving.length > 0) await leaving.pop()?.();
});

/** A folder that is gone after the test. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-served-'));
  leaving.push(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** The sample yard of the house. */
export const sample = JSON.parse(
  readFileSync(new URL('../../../examples/sample-yard.json', import.meta.url), 'utf8'),
) as YardDocument;

let servers = 0;

/** A server over a new store, as the tests use it. */
export interface Served {
  readonly address: string;
  readonly store: Store;
  readonly folder: string;
  readonly client: ReturnType<typeof clientOf>;
  /** Sends a request with a JSON body. */
  send(method: string, path: string, body?: unknown, headers?: Record<string, string>): Promise<Response>;
}

/** Serves a new store, until the test ends. */
export async function served({ site = null }: { readonly site?: string | null } = {}): Promise<Served> {
  const folder = freshFolder();
  let [looks, given] = [0, 0];
  const mark = (servers += 1).toString(36);
  const clock = (): string => new Date(Date.parse('2026-09-14T08:00:00.000Z') + 1000 * (looks += 1)).toISOString();
  const ids = (): string => `${String((given += 1)).padStart(7, '0')}.${mark}`;
  const store = await openStore({ url: `sqlite:${join(folder, 'yard.db')}`, clock, ids });
  const server = await openServer({ store, site, folder, sample, clock, ids });
  leaving.push(async () => {
    await server.close();
    await store.close();
  });
  const { address } = server;
  const send: Served['send'] = (method, path, body, headers = {}) =>
    fetch(new URL(path, address), {
      method,
      headers: { ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...headers },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
  return { address, store, folder, client: clientOf(address, { who: 'Ida' }), send };
}

/** What an answer says; it has to have this status. */
export async function said<T = Record<string, unknown>>(
  response: Response | Promise<Response>,
  status = 200,
): Promise<T> {
  const answer = await response;
  const text = await answer.text();
  if (answer.status !== status) throw new Error(`${answer.url}: ${answer.status} instead of ${status}: ${text}`);
  return JSON.parse(text) as T;
}

/** The body of a refusal. */
export interface Refusal {
  readonly errors: readonly { readonly code: string; readonly path: string }[];
  readonly trouble?: string;
  readonly current?: { readonly id: string; readonly name: string; readonly revision: number };
}

/** Puts the sample yard in; ids by name. */
export async function withSample({ send, store }: Served): Promise<ReadonlyMap<string, string>> {
  await said(send('POST', '/api/sample'), 201);
  const { items } = await store.records.list({ limit: 1000 });
  return new Map(items.map(({ name, id }) => [name, id]));
}

/** Waits until something holds. */
export async function until<T>(look: () => Promise<T>, holds: (seen: T) => boolean, atMostMs = 60_000): Promise<T> {
  const start = Date.now();
  for (;;) {
    const seen = await look();
    if (holds(seen)) return seen;
    if (Date.now() - start > atMostMs) throw new Error(`It never came: ${JSON.stringify(seen)}`);
    await new Promise((resolve) => setTimeout(resolve, 30));
  }
}
