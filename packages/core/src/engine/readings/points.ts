import { fieldRules, type SetupDocument } from '../../records/index.ts';
import { add, hull, scale, subtract, type Interval } from '../geometry/index.ts';
import { knownAt, signOf, valueAt } from './known.ts';

/**
 * A reading between other points, as if it were taken between the field’s own: the same conversions as the engine makes, over
 * everything that the lengths beside it may be.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, with dots [text]
 * @param from the points that it was read between; the field’s own where left out [name]
 * @param read the reading [canonical unit]
 * @returns the same between the field’s own points [canonical unit]
 */
export function betweenOwnPoints(
  document: SetupDocument,
  path: string,
  from: string | undefined,
  read: Interval,
): Interval {
  const [own] = fieldRules.get(path)?.from ?? [];
  if (from === undefined || from === own) return read;
  const convert = conversions[path.slice(path.lastIndexOf('.') + 1)]?.[from];
  return convert === undefined ? read : convert(read, document, path);
}

type Convert = (read: Interval, document: SetupDocument, path: string) => Interval;

const ballWidth = (document: SetupDocument): Interval => knownAt(document, 'tractor.lowerBallWidth');

const fromBalls: Convert = (read, document, path) => {
  const width = ballWidth(document);
  return signOf(document, path) === 1 ? subtract(read, width) : add(read, width);
};

/** From the groove of the shaft that a yoke sits on to its end, and to the cross of the joint. */
function beyondGroove(document: SetupDocument, path: string): { end: Interval; cross: Interval } {
  const isTractor = path.startsWith('tractor') || path.endsWith('Front');
  const end = knownAt(document, isTractor ? 'tractor.stubGrooveToEnd' : 'implement.inputGrooveToEnd');
  const yoke = isTractor ? 'shaft.yokeReachFront' : 'shaft.yokeReachRear';
  const reach = knownAt(document, yoke);
  const isFromGroove = valueAt(document, yoke)?.provenance.from === 'groove';
  return { end, cross: isFromGroove ? reach : add(end, reach) };
}

/** Behind the axle, groove, end and cross of the stub lie in this order; behind the pins, those of the input shaft the other way. */
const fromBeyond =
  (point: 'end' | 'cross'): Convert =>
  (read, document, path) => {
    const beyond = beyondGroove(document, path)[point];
    return path.startsWith('tractor') ? subtract(read, beyond) : add(read, beyond);
  };

const shaftEnds = { shaftEnd: fromBeyond('end'), crossCentre: fromBeyond('cross') };
const reaches: Readonly<Record<string, Convert>> = {
  groove: (read, document, path) => subtract(read, beyondGroove(document, path).end),
};

const conversions: Readonly<Record<string, Readonly<Record<string, Convert>>>> = {
  shoulderSpan: {
    ballCentre: fromBalls,
    unsaid: (read, document, path) => hull(read, fromBalls(read, document, path)),
  },
  ballSpan: {
    innerFaces: (read, document) => add(read, ballWidth(document)),
    outerFaces: (read, document) => subtract(read, ballWidth(document)),
  },
  stubBehindAxle: shaftEnds,
  inputBehind: shaftEnds,
  yokeReachFront: reaches,
  yokeReachRear: reaches,
  closedLength: {
    yokeEnds: (read, document) => subtract(read, scale(knownAt(document, 'shaft.yokeOverCross'), 2)),
    pinToPin: (read, document) => {
      const [front, rear] = ['tractor', 'implement'].map((machine) => beyondGroove(document, machine).cross);
      return subtract(read, add(front as Interval, rear as Interval));
    },
  },
};
