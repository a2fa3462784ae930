import type { InputError } from '@hitchwright/core/records';
import { chunksOf } from '../database/chunks.ts';
import type { Row } from '../database/tables.ts';
import type { Room } from '../room.ts';
import { Conflict, Refused } from '../trouble.ts';
import type { DocumentKind } from './document.ts';
import type { RecordKind, YardRecord } from './kinds.ts';
import { refusal } from './text.ts';

type Target = Pick<Row<'record'>, 'id' | 'kind' | 'name' | 'removed_at' | 'model_id'>;

const models: readonly RecordKind[] = ['tractor', 'coupler', 'implement'];

/**
 * Refuses records that point at what is not there, was removed or is of the wrong kind. What they point at is held until the transaction
 * ends, so that nobody removes it meanwhile.
 *
 * @param room the transaction
 * @param records the records as they are to be
 */
export async function holdTargets(room: Room, records: readonly YardRecord[]): Promise<void> {
  const live = records.filter(({ removedAt }) => removedAt === null);
  const wanted = live.flatMap(({ owner, model, parent }) => [owner, model, parent]).filter((id) => id !== null);
  if (wanted.length === 0 && live.every(({ kind }) => kind !== 'machine' && kind !== 'state')) return;
  const near = await held(room, wanted);
  const far = await held(
    room,
    [...near.values()].flatMap(({ model_id }) => model_id ?? []),
  );
  const errors = live.flatMap((record) => referenceErrors(record, new Map([...far, ...near])));
  if (errors.length > 0) throw new Refused(errors);
}

/** Refuses to leave records that stand on one that was removed: it stays as long as they do. */
export async function refuseOrphans({ queries }: Room, records: readonly YardRecord[]): Promise<void> {
  const removed = records.filter(({ removedAt }) => removedAt !== null);
  for (const chunk of chunksOf(removed.map(({ id }) => id))) {
    const left = await queries
      .selectFrom('record')
      .select(['id', 'kind', 'name'])
      .where('removed_at', 'is', null)
      .where((or) => or.or([or('owner_id', 'in', chunk), or('model_id', 'in', chunk), or('parent_id', 'in', chunk)]))
      .orderBy('id')
      .limit(20)
      .execute();
    if (left.length === 0) continue;
    const names = left.slice(0, 3).map(({ name }) => name);
    const others = left.length > names.length ? ' and others' : '';
    throw new Conflict(`It can’t be removed while ${names.join(', ')}${others} stand on it.`, left);
  }
}

/** What a record stands for in a setup: a machine for its model’s kind, a state for a tractor, a customer for nothing. */
export async function standsFor(
  room: Pick<Room, 'queries'>,
  { kind, model }: Pick<YardRecord, 'kind' | 'model'>,
): Promise<DocumentKind | null> {
  if (kind === 'customer') return null;
  if (kind === 'state') return 'tractor';
  if (kind !== 'machine') return kind;
  const row = await room.queries
    .selectFrom('record')
    .select('kind')
    .where('id', '=', model ?? '')
    .executeTakeFirst();
  return (row?.kind as DocumentKind | undefined) ?? null;
}

async function held({ queries, kind }: Room, ids: readonly string[]): Promise<Map<string, Target>> {
  const targets = new Map<string, Target>();
  for (const chunk of chunksOf([...new Set(ids)].sort())) {
    const select = queries
      .selectFrom('record')
      .select(['id', 'kind', 'name', 'removed_at', 'model_id'])
      .where('id', 'in', chunk)
      .orderBy('id');
    for (const row of await (kind === 'postgres' ? select.forShare() : select).execute()) targets.set(row.id, row);
  }
  return targets;
}

function referenceErrors(record: YardRecord, targets: ReadonlyMap<string, Target>): InputError[] {
  const { kind, owner, model, parent } = record;
  return [
    ...pointing('owner', owner, kind === 'machine' ? 'may' : 'never', targets, isKind(['customer'])),
    ...pointing('model', model, kind === 'machine' ? 'must' : 'never', targets, isKind(models)),
    ...pointing('parent', parent, kind === 'state' ? 'must' : 'never', targets, (target) => isTractor(target, targets)),
  ];
}

function isTractor({ kind, model_id }: Target, targets: ReadonlyMap<string, Target>): boolean {
  return kind === 'tractor' || (kind === 'machine' && targets.get(model_id ?? '')?.kind === 'tractor');
}

function isKind(kinds: readonly string[]): (target: Target) => boolean {
  return ({ kind }) => kinds.includes(kind);
}

function pointing(
  path: 'owner' | 'model' | 'parent',
  id: string | null,
  whether: 'must' | 'may' | 'never',
  targets: ReadonlyMap<string, Target>,
  isRight: (target: Target) => boolean,
): InputError[] {
  if (id === null)
    return whether === 'must' ? [refusal('missing', path, `a record as its ${path}`, 'nothing', 'Add it.')] : [];
  if (whether === 'never') return [refusal('unknown-key', path, `no ${path} here`, 'a record', 'Remove it.')];
  const target = targets.get(id);
  const isThere = target !== undefined && target.removed_at === null;
  if (isThere && isRight(target)) return [];
  const got = isThere ? `a ${target.kind}` : 'one that is not there';
  return [refusal('not-a-choice', path, `a record that can be its ${path}`, got, 'Choose another.')];
}
