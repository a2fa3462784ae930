/** A point or an arrow in space: x rearward, y to the right, z up [mm]. */
export type Spot = readonly [x: number, y: number, z: number];

/** A rigid move of space: a homogeneous 4 × 4 matrix, row after row. */
export type Move = readonly number[];

const size = 4;

/** Moves along, without turning. */
export function slid([x, y, z]: Spot): Move {
  return [1, 0, 0, x, 0, 1, 0, y, 0, 0, 1, z, 0, 0, 0, 1];
}

/** Turns from +x toward +z: what points rearward rises. */
export function pitched(angle: number): Move {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c, 0, -s, 0, 0, 1, 0, 0, s, 0, c, 0, 0, 0, 0, 1];
}

/** Turns from +x toward +y: what points rearward goes to the right. */
export function yawed(angle: number): Move {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c, -s, 0, 0, s, c, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];
}

/** Moves that are nested in one another, the outermost first: the matrix product. */
export function nested(...moves: readonly Move[]): Move {
  return moves.reduce(product);
}

function product(a: Move, b: Move): Move {
  const entry = (row: number, column: number): number => {
    let sum = 0;
    for (let k = 0; k < size; k += 1) sum += (a[row * size + k] as number) * (b[k * size + column] as number);
    return sum;
  };
  return Array.from({ length: size * size }, (_, i) => entry(Math.floor(i / size), i % size));
}

/** Where a point of the inner frame is in the outer one. */
export function placedIn(frame: Move, spot: Spot): Spot {
  return applied(frame, [...spot, 1]);
}

/** The direction of an arrow of the inner frame in the outer one. */
export function pointedIn(frame: Move, arrow: Spot): Spot {
  return applied(frame, [...arrow, 0]);
}

function applied(frame: Move, vector: readonly number[]): Spot {
  const row = (i: number): number => vector.reduce((sum, value, k) => sum + value * (frame[i * size + k] as number), 0);
  return [row(0), row(1), row(2)];
}

/** The move back: for a rigid move the turn transposed, and what was moved along turned back by it. */
export function undone(frame: Move): Move {
  const at = (row: number, column: number): number => frame[row * size + column] as number;
  const along: Spot = [at(0, 3), at(1, 3), at(2, 3)];
  const turned = Array.from({ length: size * size }, (_, i) => {
    const [row, column] = [Math.floor(i / size), i % size];
    if (row === 3 || column === 3) return row === column ? 1 : 0;
    return at(column, row);
  });
  return nested(turned, slid([-along[0], -along[1], -along[2]]));
}

/** a − b. */
export function less(a: Spot, b: Spot): Spot {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** A point so far along from another. */
export function along(from: Spot, arrow: Spot, by: number): Spot {
  return [from[0] + by * arrow[0], from[1] + by * arrow[1], from[2] + by * arrow[2]];
}

/** a · b. */
export function dot(a: Spot, b: Spot): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** a × b. */
export function cross(a: Spot, b: Spot): Spot {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** Length of an arrow. */
export function lengthOf(a: Spot): number {
  return Math.hypot(a[0], a[1], a[2]);
}

/** An arrow of length 1 in the same direction. */
export function unit(a: Spot): Spot {
  return along([0, 0, 0], a, 1 / lengthOf(a));
}

/** Angle between two arrows, right at 0 and at a half turn as well [rad]. */
export function angleBetween(a: Spot, b: Spot): number {
  return Math.atan2(lengthOf(cross(a, b)), dot(a, b));
}

/** Turn about an axis from one arrow to another, both square to it [rad]. */
export function turnAbout(axis: Spot, from: Spot, to: Spot): number {
  return Math.atan2(dot(unit(axis), cross(from, to)), dot(from, to));
}
