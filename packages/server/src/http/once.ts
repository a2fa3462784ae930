import { createHash } from 'node:crypto';
import { Conflict, type Store } from '@hitchwright/store';
import type { Context } from 'hono';
import { otherRequest } from './refusal.ts';

/**
 * Does a request that writes; where it carries an Idempotency-Key it is done once, however often it is sent, and answered the same. What is
 * refused is not remembered: sent again, it is tried again.
 *
 * @param c the request
 * @param store the store
 * @param body hash of the body [text]
 * @param work does it with the store that it is given, in one transaction
 * @returns what it is answered [JSON]
 */
export async function once<T>(c: Context, store: Store, body: string, work: (store: Store) => Promise<T>): Promise<T> {
  const key = c.req.header('idempotency-key');
  if (key === undefined) return work(store);
  const request = [c.req.method, c.req.url.replace(/^https?:\/\/[^/]*/, ''), c.req.header('if-match') ?? '', body];
  const begun = { isSo: false };
  try {
    const { response } = await store.requests.once(key, request, async (within) => {
      begun.isSo = true;
      return work(within);
    });
    return response;
  } catch (problem) {
    if (!(problem instanceof Conflict) || begun.isSo) throw problem;
    throw otherRequest();
  }
}

/** The same for a request whose body is text. */
export async function onceOf<T>(c: Context, store: Store, work: (store: Store) => Promise<T>): Promise<T> {
  return once(c, store, hashOf(await c.req.text()), work);
}

/** A hash of a body. */
export function hashOf(body: string | Uint8Array): string {
  return createHash('sha256').update(body).digest('base64url');
}
