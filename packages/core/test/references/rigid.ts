import { glMatrix, mat4, vec3 } from 'gl-matrix';

// The library's own vectors are of single precision unless told otherwise.
glMatrix.setMatrixArrayType(Array);

/** A point or an arrow in space: x rearward, y to the right, z up [mm]. */
export type Spot = readonly [x: number, y: number, z: number];

/** A rigid move of space: the library's 4 × 4 matrix. */
export type Move = Readonly<mat4>;

const acrossAxis: Spot = [0, 1, 0];
const upAxis: Spot = [0, 0, 1];

/** Moves along, without turning. */
export function slid([x, y, z]: Spot): Move {
  return mat4.fromTranslation(mat4.create(), [x, y, z]);
}

/** Turns from +x toward +z: what points rearward rises. */
export function pitched(angle: number): Move {
  return mat4.fromRotation(mat4.create(), -angle, open(acrossAxis)) as Move;
}

/** Turns from +x toward +y: what points rearward goes to the right. */
export function yawed(angle: number): Move {
  return mat4.fromRotation(mat4.create(), angle, open(upAxis)) as Move;
}

/** Moves that are nested in one another, the outermost first: the matrix product. */
export function nested(...moves: readonly Move[]): Move {
  return moves.reduce((a, b) => mat4.multiply(mat4.create(), a, b));
}

/** Where a point of the inner frame is in the outer one. */
export function placedIn(frame: Move, spot: Spot): Spot {
  return shut(vec3.transformMat4(vec3.create(), open(spot), frame));
}

/** The direction of an arrow of the inner frame in the outer one. */
export function pointedIn(frame: Move, arrow: Spot): Spot {
  return less(placedIn(frame, arrow), placedIn(frame, [0, 0, 0]));
}

/** The move back. */
export function undone(frame: Move): Move {
  const back = mat4.invert(mat4.create(), frame);
  if (back === null) throw new Error('a rigid move can be undone');
  return back;
}

/** a − b. */
export function less(a: Spot, b: Spot): Spot {
  return shut(vec3.subtract(vec3.create(), open(a), open(b)));
}

/** A point so far along from another. */
export function along(from: Spot, arrow: Spot, by: number): Spot {
  return shut(vec3.scaleAndAdd(vec3.create(), open(from), open(arrow), by));
}

/** a · b. */
export function dot(a: Spot, b: Spot): number {
  return vec3.dot(open(a), open(b));
}

/** a × b. */
export function cross(a: Spot, b: Spot): Spot {
  return shut(vec3.cross(vec3.create(), open(a), open(b)));
}

/** Length of an arrow. */
export function lengthOf(a: Spot): number {
  return vec3.length(open(a));
}

/** An arrow of length 1 in the same direction. */
export function unit(a: Spot): Spot {
  return shut(vec3.normalize(vec3.create(), open(a)));
}

/** Angle between two arrows, right at 0 and at a half turn as well [rad]. */
export function angleBetween(a: Spot, b: Spot): number {
  return Math.atan2(lengthOf(cross(a, b)), dot(a, b));
}

/** Turn about an axis from one arrow to another, both square to it [rad]. */
export function turnAbout(axis: Spot, from: Spot, to: Spot): number {
  return Math.atan2(dot(unit(axis), cross(from, to)), dot(from, to));
}

function open([x, y, z]: Spot): vec3 {
  return [x, y, z];
}

function shut(vector: vec3): Spot {
  return vector as unknown as Spot;
}
