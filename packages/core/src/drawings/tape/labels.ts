import { widthOf, wrapped } from '../lettering.ts';
import type { Bounds, Item, Lettering, Point } from '../scene.ts';
import { line } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import type { InkMap } from './inkMap.ts';
import { inLens, type Lens } from './lens.ts';
import { leading, placeAll, rise, type Place, type Wish } from './places.ts';
import type { Drawn } from './plate.ts';
import type { End, Mistake, TapeRow } from './row.ts';

/** What lettering is placed in: its sheet, its lines, and what is taken already. */
export interface Surroundings {
  readonly bounds: Bounds;
  readonly ink: InkMap;
  readonly lens: Lens | null;
  readonly taken: readonly Bounds[];
}

/** Half the size of a cross on a wrong place [paper mm]. */
const paper = { cross: 1.05 } as const;

/** The names of both ends, what is crossed out with its words, and the hint. */
export function labelItems(drawn: Drawn, row: TapeRow, around: Surroundings): Item[] {
  const { plate, perPaper } = drawn;
  const { bounds } = around;
  const onSheet = ([x, z]: Point): Point => [(x - bounds.left) / perPaper, (z - bounds.bottom) / perPaper];
  const inScene = ([x, z]: Point): Point => [bounds.left + x * perPaper, bounds.bottom + z * perPaper];
  const labels = [
    ...[row.measured.from, row.measured.to].flatMap((end) => (end.label === undefined ? [] : [nameOf(end, end.label)])),
    ...row.not.map((mistake) => notOf(mistake, around.lens)),
    ...(row.hint === undefined ? [] : [hintOf(row.hint)]),
  ];
  const { note } = plate.letters;
  const wishes = labels.map(({ text, to, isName }): Wish => {
    return { variants: variantsOf(text, note), size: note, to: to === null ? null : onSheet(to), isName };
  });
  const { margin, width, height } = plate;
  const sheet = { left: margin, right: width - margin, bottom: margin, top: height - margin };
  const places = placeAll(wishes, { ink: around.ink, sheet, taken: around.taken });
  return places.flatMap((place, i) => {
    const label = labels[i] as Label;
    const leader = place.leader === null ? [] : [line('dimension', ...mapped(place.leader, inScene))];
    return [...leader, ...linesOf(place, note, label).map((text) => ({ ...text, at: inScene(text.at) }))];
  });
}

/** Crosses on every wrong place; those inside the magnifier are crossed there too. */
export function crosses({ perPaper }: Drawn, mistakes: readonly Mistake[], lens: Lens | null): Item[] {
  const half = paper.cross * perPaper;
  const at = mistakes.flatMap((mistake) => [...mistake.at]);
  const enlarged = lens === null ? [] : at.map((point) => inLens(lens, point)).filter((point) => point !== null);
  return [...at, ...enlarged].flatMap(([x, z]) => [
    line('heavy', [x - half, z - half], [x + half, z + half]),
    line('heavy', [x - half, z + half], [x + half, z - half]),
  ]);
}

interface Label {
  readonly text: string;
  readonly to: Point | null;
  readonly isName: boolean;
  readonly style: Pick<Lettering, 'tone' | 'weight'>;
}

function nameOf({ at }: End, text: string): Label {
  return { text, to: at, isName: true, style: { tone: 'accent', weight: 600 } };
}

function notOf({ word, at }: Mistake, lens: Lens | null): Label {
  const [first] = at;
  const to = first === undefined ? null : lens === null ? first : (inLens(lens, first) ?? first);
  return { text: `not ${word}`, to, isName: false, style: { tone: 'ink', weight: 400 } };
}

function hintOf(text: string): Label {
  return { text, to: null, isName: false, style: { tone: 'second', weight: 400 } };
}

/** One line, and two about as long as each other where it is long. */
function variantsOf(text: string, size: number): string[][] {
  const whole = widthOf(text, size);
  const halves = [0.56, 0.72].map((share) => wrapped(text, size, whole * share));
  return [[text], ...(whole < 24 ? [] : halves)].filter((lines, i) => i === 0 || lines.length === 2);
}

/** The baselines of a label from the top of its box. */
function linesOf({ lines, box }: Place, size: number, { style }: Label): Lettering[] {
  return lines.map((text, i) => lettering([box.left, box.top - size * (rise + i * leading)], text, size, style));
}

function mapped([a, b]: readonly [Point, Point], map: (point: Point) => Point): [Point, Point] {
  return [map(a), map(b)];
}
