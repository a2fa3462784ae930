import { folded } from '../headings/words.ts';
import type { Column, Mapping, MappingTold } from './mapping.ts';

/**
 * The headings of a mapping as one text, whatever their order: mappings with the same text are of sheets that are headed alike.
 *
 * @param mapping a mapping [record]
 * @returns a text to remember it by [text]
 */
export function headingsKey(mapping: Pick<Mapping, 'columns'>): string {
  const headings = mapping.columns.map(({ heading }) => folded(heading)).filter((heading) => heading !== '');
  return [...new Set(headings)].sort().join('|');
}

/** A mapping with what was chosen the last time for the same headings, where there was one. */
export function remembering(mapping: Mapping, remembered: readonly Mapping[], told: MappingTold[]): Mapping {
  const key = headingsKey(mapping);
  const before = remembered.find((each) => headingsKey(each) === key);
  if (before === undefined || key === '') return mapping;
  told.splice(0, told.length);
  told.push({
    column: null,
    row: null,
    sentence: 'A sheet with these headings was read before: its columns are taken as they were chosen then.',
  });
  const columns = mapping.columns.map((column) => asBefore(column, before));
  const { kind, otherKinds, system } = before;
  return { ...mapping, kind, ...(otherKinds === undefined ? {} : { otherKinds }), system, columns };
}

function asBefore(column: Column, before: Mapping): Column {
  const same = before.columns.find((each) => each.heading !== '' && folded(each.heading) === folded(column.heading));
  return same === undefined ? column : { ...same, letter: column.letter, heading: column.heading };
}
