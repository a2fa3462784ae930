import { viewNames } from '@hitchwright/core/drawings';
import * as z from 'zod';
import { mayMiss, object, units } from './common.ts';

const name = z.string().min(1).max(100);
const address = z
  .string()
  .max(500)
  .regex(/^https?:\/\/[^\s"<>]+$/);

/** How what is handed over is written. */
export const writtenHow = {
  units: mayMiss(units).meta({ description: 'US where it is left out and the setup says nothing.' }),
  paper: mayMiss(z.enum(['letter', 'a4'])).meta({ description: 'Letter where it is left out.' }),
  date: mayMiss(z.iso.date()).meta({ description: 'The day that it bears; today where it is left out.' }),
};

/** What stands on a sheet beside the answer. */
export const sheetQuery = z.object({
  ...writtenHow,
  customer: mayMiss(name),
  issuer: mayMiss(name),
  site: mayMiss(address).meta({
    description: 'Address of the page that opens links; without it a file reference is printed.',
  }),
});

const format = z.enum(['pdf', 'svg', 'dxf']);

/** Which drawing is wanted. */
export const drawingQuery = z.object({ ...writtenHow, view: z.enum(viewNames as [string, ...string[]]), format });

/** How a pin plan is drawn. */
export const pinPlanQuery = z.object({ ...writtenHow, format });

/** How a reply is written. */
export const replyQuery = z.object({ units: writtenHow.units, link: mayMiss(address) });

/** Which machine is listed. */
export const listingQuery = z.object({
  units: writtenHow.units,
  link: mayMiss(address),
  machine: z.enum(['implement', 'coupler']),
});

/** A reply to somebody who asked. */
export const replyAnswer = z.object({ subject: z.string(), text: z.string(), html: z.string() }).meta({ id: 'Reply' });

/** A machine for a shop page. */
export const listingAnswer = z
  .object({
    name: z.string(),
    lead: z.string(),
    html: z.string(),
    bareHtml: z.string(),
    script: z.string(),
    product: object,
  })
  .meta({ id: 'Listing', description: '`script` is the structured data as an element to stand beside the block.' });
