import type { ReadingGrade } from '../../../records/index.ts';
import { catalogues } from '../catalogue/catalogue.ts';
import type { Plain } from '../cells/plainCell.ts';
import type { RowKind } from '../kinds.ts';
import { identityOf, keyOf } from './identity.ts';
import type { ProposedReading, ProposedRecord } from './record.ts';

/**
 * A record out of the form that it has inside a setup or yard document, so that it can be written into a table.
 *
 * @param kind what it is [kind]
 * @param document the record as a document has it [JSON]
 * @param grade how well its figures are founded [grade]
 * @returns the record, with what it says at paths of fields that its kind has [record]
 */
export function recordOf(
  kind: RowKind,
  document: Readonly<Record<string, unknown>>,
  grade: ReadingGrade = 'listed',
): ProposedRecord {
  const fields: Record<string, Plain> = {};
  const readings: Record<string, ProposedReading> = {};
  for (const [path, spec] of catalogues[kind]) {
    const value = at(document, path);
    if (value === undefined || value === null) continue;
    if (spec.form === 'quantity') readings[path] = { leaf: value, grade };
    else fields[path] = value as Plain;
  }
  const record = {
    kind,
    name: typeof document['name'] === 'string' ? document['name'] : '',
    id: null,
    fields,
    readings,
  };
  return { ...record, key: keyOf(identityOf(record)) };
}

function at(document: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((node, key) => (node as Record<string, unknown> | null | undefined)?.[key], document);
}
