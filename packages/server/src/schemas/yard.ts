import * as z from 'zod';
import { yardDocument } from './charts.ts';
import { flag, id, mayMiss, pageQuery } from './common.ts';

const search = mayMiss(z.string().max(200));

/** Which part of the yard is wanted. */
export const yardQuery = z.object({
  tractor: id.meta({ description: 'A tractor of the yard, or a customer’s.' }),
  state: mayMiss(id).meta({ description: 'A state that is laid over it.' }),
  every: mayMiss(flag).meta({
    description:
      'With the other tractors of the yard after it: twelve together at most, and no more than a chart of them takes.',
  }),
  implements: search.meta({ description: 'Words that the implements’ names must have.' }),
  couplers: search.meta({ description: 'Words that the couplers’ names must have.' }),
  cursor: pageQuery.cursor,
  limit: mayMiss(z.coerce.number().int().min(1).max(60)).meta({
    description: 'How many implements; 25 where it is left out.',
  }),
});

const stood = z.array(z.object({ id: z.string(), name: z.string() })).readonly();

/** The yard around one tractor. */
export const yardOf = z
  .object({
    yard: yardDocument,
    records: z.object({ tractors: stood, couplers: stood, implements: stood }),
    next: z.string().nullable(),
    more: z.object({ tractors: z.number().int(), couplers: z.boolean(), parts: z.number().int() }),
  })
  .meta({
    id: 'YardOfTractor',
    description:
      '`records` names what the lists of the yard are made of, in the same order; `next` is where more implements begin; `more` says of what else there is more than there is room for; tractors and parts are counted.',
  });
