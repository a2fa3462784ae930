import type { AnswersWanted } from '@hitchwright/store';
import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import { resultOf } from '../assessing/saving.ts';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { onceOf } from '../http/once.ts';
import { slice } from '../http/slice.ts';
import { matchedRevision, revisionTag } from '../http/tags.ts';
import { byOf } from '../http/who.ts';
import { answerDraft, answerNote, answersQuery, recheckState, savedAnswer } from '../schemas/answers.ts';
import { idPath, onceBy, onceMatchBy, pageOf, pageQuery } from '../schemas/common.ts';
import { answerOf, bodyOf, matches, reads, writes } from '../schemas/responses.ts';

const list = createRoute({
  method: 'get',
  path: '/answers',
  summary: 'Saved answers, the latest asked first',
  request: { query: answersQuery },
  responses: { ...reads, 200: answerOf(pageOf(answerNote), 'A page of answers.') },
});

const save = createRoute({
  method: 'post',
  path: '/answers',
  summary: 'Answers a question out of the values in use and saves it',
  request: { headers: onceBy, body: bodyOf(answerDraft) },
  responses: { ...writes, 201: answerOf(savedAnswer, 'The saved answer.') },
});

const get = createRoute({
  method: 'get',
  path: '/answers/{id}',
  summary: 'A saved answer with every check of it',
  request: { params: idPath },
  responses: { ...reads, 200: answerOf(savedAnswer, 'The saved answer; its ETag is its revision.') },
});

const uses = createRoute({
  method: 'get',
  path: '/answers/{id}/uses',
  summary: 'What a saved answer rests on',
  request: { params: idPath, query: z.object(pageQuery) },
  responses: {
    ...reads,
    200: answerOf(pageOf(z.object({ recordId: z.string(), field: z.string(), used: z.string() })), 'A page of uses.'),
  },
});

const settle = createRoute({
  method: 'post',
  path: '/answers/{id}/settle',
  summary: 'Says that somebody has dealt with an answer that a check changed',
  request: { params: idPath, headers: onceMatchBy },
  responses: { ...matches, 200: answerOf(savedAnswer, 'The saved answer.') },
});

const state = createRoute({
  method: 'get',
  path: '/recheck',
  summary: 'How far the checking again is',
  responses: { ...reads, 200: answerOf(recheckState, 'Where it stands.') },
});

const start = createRoute({
  method: 'post',
  path: '/recheck',
  summary: 'Looks for answers to check again; this happens by itself after every change',
  responses: { ...writes, 202: answerOf(recheckState, 'Where it stands.') },
});

/** Saved answers, and checking them again. */
export function answerRoutes({ store, assessors, recheck }: Desk) {
  return emptyApi()
    .openapi(list, async (c) => c.json(await store.answers.list(wantedOf(c.req.valid('query'))), 200))
    .openapi(save, async (c) => {
      const draft = c.req.valid('json');
      const composed = await store.setupFor(draft.refs);
      const question = { kind: 'keep', units: draft.refs.units ?? null } as const;
      const result = resultOf(composed, await assessors.ask(JSON.stringify(composed.setup), question));
      const saved = await onceOf(c, store, ({ answers }) => answers.save(byOf(c), { ...draft, ...result }));
      c.header('location', `/api/answers/${saved.id}`);
      c.header('etag', revisionTag(saved.revision));
      return c.json(saved, 201);
    })
    .openapi(get, async (c) => {
      const saved = await store.answers.get(c.req.valid('param').id);
      c.header('etag', revisionTag(saved.revision));
      return c.json(saved, 200);
    })
    .openapi(uses, async (c) => {
      const { id } = c.req.valid('param');
      const found = await store.answers.usesOf(id);
      if (found.length === 0) await store.answers.get(id);
      return c.json(slice(found, c.req.valid('query')), 200);
    })
    .openapi(settle, async (c) => {
      const { id } = c.req.valid('param');
      const revision = matchedRevision(c.req.valid('header')['if-match']);
      const saved = await onceOf(c, store, async ({ answers }) => {
        await answers.settle(id, revision);
        return answers.get(id);
      });
      c.header('etag', revisionTag(saved.revision));
      return c.json(saved, 200);
    })
    .openapi(state, (c) => c.json(recheck.state(), 200))
    .openapi(start, (c) => {
      recheck.wake();
      return c.json(recheck.state(), 202);
    });
}

function wantedOf({ changed, ...same }: z.output<typeof answersQuery>): AnswersWanted {
  return { ...same, changed: changed === 'true' };
}
