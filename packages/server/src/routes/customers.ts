import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { plain } from '../http/plain.ts';
import { byOf } from '../http/who.ts';
import { byOnly, idPath, object } from '../schemas/common.ts';
import { answerOf, reads, writes } from '../schemas/responses.ts';

const exportAll = createRoute({
  method: 'get',
  path: '/customers/{id}/export',
  summary: 'Everything that is kept of a customer: machines, readings, history, answers, photos',
  request: { params: idPath },
  responses: {
    ...reads,
    200: answerOf(
      z.object({
        hitchwright: z.literal(1),
        at: z.string(),
        records: z.array(object).readonly(),
        answers: z.array(object).readonly(),
        photos: z.array(object).readonly(),
      }),
      'All of it, pictures as base64.',
    ),
  },
});

const forget = createRoute({
  method: 'delete',
  path: '/customers/{id}',
  summary: 'Deletes a customer with everything that is kept of them; there is no way back but a backup',
  request: { params: idPath, headers: byOnly },
  responses: {
    ...writes,
    200: answerOf(
      z.object({ records: z.number().int(), answers: z.number().int(), photos: z.number().int() }),
      'How much was deleted.',
    ),
  },
});

/** Customers as a whole: take everything out, or delete it. */
export function customerRoutes({ store }: Desk) {
  return emptyApi()
    .openapi(exportAll, async (c) => {
      const { id } = c.req.valid('param');
      const { records, answers, photos, ...head } = await store.customers.exportAll(id);
      c.header('content-disposition', 'attachment; filename="customer.json"');
      const [all, saved, pictures] = [records.map(plain), answers.map(plain), photos.map(plain)];
      return c.json({ ...head, records: all, answers: saved, photos: pictures }, 200);
    })
    .openapi(forget, async (c) => c.json(await store.customers.forget(byOf(c), c.req.valid('param').id), 200));
}
