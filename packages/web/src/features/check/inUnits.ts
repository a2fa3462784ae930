import {
  atPath,
  chosenIn,
  fieldRules,
  shaftFields,
  withChosen,
  withEdits,
  type Edit,
  type FieldRule,
  type SetupDocument,
} from '@hitchwright/core/records';
import { readQuantity, unitNameIn, type UnitSystem } from '@hitchwright/core/units';

/**
 * The document with figures without a unit read in a system from now on; those that are in it already get the unit that
 * they were read in, so that nothing changes its meaning.
 */
export function inUnits(document: SetupDocument, system: UnitSystem): SetupDocument {
  const before: UnitSystem = document['units'] === 'metric' ? 'metric' : 'us';
  if (document['units'] === system) return document;
  const parts = document['parts'];
  const shelf = Array.isArray(parts) ? [{ path: 'parts', value: parts.map((part) => partInUnits(part, before)) }] : [];
  const chosen = chosenIn(document).map((cure) => ({
    ...cure,
    edits: cure.edits.map((edit) => editInUnits(edit, before)),
  }));
  const fields = fieldsInUnits(document, before);
  return withChosen(withEdits(fields, [...shelf, { path: 'units', value: system }]), chosen);
}

function fieldsInUnits(document: SetupDocument, before: UnitSystem): SetupDocument {
  const edits = [...fieldRules].flatMap(([path, rule]): Edit[] => {
    const raw = atPath(document, path);
    return raw === undefined ? [] : [{ path, value: withUnit(raw, rule, before) }];
  });
  return withEdits(document, edits);
}

/** What a cure sets: one field, or all that are below it. */
function editInUnits(edit: Edit, before: UnitSystem): Edit {
  return { path: edit.path, value: atPath(fieldsInUnits(withEdits({}, [edit]), before), edit.path) };
}

/** Sizes of a part are lengths, but for the mass of a weight and the fields of a drive shaft. */
function partInUnits(part: unknown, before: UnitSystem): unknown {
  const mass = atPath(part, 'mass');
  if (mass !== undefined)
    return withEdits(part as SetupDocument, [{ path: 'mass', value: withUnit(mass, { dimension: 'mass' }, before) }]);
  const shaft = atPath(part, 'shaft');
  if (typeof shaft !== 'object' || shaft === null) return withUnit(part, { dimension: 'length' }, before);
  const edits = Object.entries(shaftFields).flatMap(([key, rule]): Edit[] => {
    const raw = atPath(shaft, key);
    return raw === undefined ? [] : [{ path: `shaft.${key}`, value: withUnit(raw, rule, before) }];
  });
  return withEdits(part as SetupDocument, edits);
}

/** What is measured, and between which limits where they are known. */
type Measured = Pick<FieldRule, 'dimension'> & Partial<Pick<FieldRule, 'min' | 'max'>>;

/** Every text of a field's value that is a figure in the old system only. */
function withUnit(raw: unknown, measured: Measured, before: UnitSystem): unknown {
  if (typeof raw === 'string') return textWithUnit(raw, measured, before);
  if (Array.isArray(raw)) return raw.map((entry: unknown) => withUnit(entry, measured, before));
  if (typeof raw !== 'object' || raw === null) return raw;
  const { dimension } = measured;
  return Object.fromEntries(
    Object.entries(raw).map(([key, value]) => {
      if (isWords(key)) return [key, value];
      return [key, withUnit(value, key === 'plusMinus' ? { dimension } : measured, before)];
    }),
  );
}

/**
 * A figure that the system it was typed in reads, and the other reads as another one or, as it does a fraction, not at all:
 * it gets its unit. What was a mistake already stays as it was typed, for the other system may be the one that was meant.
 */
function textWithUnit(text: string, measured: Measured, before: UnitSystem): string {
  const was = read(text, measured, before);
  const becomes = read(text, measured, before === 'us' ? 'metric' : 'us');
  return was === null || was === becomes ? text : `${text.trim()} ${unitNameIn(before, measured.dimension)}`;
}

function read(text: string, { dimension, min, max }: Measured, assume: UnitSystem): number | null {
  const range = min === undefined || max === undefined ? {} : { range: { min, max } };
  const reading = readQuantity(text, { dimension, assume, ...range });
  return reading.ok ? reading.value : null;
}

function isWords(key: string): boolean {
  return [
    'from',
    'method',
    'tool',
    'who',
    'when',
    'source',
    'note',
    'name',
    'kind',
    'fits',
    'default',
    'setting',
  ].includes(key);
}
