import { fieldRules, atPath, shaftFields, withEdits, type Edit, type SetupDocument } from '@hitchwright/core/records';
import { readQuantity, unitNameIn, type Dimension, type UnitSystem } from '@hitchwright/core/units';

/**
 * The document with figures without a unit read in a system from now on; those that are in it already get the unit that
 * they were read in, so that nothing changes its meaning.
 */
export function inUnits(document: SetupDocument, system: UnitSystem): SetupDocument {
  const before: UnitSystem = document['units'] === 'metric' ? 'metric' : 'us';
  if (document['units'] === system) return document;
  const edits = [...fieldRules].flatMap(([path, rule]): Edit[] => {
    const raw = atPath(document, path);
    return raw === undefined ? [] : [{ path, value: withUnit(raw, rule.dimension, before) }];
  });
  const parts = document['parts'];
  const shelf = Array.isArray(parts) ? [{ path: 'parts', value: parts.map((part) => partInUnits(part, before)) }] : [];
  return withEdits(document, [...edits, ...shelf, { path: 'units', value: system }]);
}

/** Sizes of a part are lengths, but for the mass of a weight and the fields of a drive shaft. */
function partInUnits(part: unknown, before: UnitSystem): unknown {
  const mass = atPath(part, 'mass');
  if (mass !== undefined)
    return withEdits(part as SetupDocument, [{ path: 'mass', value: withUnit(mass, 'mass', before) }]);
  const shaft = atPath(part, 'shaft');
  if (typeof shaft !== 'object' || shaft === null) return withUnit(part, 'length', before);
  const edits = Object.entries(shaftFields).flatMap(([key, { dimension }]): Edit[] => {
    const raw = atPath(shaft, key);
    return raw === undefined ? [] : [{ path: `shaft.${key}`, value: withUnit(raw, dimension, before) }];
  });
  return withEdits(part as SetupDocument, edits);
}

/** Every text of a field's value that is a figure in the old system only. */
function withUnit(raw: unknown, dimension: Dimension, before: UnitSystem): unknown {
  if (typeof raw === 'string') return isBare(raw, dimension) ? `${raw} ${unitNameIn(before, dimension)}` : raw;
  if (Array.isArray(raw)) return raw.map((entry: unknown) => withUnit(entry, dimension, before));
  if (typeof raw !== 'object' || raw === null) return raw;
  return Object.fromEntries(
    Object.entries(raw).map(([key, value]) => [key, isWords(key) ? value : withUnit(value, dimension, before)]),
  );
}

/** A figure whose size hangs on the system that is assumed. */
function isBare(text: string, dimension: Dimension): boolean {
  const us = readQuantity(text, { dimension, assume: 'us' });
  const metric = readQuantity(text, { dimension, assume: 'metric' });
  return us.ok && metric.ok && us.value !== metric.value;
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
