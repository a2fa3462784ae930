import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { recordKinds, type Store } from '@hitchwright/store';
import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { refuseOtherTypes } from '../http/limits.ts';
import { inputRefusal } from '../http/refusal.ts';
import { fullRecords, isRowKind, tableOfKind } from '../keeping/kinds.ts';
import { lookedAt, restoredFrom } from '../keeping/restoring.ts';
import { sentFrom, streamed } from '../keeping/spool.ts';
import { mayMiss, flag, units } from '../schemas/common.ts';
import { restored } from '../schemas/keeping.ts';
import { answerOf, fileOf, reads, writes } from '../schemas/responses.ts';
import { writeCsv, writeXlsx } from '../sheets/index.ts';

const xlsx = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
const lines = 'application/x-ndjson';
const bytes = 'application/octet-stream';
const file = { schema: { type: 'string', format: 'binary' } } as const;

const ofKind = createRoute({
  method: 'get',
  path: '/export/{kind}',
  summary: 'All records of a kind as CSV, XLSX or JSON',
  request: {
    params: z.object({ kind: z.enum(recordKinds) }),
    query: z.object({ format: z.enum(['csv', 'xlsx', 'json']), units: mayMiss(units) }),
  },
  responses: {
    ...reads,
    200: fileOf(
      ['text/csv', xlsx, lines],
      'The file: figures in use as CSV and XLSX, everything as one JSON line each.',
    ),
  },
});

const archive = createRoute({
  method: 'get',
  path: '/archive',
  summary: 'Everything that is kept, as lines of JSON that any store takes back',
  responses: { ...reads, 200: fileOf([lines], 'The archive; its last line holds the hash of the others.') },
});

const backup = createRoute({
  method: 'get',
  path: '/backup',
  summary: 'A verified backup while the store is in use: a copy of the database file, or an archive of PostgreSQL',
  responses: { ...reads, 200: fileOf([bytes], 'The backup.') },
});

const restore = createRoute({
  method: 'post',
  path: '/restore',
  summary: 'Puts a backup or an archive in the place of everything, once it was read from end to end',
  request: {
    query: z.object({
      replace: mayMiss(flag).meta({ description: 'What is there may go; a backup of it is kept first.' }),
      look: mayMiss(flag).meta({ description: 'Only says what the file holds, once it was read; nothing is changed.' }),
    }),
    body: { required: true, content: { [bytes]: file, [lines]: file } },
  },
  responses: {
    ...writes,
    200: answerOf(restored, 'What the store holds now; what the file holds, where it was only looked at.'),
  },
});

/** Taking everything elsewhere, and bringing it back. */
export function keepingRoutes(desk: Desk) {
  const { store } = desk;
  return emptyApi()
    .openapi(ofKind, async (c) => {
      const { kind } = c.req.valid('param');
      const { format, units: system = 'us' } = c.req.valid('query');
      c.header('content-disposition', `attachment; filename="${kind}.${format === 'json' ? 'jsonl' : format}"`);
      if (format === 'json')
        return c.body(
          streamed((sink) => linesOf(store, kind, sink)),
          200,
          { 'content-type': lines },
        );
      if (!isRowKind(kind)) throw noSheet(kind);
      const table = await tableOfKind(store, kind, system);
      if (format === 'csv')
        return c.body(new Uint8Array(await writeCsv(table)), 200, { 'content-type': 'text/csv; charset=utf-8' });
      return c.body(new Uint8Array(await writeXlsx([{ name: kind, rows: table }])), 200, { 'content-type': xlsx });
    })
    .openapi(archive, (c) => {
      c.header('content-disposition', 'attachment; filename="hitchwright-archive.jsonl"');
      return c.body(
        streamed((sink) => store.exportAll(sink)),
        200,
        { 'content-type': lines },
      );
    })
    .openapi(backup, async (c) => {
      const folder = mkdtempSync(join(tmpdir(), 'hitchwright-server-'));
      const { file, form } = await store.backup(join(folder, 'backup'));
      c.header('content-disposition', `attachment; filename="hitchwright.${form === 'database' ? 'db' : 'jsonl'}"`);
      return c.body(sentFrom(file, folder), 200, { 'content-type': bytes });
    })
    .openapi(restore, async (c) => {
      refuseOtherTypes(c, [bytes, lines]);
      const { replace, look } = c.req.valid('query');
      const { body } = c.req.raw;
      return c.json(look === 'true' ? await lookedAt(body) : await restoredFrom(desk, body, replace === 'true'), 200);
    });
}

async function linesOf(store: Store, kind: (typeof recordKinds)[number], sink: (line: string) => Promise<void>) {
  for await (const record of fullRecords(store, kind)) await sink(`${JSON.stringify(record)}\n`);
}

function noSheet(kind: string) {
  return inputRefusal({
    code: 'not-a-choice',
    path: 'query.format',
    expected: 'json, for what stands on other records',
    got: `a sheet of ${kind}s`,
    hint: 'Ask for JSON.',
  });
}
