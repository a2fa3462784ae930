import type { Store } from '@hitchwright/store';
import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { onceOf } from '../http/once.ts';
import { matchedRevision, revisionTag } from '../http/tags.ts';
import { byOf } from '../http/who.ts';
import { id, idPath, onceBy, onceMatchBy } from '../schemas/common.ts';
import { fullRecord, readingsBody } from '../schemas/records.ts';
import { answerOf, bodyOf, matches, writes } from '../schemas/responses.ts';

const readingPath = z.object({ id, reading: id });

const add = createRoute({
  method: 'post',
  path: '/records/{id}/readings',
  summary: 'Adds readings; they never get in anybody’s way',
  request: { params: idPath, headers: onceBy, body: bodyOf(readingsBody) },
  responses: { ...writes, 201: answerOf(fullRecord, 'The record as it is now.') },
});

function turning<P extends string>(path: P, summary: string) {
  return createRoute({
    method: 'post',
    path,
    summary,
    request: { params: readingPath, headers: onceMatchBy },
    responses: { ...matches, 200: answerOf(fullRecord, 'The record as it is now.') },
  });
}

const withdraw = turning('/records/{id}/readings/{reading}/withdraw', 'Takes a reading back: it no longer counts');
const pin = turning('/records/{id}/readings/{reading}/pin', 'Uses a reading, whatever else is read');
const unpin = turning('/records/{id}/readings/{reading}/unpin', 'Lets the rule choose again');

/** Readings: add, withdraw, pin, unpin. */
export function readingRoutes({ store }: Desk) {
  return emptyApi()
    .openapi(add, async (c) => {
      const { readings: drafts, units } = c.req.valid('json');
      const now = await onceOf(c, store, ({ readings }: Store) =>
        readings.add(byOf(c), c.req.valid('param').id, drafts, units),
      );
      c.header('etag', revisionTag(now.revision));
      return c.json(now, 201);
    })
    .openapi(withdraw, async (c) => {
      const { id: record, reading } = c.req.valid('param');
      const revision = matchedRevision(c.req.valid('header')['if-match']);
      const now = await onceOf(c, store, ({ readings }) => readings.withdraw(byOf(c), record, revision, reading));
      c.header('etag', revisionTag(now.revision));
      return c.json(now, 200);
    })
    .openapi(pin, async (c) => {
      const { id: record, reading } = c.req.valid('param');
      const revision = matchedRevision(c.req.valid('header')['if-match']);
      const now = await onceOf(c, store, ({ readings }) => readings.pin(byOf(c), record, revision, reading));
      c.header('etag', revisionTag(now.revision));
      return c.json(now, 200);
    })
    .openapi(unpin, async (c) => {
      const { id: record, reading } = c.req.valid('param');
      const revision = matchedRevision(c.req.valid('header')['if-match']);
      const now = await onceOf(c, store, ({ readings }) => readings.unpin(byOf(c), record, revision, reading));
      c.header('etag', revisionTag(now.revision));
      return c.json(now, 200);
    });
}
