import { hc } from 'hono/client';
import type { Api } from './app.ts';

/** How a client asks: who makes its changes, and with what it fetches. */
export interface ClientOptions {
  /** Who makes the changes. */
  readonly who?: string;
  readonly fetch?: typeof fetch;
}

/**
 * A client of the API with the types of its routes: `client.api.records.$get({ query: { kind: 'tractor' } })`.
 *
 * @param address address of the server, such as `http://127.0.0.1:4173/` [URL]
 * @param options who asks [record]
 * @returns the client [functions by route]
 */
export function clientOf(address: string, { who, fetch: own = fetch }: ClientOptions = {}) {
  return hc<Api>(address, {
    fetch: own,
    headers: who === undefined ? {} : { 'hitchwright-who': encodeURIComponent(who) },
  });
}
