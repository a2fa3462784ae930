import { createRoute } from '@hono/zod-openapi';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { answerOf, reads } from '../schemas/responses.ts';
import { yardOf, yardQuery } from '../schemas/yard.ts';
import { yardFor } from '../yards/yardFor.ts';

const get = createRoute({
  method: 'get',
  path: '/yard',
  summary: 'The yard around one tractor as a document: couplers, implements and the shelf by their values in use',
  request: { query: yardQuery },
  responses: { ...reads, 200: answerOf(yardOf, 'The yard; invented records stand only around an invented tractor.') },
});

/** How many implements are handed over where nobody says. */
const usualLimit = 25;

/** The yard’s records as one document. */
export function yardRoutes({ store }: Desk) {
  return emptyApi().openapi(get, async (c) => {
    const { every, limit = usualLimit, ...wanted } = c.req.valid('query');
    return c.json(await yardFor(store, { ...wanted, limit, every: every === 'true' }), 200);
  });
}
