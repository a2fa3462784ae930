import { createRoute } from '@hono/zod-openapi';
import type { Context, TypedResponse } from 'hono';
import type { JSONParsed } from 'hono/utils/types';
import type * as z from 'zod';
import type { Answered } from '../assessing/assessors.ts';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { HttpRefusal } from '../http/refusal.ts';
import { advice, answer, checkQuery, partRefs, setupDocument, yardSetup } from '../schemas/answers.ts';
import { answerOf, asks, bodyOf } from '../schemas/responses.ts';

const check = createRoute({
  method: 'post',
  path: '/check',
  summary: 'Whether a setup hooks up, runs, lifts and stays upright',
  request: { query: checkQuery, body: bodyOf(setupDocument) },
  responses: { ...asks, 200: answerOf(answer, 'The answer.') },
});

const advise = createRoute({
  method: 'post',
  path: '/advice',
  summary: 'What to measure next',
  request: { query: checkQuery.omit({ full: true }), body: bodyOf(setupDocument) },
  responses: { ...asks, 200: answerOf(advice, 'What to measure next, the best first.') },
});

const compose = createRoute({
  method: 'post',
  path: '/setups',
  summary: 'The setup of a question, or of part of it, made of the values in use, and where each comes from',
  request: { body: bodyOf(partRefs) },
  responses: { ...asks, 200: answerOf(yardSetup, 'The setup and its sources.') },
});

/** Questions that change nothing. */
export function checkRoutes({ assessors, store }: Desk) {
  return emptyApi()
    .openapi(check, async (c) => {
      const { full, units = null } = c.req.valid('query');
      const question = { kind: 'check', full: full !== 'false', units } as const;
      return sent<z.output<typeof answer>>(c, await assessors.ask(await c.req.text(), question));
    })
    .openapi(advise, async (c) => {
      const { units = null } = c.req.valid('query');
      return sent<z.output<typeof advice>>(c, await assessors.ask(await c.req.text(), { kind: 'advice', units }));
    })
    .openapi(compose, async (c) => c.json(await store.setupFor(c.req.valid('json')), 200));
}

/** What was worked out, which is JSON text already, packed where it is and whoever asks takes it so. */
function sent<T>(c: Context, worked: Answered): Response & TypedResponse<JSONParsed<T>, 200, 'json'> {
  if (!worked.ok) throw new HttpRefusal(400, { errors: worked.errors });
  const isPacked = worked.packed !== undefined && /\bgzip\b/.test(c.req.header('accept-encoding') ?? '');
  c.header('vary', 'accept-encoding', { append: true });
  if (isPacked) c.header('content-encoding', 'gzip');
  const body = isPacked ? new Uint8Array(worked.packed ?? []) : worked.text;
  const response = c.body(body, 200, { 'content-type': 'application/json' });
  return response as unknown as Response & TypedResponse<JSONParsed<T>, 200, 'json'>;
}
