import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { refuseOtherTypes } from '../http/limits.ts';
import { hashOf, once } from '../http/once.ts';
import { slice } from '../http/slice.ts';
import { byOf } from '../http/who.ts';
import { mayMiss, idPath, onceBy, pageOf, pageQuery } from '../schemas/common.ts';
import { answerOf, fileOf, reads, writes } from '../schemas/responses.ts';

const note = z
  .object({ id: z.string(), recordId: z.string(), field: z.string(), who: z.string(), addedAt: z.string() })
  .meta({ id: 'PhotoNote' });

const add = createRoute({
  method: 'post',
  path: '/records/{id}/photos',
  summary: 'Adds a photo of what was read',
  request: {
    params: idPath,
    headers: onceBy,
    query: z.object({ field: mayMiss(z.string().max(200)) }),
    body: { required: true, content: { 'image/jpeg': { schema: { type: 'string', format: 'binary' } } } },
  },
  responses: { ...writes, 201: answerOf(note, 'The photo without its picture.') },
});

const list = createRoute({
  method: 'get',
  path: '/records/{id}/photos',
  summary: 'The photos of a record, without their pictures',
  request: { params: idPath, query: z.object(pageQuery) },
  responses: { ...reads, 200: answerOf(pageOf(note), 'A page of photos.') },
});

const get = createRoute({
  method: 'get',
  path: '/photos/{id}',
  summary: 'The picture of a photo',
  request: { params: idPath },
  responses: { ...reads, 200: fileOf(['image/jpeg'], 'The picture.') },
});

/** Photos of what was read. */
export function photoRoutes({ store }: Desk) {
  return emptyApi()
    .openapi(add, async (c) => {
      refuseOtherTypes(c, ['image/jpeg']);
      const jpeg = new Uint8Array(await c.req.arrayBuffer());
      const photo = { recordId: c.req.valid('param').id, field: c.req.valid('query').field ?? '', jpeg };
      const made = await once(c, store, hashOf(jpeg), ({ photos }) => photos.add(byOf(c), photo));
      c.header('location', `/api/photos/${made.id}`);
      return c.json(made, 201);
    })
    .openapi(list, async (c) => {
      const { id } = c.req.valid('param');
      await store.records.get(id, { removed: true });
      return c.json(slice(await store.photos.of(id), c.req.valid('query')), 200);
    })
    .openapi(get, async (c) => {
      const { id, jpeg } = await store.photos.get(c.req.valid('param').id);
      c.header('etag', `"${id}"`);
      c.header('cache-control', 'private, no-cache');
      return c.body(new Uint8Array(jpeg), 200, { 'content-type': 'image/jpeg' });
    });
}
