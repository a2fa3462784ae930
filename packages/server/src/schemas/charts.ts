import * as z from 'zod';
import { chartStates } from '../charts/held.ts';
import { mayMiss, object, onceBy, units } from './common.ts';
import { writtenHow } from './handover.ts';

/** Records of a yard by kind, as many as a request may bring. */
const records = (most: number) => z.array(object).max(most).readonly();

/** How many parts a yard may bring. */
export const mostPartsOfYard = 1000;

/** A yard as it is written: records of each kind in the form that they take in a setup. */
export const yardDocument = z
  .strictObject({
    hitchwright: z.literal(1),
    sample: mayMiss(z.boolean()),
    note: mayMiss(z.string().max(2000)),
    units: mayMiss(units),
    tractors: records(60),
    couplers: records(60),
    implements: records(500),
    parts: mayMiss(records(mostPartsOfYard)),
  })
  .meta({
    id: 'YardDocument',
    description:
      'Tractors, couplers, implements and parts, each as docs/setup.schema.json has it in a setup; `fits` of a part names the implements that it is meant for.',
  });

/** How a chart is made. */
export const chartQuery = z.object({
  units: writtenHow.units,
  date: writtenHow.date,
  tractor: mayMiss(z.string().min(1).max(200)).meta({
    description: 'Name of the one tractor that is charted; every tractor where it is left out.',
  }),
  leftOut: mayMiss(z.string().regex(/\S/).max(2000)).meta({
    description:
      'What of the whole yard is not in the chart, in sentences: the chart says that it is of a part of the yard, and this after it.',
  }),
});

/** Headers of a request that begins a chart. */
export const chartHeaders = z.object({
  'idempotency-key': onceBy.shape['idempotency-key'].meta({
    description:
      'Sent again with the same key and body, it begins no second chart and is answered with the first as it stands now. Once that was let go of, by whoever stopped it, by time or with the server that held it, it is refused with 409: a new chart takes a new key.',
  }),
});

/** How a chart is written. */
export const chartFileQuery = z.object({ format: z.enum(['pdf', 'html', 'json']), paper: writtenHow.paper });

/** Where a chart stands. */
export const chartState = z
  .object({
    id: z.string(),
    state: z.enum(chartStates),
    progress: z.object({ done: z.number().int(), total: z.number().int() }),
    message: z.string().nullable(),
  })
  .meta({ id: 'ChartState', description: '`progress` counts pairings; `message` says why it failed.' });
