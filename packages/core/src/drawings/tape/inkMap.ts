import { hatchLines } from '../hatchLines.ts';
import { dimensionParts } from '../dimensionParts.ts';
import type { Bounds, Item, LineRole, Point } from '../scene.ts';
import { arc } from '../strokes.ts';

/** How much lettering over a line spoils the drawing. */
const weights: Readonly<Record<LineRole, number>> = {
  misfit: 9,
  heavy: 3,
  thin: 1.6,
  dimension: 1.2,
  hidden: 1,
  centre: 0.6,
  ghost: 0.5,
};

/** Where a drawing has its lines, in cells of one millimetre of paper, so that lettering finds an empty place. */
export interface InkMap {
  /** Lines in a box on paper [mm]. */
  readonly within: (box: Bounds) => number;
  /** Lines at a point on paper [mm]. */
  readonly at: (x: number, z: number) => number;
}

/** Draws a map of the lines of some items. */
export function inkMap(items: readonly Item[], bounds: Bounds, perPaper: number): InkMap {
  const columns = Math.ceil((bounds.right - bounds.left) / perPaper);
  const rows = Math.ceil((bounds.top - bounds.bottom) / perPaper);
  const cells = new Float64Array(columns * rows);
  const cellAt = ([x, z]: Point): number => {
    const [column, row] = [Math.floor((x - bounds.left) / perPaper), Math.floor((z - bounds.bottom) / perPaper)];
    return column < 0 || column >= columns || row < 0 || row >= rows ? -1 : row * columns + column;
  };
  for (const { points, weight } of items.flatMap((item) => linesOf(item, perPaper))) {
    for (let i = 1; i < points.length; i += 1)
      mark(points[i - 1] as Point, points[i] as Point, (point) => {
        const cell = cellAt(point);
        if (cell >= 0) cells[cell] = Math.max(cells[cell] as number, weight);
      });
  }
  const sums = sumsOf(cells, columns, rows);
  const until = (column: number, row: number): number =>
    sums[clamp(row, rows) * (columns + 1) + clamp(column, columns)] as number;
  return {
    within: ({ left, right, bottom, top }) => {
      const [c0, c1] = [Math.floor(left), Math.ceil(right)];
      const [r0, r1] = [Math.floor(bottom), Math.ceil(top)];
      return until(c1, r1) - until(c0, r1) - until(c1, r0) + until(c0, r0);
    },
    at: (x, z) => {
      const [column, row] = [Math.floor(x), Math.floor(z)];
      return column < 0 || column >= columns || row < 0 || row >= rows ? 0 : (cells[row * columns + column] as number);
    },
  };

  function mark(from: Point, to: Point, set: (point: Point) => void): void {
    const steps = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / (perPaper * 0.7)));
    for (let step = 0; step <= steps; step += 1)
      set([from[0] + ((to[0] - from[0]) * step) / steps, from[1] + ((to[1] - from[1]) * step) / steps]);
  }
}

function clamp(value: number, most: number): number {
  return Math.max(0, Math.min(most, value));
}

/** Sums of all cells below and to the left. */
function sumsOf(cells: Float64Array, columns: number, rows: number): Float64Array {
  const wide = columns + 1;
  const sums = new Float64Array(wide * (rows + 1));
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const here = (row + 1) * wide + column + 1;
      sums[here] =
        (cells[row * columns + column] as number) +
        (sums[here - 1] as number) +
        (sums[here - wide] as number) -
        (sums[here - wide - 1] as number);
    }
  }
  return sums;
}

interface Line {
  readonly points: readonly Point[];
  readonly weight: number;
}

function linesOf(item: Item, perPaper: number): Line[] {
  switch (item.kind) {
    case 'stroke': {
      const points = item.closed ? [...item.points, ...item.points.slice(0, 1)] : item.points;
      return [{ points, weight: weights[item.role] }];
    }
    case 'circle':
      return [{ points: arc(item.centre, item.radius, 0, 360), weight: weights[item.role] }];
    case 'hatch':
      return hatchLines(item.outline, item.spacing * perPaper, item.falling).map((points) => ({ points, weight: 0.5 }));
    case 'dimension': {
      const { ends, extensions, tails } = dimensionParts(item, perPaper);
      return [ends, ...extensions, ...tails].map((points) => ({ points, weight: weights[item.role] }));
    }
    default:
      return [];
  }
}
