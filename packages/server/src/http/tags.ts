import { createHash } from 'node:crypto';
import type { MiddlewareHandler } from 'hono';
import { inputRefusal } from './refusal.ts';

/**
 * Gives every answer that was read an ETag, and answers `304` where whoever asks has it already. A record says its revision by itself;
 * everything else goes by its content.
 */
export function tagged(): MiddlewareHandler {
  return async (c, next) => {
    await next();
    const { res } = c;
    const isJson = res.headers.get('content-type')?.startsWith('application/json') === true;
    if ((c.req.method !== 'GET' && c.req.method !== 'HEAD') || res.status !== 200) return;
    const given = res.headers.get('etag');
    if (given === null && !isJson) return;
    const tag = given ?? contentTag(await res.clone().text());
    c.header('etag', tag);
    if (res.headers.get('cache-control') === null) c.header('cache-control', 'private, no-cache');
    const known = (c.req.header('if-none-match') ?? '').split(',').map((one) => one.trim().replace(/^W\//, ''));
    if (!known.includes(tag) && !known.includes('*')) return;
    const headers = new Headers(c.res.headers);
    for (const name of ['content-length', 'content-type']) headers.delete(name);
    c.res = undefined;
    c.res = new Response(null, { status: 304, headers });
  };
}

function contentTag(text: string): string {
  return `"${createHash('sha256').update(text).digest('base64url').slice(0, 22)}"`;
}

/** The ETag of a record or answer at a revision. */
export function revisionTag(revision: number): string {
  return `"${revision}"`;
}

/**
 * The revision that a change is about, out of its If-Match header.
 *
 * @param header the header [text]
 * @returns the revision [whole]
 */
export function matchedRevision(header: string): number {
  const revision = /^"(\d{1,9})"$/.exec(header.trim())?.[1];
  if (revision !== undefined) return Number(revision);
  throw inputRefusal({
    code: 'wrong-type',
    path: 'header.if-match',
    expected: 'the ETag of the record as it was read, such as "3"',
    got: header.slice(0, 60),
    hint: 'Read the record first and send the ETag that came with it.',
  });
}
