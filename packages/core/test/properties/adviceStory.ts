import { assess } from '../../src/engine/assess/index.ts';
import { advise, readingOf, type Suggestion } from '../../src/engine/advice/index.ts';
import { standInFor } from '../../src/engine/inputs/standIn.ts';
import { atPath, fieldRules, withEdits, type Edit, type SetupDocument } from '../../src/records/index.ts';
import type { Category } from '../../src/tables/index.ts';

/** Draws one number after another from [0, 1]. */
export type Draw = () => number;

/** A setup of which everything is known, and what somebody knows of it at first. */
export interface Story {
  readonly truth: SetupDocument;
  readonly known: SetupDocument;
}

/** Every figure without its tolerance; of a range somewhere inside it; what can be set stays so. */
function exactly(node: unknown, draw: Draw): unknown {
  if (typeof node !== 'object' || node === null || Array.isArray(node)) return node;
  if ('adjustable' in node) return node;
  if ('value' in node) {
    const from = 'from' in node ? { from: node.from } : {};
    return { value: node.value, ...from };
  }
  if ('between' in node && Array.isArray(node.between)) {
    const [low, high] = node.between as [number, number];
    return { value: low + draw() * (high - low) };
  }
  return Object.fromEntries(Object.entries(node).map(([key, below]) => [key, exactly(below, draw)]));
}

/** A setup in which nothing is left to assume: what stands in for a figure is put somewhere in its range. */
export function completed(document: SetupDocument, draw: Draw): SetupDocument {
  let whole = exactly(document, draw) as SetupDocument;
  for (let round = 0; round < 6; round += 1) {
    const assessment = assess(whole, { full: false });
    if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
    const open = assessment.answer.assumed.filter(({ path }) => fieldRules.has(path));
    if (open.length === 0) return whole;
    const edits = open.map(({ path, range }): Edit => ({ path, value: range.low + draw() * (range.high - range.low) }));
    whole = withEdits(whole, edits);
  }
  return whole;
}

/**
 * Figures without which a check is open. Where others are left out a check is not made or not needed (heights that are asked
 * for, tyres, plates), so that leaving them out would ask another question.
 */
const readable: readonly string[] = [
  ...[
    'lowerPinDiameter',
    'shoulderSpan',
    'standOut',
    'shoulderToHole',
    'mastHeight',
    'mastSetback',
    'upperPinDiameter',
  ].map((key) => `implement.${key}`),
  ...['clevisGap', 'clevisOuterWidth', 'freeRoomLower', 'freeRoomUpper', 'mass', 'centreBehind', 'centreAbove'].map(
    (key) => `implement.${key}`,
  ),
  ...['lowerBallBore', 'lowerBallWidth', 'upperBallBore', 'upperBallWidth', 'liftAt610', 'wheelbase', 'mass'].map(
    (key) => `tractor.${key}`,
  ),
  ...['frontAxleMass', 'lowerLinkPivotSpan', 'ballHeightLow', 'ballHeightHigh', 'lowerLinkThickness'].map(
    (key) => `tractor.${key}`,
  ),
  ...['hookSpan', 'hookWidth', 'hookSeat', 'hookBehind', 'topHookThroat', 'topHookThickness', 'mass'].map(
    (key) => `coupler.${key}`,
  ),
];

/** What is known at first: half of the figures are not, and some only roughly. */
export function partly(truth: SetupDocument, draw: Draw): SetupDocument {
  return readable.reduce((known, path) => {
    const value = numberAt(truth, path);
    if (value === null) return known;
    const luck = draw();
    if (luck < 0.45) return isOfItsClass(truth, path, value) ? withEdits(known, [{ path, value: undefined }]) : known;
    if (luck > 0.75) return known;
    const rough = 0.01 + 0.1 * draw();
    const by = Math.max(3, Math.abs(value) * rough);
    const share = draw();
    const between = [value - share * by, value + (1 - share) * by].map((end) => accepted(path, end));
    return withEdits(known, [{ path, value: withPoints(truth, path, { between }) }]);
  }, truth);
}

/** Only a figure that its class allows can be left out: a range of a class is no promise of the trade. */
function isOfItsClass(truth: SetupDocument, path: string, value: number): boolean {
  const category = atPath(truth, `${path.split('.')[0] ?? ''}.category`) as Category | undefined;
  const { low, high } = standInFor(path, category);
  return value >= low && value <= high;
}

/** The nearest figure that the field accepts. */
function accepted(path: string, value: number): number {
  const { min, max } = fieldRules.get(path) ?? { min: -Infinity, max: Infinity };
  return Math.min(max, Math.max(min, value));
}

function numberAt(document: SetupDocument, path: string): number | null {
  const node = atPath(document, path);
  if (typeof node === 'number') return node;
  const value = typeof node === 'object' && node !== null && 'value' in node ? node.value : null;
  return typeof value === 'number' ? value : null;
}

function withPoints(truth: SetupDocument, path: string, value: object): object {
  const node = atPath(truth, path);
  return typeof node === 'object' && node !== null && 'from' in node ? { ...value, from: node.from } : value;
}

/** What a reading of the truth puts into the record: off by no more than its tool is. */
export function readingFrom(truth: SetupDocument, path: string, draw: Draw): Edit {
  const value = numberAt(truth, path);
  if (value === null) return { path, value: atPath(truth, path) };
  const { accuracy } = readingOf(path, value);
  const read = accepted(path, value + accuracy * (2 * draw() - 1));
  return { path, value: withPoints(truth, path, accuracy === 0 ? { value } : { value: read, plusMinus: accuracy }) };
}

/** How a story ends: the verdict, how many readings it took, and whether it gave up as too close. */
export interface Ending {
  readonly verdict: string;
  readonly readings: number;
  readonly minutes: number;
  readonly tooClose: boolean;
  /** Verdicts on the way. */
  readonly said: readonly string[];
}

const mostReadings = 80;

/** Fills in a worksheet from the top: everything that is not known as closely as its tool reads it, in the order it is asked. */
export function sheetOrder(known: SetupDocument): (next: readonly Suggestion[]) => string | undefined {
  const open = [...fieldRules.keys()].filter((path) => readable.includes(path) && isOpen(known, path));
  return (next) => (next.length === 0 ? undefined : open.shift());
}

function isOpen(known: SetupDocument, path: string): boolean {
  const node = atPath(known, path);
  return node === undefined || (typeof node === 'object' && node !== null && 'between' in node);
}

/** Reads what `pick` chooses of what is open until nothing can change the verdict. */
export function followed(
  { truth, known }: Story,
  draw: Draw,
  pick: (next: readonly Suggestion[]) => string | undefined,
): Ending {
  let document = known;
  let minutes = 0;
  const said: string[] = [];
  for (let readings = 0; readings < mostReadings; readings += 1) {
    const advised = advise(document, { thresholds: false });
    if (!advised.ok) throw new Error(JSON.stringify(advised.errors));
    const { answer, settled, next } = advised.advice;
    said.push(answer.verdict);
    const chosen = settled ? undefined : pick(next);
    if (chosen === undefined) return { verdict: answer.verdict, readings, minutes, tooClose: !settled, said };
    document = withEdits(document, [readingFrom(truth, chosen, draw)]);
    minutes += readingOf(chosen, numberAt(truth, chosen) ?? 0).minutes;
  }
  throw new Error('never comes to an end');
}
