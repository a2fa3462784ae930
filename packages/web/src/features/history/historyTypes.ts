import { said, yard } from '../../app/server/yard.ts';
import type { Kind } from '../records/kinds.ts';

/** A group of changes that were made as one. */
export type Group = Awaited<ReturnType<typeof groupsOf>>['items'][number];
/** One thing that changed. */
export type Line = Awaited<ReturnType<typeof linesOf>>['items'][number];
export type GroupKind = Group['kind'];

/** Kinds of groups as they are chosen; null for all. */
export const groupKinds = [
  [null, 'Everything'],
  ['edit', 'By hand'],
  ['import', 'Imports'],
  ['undo', 'Taken back'],
  ['sample', 'Sample yard'],
  ['forget', 'Deleted customers'],
] as const;

/** Groups and lines that are fetched at a time. */
const pageSize = '50';
const linesAtOnce = '200';

/** A page of groups, the latest first. */
export function groupsOf(kind: (typeof groupKinds)[number][0], cursor: string | null, signal: AbortSignal) {
  const query = {
    limit: pageSize,
    ...(kind === null ? {} : { kind }),
    ...(cursor === null ? {} : { cursor }),
  };
  return said(yard.history.$get({ query }, { init: { signal } }));
}

/** A page of what a group changed. */
export function linesOf(id: string, cursor: string | null, signal: AbortSignal) {
  const query = { limit: linesAtOnce, ...(cursor === null ? {} : { cursor }) };
  return said(yard.history[':id'].$get({ param: { id }, query }, { init: { signal } }));
}

/** A record by its name and kind. */
export interface Named {
  readonly name: string;
  readonly kind: Kind;
}

/** The record as a group made it; null where it was there before. */
export function madeIn(lines: readonly Line[]): Named | null {
  const made = lines.find(({ what, key }) => what === 'record' && key === 'created');
  return made === undefined ? null : (made.after as unknown as Named);
}

/** What a group is called: its title, or what it was. */
export function titleOf({ kind, title, records, undoes }: Group): string {
  if (kind === 'undo' || undoes !== null) return title === '' ? 'Taken back' : `Taken back: ${title}`;
  if (title !== '') return title;
  switch (kind) {
    case 'import':
      return 'Import';
    case 'sample':
      return 'The sample yard was taken out';
    case 'forget':
      return 'A customer was deleted for good';
    case 'edit':
      return records === 1 ? 'A record was changed' : 'Records were changed';
  }
}
