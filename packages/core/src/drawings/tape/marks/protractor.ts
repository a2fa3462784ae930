import type { Item, Point } from '../../scene.ts';
import { line } from '../../strokes.ts';
import type { Drawn } from '../plate.ts';
import type { Angle } from '../row.ts';
import { hairline, solid } from './frame.ts';

/** Lengths on paper [mm]. */
const paper = { past: 4, band: 3.2, rim: 0.3, tick: 0.2, arrow: 2.6 } as const;

/** Degrees from the first leg of an angle to the second, the short way round; up from rearward counts positive. */
export function turnOf({ corner, from, to }: Angle): { readonly start: number; readonly turn: number } {
  const start = directionOf(corner, from.at);
  const turn = ((directionOf(corner, to.at) - start + 540) % 360) - 180;
  return { start, turn };
}

function directionOf([x0, z0]: Point, [x, z]: Point): number {
  return (Math.atan2(z - z0, x - x0) * 180) / Math.PI;
}

/** A point at a distance and direction from the corner [mm, deg]. */
export function polar([x, z]: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [x + radius * Math.cos(angle), z + radius * Math.sin(angle)];
}

/** A protractor on two legs: a heavy line along each, the rim with its marks between them, and an arrowhead at either end. */
export function protractor({ perPaper }: Drawn, angle: Angle): Item[] {
  const { corner, radius } = angle;
  const { start, turn } = turnOf(angle);
  const reach = radius + paper.past * perPaper;
  const band = paper.band * perPaper;
  const steps = Math.max(8, Math.ceil(Math.abs(turn) / 2));
  const rim = (r: number): Item[] =>
    Array.from({ length: steps }, (_, i) =>
      hairline(
        polar(corner, r, start + (turn * i) / steps),
        polar(corner, r, start + (turn * (i + 1)) / steps),
        paper.rim * perPaper,
      ),
    );
  return [
    ...rim(radius),
    ...rim(radius - band),
    ...marks(angle, start, turn, { band, width: paper.tick * perPaper }),
    ...[start, start + turn].map((degrees) => line('misfit', corner, polar(corner, reach, degrees))),
    ...arrows(angle, start, turn, paper.arrow * perPaper),
  ];
}

function marks({ corner, radius }: Angle, start: number, turn: number, size: { band: number; width: number }): Item[] {
  const step = Math.abs(turn) > 40 ? 5 : 2;
  const count = Math.floor((Math.abs(turn) - 0.5) / step);
  return Array.from({ length: count }, (_, i) => {
    const degrees = start + Math.sign(turn) * step * (i + 1);
    const depth = (i + 1) % 5 === 0 ? 0.7 : 0.4;
    return hairline(polar(corner, radius, degrees), polar(corner, radius - size.band * depth, degrees), size.width);
  });
}

/** Arrowheads on the rim at both legs. */
function arrows({ corner, radius }: Angle, start: number, turn: number, long: number): Item[] {
  const sweep = ((long / radius) * 180) / Math.PI;
  if (Math.abs(turn) < sweep * 2.5) return [];
  return [
    [start, Math.sign(turn)],
    [start + turn, -Math.sign(turn)],
  ].map(([degrees = 0, way = 1]) =>
    solid([
      polar(corner, radius, degrees),
      polar(corner, radius + long / 5, degrees + way * sweep),
      polar(corner, radius - long / 5, degrees + way * sweep),
    ]),
  );
}
