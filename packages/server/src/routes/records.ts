import {
  draftFrom,
  type FullRecord,
  type RecordKind,
  type Records,
  type RecordsWanted,
  type Store,
} from '@hitchwright/store';
import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { onceOf } from '../http/once.ts';
import { matchedRevision, revisionTag } from '../http/tags.ts';
import { byOf } from '../http/who.ts';
import { mayMiss, flag, idPath, matchBy, onceBy, onceMatchBy, pageOf } from '../schemas/common.ts';
import {
  fullRecord,
  machineOfSetup,
  recordChange,
  recordDraft,
  recordsQuery,
  standingRecord,
  yardRecord,
} from '../schemas/records.ts';
import { answerOf, bodyOf, matches, reads, writes } from '../schemas/responses.ts';

const list = createRoute({
  method: 'get',
  path: '/records',
  summary: 'Records by name, a page at a time',
  request: { query: recordsQuery },
  responses: { ...reads, 200: answerOf(pageOf(yardRecord), 'A page of records.') },
});

const create = createRoute({
  method: 'post',
  path: '/records',
  summary: 'Makes a record',
  request: { headers: onceBy, body: bodyOf(recordDraft) },
  responses: { ...writes, 201: answerOf(fullRecord, 'The record.') },
});

const keep = createRoute({
  method: 'post',
  path: '/records/of-setup',
  summary:
    'Makes a record of a machine as it stands in a setup: each quantity as a reading, with what it says of itself',
  request: { headers: onceBy, body: bodyOf(machineOfSetup) },
  responses: { ...writes, 201: answerOf(fullRecord, 'The record.') },
});

const get = createRoute({
  method: 'get',
  path: '/records/{id}',
  summary: 'A record with its readings and which are in use',
  request: {
    params: idPath,
    query: z.object({
      removed: mayMiss(flag).meta({ description: 'One that was removed, too.' }),
      over: mayMiss(flag).meta({ description: 'With the model of a machine, or the tractor of a state.' }),
    }),
  },
  responses: { ...reads, 200: answerOf(standingRecord, 'The record; its ETag is its revision.') },
});

const change = createRoute({
  method: 'patch',
  path: '/records/{id}',
  summary: 'Changes a record at the revision that was read',
  request: { params: idPath, headers: matchBy, body: bodyOf(recordChange) },
  responses: { ...matches, 200: answerOf(fullRecord, 'The record as it is now.') },
});

const remove = createRoute({
  method: 'delete',
  path: '/records/{id}',
  summary: 'Takes a record out of the lists; its readings and history stay',
  request: { params: idPath, headers: matchBy },
  responses: { ...matches, 200: answerOf(fullRecord, 'The record as it is now.') },
});

const restore = createRoute({
  method: 'post',
  path: '/records/{id}/restore',
  summary: 'Brings a removed record back',
  request: { params: idPath, headers: onceMatchBy },
  responses: { ...matches, 200: answerOf(fullRecord, 'The record as it is now.') },
});

/** Records: list, make, read, change, remove, bring back. */
export function recordRoutes({ store }: Desk) {
  return emptyApi()
    .openapi(list, async (c) => c.json(await store.records.list(wantedOf(c.req.valid('query'))), 200))
    .openapi(create, async (c) => {
      const draft = c.req.valid('json');
      const made = await onceOf(c, store, ({ records }) => records.create(byOf(c), draft));
      c.header('location', `/api/records/${made.id}`);
      c.header('etag', revisionTag(made.revision));
      return c.json(made, 201);
    })
    .openapi(keep, async (c) => {
      const { kind, document, units } = c.req.valid('json');
      const draft = draftFrom(kind, document, units);
      const made = await onceOf(c, store, ({ records }) => records.create(byOf(c), draft));
      c.header('location', `/api/records/${made.id}`);
      c.header('etag', revisionTag(made.revision));
      return c.json(made, 201);
    })
    .openapi(get, async (c) => {
      const { removed, over } = c.req.valid('query');
      const record = await store.records.get(c.req.valid('param').id, { removed: removed === 'true' });
      if (over === 'true') return c.json({ ...record, over: await underOf(store, record) }, 200);
      c.header('etag', revisionTag(record.revision));
      return c.json(record, 200);
    })
    .openapi(change, async (c) => {
      const revision = matchedRevision(c.req.valid('header')['if-match']);
      const now = await store.records.change(byOf(c), c.req.valid('param').id, revision, c.req.valid('json'));
      c.header('etag', revisionTag(now.revision));
      return c.json(now, 200);
    })
    .openapi(remove, async (c) => {
      const revision = matchedRevision(c.req.valid('header')['if-match']);
      const now = await store.records.remove(byOf(c), c.req.valid('param').id, revision);
      c.header('etag', revisionTag(now.revision));
      return c.json(now, 200);
    })
    .openapi(restore, async (c) => {
      const revision = matchedRevision(c.req.valid('header')['if-match']);
      const now = await onceOf(c, store, ({ records }: { records: Records }) =>
        records.restore(byOf(c), c.req.valid('param').id, revision),
      );
      c.header('etag', revisionTag(now.revision));
      return c.json(now, 200);
    });
}

/** What a machine or a state stands on; null for what stands by itself. */
async function underOf({ records }: Store, { model, parent }: FullRecord): Promise<FullRecord | null> {
  const below = model ?? parent;
  return below === null ? null : records.get(below, { removed: true });
}

function wantedOf({ kind, sample, removed, ...same }: z.output<typeof recordsQuery>): RecordsWanted {
  return {
    ...same,
    ...(kind === undefined ? {} : { kind: kind.split(',') as RecordKind[] }),
    ...(sample === undefined ? {} : { sample: sample === 'true' }),
    removed: removed === 'true',
  };
}
