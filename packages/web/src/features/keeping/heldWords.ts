import { counted } from '../history/whenText.ts';

const told: readonly (readonly [table: string, one: string, many: string])[] = [
  ['record', 'record', 'records'],
  ['reading', 'reading', 'readings'],
  ['answer', 'saved answer', 'saved answers'],
  ['photo', 'photo', 'photos'],
  ['change_group', 'group of changes', 'groups of changes'],
];

/** What a backup holds, in the words of the yard. */
export function heldWords(counts: Readonly<Record<string, number>>): string {
  const held = told.filter(([table]) => (counts[table] ?? 0) > 0);
  return held.length === 0
    ? 'nothing'
    : held.map(([table, one, many]) => counted(counts[table] ?? 0, one, many)).join(', ');
}
