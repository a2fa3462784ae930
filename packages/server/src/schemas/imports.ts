import { rowKinds } from '@hitchwright/core/exchange';
import * as z from 'zod';
import { mayMiss, inputError, json, object, units } from './common.ts';

const target = z.union([
  z.strictObject({ role: z.enum(['ignore', 'id', 'name', 'recordKind', 'extra']) }),
  z.strictObject({ role: z.enum(['field', 'low', 'high']), field: z.string().max(200) }),
  z.strictObject({
    role: z.enum(['plusMinus', 'from', 'method', 'tool', 'who', 'when', 'source', 'note', 'grade', 'unit', 'default']),
    field: z.string().max(200).nullable(),
  }),
]);

/** What somebody chooses for an import. */
export const importChoice = z
  .strictObject({
    sheet: mayMiss(z.number().int().min(0).max(1000)),
    change: mayMiss(
      z.strictObject({
        kind: mayMiss(z.enum(rowKinds)),
        system: mayMiss(units.nullable()),
        column: mayMiss(z.string().max(3)),
        target: mayMiss(target),
        unit: mayMiss(z.string().max(20).nullable()),
        from: mayMiss(z.string().max(60).nullable()),
      }),
    ),
  })
  .meta({ id: 'ImportChoice' });

/** How an import is to be written. */
export const importCommit = z
  .strictObject({
    leaveOut: mayMiss(z.array(z.number().int().min(1)).max(100_000)),
    remember: mayMiss(z.boolean()),
    source: mayMiss(z.string().min(1).max(200)),
  })
  .meta({
    id: 'ImportCommit',
    description:
      'Rows to leave out, as the sheet counts them; whether to remember what the columns mean (true where it is left out).',
  });

/** Where an import stands. */
export const importState = z
  .object({
    id: z.string(),
    name: z.string(),
    sheets: z.array(z.object({ name: z.string(), rows: z.number().int() })),
    sheet: z.number().int(),
    state: z.enum(['open', 'running', 'done', 'refused', 'cancelled', 'failed']),
    told: z.array(z.string()),
    mapping: z
      .object({
        mapping: object.nullable(),
        confidence: z.number(),
        told: z.array(object),
        asks: z.array(object),
        errors: z.array(inputError),
        samples: z.record(z.string(), z.array(z.string())),
      })
      .meta({
        id: 'GuessedMapping',
        description: '`samples`: the first few different texts of each column, by its letter.',
      }),
    progress: z.object({ done: z.number().int(), total: z.number().int() }),
    result: z
      .object({
        group: z.string().nullable(),
        created: z.number().int(),
        updated: z.number().int(),
        restored: z.number().int(),
        unchanged: z.number().int(),
      })
      .nullable(),
    errors: z.array(inputError),
  })
  .meta({ id: 'Import', description: '`group` of the result is what takes the import back as one.' });

/** One row of a sheet, read, and what becomes of it. */
export const importRow = z
  .object({
    row: z.number().int(),
    outcome: z.enum(['record', 'blank', 'skipped', 'duplicate', 'refused']),
    does: z.enum(['create', 'update', 'restore', 'nothing', 'refuse']).nullable(),
    recordId: z.string().nullable(),
    record: object.nullable(),
    changes: z.array(z.object({ field: z.string(), before: json, after: json })),
    errors: z.array(z.looseObject(inputError.shape)),
    told: z.array(object),
  })
  .meta({ id: 'ImportRow' });
