import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { onceOf } from '../http/once.ts';
import { slice } from '../http/slice.ts';
import { byOf } from '../http/who.ts';
import { mayMiss, id, idPath, onceBy, pageOf, pageQuery } from '../schemas/common.ts';
import { changeGroup, fullRecord, historyLine } from '../schemas/records.ts';
import { answerOf, reads, writes } from '../schemas/responses.ts';

const ofRecord = createRoute({
  method: 'get',
  path: '/records/{id}/history',
  summary: 'Everything that changed in a record, in order',
  request: { params: idPath, query: z.object(pageQuery) },
  responses: { ...reads, 200: answerOf(pageOf(historyLine), 'A page of changes.') },
});

const atRevision = createRoute({
  method: 'get',
  path: '/records/{id}/revisions/{revision}',
  summary: 'A record as it was at a revision',
  request: { params: z.object({ id, revision: z.coerce.number().int().min(1).max(1_000_000_000) }) },
  responses: { ...reads, 200: answerOf(fullRecord, 'The record as it was.') },
});

const groups = createRoute({
  method: 'get',
  path: '/history',
  summary: 'Groups of changes, the latest first',
  request: { query: z.object({ ...pageQuery, kind: mayMiss(changeGroup.shape.kind) }) },
  responses: { ...reads, 200: answerOf(pageOf(changeGroup), 'A page of groups.') },
});

const ofGroup = createRoute({
  method: 'get',
  path: '/history/{id}',
  summary: 'Everything that a group of changes changed',
  request: { params: idPath, query: z.object(pageQuery) },
  responses: { ...reads, 200: answerOf(pageOf(historyLine), 'A page of changes.') },
});

const undo = createRoute({
  method: 'post',
  path: '/history/{id}/undo',
  summary: 'Takes a group of changes back with new ones; refused where somebody has changed the same since',
  request: { params: idPath, headers: onceBy },
  responses: {
    ...writes,
    200: answerOf(z.object({ group: z.string(), records: z.number().int() }), 'The group that takes it back.'),
  },
});

/** What changed, and how to take it back. */
export function historyRoutes({ store }: Desk) {
  return emptyApi()
    .openapi(ofRecord, async (c) => {
      const { id: record } = c.req.valid('param');
      const lines = await store.history.of(record);
      if (lines.length === 0) await store.records.get(record, { removed: true });
      return c.json(slice(lines, c.req.valid('query')), 200);
    })
    .openapi(atRevision, async (c) => {
      const { id: record, revision } = c.req.valid('param');
      return c.json(await store.history.at(record, revision), 200);
    })
    .openapi(groups, async (c) => c.json(await store.history.groups(c.req.valid('query')), 200))
    .openapi(ofGroup, async (c) =>
      c.json(slice(await store.history.ofGroup(c.req.valid('param').id), c.req.valid('query')), 200),
    )
    .openapi(undo, async (c) =>
      c.json(await onceOf(c, store, ({ history }) => history.undo(byOf(c), c.req.valid('param').id)), 200),
    );
}
