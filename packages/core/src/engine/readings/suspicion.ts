import type { SetupDocument } from '../../records/index.ts';
import { add, hull, interval, scale, type Interval } from '../geometry/index.ts';
import { besideOf, knownAt, likelyAt } from './known.ts';
import { collars, usualPlate } from './usual.ts';

/** What a difference between two readings of one figure looks like. */
export type Suspicion =
  /** Another edge of a pin. */
  | 'edges'
  /** Two sides that don’t stand alike. */
  | 'uneven'
  /** Ball centres for steps; tips for steps; plates for steps. */
  | 'centres'
  | 'tips'
  | 'plates'
  /** Another face of balls or hooks. */
  | 'faces'
  /** Groove for end of a splined shaft; yokes for crosses. */
  | 'groove'
  | 'yokes';

/** How far apart two sides of a lift stand before the arms want levelling [mm]. Common practice, no source. */
const uneven = interval(10, Infinity);

/** How far a mistake moves a reading [mm]; null where too little is known beside it. */
type Shift = (document: SetupDocument, path: string) => Interval | null;

/** The pin that a height is read at, or the hole that takes it. */
const pinOf: Shift = (document, path) => {
  if (path.startsWith('tractor.')) return likelyAt(document, 'tractor.lowerBallBore');
  return likelyAt(document, besideOf(path, 'lowerPinDiameter').replace(/^coupler\.(?!front)/, 'implement.'));
};
const half = (range: Interval | null): Interval | null => (range === null ? null : scale(range, 0.5));
const twice = (range: Interval | null): Interval | null => (range === null ? null : scale(range, 2));
const beside =
  (field: string): Shift =>
  (document, path) =>
    likelyAt(document, besideOf(path, field));
const ofTractor =
  (field: string): Shift =>
  (document) =>
    likelyAt(document, `tractor.${field}`);

const onePin: [Suspicion, Shift] = ['edges', pinOf];
const halfPin: [Suspicion, Shift] = ['edges', (document, path) => half(pinOf(document, path))];
const twoSides: [Suspicion, Shift] = ['uneven', () => uneven];

/** By field, without its machine: what two readings of it are told apart by. */
const shifts: readonly (readonly [RegExp, readonly (readonly [Suspicion, Shift])[]])[] = [
  [
    /\.shoulderSpan$/,
    [
      ['centres', ofTractor('lowerBallWidth')],
      ['tips', (document, path) => twice(beside('standOut')(document, path))],
      onePin,
      ['plates', plateShift],
    ],
  ],
  [/\.(mastHeight|topHookHeight)$/, [halfPin, onePin]],
  [/\.(ballHeight\w+|parkedPinHeight|workPinHeight)$/, [twoSides, halfPin, onePin]],
  [/\.tyreRadius$/, [twoSides]],
  [
    /\.ballSpan$/,
    [
      ['faces', ofTractor('lowerBallWidth')],
      ['faces', (document, path) => twice(ofTractor('lowerBallWidth')(document, path))],
    ],
  ],
  [
    /\.hookSpan$/,
    [
      ['faces', beside('hookWidth')],
      ['faces', (document, path) => twice(beside('hookWidth')(document, path))],
    ],
  ],
  [
    /\.stubBehindAxle$/,
    [
      ['groove', beside('stubGrooveToEnd')],
      ['yokes', (document) => likelyAt(document, 'shaft.yokeReachFront')],
    ],
  ],
  [
    /\.inputBehind$/,
    [
      ['groove', beside('inputGrooveToEnd')],
      ['yokes', (document) => likelyAt(document, 'shaft.yokeReachRear')],
    ],
  ],
  [/\.closedLength$/, [['yokes', yokeShift]]],
];

function plateShift(document: SetupDocument, path: string): Interval {
  const plate = likelyAt(document, besideOf(path, 'plateThickness')) ?? usualPlate;
  const inner = add(scale(plate, 2), collars);
  return interval(usualCollars, inner.high);
}

/** Past both crosses: to the ends of the shafts that the yokes sit on at least, to the ends of the yokes at most. */
function yokeShift(document: SetupDocument): Interval {
  const [reach, over] = ['shaft.yokeReachFront', 'shaft.yokeOverCross'].map((path) => knownAt(document, path));
  return scale(hull(reach as Interval, over as Interval), 2);
}

/** Two collars that were left out [mm]. Our own. */
const usualCollars = 10;

/**
 * What a difference between readings comes from, by its size.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, with dots [text]
 * @param apart the difference [canonical unit]
 * @param accuracy how far each reading may be off [canonical unit]
 * @returns suspicions, each once, the most telling first [names]
 */
export function suspicionsOf(
  document: SetupDocument,
  path: string,
  apart: number,
  accuracy: number,
): readonly Suspicion[] {
  const [, candidates = []] = shifts.find(([fields]) => fields.test(path)) ?? [];
  const found = candidates.filter(([, shift]) => {
    const range = shift(document, path);
    return range !== null && apart >= range.low - 2 * accuracy && apart <= range.high + 2 * accuracy;
  });
  return [...new Set(found.map(([kind]) => kind))];
}
