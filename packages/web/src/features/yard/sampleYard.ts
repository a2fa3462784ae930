import type { SetupDocument, YardDocument } from '@hitchwright/core/records';
import yard from '../../../../../examples/sample-yard.json';

/** The invented yard that comes with the site. */
export const sampleYard = yard as unknown as YardDocument;

/** The machines that a question names. */
export type Machine = 'implement' | 'tractor' | 'coupler';

/** The yard's records of one kind. */
export function recordsOf(machine: Machine): readonly SetupDocument[] {
  if (machine === 'tractor') return sampleYard.tractors;
  return machine === 'coupler' ? sampleYard.couplers : sampleYard.implements;
}

/** What a record is called. */
export function nameOf(record: SetupDocument | null | undefined, instead: string): string {
  const name = record?.['name'];
  return typeof name === 'string' && name.trim() !== '' ? name : instead;
}

/** The yard's record of that name. */
export function recordNamed(machine: Machine, name: string): SetupDocument | null {
  return recordsOf(machine).find((record) => record['name'] === name) ?? null;
}

/** The machines of the worked example: a box blade whose upper pin sits too high for the coupler. */
export const exampleNames = {
  tractor: 'Ostrey 35',
  coupler: 'Pellin U-28',
  implement: 'Wickset 60-in box blade',
} as const;
