import type { RecordState } from '../records/kinds.ts';
import { flattened, ordered } from '../records/paths.ts';
import type { Room } from '../room.ts';
import { Conflict } from '../trouble.ts';
import { begins, type Entry } from './entries.ts';
import { groupOf, type ChangeGroup } from './log.ts';
import type { HistoryLine } from './reading.ts';

/** A later change of something that is to be taken back. */
export interface LaterChange {
  readonly recordId: string;
  readonly name: string;
  readonly what: Entry['what'];
  readonly key: string;
  readonly group: ChangeGroup;
}

/**
 * Refuses to take changes back where somebody has changed one of the same things since: what stands there now is no longer
 * what the changes left, or a change that is in force came between. A record that was made is hidden with everything in it, so there any later change counts.
 */
export async function refuseOverwriting(
  room: Room,
  states: ReadonlyMap<string, RecordState>,
  own: ReadonlyMap<string, readonly HistoryLine[]>,
): Promise<void> {
  const later = await laterChanges(room, states, own);
  const found = [...states].flatMap(([id, state]) => inTheWay(state, own.get(id) ?? [], later.get(id) ?? []));
  if (found.length === 0) return;
  const [first] = found;
  const who = first === undefined ? 'Somebody' : first.group.who;
  throw new Conflict(`${who} has changed ${first?.name ?? 'it'} since. Nothing was taken back.`, found);
}

function inTheWay(state: RecordState, own: readonly HistoryLine[], later: readonly LaterChange[]): LaterChange[] {
  if (own.some(({ what, key }) => what === 'record' && key === begins)) return later.filter(isInForce);
  const last = new Map(own.map((line) => [`${line.what} ${line.key}`, line]));
  return [...last.values()].flatMap((line) => {
    const same = later.filter(({ what, key }) => what === line.what && key === line.key);
    return isAsLeft(state, line) ? same.filter(isInForce) : same;
  });
}

/** An undo that stands says nothing of its own: it only undoes. */
function isInForce({ group }: LaterChange): boolean {
  return group.undoneBy === null && group.undoes === null;
}

function isAsLeft({ record, readings }: RecordState, { what, key, after }: Entry): boolean {
  if (what === 'reading') return ordered(readings.get(key) ?? null) === ordered(after);
  const standing = what === 'record' ? record[key as keyof typeof record] : at(record.fields, key);
  return ordered(standing ?? null) === ordered(after ?? null);
}

function at(fields: Readonly<Record<string, unknown>>, path: string): unknown {
  return flattened(fields).get(path);
}

async function laterChanges(
  { queries }: Room,
  states: ReadonlyMap<string, RecordState>,
  own: ReadonlyMap<string, readonly HistoryLine[]>,
): Promise<Map<string, LaterChange[]>> {
  const rows = await queries
    .selectFrom('history as h')
    .innerJoin('change_group as g', 'g.id', 'h.group_id')
    .select(['h.record_id', 'h.revision', 'h.what', 'h.key'])
    .select(['g.id', 'g.kind', 'g.title', 'g.who', 'g.at', 'g.records', 'g.undoes', 'g.undone_by'])
    .where('h.record_id', 'in', [...states.keys()])
    .where('h.revision', '>', 1)
    .orderBy('h.record_id')
    .orderBy('h.revision')
    .orderBy('h.n')
    .execute();
  const later = new Map([...states.keys()].map((id) => [id, new Array<LaterChange>()]));
  for (const { record_id, revision, what, key, ...group } of rows) {
    const name = states.get(record_id)?.record.name ?? '';
    if (revision <= (own.get(record_id)?.at(-1)?.revision ?? Infinity)) continue;
    later.get(record_id)?.push({ recordId: record_id, name, what: what as Entry['what'], key, group: groupOf(group) });
  }
  return later;
}
