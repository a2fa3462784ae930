import { excerpt } from '@hitchwright/core/records';
import type { Context, MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { inputRefusal, type HttpRefusal } from './refusal.ts';

/** The largest body of a request that is no file [byte]. */
const largestJson = 4_000_000;
/** The largest photo [byte]. */
const largestPhoto = 1_500_000;
/** The largest file to import [byte]. */
const largestFile = 20_000_000;
/** The largest archive or database to restore [byte]. */
export const largestArchive = 4_000_000_000;

/** Refuses bodies that are larger than their route takes, before they are read or while they come in. A restore counts as it writes. */
export function limits(): MiddlewareHandler {
  const json = atMost(largestJson);
  const byPath: readonly [RegExp, MiddlewareHandler][] = [
    [/^\/api\/records\/[^/]+\/photos$/, atMost(largestPhoto)],
    [/^\/api\/imports$/, atMost(largestFile)],
    [/^\/api\/restore$/, (_, next) => next()],
  ];
  return (c, next) => (byPath.find(([path]) => path.test(c.req.path))?.[1] ?? json)(c, next);
}

function atMost(bytes: number): MiddlewareHandler {
  return bodyLimit({
    maxSize: bytes,
    onError: async (c) => {
      await dropped(c.req.raw.body);
      throw tooLarge(bytes);
    },
  });
}

/** What is read of a body that is too large, before it is cut off: whoever still sends does not hear the answer [byte]. */
const mostDropped = 64_000_000;

async function dropped(body: ReadableStream<Uint8Array> | null): Promise<void> {
  if (body === null || body.locked) return;
  let size = 0;
  for await (const piece of body as unknown as AsyncIterable<Uint8Array>) {
    size += piece.length;
    if (size > mostDropped) return;
  }
}

/** A body is larger than its route takes. */
export function tooLarge(bytes: number): HttpRefusal {
  const expected = `at most ${bytes} bytes`;
  return inputRefusal({ code: 'too-large', path: '', expected, got: 'more', hint: 'Make it smaller.' }, 413);
}

/** Refuses a file of a kind that a route does not take. */
export function refuseOtherTypes(c: Context, taken: readonly string[]): void {
  const type = (c.req.header('content-type') ?? '').split(';')[0]?.trim() ?? '';
  if (taken.includes(type)) return;
  const expected = `the content type ${taken.join(' or ')}`;
  throw inputRefusal({ code: 'wrong-type', path: '', expected, got: excerpt(type), hint: 'Say what it is.' }, 415);
}

const deepest = 60;

/** Refuses JSON that is nested deeper than anything here is, before it is parsed. */
export function shallow(): MiddlewareHandler {
  return async (c, next) => {
    const isJson = /^application\/(?:[\w.-]+\+)?json\b/i.test(c.req.header('content-type') ?? '');
    if (isJson && c.req.method !== 'GET' && depthOf(await c.req.text()) > deepest)
      throw inputRefusal({
        code: 'too-large',
        path: '',
        expected: `at most ${deepest} levels`,
        got: 'more',
        hint: 'Is this the right document?',
      });
    await next();
  };
}

function depthOf(text: string): number {
  let [depth, most, isText] = [0, 0, false];
  for (let i = 0; i < text.length; i += 1) {
    const sign = text[i];
    if (isText && sign === '\\') i += 1;
    else if (sign === '"') isText = !isText;
    else if (!isText && (sign === '{' || sign === '[')) most = Math.max(most, (depth += 1));
    else if (!isText && (sign === '}' || sign === ']')) depth -= 1;
  }
  return most;
}
