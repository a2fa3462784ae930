import { NotFound } from '@hitchwright/store';
import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { byOf } from '../http/who.ts';
import { byOnly, json } from '../schemas/common.ts';
import { answerOf, asks, bodyOf, writes } from '../schemas/responses.ts';

const headers = z.array(z.string().max(2000)).min(1).max(1000);
const kept = z
  .object({ headers: z.array(z.string()).readonly(), columns: json, who: z.string(), at: z.string() })
  .meta({ id: 'KeptMapping' });

const find = createRoute({
  method: 'post',
  path: '/mappings/find',
  summary: 'What the columns with these headings meant the last time, in whatever order they stand',
  request: { body: bodyOf(z.strictObject({ headers })) },
  responses: { ...asks, 200: answerOf(kept, 'What was kept.') },
});

const put = createRoute({
  method: 'put',
  path: '/mappings',
  summary: 'Keeps what columns mean by the set of their headings',
  request: { headers: byOnly, body: bodyOf(z.strictObject({ headers, columns: json })) },
  responses: { ...writes, 200: answerOf(kept, 'What is kept now.') },
});

/** What the columns of files meant the last time. */
export function mappingRoutes({ store }: Desk) {
  const found = async (wanted: readonly string[]) => {
    const mapping = await store.mappings.get(wanted);
    if (mapping === null) throw new NotFound('mapping', 'of these headings');
    return mapping;
  };
  return emptyApi()
    .openapi(find, async (c) => c.json(await found(c.req.valid('json').headers), 200))
    .openapi(put, async (c) => {
      const { headers: wanted, columns } = c.req.valid('json');
      await store.mappings.put(byOf(c), wanted, columns);
      return c.json(await found(wanted), 200);
    });
}
