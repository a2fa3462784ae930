import { widthOf } from '../lettering.ts';
import type { Bounds, Lettering, Point } from '../scene.ts';
import { lettering } from '../view/part.ts';
import { dimensionOff } from './marks/marks.ts';
import { frameOf } from './marks/frame.ts';
import { polar, turnOf } from './marks/protractor.ts';
import type { Drawn } from './plate.ts';
import type { Angle, Length, TapeRow, Weighing } from './row.ts';

/** The longest reading that a place is kept for; a longer one is lettered smaller. */
const longest = '88 15/16';

/** Where the reading stands, whatever it is, so that nothing moves while it is typed [scene mm]. */
export interface ReadingPlace {
  readonly at: Point;
  readonly anchor: Lettering['anchor'];
  /** The room kept for it [paper mm, from the lower left of the sheet]. */
  readonly box: Bounds;
}

/** Gap between the dimension line and the reading [paper mm]. */
const gap = 1.6;
/** Height of figures [part of their size]. */
const rise = 0.72;

/** Finds the place of the reading: over a level dimension, beside an upright one, outside an angle. */
export function readingPlace(drawn: Drawn, { measured }: TapeRow, bounds: Bounds): ReadingPlace {
  const beside = anchorsOf(drawn, measured).map((anchor) => placeBeside(drawn, anchor, bounds));
  const best = beside.reduce((a, b) => (b.pushed < a.pushed - tolerance ? b : a));
  return best.place;
}

/** How far a place may be pushed back onto the sheet before the other side is better [paper mm]. */
const tolerance = 1;

/** A point that the reading may stand beside, and the direction in which it does. */
interface Anchor {
  readonly point: Point;
  readonly out: Point;
}

function placeBeside(
  { plate, perPaper }: Drawn,
  { point, out }: Anchor,
  bounds: Bounds,
): { place: ReadingPlace; pushed: number } {
  const size = plate.letters.reading;
  const [x, z] = [(point[0] - bounds.left) / perPaper, (point[1] - bounds.bottom) / perPaper];
  const width = widthOf(longest, size);
  const height = size * rise;
  const isOver = Math.abs(out[1]) >= 0.7;
  const lean = isOver ? Math.abs(out[0] / out[1]) * (width / 2) : 0;
  const [wantedX, wantedZ]: Point = isOver
    ? [x, z + Math.sign(out[1]) * (gap + lean + height / 2)]
    : [x + Math.sign(out[0]) * (gap + width / 2), z];
  const keep = (value: number, half: number, most: number): number =>
    Math.max(plate.margin + half, Math.min(most - plate.margin - half, value));
  const [cx, cz] = [keep(wantedX, width / 2, plate.width), keep(wantedZ, height / 2, plate.height)];
  const box = { left: cx - width / 2, right: cx + width / 2, bottom: cz - height / 2, top: cz + height / 2 };
  const anchor = isOver ? 'middle' : out[0] > 0 ? 'start' : 'end';
  const from = { start: box.left, middle: cx, end: box.right }[anchor];
  const at: Point = [bounds.left + from * perPaper, bounds.bottom + box.bottom * perPaper];
  return { place: { at, anchor, box }, pushed: isOver ? Math.abs(cz - wantedZ) : Math.abs(cx - wantedX) };
}

/** Where the reading may stand, the best place first: beyond the dimension, or else beyond the tape. */
function anchorsOf(drawn: Drawn, measured: Length | Angle | Weighing): Anchor[] {
  const { perPaper, plate } = drawn;
  switch (measured.kind) {
    case 'length': {
      const frame = frameOf(measured);
      const { across, side } = measured;
      const beside = (way: 1 | -1, off: number): Anchor => ({
        point: frame.at(frame.length / 2, off),
        out: [across[0] * way, across[1] * way],
      });
      const other = -side as 1 | -1;
      return [beside(side, dimensionOff(drawn, measured)), beside(other, other * (plate.tape + gap) * perPaper)];
    }
    case 'angle': {
      const { start, turn } = turnOf(measured);
      const direction = start + turn / 2;
      const point = polar(measured.corner, measured.radius + gap * perPaper, direction);
      return [{ point, out: polar([0, 0], 1, direction) }];
    }
    case 'weight':
      return measured.scale.kind === 'hung'
        ? [{ point: [measured.scale.hook[0] + 5.5 * perPaper, measured.scale.hook[1] + 6.3 * perPaper], out: [1, 0] }]
        : [{ point: [middleOf(measured.scale.under), -5 * perPaper], out: [0, -1] }];
  }
}

function middleOf(spans: readonly (readonly [number, number])[]): number {
  const ends = spans.flat();
  return (Math.min(...ends) + Math.max(...ends)) / 2;
}

/** The sign of a diameter takes so much before its figure [part of its size]. */
const sign = 0.95;

/** The reading as lettering, no wider than its room as far as it stays readable; none where there is none. */
export function readingLetters(
  { plate, perPaper }: Drawn,
  { at, anchor, box }: ReadingPlace,
  { isRound }: TapeRow,
  reading: string | null,
): Lettering | null {
  const text = reading?.trim() ?? '';
  if (text === '') return null;
  const { reading: wanted, note } = plate.letters;
  const widthAt = (size: number): number => widthOf(text, size) + (isRound === true ? sign * size : 0);
  const size = Math.min(wanted, (wanted * (box.right - box.left)) / widthAt(wanted));
  if (size < note) return null;
  const style = { tone: 'accent', weight: 700 } as const;
  if (isRound !== true) return lettering(at, text, size, { ...style, anchor });
  const before = { start: 0, middle: 0.5, end: 1 }[anchor] * widthAt(size) * perPaper;
  return { ...lettering([at[0] - before, at[1]], text, size, style), diameter: true };
}
