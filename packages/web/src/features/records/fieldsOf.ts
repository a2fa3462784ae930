import {
  atPath,
  fieldRules,
  partSizesOf,
  readValue,
  withEdits,
  type CouplerKind,
  type FieldRule,
  type SetupDocument,
} from '@hitchwright/core/records';
import { couplerKinds } from '@hitchwright/core/tables';
import type { UnitSystem } from '@hitchwright/core/units';
import { readText } from '../dimensions/readText.ts';
import { groupsOf, type Side } from '../dimensions/groups.ts';
import { isAsked } from '../dimensions/asked.ts';
import type { Answered, Reading } from './recordTypes.ts';

/** Fields of a record that are shown together; paths lie below the record. */
export interface RecordGroup {
  readonly title: string;
  readonly fields: readonly string[];
  readonly isUsual: boolean;
}

/** What a record stands for in a setup; null for customers, parts and weights. */
function sideOf({ kind, over }: Pick<Answered, 'kind' | 'over'>): Side | null {
  const stands = kind === 'machine' ? over?.kind : kind === 'state' ? 'tractor' : kind;
  return (['tractor', 'coupler', 'implement', 'shaft'] as const).find((side) => side === stands) ?? null;
}

/** Where a field of the record stands in a setup, as drawings and rules know it. */
export function pathIn(record: Pick<Answered, 'kind' | 'over'>, field: string): string {
  return `${sideOf(record) ?? 'parts.0'}.${field}`;
}

/** What a field accepts; undefined for one that is chosen. */
export function ruleOf(record: Answered, field: string): FieldRule | undefined {
  if (sideOf(record) !== null) return fieldRules.get(pathIn(record, field));
  return partSizesOf(record.fields['kind'])[field];
}

/** The groups of a record, as far as they matter to it; the name stands above them. */
export function recordGroups(record: Answered): readonly RecordGroup[] {
  const side = sideOf(record);
  if (side === null) return partGroups(record);
  const document = asSetup(record, side);
  const groups = groupsOf(side, couplerKindOf(record)).map(({ title, at, fields, isUsual }) => ({
    title,
    isUsual: isUsual === true,
    fields: fields
      .filter((field) => field !== 'name' && !field.startsWith('rules.'))
      .map((field) => `${at}.${field}`)
      .filter((path) => isAsked(path, document))
      .map((path) => path.slice(side.length + 1)),
  }));
  return groups.filter(({ fields }) => fields.length > 0);
}

function partGroups(record: Answered): readonly RecordGroup[] {
  const fields = Object.keys(partSizesOf(record.fields['kind']));
  return fields.length === 0 ? [] : [{ title: 'Figures', fields, isUsual: true }];
}

/** The record as a setup that asks for everything that may be asked of it. */
export function asSetup(record: Answered, side: Side = sideOf(record) ?? 'implement'): SetupDocument {
  const beside: SetupDocument = side === 'implement' ? {} : { shaft: {} };
  const fields = { ...record.over?.fields, ...record.fields };
  const leaves = Object.entries({ ...leavesOf(record.over ?? null), ...leavesOf(record) });
  const edits = leaves.map(([path, value]) => ({ path, value }));
  return { ...beside, [side]: withEdits({ name: record.name, ...fields }, edits) };
}

type Standing = Pick<Answered, 'readings' | 'inUse'>;

function leavesOf(record: Standing | null): Record<string, unknown> {
  return Object.fromEntries(
    Object.keys(record?.inUse ?? {}).map((field) => [field, readingInUse(record, field)?.leaf ?? null]),
  );
}

function couplerKindOf({ fields, over }: Answered): CouplerKind {
  const kind = fields['kind'] ?? over?.fields['kind'];
  return couplerKinds.find((known) => known === kind) ?? 'uFrame';
}

/** The reading whose value a field has. */
export function readingInUse(record: Standing | null, field: string): Reading | null {
  const id = record?.inUse[field]?.id;
  return record?.readings.find((reading) => reading.id === id) ?? null;
}

/**
 * The reading whose value a check takes for a field: the record’s own, but where that gives no figure, the one of what it stands on; as the
 * store makes its setups.
 */
export function readingTaken(
  record: Answered,
  field: string,
): { readonly reading: Reading; readonly isOwn: boolean } | null {
  const own = readingInUse(record, field);
  const below = readingInUse(record.over ?? null, field);
  if (own !== null && (isFigure(own.leaf) || below === null || !isFigure(below.leaf)))
    return { reading: own, isOwn: true };
  return below === null ? null : { reading: below, isOwn: false };
}

function isFigure(leaf: unknown): boolean {
  return leaf !== null && (leaf as { readonly unknown?: unknown }).unknown !== true;
}

/** Readings of one field that stand side by side, the one in use first. */
export function readingsOf(record: Standing | null, field: string): readonly Reading[] {
  const used = record?.inUse[field]?.id;
  const all = (record?.readings ?? []).filter((reading) => reading.field === field && reading.withdrawnAt === null);
  return [...all].sort((a, b) => Number(b.id === used) - Number(a.id === used));
}

/** What a reading says, in the person’s units. */
export function leafText(leaf: unknown, rule: FieldRule, system: UnitSystem): string {
  const text = readText(readValue(leaf, rule, '', system).value, rule, system).replace(/^= /, '');
  return text === '' ? 'not known' : text;
}

/** A chosen field as it stands, with what it stands on behind it. */
export function plainAt({ fields, over }: Answered, field: string): unknown {
  return atPath(fields, field) ?? atPath(over?.fields ?? {}, field);
}
