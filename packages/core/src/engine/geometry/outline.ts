/** A point of a view [mm, mm]. */
export type Point = readonly [number, number];

/** A convex outline in one view, its corners in order [mm]. */
export type Outline = readonly Point[];

/** The outline turned about the origin by an angle [rad], from the first axis toward the second. */
export function turned(outline: Outline, angle: number): Outline {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return outline.map(([x, z]) => [x * c - z * s, x * s + z * c]);
}

/**
 * The gap between two convex outlines [mm]: the shortest distance where they are apart, minus the depth of overlap where
 * they are not (the least shift along an edge normal that would part them).
 */
export function gapBetween(a: Outline, b: Outline): number {
  const separation = Math.max(bestSeparation(a, b), bestSeparation(b, a));
  return separation <= 0 ? separation : Math.min(cornerDistance(a, b), cornerDistance(b, a));
}

/** The gap between a convex outline and a disc [mm], minus the least shift that would part them where they overlap. */
export function gapToDisc(outline: Outline, centre: Point, radius: number): number {
  const nearest = Math.min(...edges(outline).map((edge) => distanceToEdge(centre, edge)));
  return (isInside(outline, centre) ? -nearest : nearest) - radius;
}

/** Is a point on the same side of every edge? */
function isInside(outline: Outline, point: Point): boolean {
  const sides = edges(outline).map(([from, to]) =>
    Math.sign((to[0] - from[0]) * (point[1] - from[1]) - (to[1] - from[1]) * (point[0] - from[0])),
  );
  return !(sides.includes(1) && sides.includes(-1));
}

function bestSeparation(a: Outline, b: Outline): number {
  return Math.max(...edges(a).map(([from, to]) => separationAlongNormal(from, to, a, b)));
}

function separationAlongNormal(from: Point, to: Point, a: Outline, b: Outline): number {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return -Infinity;
  const normal: Point = [(to[1] - from[1]) / length, (from[0] - to[0]) / length];
  const [lowA, highA] = extent(a, normal);
  const [lowB, highB] = extent(b, normal);
  return Math.max(lowB - highA, lowA - highB);
}

function extent(outline: Outline, axis: Point): [number, number] {
  const along = outline.map(([x, z]) => x * axis[0] + z * axis[1]);
  return [Math.min(...along), Math.max(...along)];
}

function cornerDistance(a: Outline, b: Outline): number {
  return Math.min(...a.flatMap((corner) => edges(b).map((edge) => distanceToEdge(corner, edge))));
}

function distanceToEdge(point: Point, [from, to]: readonly [Point, Point]): number {
  const dx = to[0] - from[0];
  const dz = to[1] - from[1];
  const along = dx * dx + dz * dz;
  const t = along === 0 ? 0 : ((point[0] - from[0]) * dx + (point[1] - from[1]) * dz) / along;
  const clamped = Math.min(1, Math.max(0, t));
  return Math.hypot(point[0] - from[0] - clamped * dx, point[1] - from[1] - clamped * dz);
}

function edges(outline: Outline): (readonly [Point, Point])[] {
  return outline.map((corner, i) => [corner, outline[(i + 1) % outline.length] ?? corner]);
}
