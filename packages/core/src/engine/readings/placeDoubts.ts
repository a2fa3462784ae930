import type { SetupDocument } from '../../records/index.ts';
import { bushings, highestOf, lowestOf } from '../../tables/index.ts';
import { add, holds, interval, middle, scale, subtract, type Interval } from '../geometry/index.ts';
import type { Doubt, DoubtOfPlace } from './doubt.ts';
import { besideOf, knownAt, likelyAt, signOf } from './known.ts';
import { fieldOfPart } from './parts.ts';
import { collars, coating, usualPlate, wear } from './usual.ts';

/**
 * Readings of another place or of another thing than asked for, told by what else is known of the machine.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, or one end of what can be set [text]
 * @param value the reading, not what its class can have [canonical unit]
 * @param couldBe what its class can have, as its tool reads it [canonical unit]
 * @returns doubts, the nearest to the middle of its class first [list]
 */
export function placeDoubts(document: SetupDocument, path: string, value: number, couldBe: Interval): Doubt[] {
  const field = fieldOfPart(path);
  if (field.endsWith('.shoulderSpan')) return spanDoubts(document, field, value, couldBe);
  return /\.(lower|upper)PinDiameter$/.test(field) ? diameterDoubts(field, value, couldBe) : [];
}

function spanDoubts(document: SetupDocument, field: string, value: number, couldBe: Interval): Doubt[] {
  const sign = signOf(document, field);
  const ball = knownAt(document, 'tractor.lowerBallWidth');
  const standOut = knownAt(document, besideOf(field, 'standOut'));
  const plates = scale(likelyAt(document, besideOf(field, 'plateThickness')) ?? usualPlate, 2);
  const read = interval(value, value);
  const inward = sign === -1;
  const readings: readonly (readonly [DoubtOfPlace, Interval])[] = [
    ['centres', subtract(read, scale(ball, sign))],
    ['tips', subtract(read, scale(standOut, 2 * sign))],
    ['insidePlates', inward ? subtract(read, collars) : add(read, add(plates, collars))],
    ['outsidePlates', inward ? subtract(read, add(plates, collars)) : add(read, collars)],
  ];
  const nominal = middle(couldBe);
  return readings
    .map(([kind, { low, high }]) => ({ kind, low: Math.max(low, couldBe.low), high: Math.min(high, couldBe.high) }))
    .filter(({ low, high }) => low <= high)
    .map(({ kind, ...range }) => ({ kind, meant: middle(range) }))
    .sort((a, b) => Math.abs(a.meant - nominal) - Math.abs(b.meant - nominal));
}

/** How far a bushing’s outside may be off its size [mm]. Our own. */
const bushingSpread = 0.8;

/** As thick as a bushing, worn, or with paint and rust on it. */
function diameterDoubts(field: string, value: number, couldBe: Interval): Doubt[] {
  const place = field.endsWith('lowerPinDiameter') ? 'lower' : 'upper';
  const sleeves = bushings
    .filter((bushing) => bushing.place === place)
    .map(({ outside }) => interval(lowestOf(outside) - bushingSpread, highestOf(outside) + bushingSpread));
  if (value > couldBe.high && sleeves.some((outside) => holds(outside, value))) return [{ kind: 'bushing' }];
  if (value < couldBe.low && value >= couldBe.low - wear.high) return [{ kind: 'worn' }];
  return value > couldBe.high && value <= couldBe.high + coating.high ? [{ kind: 'coated' }] : [];
}
