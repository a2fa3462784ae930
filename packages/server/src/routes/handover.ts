import type { ViewName } from '@hitchwright/core/drawings';
import type { HandedOver, Wanted } from '@hitchwright/print';
import { createRoute } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { plain } from '../http/plain.ts';
import { HttpRefusal } from '../http/refusal.ts';
import { setupDocument } from '../schemas/answers.ts';
import {
  drawingQuery,
  listingAnswer,
  listingQuery,
  pinPlanQuery,
  replyAnswer,
  replyQuery,
  sheetQuery,
} from '../schemas/handover.ts';
import { answerOf, asks, bodyOf, fileOf } from '../schemas/responses.ts';

const pdf = 'application/pdf';
const drawingTypes = [pdf, 'image/svg+xml', 'image/vnd.dxf'];
const refused = { ...asks, 409: { ...asks[400], description: 'It can’t be made of this setup; `message` says why.' } };

const sheet = createRoute({
  method: 'post',
  path: '/sheets',
  summary: 'The sheet of a setup, to print and hand over',
  request: { query: sheetQuery, body: bodyOf(setupDocument) },
  responses: { ...refused, 200: fileOf([pdf], 'The sheet.') },
});

const drawing = createRoute({
  method: 'post',
  path: '/drawings',
  summary: 'One drawing of a setup at the scale of paper; a DXF in true millimetres',
  request: { query: drawingQuery, body: bodyOf(setupDocument) },
  responses: { ...refused, 200: fileOf(drawingTypes, 'The drawing.') },
});

const pinPlan = createRoute({
  method: 'post',
  path: '/pin-plans',
  summary: 'Where the pins would have to sit for the implement to take the coupler',
  request: { query: pinPlanQuery, body: bodyOf(setupDocument) },
  responses: { ...refused, 200: fileOf(drawingTypes, 'The plan.') },
});

const reply = createRoute({
  method: 'post',
  path: '/replies',
  summary: 'A reply to somebody who asked, drafted from the findings',
  request: { query: replyQuery, body: bodyOf(setupDocument) },
  responses: { ...asks, 200: answerOf(replyAnswer, 'The reply.') },
});

const listing = createRoute({
  method: 'post',
  path: '/listings',
  summary: 'One machine of a setup for a shop page, with structured data',
  request: { query: listingQuery, body: bodyOf(setupDocument) },
  responses: { ...asks, 200: answerOf(listingAnswer, 'The listing.') },
});

/** What is asked of every one of them beside what is wanted. */
interface How {
  readonly units?: 'us' | 'metric';
  readonly paper?: 'letter' | 'a4';
  readonly date?: string;
}

/** What is handed over of a setup; nothing is kept. */
export function handOverRoutes({ assessors, clock }: Desk) {
  const made = async (document: Record<string, unknown>, how: How, wanted: Wanted): Promise<HandedOver> => {
    const said = document['units'] === 'metric' ? 'metric' : 'us';
    const { units: system = said, paper = 'letter', date = clock().slice(0, 10) } = how;
    return heeded(await assessors.handOver({ document, system, paper, date, wanted }));
  };
  return emptyApi()
    .openapi(sheet, async (c) => {
      const { units, paper, date, ...names } = c.req.valid('query');
      const how = { ...(units && { units }), ...(paper && { paper }), ...(date && { date }) };
      return fileIn(c, await made(c.req.valid('json'), how, { kind: 'sheet', ...names }));
    })
    .openapi(drawing, async (c) => {
      const { view, format, ...how } = c.req.valid('query');
      return fileIn(c, await made(c.req.valid('json'), how, { kind: 'drawing', view: view as ViewName, format }));
    })
    .openapi(pinPlan, async (c) => {
      const { format, ...how } = c.req.valid('query');
      return fileIn(c, await made(c.req.valid('json'), how, { kind: 'pinPlan', format }));
    })
    .openapi(reply, async (c) => {
      const { units, link } = c.req.valid('query');
      const wanted = { kind: 'reply', ...(link === undefined ? {} : { link }) } as const;
      const answer = await made(c.req.valid('json'), units === undefined ? {} : { units }, wanted);
      if (answer.kind !== 'reply') throw new Error('invariant: a reply was asked for');
      return c.json(answer.reply, 200);
    })
    .openapi(listing, async (c) => {
      const { units, link, machine } = c.req.valid('query');
      const wanted = { kind: 'listing', machine, ...(link === undefined ? {} : { link }) } as const;
      const answer = await made(c.req.valid('json'), units === undefined ? {} : { units }, wanted);
      if (answer.kind !== 'listing') throw new Error('invariant: a listing was asked for');
      const { name, lead, html, bareHtml, script, product } = answer.listing;
      return c.json({ name, lead, html, bareHtml, script, product: plain(product) }, 200);
    });
}

/** Whatever is no answer is thrown. */
function heeded(made: HandedOver): HandedOver {
  if (made.kind === 'errors') throw new HttpRefusal(400, { errors: made.errors });
  if (made.kind === 'refused')
    throw new HttpRefusal(409, { trouble: 'conflict', message: [made.headline, ...made.sentences].join(' ') });
  return made;
}

/** A file that was made, to be kept. */
export function fileIn(c: Context, made: HandedOver) {
  if (made.kind !== 'file') throw new Error('invariant: a file was asked for');
  c.header('content-disposition', `attachment; filename="${made.name}"`);
  return c.body(new Uint8Array(made.bytes), 200, { 'content-type': made.type });
}
