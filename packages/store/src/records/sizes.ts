import { fieldRules, implementFields, pinFields, type FieldRule } from '@hitchwright/core/records';
import type { Fields, RecordKind } from './kinds.ts';

/** A size whose own limits are kept by the reader of parts; here it is only compared with others. */
function size(dimension: FieldRule['dimension'], label: string): FieldRule {
  return { dimension, min: 0, max: 100_000, label, measure: '' };
}

const { lowerBushingInside, lowerBushingOutside, lowerBushingLength, upperBushingInside, upperBushingOutside } =
  pinFields;
const weight = { mass: size('mass', 'mass') };

/** Quantities of each kind of part on the shelf. */
const partSizes: Readonly<Record<string, Readonly<Record<string, FieldRule>>>> = {
  lowerBushings: { inside: lowerBushingInside, outside: lowerBushingOutside, length: lowerBushingLength },
  upperBushing: { inside: upperBushingInside, outside: upperBushingOutside },
  lowerPins: {
    diameter: pinFields.lowerPinDiameter,
    shoulderSpan: pinFields.shoulderSpan,
    standOut: pinFields.standOut,
    shoulderToHole: pinFields.shoulderToHole,
  },
  upperPinPlate: { mastHeight: pinFields.mastHeight, mastSetback: pinFields.mastSetback },
  clevisSpacers: { gapAfter: pinFields.clevisGap },
  pinBalls: {
    bore: implementFields.pinBallBore,
    diameter: implementFields.pinBallDiameter,
    width: implementFields.pinBallWidth,
  },
  stubExtender: { length: size('length', 'length') },
  frontWeights: weight,
  wheelWeights: weight,
};
const weightKinds = ['frontWeights', 'wheelWeights'];

/** Quantities of a part by its kind as parts are told apart in a setup. */
export function sizesOf(fields: Fields): Readonly<Record<string, FieldRule>> {
  const { kind } = fields;
  return typeof kind === 'string' && Object.hasOwn(partSizes, kind) ? (partSizes[kind] ?? {}) : {};
}

/** Kind of the record that a part of a setup is kept as. */
export function recordKindOfPart(kind: unknown): 'shaft' | 'weight' | 'part' {
  if (kind === 'driveShaft') return 'shaft';
  return typeof kind === 'string' && weightKinds.includes(kind) ? 'weight' : 'part';
}

/** What a field that takes readings accepts; none where the path is a plain field. */
export function ruleAt(kind: RecordKind, fields: Fields, path: string): FieldRule | undefined {
  if (kind !== 'part' && kind !== 'weight') return fieldRules.get(`${kind}.${path}`);
  const sizes = sizesOf(fields);
  return Object.hasOwn(sizes, path) ? sizes[path] : undefined;
}
