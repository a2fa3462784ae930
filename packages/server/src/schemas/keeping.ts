import * as z from 'zod';

const counts = z.record(z.string(), z.number().int());

/** What a restored store holds. */
export const restored = z
  .object({
    form: z.enum(['database', 'archive']),
    counts,
    kept: z.string().nullable(),
  })
  .meta({
    id: 'Restored',
    description: '`kept` is the name of the backup of what was there before, in the data folder.',
  });
