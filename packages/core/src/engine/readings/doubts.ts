import { fieldRules, type SetupDocument } from '../../records/index.ts';
import { readingOf, type Tool } from '../advice/index.ts';
import { holds, interval, middle, type Interval } from '../geometry/index.ts';
import type { Doubt } from './doubt.ts';
import { categoryAt, expectedAt } from './known.ts';
import { togetherDoubts } from './doubtsTogether.ts';
import { fieldOfPart } from './parts.ts';
import { placeDoubts } from './placeDoubts.ts';
import type { Typed } from './taken.ts';
import { wayQuestion } from './ways.ts';

/**
 * What is doubtful about a reading, before it is taken. A doubt never refuses: a person says that it is so, or reads again.
 * What a machine of its category can have, read no worse than its tool reads it, raises none.
 *
 * @param document the setup as far as it is known [JSON]
 * @param path field path, or one end of what can be set [text]
 * @param typed the reading [text and canonical unit]
 * @param way key of the way that it was read, where it was asked [text]
 * @param tool what it was read with, where another than usual [name]
 * @returns doubts, those that explain most first; none where nothing looks wrong [list]
 */
export function doubtsAbout(document: SetupDocument, path: string, typed: Typed, way?: string, tool?: Tool): Doubt[] {
  const field = fieldOfPart(path);
  return [
    ...decimalDoubts(field, typed),
    ...(isOwnWay(field, way) ? classDoubts(document, path, typed.value, tool) : []),
    ...togetherDoubts(document, field, typed.value, way),
  ];
}

/** Whether what was read is the field’s own figure; so it is taken where nobody was asked. */
function isOwnWay(field: string, way: string | undefined): boolean {
  const [own] = wayQuestion(field)?.ways ?? [];
  return way === undefined || own?.key === way;
}

/** `26.3` in inches is seldom read from a tape that shows eighths: 26 3/8 was meant, or something else that was not written down. */
function decimalDoubts(field: string, { text, value }: Typed): Doubt[] {
  if (fieldRules.get(field)?.dimension !== 'length') return [];
  const [, sign, whole, digit] = /^\s*([-−+]?)\s*(\d+)[.,]([1-7])(?!\d)/.exec(text) ?? [];
  if (whole === undefined || digit === undefined || digit === '5') return [];
  const size = sign === '' || sign === '+' ? inch : -inch;
  const isInches = Math.abs(Number(`${whole}.${digit}`) * size - value) < tiny;
  return isInches ? [{ kind: 'decimal', meant: (Number(whole) + Number(digit) / 8) * size }] : [];
}

const inch = 25.4;
const tiny = 1e-6;

/** Beside what its category has: read at another place or of another thing, in another unit, or simply far off. */
function classDoubts(document: SetupDocument, path: string, value: number, tool: Tool | undefined): Doubt[] {
  const expected = expectedAt(document, path);
  if (expected === null) return [];
  const { accuracy } = readingOf(fieldOfPart(path), value, tool);
  const couldBe = widened(expected, accuracy);
  if (holds(couldBe, value)) return [];
  const places = placeDoubts(document, path, value, couldBe);
  if (places.length > 0) return places;
  if (holds(trusted(document, path, couldBe), value)) return [];
  const units = unitDoubts(fieldOfPart(path), value, couldBe);
  return units.length > 0 ? units : [{ kind: 'outside', expected }];
}

function widened({ low, high }: Interval, by: number): Interval {
  return interval(low - by, high + by);
}

/** How far outside the range of its class a figure is before somebody is asked again: a tenth. Our own. */
const leeway = 0.1;

/** Category 1 is asked again outside these, whatever its class has [mm]. Our own. */
const traps: Readonly<Record<string, Interval>> = {
  'implement.shoulderSpan': interval(550, 800),
  'implement.mastHeight': interval(300, 700),
};

/** Where a figure is taken without a question. Pins have no leeway: those of two categories lie 6 mm apart. */
function trusted(document: SetupDocument, path: string, couldBe: Interval): Interval {
  if (path.endsWith('PinDiameter')) return couldBe;
  const wide = widened(couldBe, leeway * Math.max(Math.abs(couldBe.low), Math.abs(couldBe.high)));
  const trap = categoryAt(document, path) === '1' ? traps[path] : undefined;
  return trap === undefined ? wide : interval(Math.max(wide.low, trap.low), Math.min(wide.high, trap.high));
}

/** Slips between millimetres, centimetres and inches. */
const slips = [inch, 1 / inch, 10, 1 / 10, inch / 10, 10 / inch];

function unitDoubts(field: string, value: number, couldBe: Interval): Doubt[] {
  if (fieldRules.get(field)?.dimension !== 'length') return [];
  const meant = slips.map((slip) => value * slip).filter((candidate) => holds(couldBe, candidate));
  const nominal = middle(couldBe);
  return meant
    .sort((a, b) => Math.abs(a - nominal) - Math.abs(b - nominal))
    .map((one) => ({ kind: 'unit', meant: one }));
}
