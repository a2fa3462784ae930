import { placedItem, placed, type Pose } from '../side/pose.ts';
import type { Item, LineRole, Point, Stroke } from '../scene.ts';
import { body, hatch, line, outline, rectangle, run } from '../strokes.ts';
import type { Halves } from './halves.ts';

/** Sizes of a drive shaft across and along itself, for place only [mm]. */
export const sizes = {
  outer: 22,
  inner: 15,
  ear: 24,
  hub: 29,
  neck: 90,
  hubFrom: 40,
  hubTo: 92,
  spline: 17,
  cross: 13,
  stub: 150,
} as const;

/** Guard of a shaft: radii of tube and cone, and length of the cone [mm]. */
export interface Guard {
  readonly tube: number;
  readonly cone: number;
  readonly coneLength: number;
}

/** Items made in a frame of their own, in the view. */
export function inView(pose: Pose, items: readonly Item[]): Item[] {
  return items.map((item) =>
    item.kind === 'hatch'
      ? { ...item, outline: item.outline.map((point) => placed(pose, point)) }
      : placedItem(pose, item),
  );
}

/** A splined shaft that ends in a yoke: the joint at 0, the shaft coming from ahead of it. */
export function splinedEnd(role: LineRole, yokeRole: LineRole): Item[] {
  return [body(role, rectangle([-sizes.stub, -sizes.spline], [-sizes.hubFrom, sizes.spline])), sliding(yokeRole)];
}

/** The yoke that slides on the splines, from its outer end to its ears around the cross. */
export function sliding(role: LineRole): Stroke {
  const { hubTo, hubFrom, hub, ear } = sizes;
  return body(role, [
    [-hubTo, -hub],
    [-hubFrom, -hub],
    [-hubFrom / 2, -ear],
    [8, -ear],
    [8, ear],
    [-hubFrom / 2, ear],
    [-hubFrom, hub],
    [-hubTo, hub],
  ]);
}

/** The yoke at the end of a tube: its ears around the cross at 0, and its neck, that ends `to` along, where the tube begins. */
export function fixed(role: LineRole, to: number, half: number): Stroke {
  const taper = Math.min(to, sizes.neck);
  const side = (sign: 1 | -1): Point[] => [
    [-8, sign * sizes.ear],
    [taper * 0.35, sign * sizes.ear],
    [taper, sign * (half + 5)],
    [to, sign * (half + 5)],
  ];
  return body(role, [...side(-1), ...side(1).reverse()]);
}

/** The cross of a joint from the side. */
export function cross(role: LineRole, at: Point): Item[] {
  return [{ kind: 'circle', role, centre: at, radius: sizes.cross, fill: 'sheet' }];
}

/** How the pieces of a shaft are drawn. */
export interface Look {
  readonly role: LineRole;
  /** Tubes whose overlap is at fault, and tubes that meet a yoke. */
  readonly isShort: boolean;
  readonly bottoms: boolean;
}

/** Where the neck of a yoke ends: where its tube begins, and where the other tube bottoms. */
export function neckOf(root: number): number {
  return Math.max(leastNeck, root);
}

/** Shortest neck of a yoke [mm]. */
const leastNeck = 30;

/** Both halves along their line: inner tube, outer tube over it, both yokes of the tubes, and what is at fault. */
export function halvesItems({ length, outer, inner }: Halves, { role, isShort, bottoms }: Look): Item[] {
  const neck = neckOf(outer[0]);
  const far = length - neck;
  const flip = (stroke: Stroke): Stroke => ({
    ...stroke,
    points: stroke.points.map(([x, z]): Point => [length - x, z]),
  });
  return [
    body(role, rectangle([Math.min(inner[0], far), -sizes.inner], [far, sizes.inner])),
    body(role, rectangle([neck, -sizes.outer], [Math.max(outer[1], neck), sizes.outer])),
    ...hiddenEnd(inner[0], neck, outer[1]),
    ...overlapArea(outer, inner, isShort),
    fixed(role, neck, sizes.outer),
    flip(fixed(role, neck, sizes.inner)),
    ...(bottoms ? bottomed(outer, inner) : []),
  ];
}

/** The inner tube in the outer one, dashed. */
function hiddenEnd(from: number, neck: number, to: number): Item[] {
  const start = Math.max(from, neck);
  if (start >= to) return [];
  const { inner } = sizes;
  return [
    run('hidden', [
      [to, inner],
      [start, inner],
      [start, -inner],
      [to, -inner],
    ]),
  ];
}

/** What both tubes share: hatched, filled in the accent where it is too little; where they are apart the gap, in the accent. */
function overlapArea(outer: Halves['outer'], inner: Halves['inner'], isShort: boolean): Item[] {
  const half = sizes.outer;
  if (inner[0] > outer[1]) {
    const gap = rectangle([outer[1], -half], [inner[0], half]);
    return [hatch('misfit', gap), outline('misfit', gap)];
  }
  const area = rectangle([inner[0], -half], [outer[1], half]);
  if (!isShort) return [hatch('thin', area)];
  return [{ kind: 'stroke', role: 'misfit', points: area, closed: true, fill: 'line' }];
}

/** Where a tube runs into the yoke of the other half. */
function bottomed(outer: Halves['outer'], inner: Halves['inner']): Item[] {
  const { outer: wide, inner: slim } = sizes;
  const strike = (at: number, from: number, half: number): Item[] => [
    { kind: 'stroke', role: 'misfit', points: rectangle([from, -half], [at, half]), closed: true, fill: 'line' },
    line('misfit', [from, -half - 14], [from, half + 14]),
  ];
  return [
    ...strike(outer[1], Math.min(inner[1], outer[1]), wide),
    ...strike(inner[0], Math.max(outer[0], inner[0]), slim),
  ];
}

/** The guard around a shaft: a cone at either joint, a tube between them. */
export function guardItems({ tube, cone, coneLength }: Guard, length: number, role: LineRole = 'hidden'): Item[] {
  const to = Math.min(coneLength, length / 2);
  const side = (sign: 1 | -1): Point[] => [
    [0, sign * cone],
    [to, sign * tube],
    [length - to, sign * tube],
    [length, sign * cone],
  ];
  return [run(role, side(1)), run(role, side(-1)), ...[0, length].map((x) => line(role, [x, -cone], [x, cone]))];
}
