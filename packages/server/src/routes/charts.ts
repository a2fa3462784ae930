import type { ChartOptions } from '@hitchwright/core/handover';
import { createRoute } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { HeldChart } from '../charts/held.ts';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { onceOf } from '../http/once.ts';
import { chartFileQuery, chartHeaders, chartQuery, chartState, yardDocument } from '../schemas/charts.ts';
import { idPath } from '../schemas/common.ts';
import { answerOf, asks, bodyOf, fileOf, reads, writes } from '../schemas/responses.ts';
import { fileIn } from './handover.ts';

const begin = createRoute({
  method: 'post',
  path: '/charts',
  summary:
    'Begins the wall chart of a yard: every implement with every coupler and without one; poll it for how far it is',
  request: { query: chartQuery, headers: chartHeaders, body: bodyOf(yardDocument) },
  responses: {
    ...writes,
    202: answerOf(chartState, 'The chart, which waits or is being made; sent again, the same one as it stands now.'),
  },
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
export function chartRoutes(desk: Desk) {
  const { charts, assessors, clock } = desk;
  return emptyApi()
    .openapi(begin, async (c) => {
      const yard = c.req.valid('json');
      const { units, date = clock().slice(0, 10), tractor, leftOut } = c.req.valid('query');
      const options: ChartOptions = {
        system: units ?? yard.units ?? 'us',
        date,
        ...(tractor === undefined ? {} : { tractor }),
        ...(leftOut === undefined ? {} : { leftOut: [leftOut.trim()] }),
      };
      const one = await begunOnce(c, desk, () => charts.begin(yard, options));
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

/**
 * Begins a chart, or finds the one that the same request began before: the store keeps the key with nothing but the chart’s id. A chart whose key
 * could not be kept is let go of again.
 */
async function begunOnce(c: Context, { charts, store }: Desk, begin: () => HeldChart): Promise<HeldChart> {
  const own: { begun?: HeldChart } = {};
  let kept: string | null = null;
  try {
    const done = await onceOf(c, store, () => {
      // A store that was in somebody’s way does its work a second time.
      own.begun ??= begin();
      return Promise.resolve({ id: own.begun.id });
    });
    kept = done.id;
    return charts.again(kept);
  } finally {
    if (own.begun !== undefined && own.begun.id !== kept) charts.stop(own.begun.id);
  }
}

function stateOf({ id, state, progress, message }: HeldChart) {
  return { id, state, progress, message };
}
