import { fieldRules, type SetupDocument } from '../../records/index.ts';
import { bushings, highestOf, lowestOf } from '../../tables/index.ts';
import { holds, interval, middle, type Interval } from '../geometry/index.ts';
import { besideOf, expectedAt, givenAt, knownAt } from './known.ts';
import { fieldOfPart, type Typed } from './taken.ts';

/** What makes a reading doubtful; `meant` is what it may have been meant for [canonical unit]. */
export type Doubt =
  | { readonly kind: DoubtOfMeaning; readonly meant: number }
  | { readonly kind: 'outside'; readonly expected: Interval }
  | { readonly kind: 'bushing' | 'worn' | 'coated' | 'drawnOut' | 'weighedLoaded' };

/** Doubts that say what the reading may have been meant for. */
type DoubtOfMeaning = 'decimal' | 'feetDecimal' | 'unit' | 'tips' | 'centres' | 'insidePlates';

/** How far outside the range of its class a figure is before somebody is asked again: a tenth. Our own. */
const leeway = 0.1;

/**
 * What is doubtful about a reading, before it is taken. A doubt never refuses: a person says that it is so, or reads again.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, or one end of what can be set [text]
 * @param typed the reading [text and canonical unit]
 * @param way key of the way that it was read, where it was asked [text]
 * @returns doubts, those that explain most first; none where nothing looks wrong [list]
 */
export function doubtsAbout(document: SetupDocument, path: string, typed: Typed, way?: string): Doubt[] {
  const field = fieldOfPart(path);
  const isOwn = way === undefined || isOwnWay.has(way);
  return [
    ...typedDoubts(field, typed),
    ...(isOwn ? [...placeDoubts(document, field, typed.value), ...rangeDoubts(document, field, typed)] : []),
    ...shaftDoubts(document, field, typed.value),
    ...weighedDoubts(document, field, typed.value),
  ].filter(({ kind }, i, all) => kind !== 'outside' || i === 0 || all.length === 1);
}

/** Ways whose reading is the field’s own figure. */
const isOwnWay: ReadonlySet<string> = new Set([
  'shoulder',
  'centres',
  'centre',
  'bare',
  'tip',
  'near',
  'scale',
  'crossCentre',
]);

/** `26.3` is seldom read from a tape that shows eighths: 26 3/8 or 26 5/16 may have been meant; `5.4` may be 5 ft 4 in. */
function typedDoubts(field: string, { text, value }: Typed): Doubt[] {
  if (fieldRules.get(field)?.dimension !== 'length') return [];
  const inches = /^\s*(\d+)[.,]([1-7])\s*(?:in\b.*|″|"|”)\s*$/i.exec(text);
  const feet = /^\s*(\d+)[.,](\d{1,2})\s*(?:ft\b.*|′|'|’)\s*$/i.exec(text);
  if (feet !== null) return feetDoubts(feet, value);
  if (inches === null || inches[2] === '5') return [];
  const meant = (Number(inches[1]) + Number(inches[2]) / 8) * inch;
  return meant === value ? [] : [{ kind: 'decimal', meant }];
}

const inch = 25.4;

function feetDoubts([, feet, inches]: RegExpExecArray, value: number): Doubt[] {
  const meant = (Number(feet) * 12 + Number(inches)) * inch;
  return Number(inches) >= 12 || Math.abs(meant - value) < 1 ? [] : [{ kind: 'feetDecimal', meant }];
}

/** Readings at another place than asked for, told by what else is known of the machine. */
function placeDoubts(document: SetupDocument, field: string, value: number): Doubt[] {
  if (field.endsWith('.shoulderSpan')) return spanDoubts(document, field, value);
  if (/\.(lower|upper)PinDiameter$/.test(field)) return diameterDoubts(document, field, value);
  return [];
}

function spanDoubts(document: SetupDocument, field: string, value: number): Doubt[] {
  const expected = expectedAt(document, field);
  if (expected === null || holds(expected, value)) return [];
  const standOut = knownAt(document, besideOf(field, 'standOut'));
  const ball = knownAt(document, 'tractor.lowerBallWidth');
  const plate = knownAt(document, besideOf(field, 'plateThickness'));
  const readings: readonly (readonly ['tips' | 'centres' | 'insidePlates', number])[] = [
    ['centres', value - middle(ball)],
    ['tips', value - 2 * middle(standOut)],
    ['insidePlates', value + 2 * Math.min(middle(plate), 20)],
  ];
  return readings
    .filter(([, meant]) => holds(expected, meant))
    .slice(0, 1)
    .map(([kind, meant]) => ({ kind, meant }));
}

/** Beside the size of its class: as thick as a bushing, worn, or with paint and rust on it. */
function diameterDoubts(document: SetupDocument, field: string, value: number): Doubt[] {
  const expected = expectedAt(document, field);
  if (expected === null) return [];
  const place = field.endsWith('lowerPinDiameter') ? 'lower' : 'upper';
  const sleeves = bushings.filter((bushing) => bushing.place === place).map(({ outside }) => outside);
  const isSleeve = sleeves.some((outside) => value >= lowestOf(outside) - 0.4 && value <= highestOf(outside) + 0.8);
  if (!holds(expected, value) && value > expected.high && isSleeve) return [{ kind: 'bushing' }];
  if (value < expected.low && value >= expected.low - 2) return [{ kind: 'worn' }];
  if (value > expected.high && value <= expected.high + 1) return [{ kind: 'coated' }];
  return [];
}

/** Far from what its class has: the unit, or the place. */
function rangeDoubts(document: SetupDocument, field: string, { value }: Typed): Doubt[] {
  const expected = expectedAt(document, field);
  const rule = fieldRules.get(field);
  if (expected === null || rule === undefined) return [];
  const slack = leeway * Math.max(Math.abs(expected.low), Math.abs(expected.high));
  if (holds(interval(expected.low - slack, expected.high + slack), value)) return [];
  const meant = rule.dimension === 'length' ? [inch, 1 / inch, 10, 0.1].map((factor) => value * factor) : [];
  const [other] = meant.filter((candidate) => holds(expected, candidate));
  return [other === undefined ? { kind: 'outside', expected } : { kind: 'unit', meant: other }];
}

/** A shaft pushed together reaches far into itself: less than two fifths of its length looks drawn out. Common practice, no source. */
const leastReach = 0.4;

function shaftDoubts(document: SetupDocument, field: string, value: number): Doubt[] {
  if (field !== 'shaft.closedLength' && field !== 'shaft.closedOverlap') return [];
  const length = field === 'shaft.closedLength' ? interval(value, value) : givenAt(document, 'shaft.closedLength');
  const overlap = field === 'shaft.closedOverlap' ? interval(value, value) : givenAt(document, 'shaft.closedOverlap');
  if (length === null || overlap === null) return [];
  return overlap.high < leastReach * length.low ? [{ kind: 'drawnOut' }] : [];
}

/** A tractor’s front axle carries between three tenths and three fifths of it; less looks weighed with something hung on. Common practice, no source. */
const usualFront = interval(0.3, 0.6);

function weighedDoubts(document: SetupDocument, field: string, value: number): Doubt[] {
  if (field !== 'tractor.frontAxleMass' && field !== 'tractor.mass') return [];
  const front = field === 'tractor.frontAxleMass' ? interval(value, value) : givenAt(document, 'tractor.frontAxleMass');
  const mass = field === 'tractor.mass' ? interval(value, value) : givenAt(document, 'tractor.mass');
  if (front === null || mass === null || mass.low <= 0) return [];
  return holds(usualFront, middle(front) / middle(mass)) ? [] : [{ kind: 'weighedLoaded' }];
}
