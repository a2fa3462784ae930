import { editedByHand, setupFrom, type SetupDocument } from '@hitchwright/core/records';
import { nameOf, recordNamed, sampleYard, type Machine } from '../yard/sampleYard.ts';

/** The machines of a question that have no name yet. */
const unnamed: Readonly<Record<Machine, string>> = {
  implement: 'implement without a name',
  tractor: 'tractor without a name',
  coupler: 'coupler without a name',
};

/** The record of a machine, or of the drive shaft, in a document that may be of any shape; null where there is none. */
export function recordAt(document: SetupDocument | null, machine: Machine | 'shaft'): SetupDocument | null {
  const record = document?.[machine];
  return typeof record === 'object' && record !== null ? (record as SetupDocument) : null;
}

/** What a chosen machine is called in the question: its name, or what is known of it. */
export function calledIn(document: SetupDocument | null, machine: Machine): string | null {
  const record = recordAt(document, machine);
  if (record === null) return null;
  const category = record['category'];
  return nameOf(record, typeof category === 'string' ? `category ${category} ${machine}` : unnamed[machine]);
}

/** Whether enough is chosen to be answered. */
export function isWhole(document: SetupDocument | null): document is SetupDocument {
  return recordAt(document, 'tractor') !== null && recordAt(document, 'implement') !== null;
}

/**
 * The document with another machine in it. The shelf of parts, and the drive shaft that is meant for an
 * implement by name, come and go with its implements.
 */
export function withMachine(
  document: SetupDocument | null,
  machine: Machine,
  record: SetupDocument | null,
  beside: Beside = record === null ? {} : besideImplement(record),
): SetupDocument {
  const base = document ?? { hitchwright: 1 };
  const changed = editedByHand(base, [{ path: machine, value: record ?? undefined }]);
  if (machine !== 'implement') return changed;
  return editedByHand(changed, [
    { path: 'parts', value: beside.parts },
    { path: 'shaft', value: beside.shaft },
  ]);
}

/** What lies on a shelf for an implement. */
interface Beside {
  readonly parts?: unknown;
  readonly shaft?: unknown;
}

function besideImplement(implement: SetupDocument): Beside {
  if (recordNamed('implement', nameOf(implement, '')) === null) return {};
  return setupFrom(sampleYard, {}, null, implement);
}

/** Names of the machines in a document that are records of the sample yard. */
export function sampleNames(document: SetupDocument): string[] {
  return (['tractor', 'coupler', 'implement'] as const)
    .map((machine) => ({ machine, name: nameOf(recordAt(document, machine), '') }))
    .filter(({ machine, name }) => name !== '' && recordNamed(machine, name) !== null)
    .map(({ name }) => name);
}
