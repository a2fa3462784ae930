import { yardRows, NotFound } from '@hitchwright/store';
import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { onceOf } from '../http/once.ts';
import { byOf } from '../http/who.ts';
import { byOnly, onceBy } from '../schemas/common.ts';
import { answerOf, writes } from '../schemas/responses.ts';

const add = createRoute({
  method: 'post',
  path: '/sample',
  summary: 'Puts the invented sample yard in',
  request: { headers: onceBy },
  responses: {
    ...writes,
    201: answerOf(
      z.object({
        group: z.string().nullable(),
        created: z.number().int(),
        updated: z.number().int(),
        restored: z.number().int(),
        unchanged: z.number().int(),
      }),
      'How many records it made; it is undone by its group.',
    ),
  },
});

const remove = createRoute({
  method: 'delete',
  path: '/sample',
  summary: 'Takes every sample record and sample answer out',
  request: { headers: byOnly },
  responses: {
    ...writes,
    200: answerOf(
      z.object({ group: z.string().nullable(), records: z.number().int(), answers: z.number().int() }),
      'How much was taken out.',
    ),
  },
});

/** The sample yard: in, and out again. */
export function sampleRoutes({ store, sample }: Desk) {
  return emptyApi()
    .openapi(add, async (c) => {
      if (sample === null) throw new NotFound('sample yard', '');
      const rows = yardRows({ ...sample, sample: true });
      const made = await onceOf(c, store, ({ imports }) => imports.write(byOf(c), { source: 'sample yard', rows }));
      return c.json(made, 201);
    })
    .openapi(remove, async (c) => c.json(await store.records.removeSamples(byOf(c)), 200));
}
