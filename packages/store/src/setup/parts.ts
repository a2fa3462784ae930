import { mostParts, type SetupDocument } from '@hitchwright/core/records';
import type { Queries } from '../database/database.ts';
import { documentOf } from '../records/document.ts';
import type { Fields } from '../records/kinds.ts';
import { layered, shelfOf, type Layered, type Shelf } from './layers.ts';
import type { SetupRefs } from './refs.ts';

const partKinds = ['part', 'weight', 'shaft'];

/** What is invented is offered with what is invented, and never with what is not: the shelf of a machine; all of it where no machine is named. */
async function shelfWith(queries: Queries, machine: string | undefined, kinds: readonly string[]) {
  const beside = machine === undefined ? undefined : await sampleFlag(queries, machine);
  const all = queries
    .selectFrom('record')
    .select(['id', 'fields'])
    .where('kind', 'in', kinds)
    .where('removed_at', 'is', null);
  const own = beside === undefined ? all : all.where('sample', '=', beside);
  return own.orderBy('sort_name').orderBy('id').execute();
}

/** 1 where a machine, or the model that it is one of, is invented. */
async function sampleFlag(queries: Queries, id: string): Promise<0 | 1> {
  const shelf = await shelfOf(queries, [id]);
  return [...shelf.values()].some(({ record }) => record.sample) ? 1 : 0;
}

/** Everything on the shelf beside a machine, by name; or the parts that are wanted; or none. */
export async function partIds(
  queries: Queries,
  wanted: SetupRefs['parts'],
  machine: string | undefined,
): Promise<readonly string[]> {
  if (wanted !== 'fitting') return wanted ?? [];
  return (await shelfWith(queries, machine, partKinds)).map(({ id }) => id);
}

/** The first drive shaft beside an implement that is meant for it by one of its names; null for none. */
export async function meantShaft(
  queries: Queries,
  implement: string,
  names: readonly string[],
): Promise<string | null> {
  const rows = await shelfWith(queries, implement, ['shaft']);
  return rows.find(({ fields }) => isMeant(JSON.parse(fields) as Fields, names))?.id ?? null;
}

/** The parts that fit an implement, or all of them where none is named; those that are meant for it by name come first where there is no room for all. */
export function fittingParts(shelf: Shelf, ids: readonly string[], implement?: Layered) {
  const parts = ids.flatMap((id) => layered(shelf, id) ?? []).filter(({ kind }) => partKinds.includes(kind));
  if (implement === undefined)
    return { kept: parts.slice(0, mostParts), leftOut: Math.max(0, parts.length - mostParts) };
  const names = namesOf(implement);
  const fitting = parts.filter(({ fields }) => fields['fits'] === undefined || isMeant(fields, names));
  const order = [...fitting].sort((a, b) => Number(isMeant(b.fields, names)) - Number(isMeant(a.fields, names)));
  const kept = new Set(order.slice(0, mostParts));
  return { kept: fitting.filter((part) => kept.has(part)), leftOut: fitting.length - kept.size };
}

/** A part as it stands in a setup; it names the implement as the setup does. */
export function partDocument({ kind, name, fields, values }: Layered, implement: Layered | undefined): SetupDocument {
  const leaves = new Map(values.map(({ field, leaf }) => [field, leaf]));
  const fits = fitsIn(fields, implement);
  if (kind !== 'shaft') return { ...documentOf(kind, name, fields, leaves), ...fits };
  const price = fields['price'] === undefined ? {} : { price: fields['price'] };
  return { kind: 'driveShaft', name, ...fits, ...price, shaft: documentOf('shaft', name, fields, leaves) };
}

function fitsIn(fields: Fields, implement: Layered | undefined): { fits?: unknown } {
  if (fields['fits'] === undefined) return {};
  const isOfOne = implement !== undefined && isMeant(fields, namesOf(implement));
  return { fits: isOfOne ? [implement.name] : fields['fits'] };
}

function namesOf({ layers }: Layered): string[] {
  return layers.map(({ record }) => record.name);
}

function isMeant({ fits }: Fields, names: readonly string[]): boolean {
  return Array.isArray(fits) && names.some((name) => fits.includes(name));
}
