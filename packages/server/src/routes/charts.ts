import type { ChartOptions } from '@hitchwright/core/handover';
import { createRoute } from '@hono/zod-openapi';
import type { HeldChart } from '../charts/held.ts';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { chartFileQuery, chartQuery, chartState, yardDocument } from '../schemas/charts.ts';
import { idPath } from '../schemas/common.ts';
import { answerOf, asks, bodyOf, fileOf, reads, writes } from '../schemas/responses.ts';
import { fileIn } from './handover.ts';

const begin = createRoute({
  method: 'post',
  path: '/charts',
  summary:
    'Begins the wall chart of a yard: every implement with every coupler and without one; poll it for how far it is',
  request: { query: chartQuery, body: bodyOf(yardDocument) },
  responses: { ...asks, 202: answerOf(chartState, 'The chart, which waits or is being made.') },
});

const get = createRoute({
  method: 'get',
  path: '/charts/{id}',
  summary: 'Where a chart stands, and how far it is',
  request: { params: idPath },
  responses: { ...reads, 200: answerOf(chartState, 'The chart.') },
});

const file = createRoute({
  method: 'get',
  path: '/charts/{id}/file',
  summary: 'A chart that is made, to print, as a page or as JSON',
  request: { params: idPath, query: chartFileQuery },
  responses: {
    ...reads,
    409: { ...asks[400], description: 'It is not made; `message` says how far it is, or why it failed.' },
    200: fileOf(['application/pdf', 'text/html', 'application/json'], 'The chart.'),
  },
});

const stop = createRoute({
  method: 'delete',
  path: '/charts/{id}',
  summary: 'Stops a chart, of which nothing stays, and lets go of it',
  request: { params: idPath },
  responses: {
    ...writes,
    200: answerOf(chartState, 'The chart as it was; it may have been made before it could be stopped.'),
  },
});

/** Wall charts: begin, look, fetch, stop. */
export function chartRoutes({ charts, assessors, clock }: Desk) {
  return emptyApi()
    .openapi(begin, (c) => {
      const yard = c.req.valid('json');
      const { units, date = clock().slice(0, 10), tractor } = c.req.valid('query');
      const system = units ?? yard.units ?? 'us';
      const options: ChartOptions = { system, date, ...(tractor === undefined ? {} : { tractor }) };
      const one = charts.begin(yard, options);
      c.header('location', `/api/charts/${one.id}`);
      return c.json(stateOf(one), 202);
    })
    .openapi(get, (c) => c.json(stateOf(charts.get(c.req.valid('param').id)), 200))
    .openapi(file, async (c) => {
      const { format, paper = 'letter' } = c.req.valid('query');
      const chart = charts.made(c.req.valid('param').id);
      return fileIn(c, await assessors.chartFile({ chart, format, paper }));
    })
    .openapi(stop, (c) => c.json(stateOf(charts.stop(c.req.valid('param').id)), 200));
}

function stateOf({ id, state, progress, message }: HeldChart) {
  return { id, state, progress, message };
}
