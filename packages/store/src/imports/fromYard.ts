import { atPath, type SetupDocument, type YardDocument } from '@hitchwright/core/records';
import type { UnitSystem } from '@hitchwright/core/units';
import type { Fields, ReadingDraft, RecordDraft, RecordKind } from '../records/kinds.ts';
import { edited, flattened } from '../records/paths.ts';
import { gradeOf } from '../records/newReading.ts';
import { recordKindOfPart, ruleAt } from '../records/sizes.ts';
import type { ImportRow } from './rows.ts';

/**
 * The rows of a yard document, such as the sample yard: its tractors, couplers, implements and parts, each quantity as a reading.
 *
 * @param yard the yard [JSON]
 * @returns rows for an import [list]
 */
export function yardRows(yard: YardDocument): ImportRow[] {
  const common = { sample: yard.sample === true, ...(yard.units === undefined ? {} : { units: yard.units }) };
  const rows = (kind: RecordKind, documents: readonly SetupDocument[]): ImportRow[] =>
    documents.map((document) => ({ kind, ...split(kind, document), ...common }));
  const parts = (yard.parts ?? []).map((part): ImportRow => {
    const kind = recordKindOfPart(part['kind']);
    return { kind, ...split(kind, kind === 'shaft' ? shaftOf(part) : part), ...common };
  });
  return [
    ...rows('tractor', yard.tractors),
    ...rows('coupler', yard.couplers),
    ...rows('implement', yard.implements),
    ...parts,
  ];
}

/**
 * A machine of a setup, or its drive shaft, as a record to be made: each quantity as a reading.
 *
 * @param kind what it stands for [name]
 * @param document it as it stands in the setup [JSON]
 * @param units what a text without a unit was typed in [us | metric]
 * @returns the record [record]
 */
export function draftFrom(kind: SetupKind, document: SetupDocument, units?: UnitSystem): RecordDraft {
  return { kind, ...split(kind, document), ...(units === undefined ? {} : { units }) };
}

/** Kinds that stand in a setup by themselves. */
export const setupKinds = ['tractor', 'coupler', 'implement', 'shaft'] as const;
type SetupKind = (typeof setupKinds)[number];

/** The drive shaft inside a part, with what the part says of it. */
function shaftOf({ shaft, name, fits, price }: SetupDocument): SetupDocument {
  const document = typeof shaft === 'object' && shaft !== null ? (shaft as SetupDocument) : {};
  return { ...document, name, fits, price };
}

/** Name, plain fields and readings of a record as it stands in a document. */
function split(kind: RecordKind, document: SetupDocument): Pick<ImportRow, 'name' | 'fields' | 'readings'> {
  const { name, ...rest } = document;
  const paths = readingPaths(kind, document, rest);
  const readings = paths.map((field): ReadingDraft => {
    const leaf = atPath(rest, field);
    return { field, leaf, grade: gradeOf(leaf) };
  });
  const fields = edited(
    rest,
    paths.map((path) => ({ path, value: null })),
  );
  return { name: typeof name === 'string' ? name : '', fields, readings };
}

/** Paths of the quantities, each where its leaf begins. */
function readingPaths(kind: RecordKind, document: SetupDocument, rest: Fields): string[] {
  const starts = [...flattened(rest).keys()].flatMap((path) => {
    const keys = path.split('.');
    return keys.map((_, i) => keys.slice(0, i + 1).join('.'));
  });
  return [...new Set(starts)].filter((path) => ruleAt(kind, document, path) !== undefined);
}
