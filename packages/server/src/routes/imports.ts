import type { RowReading } from '@hitchwright/core/exchange';
import { draftOf } from '@hitchwright/core/exchange';
import type { RowPreview } from '@hitchwright/store';
import { createRoute } from '@hono/zod-openapi';
import * as z from 'zod';
import type { Desk } from '../desk.ts';
import { emptyApi } from '../http/api.ts';
import { refuseOtherTypes } from '../http/limits.ts';
import { hashOf } from '../http/once.ts';
import { plain } from '../http/plain.ts';
import { slice } from '../http/slice.ts';
import { byOf } from '../http/who.ts';
import type { HeldImport } from '../imports/held.ts';
import { samplesOf } from '../imports/samples.ts';
import { mayMiss, byOnly, idPath, onceBy, pageOf, pageQuery } from '../schemas/common.ts';
import { importChoice, importCommit, importRow, importState } from '../schemas/imports.ts';
import { answerOf, asks, bodyOf, reads, writes } from '../schemas/responses.ts';

const file = { schema: { type: 'string', format: 'binary' } } as const;
const fileTypes = [
  'application/octet-stream',
  'text/csv',
  'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
];

const open = createRoute({
  method: 'post',
  path: '/imports',
  summary: 'Reads a CSV or XLSX file and guesses what its columns mean; nothing is written',
  request: {
    query: z.object({ name: mayMiss(z.string().min(1).max(200)) }),
    body: { required: true, content: Object.fromEntries(fileTypes.map((type) => [type, file])) },
  },
  responses: { ...asks, 201: answerOf(importState, 'The import, with what has to be asked.') },
});

const get = createRoute({
  method: 'get',
  path: '/imports/{id}',
  summary: 'Where an import stands, and how far its writing is',
  request: { params: idPath },
  responses: { ...reads, 200: answerOf(importState, 'The import.') },
});

const choose = createRoute({
  method: 'post',
  path: '/imports/{id}/mapping',
  summary: 'Chooses another sheet, or what a column means',
  request: { params: idPath, body: bodyOf(importChoice) },
  responses: { ...writes, 200: answerOf(importState, 'The import, read anew.') },
});

const rows = createRoute({
  method: 'get',
  path: '/imports/{id}/rows',
  summary: 'What would become of each row, with its errors and guesses; nothing is written',
  request: { params: idPath, query: z.object(pageQuery) },
  responses: { ...reads, 200: answerOf(pageOf(importRow), 'A page of rows.') },
});

const commit = createRoute({
  method: 'post',
  path: '/imports/{id}/commit',
  summary: 'Begins to write all rows in one transaction; poll the import for how far it is',
  request: { params: idPath, headers: onceBy, body: bodyOf(importCommit) },
  responses: { ...writes, 202: answerOf(importState, 'The import. Sent again it is not written again.') },
});

const cancel = createRoute({
  method: 'delete',
  path: '/imports/{id}',
  summary: 'Stops the writing, of which nothing stays; or lets go of the file',
  request: { params: idPath, headers: byOnly },
  responses: { ...writes, 200: answerOf(importState, 'The import; it may have been done before it could be stopped.') },
});

/** Importing a file: read, look, choose, write, stop. */
export function importRoutes({ imports, store }: Desk) {
  return emptyApi()
    .openapi(open, async (c) => {
      refuseOtherTypes(c, fileTypes);
      const bytes = new Uint8Array(await c.req.arrayBuffer());
      const one = await imports.open(c.req.valid('query').name ?? 'import', bytes);
      c.header('location', `/api/imports/${one.id}`);
      return c.json(stateOf(one), 201);
    })
    .openapi(get, (c) => c.json(stateOf(imports.get(c.req.valid('param').id)), 200))
    .openapi(choose, async (c) =>
      c.json(stateOf(await imports.choose(c.req.valid('param').id, c.req.valid('json'))), 200),
    )
    .openapi(rows, async (c) => {
      const { id } = c.req.valid('param');
      const { readings } = await imports.rows(id);
      const page = slice(readings, c.req.valid('query'));
      const proposed = page.items.filter(({ record }) => record !== null);
      const drafts = proposed.flatMap(({ record }) => (record === null ? [] : draftOf(record)));
      const previews = await store.imports.preview({ source: imports.get(id).name, rows: drafts });
      const byRow = new Map(proposed.map((reading, i) => [reading, previews[i]]));
      return c.json({ ...page, items: page.items.map((reading) => rowOf(reading, byRow.get(reading))) }, 200);
    })
    .openapi(commit, async (c) => {
      const { id } = c.req.valid('param');
      const { leaveOut = [], remember = true, source } = c.req.valid('json');
      const request = { key: c.req.valid('header')['idempotency-key'] ?? null, body: hashOf(await c.req.text()) };
      const wanted = { leaveOut, remember, source: source ?? imports.get(id).name, ...request };
      return c.json(stateOf(await imports.commit(byOf(c), id, wanted)), 202);
    })
    .openapi(cancel, async (c) => c.json(stateOf(await imports.cancel(c.req.valid('param').id)), 200));
}

function rowOf({ row, outcome, record, errors, told }: RowReading, preview: RowPreview | undefined) {
  return {
    row,
    outcome,
    does: preview?.does ?? null,
    recordId: preview?.recordId ?? null,
    record: record === null ? null : plain(record),
    changes: [...(preview?.changes ?? [])],
    errors: [...errors, ...(preview?.errors ?? [])].map((error) => ({ ...error })),
    told: told.map(plain),
  };
}

function stateOf(one: HeldImport) {
  const { id, name, sheet, state, progress, result, guessed } = one;
  const { mapping, confidence, told, asks, errors } = guessed;
  return {
    id,
    name,
    sheets: one.sheets.map((each) => ({ name: each.name, rows: each.rows.length })),
    sheet,
    state,
    told: [...one.told],
    mapping: {
      mapping: mapping === null ? null : plain(mapping),
      confidence,
      told: told.map(plain),
      asks: asks.map(plain),
      errors: [...errors],
      samples: samplesOf(one.sheets[sheet]?.rows ?? [], mapping),
    },
    progress,
    result,
    errors: [...one.errors],
  };
}
