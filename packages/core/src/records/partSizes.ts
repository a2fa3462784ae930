import { implementFields, pinFields } from './fields.ts';
import type { FieldRule } from './value.ts';

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

/**
 * Quantities of a part by its kind as parts are told apart in a setup.
 *
 * @param kind kind of part, as a setup has it [name]
 * @returns what each of its figures accepts, by its key; nothing where the kind is not known [canonical units]
 */
export function partSizesOf(kind: unknown): Readonly<Record<string, FieldRule>> {
  return typeof kind === 'string' && Object.hasOwn(partSizes, kind) ? (partSizes[kind] ?? {}) : {};
}
