import type { MiddlewareHandler } from 'hono';
import { HttpRefusal } from './refusal.ts';

const loopback = /^(?:localhost|127(?:\.\d{1,3}){3}|\[::1\])$/;

/** Whether a name is this machine’s own, as it stands in a Host header without its port, or as something to listen on. */
export function isLoopback(host: string): boolean {
  return host === '::1' || loopback.test(host.toLowerCase());
}

/**
 * Lets through only what a person at this machine asks for: a page elsewhere that has its name point here (the Host header gives it away) is
 * refused, and so is any request that a browser says another site makes.
 */
export function gate(): MiddlewareHandler {
  return async (c, next) => {
    const host = c.req.header('host') ?? '';
    if (!isLoopback(host.replace(/:\d{1,5}$/, '')))
      throw new HttpRefusal(403, {
        trouble: 'host',
        message: 'This server answers only to names of this machine, such as localhost.',
      });
    const site = c.req.header('sec-fetch-site');
    const origin = c.req.header('origin');
    const isApi = c.req.path.startsWith('/api/');
    const isForeign = site === 'cross-site' || site === 'same-site';
    if (isApi && (isForeign || (origin !== undefined && origin !== `http://${host}`)))
      throw new HttpRefusal(403, { trouble: 'origin', message: 'Another site may not use this server.' });
    await next();
  };
}

/** What the API may never be used for: its answers are no pages, and nobody else’s. */
export function apiHeaders(): MiddlewareHandler {
  return async (c, next) => {
    await next();
    c.header('content-security-policy', "default-src 'none'; frame-ancestors 'none'; sandbox");
    if (c.res.headers.get('cache-control') === null) c.header('cache-control', 'no-store');
  };
}

/** What every answer says. */
export function plainHeaders(): MiddlewareHandler {
  return async (c, next) => {
    await next();
    c.header('x-content-type-options', 'nosniff');
    c.header('referrer-policy', 'no-referrer');
    c.header('cross-origin-resource-policy', 'same-origin');
    c.header('cross-origin-opener-policy', 'same-origin');
  };
}
