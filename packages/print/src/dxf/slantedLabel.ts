import type { Lettering, Point } from '@hitchwright/core/drawings';
import { capHeight } from './dxfSheet.ts';

/** How a label stands on a slanted dimension line. */
interface SlantedLabel {
  /** Middle of its capitals, where paper has it too [mm]. */
  readonly centre: Point;
  /** Along the line, to be read from below or from the right [°, over −90 to 90]. */
  readonly rotation: number;
  /** What is drawn of the line: DXF clears no ground under letters, so the line is interrupted for them [mm]. */
  readonly pieces: readonly (readonly [Point, Point])[];
}

/** A line that runs less aside than this part of its length is level or upright. */
const least = 1e-6;

/** Room for one letter [part of the capitals’ height]. Fonts of programs differ: one measured 0.77 on average. */
const letterWidth = 0.9;

/** An arrowhead stays at each end of an interrupted line [paper mm]. */
const leastPiece = 3;

/**
 * Turns the label of a dimension along its line. Paper has it level, on ground cleared of the line.
 *
 * @param label the label [paper mm, mm]
 * @param words what is written of it [text]
 * @param ends the ends of the dimension line [mm]
 * @param scale true millimetres to one of paper [mm per mm]
 * @returns how it stands; null where the line is level or upright, or the label stands beside it [mm, °]
 */
export function slantedLabel(
  label: Lettering,
  words: string,
  [from, to]: readonly [Point, Point],
  scale: number,
): SlantedLabel | null {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  if (label.anchor !== 'middle' || !along.every((part) => Math.abs(part) > least)) return null;
  const height = label.size * capHeight * scale;
  const centre: Point = [label.at[0], label.at[1] + height / 2];
  const [right, up] = [centre[0] - from[0], centre[1] - from[1]];
  const isBeside = Math.abs(right * along[1] - up * along[0]) > height;
  if (isBeside) return null;
  const middle = right * along[0] + up * along[1];
  const half = ([...words].length * letterWidth * height) / 2;
  const edge = Math.min(leastPiece * scale, length / 2);
  const on = (wanted: number): Point => {
    const way = Math.max(edge, Math.min(length - edge, wanted));
    return [from[0] + along[0] * way, from[1] + along[1] * way];
  };
  return {
    centre,
    rotation: readable((Math.atan2(along[1], along[0]) * 180) / Math.PI),
    pieces: [
      [from, on(middle - half)],
      [on(middle + half), to],
    ],
  };
}

function readable(degrees: number): number {
  if (degrees > 90) return degrees - 180;
  return degrees <= -90 ? degrees + 180 : degrees;
}
