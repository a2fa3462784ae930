import { sql } from 'kysely';
import type { InputError } from '@hitchwright/core/records';
import { chunksOf } from '../database/chunks.ts';
import { turn } from '../database/retry.ts';
import { inGroup, type OpenGroup } from '../history/log.ts';
import type { By } from '../records/kinds.ts';
import { holdTargets } from '../records/references.ts';
import { keep } from '../records/states.ts';
import { longestName, textErrors } from '../records/text.ts';
import { writing, type Desk, type Room } from '../room.ts';
import { Refused } from '../trouble.ts';
import { twin, twins } from './matching.ts';
import { planned, type RowPlan } from './plan.ts';
import type { Import, ImportProgress, ImportResult, ImportRow, RowPreview } from './rows.ts';

/** Who looks on while an import runs, and who may stop it. */
export interface ImportWatch {
  readonly signal?: AbortSignal;
  /** Told now and then; it may start again where another writer was in the way. */
  readonly onProgress?: (progress: ImportProgress) => void;
}

/** Writing many records as one. */
export interface Imports {
  /** Writes all rows or none: throws Refused with every error by row, or the signal’s reason. Importing again updates. */
  write(by: By, work: Import, watch?: ImportWatch): Promise<ImportResult>;
  /** What writing them would do, row by row; nothing is written. */
  preview(work: Import): Promise<readonly RowPreview[]>;
}

/** Rows between two looks at whether somebody has stopped it. */
const atOnce = 100;
const mostErrors = 500;
/** One import at a time, whichever of our servers runs it. */
const importLock = 4_819_217_704;

/** The imports of a store. */
export function importsPart(desk: Desk): Imports {
  return {
    write: (by, work, watch = {}) => writing(desk, (room) => written(room, by, work, watch)),
    preview: (work) =>
      desk.database.read((queries) => {
        const { clock, ids } = desk;
        return previewed({ queries, kind: desk.database.kind, now: clock(), ids }, work);
      }),
  };
}

async function written(room: Room, by: By, { source, rows }: Import, watch: ImportWatch): Promise<ImportResult> {
  const wrong = textErrors('source', source, longestName, 1);
  if (wrong.length > 0) throw new Refused(wrong);
  if (room.kind === 'postgres') await sql`select pg_advisory_xact_lock(${importLock})`.execute(room.queries);
  const count = { create: 0, update: 0, restore: 0, nothing: 0, refuse: 0 };
  const { group } = await inGroup(room, { kind: 'import', by, origin: source }, async (open) => {
    const errors: InputError[] = [];
    for await (const { plans, first } of partsOf(room, open, rows, watch)) {
      errors.push(...plans.flatMap(({ errors: found }, i) => found.map((error) => inRow(error, first + i))));
      if (errors.length > mostErrors) break;
      if (errors.length === 0) await kept(room, open, plans);
      for (const { does } of plans) count[does] += 1;
    }
    if (errors.length > 0) throw new Refused(errors);
  });
  return { group, created: count.create, updated: count.update, restored: count.restore, unchanged: count.nothing };
}

async function kept(room: Room, open: OpenGroup, plans: readonly RowPlan[]): Promise<void> {
  const changes = plans.flatMap(({ change }) => change ?? []);
  await holdTargets(
    room,
    changes.map(({ after }) => after.record),
  );
  await keep(room, open, changes);
}

async function previewed(room: Room, { source, rows }: Import): Promise<RowPreview[]> {
  const open = { id: '', who: 'preview', origin: source, records: 0 };
  const previews: RowPreview[] = [];
  for await (const { plans, first } of partsOf(room, open, rows, null))
    previews.push(...plans.map((plan, i) => previewOf(plan, first + i)));
  return previews;
}

/** The rows a few at a time; in between everybody else has a turn. */
async function* partsOf(room: Room, open: OpenGroup, rows: readonly ImportRow[], watch: ImportWatch | null) {
  const same = twins(rows);
  const taken = new Map<string, number>();
  let first = 0;
  for (const chunk of chunksOf(rows, atOnce)) {
    watch?.signal?.throwIfAborted();
    const plans = await planned(room, open, chunk, watch !== null);
    yield {
      plans: plans.map((plan, i) => withTwin(plan, same.get(first + i) ?? takenBy(taken, plan, rows, first + i))),
      first,
    };
    first += chunk.length;
    watch?.onProgress?.({ done: first, total: rows.length });
    await turn();
  }
  watch?.signal?.throwIfAborted();
}

function withTwin(plan: RowPlan, error: InputError | undefined): RowPlan {
  return error === undefined ? plan : { ...plan, does: 'refuse', change: null, errors: [...plan.errors, error] };
}

/** Two rows may come to one record by different ways. */
function takenBy(
  taken: Map<string, number>,
  { recordId }: RowPlan,
  rows: readonly ImportRow[],
  row: number,
): InputError | undefined {
  if (recordId === null) return undefined;
  const before = taken.get(recordId);
  taken.set(recordId, before ?? row);
  return before === undefined ? undefined : twin('', rows, before);
}

function inRow(error: InputError, row: number): InputError {
  return { ...error, path: error.path === '' ? `rows.${row}` : `rows.${row}.${error.path}` };
}

function previewOf({ does, recordId, change, errors }: RowPlan, row: number): RowPreview {
  const changes = (change?.entries ?? []).map(({ what, key, before, after }) => ({
    field: what === 'reading' ? fieldOf(after) : key,
    before: what === 'reading' ? leafOf(before) : before,
    after: what === 'reading' ? leafOf(after) : after,
  }));
  return { row, does, recordId, changes: does === 'create' ? [] : changes, errors };
}

function fieldOf(reading: unknown): string {
  return (reading as { field: string }).field;
}

/** What a reading says, as long as it counts. */
function leafOf(reading: unknown): unknown {
  const { leaf = null, withdrawnAt = null } = (reading ?? {}) as { leaf?: unknown; withdrawnAt?: string | null };
  return withdrawnAt === null ? leaf : null;
}
