import { readSetup } from './readSetup.ts';
import type { InputError } from './inputError.ts';
import type { SetupDocument } from './setup.ts';

/** A yard as it is written: records of each kind, in the form they take inside a setup. */
export interface YardDocument {
  readonly hitchwright: 1;
  readonly sample?: boolean;
  readonly note?: string;
  readonly units?: 'us' | 'metric';
  readonly tractors: readonly SetupDocument[];
  readonly couplers: readonly SetupDocument[];
  readonly implements: readonly SetupDocument[];
  readonly parts?: readonly SetupDocument[];
}

/**
 * The setup document of one tractor, one implement and perhaps a coupler of the yard, with the drive shaft among the parts
 * that is meant for this implement by name.
 *
 * @param yard the yard [JSON]
 * @param tractor a tractor of it [JSON]
 * @param coupler a coupler of it, or null for none [JSON]
 * @param implement an implement of it [JSON or record]
 * @returns a setup document [JSON]
 */
export function setupFrom(
  yard: YardDocument,
  tractor: SetupDocument,
  coupler: SetupDocument | null,
  implement: SetupDocument,
): SetupDocument {
  const name = implement['name'];
  const isMeantFor = (part: SetupDocument): boolean => Array.isArray(part['fits']) && part['fits'].includes(name);
  const fits = (part: SetupDocument): boolean => !Array.isArray(part['fits']) || isMeantFor(part);
  const shaft = yard.parts?.find((part) => part['kind'] === 'driveShaft' && isMeantFor(part))?.['shaft'];
  return {
    hitchwright: 1,
    ...(yard.units === undefined ? {} : { units: yard.units }),
    tractor,
    ...(coupler === null ? {} : { coupler }),
    implement,
    ...(shaft === undefined ? {} : { shaft }),
    ...(yard.parts === undefined ? {} : { parts: yard.parts.filter(fits) }),
  };
}

/**
 * Every error in a yard's records, each found by reading the record inside a setup.
 *
 * @param yard the yard [JSON]
 * @returns every error, by record [list]
 */
export function yardErrors(yard: YardDocument): InputError[] {
  const at = (list: string, i: number, setup: SetupDocument, within: string): InputError[] => {
    const reading = readSetup(setup);
    if (reading.ok) return [];
    return reading.errors
      .filter(({ path }) => path.startsWith(within))
      .map((error) => ({ ...error, path: error.path.replace(within, `${list}.${i}`) }));
  };
  const units = yard.units === undefined ? {} : { units: yard.units };
  const empty = { hitchwright: 1, ...units, tractor: {}, implement: {} };
  return [
    ...yard.tractors.flatMap((tractor, i) => at('tractors', i, { ...empty, tractor }, 'tractor')),
    ...yard.couplers.flatMap((coupler, i) => at('couplers', i, { ...empty, coupler }, 'coupler')),
    ...yard.implements.flatMap((implement, i) => at('implements', i, { ...empty, implement }, 'implement')),
    ...(yard.parts ?? []).flatMap((part, i) => at('parts', i, { ...empty, parts: [part] }, 'parts.0')),
  ];
}
