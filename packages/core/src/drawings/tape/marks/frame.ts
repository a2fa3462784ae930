import type { Point, Stroke } from '../../scene.ts';
import { dot, type Length } from '../row.ts';

/** A measured length in a frame of its own: `s` along it from its first end, `t` across it from the middle of the tape [mm]. */
export interface Frame {
  readonly length: number;
  /** How far the two ends lie across from the tape. */
  readonly offs: readonly [number, number];
  readonly at: (s: number, t: number) => Point;
}

/** The frame of a length. */
export function frameOf({ from, to, along, across, lay }: Length): Frame {
  const start = dot(from.at, along);
  return {
    length: dot(to.at, along) - start,
    offs: [dot(from.at, across) - lay, dot(to.at, across) - lay],
    at: (s, t) => [along[0] * (start + s) + across[0] * (lay + t), along[1] * (start + s) + across[1] * (lay + t)],
  };
}

/** A thin line in the accent, drawn as a slim area of a width [mm]. */
export function hairline([x0, z0]: Point, [x1, z1]: Point, width: number): Stroke {
  const length = Math.hypot(x1 - x0, z1 - z0) || 1;
  const [nx, nz] = [(-(z1 - z0) / length) * (width / 2), ((x1 - x0) / length) * (width / 2)];
  return solid([
    [x0 + nx, z0 + nz],
    [x1 + nx, z1 + nz],
    [x1 - nx, z1 - nz],
    [x0 - nx, z0 - nz],
  ]);
}

/** An area filled with the accent. */
export function solid(points: readonly Point[]): Stroke {
  return { kind: 'stroke', role: 'misfit', points, closed: true, fill: 'line' };
}
