/** Two joints with a tube between them, inner yokes in line. [rad] */
export interface TwoJoints {
  readonly first: number;
  readonly second: number;
  /** by which the planes of the two joints are turned about the tube */
  readonly twist: number;
}

type Direction = readonly [number, number, number];

/** How one shaft turns while the driving one turns by `turn`, which starts with its pin in the plane of the first joint. */
export interface Turning {
  /** [rad] */
  readonly at: (turn: number) => number;
  /** speed over that of the driving shaft */
  readonly ratio: (turn: number) => number;
}

const dot = (a: Direction, b: Direction): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Direction, b: Direction): Direction => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** A line that leaves the tube's axis by an angle, in a plane turned about the tube. */
function leaning(angle: number, plane: number): Direction {
  return [Math.sin(angle) * Math.cos(plane), Math.sin(angle) * Math.sin(plane), Math.cos(angle)];
}

/** Two directions square to an axis and to one another, by which a yoke's turn about the axis is told. */
interface Round {
  readonly start: Direction;
  readonly quarter: Direction;
}

function roundOf(axis: Direction): Round {
  const side = cross([0, 1, 0], axis);
  const size = Math.sqrt(dot(side, side));
  const start: Direction = [side[0] / size, side[1] / size, side[2] / size];
  return { start, quarter: cross(axis, start) };
}

function pinAt({ start, quarter }: Round, turn: number): Direction {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return [c * start[0] + s * quarter[0], c * start[1] + s * quarter[1], c * start[2] + s * quarter[2]];
}

/**
 * The turn about an axis at which a yoke's pin stands square to the pin on the other side of the cross, by halving. Within
 * a quarter turn of the guess there is exactly one.
 */
function squareTo(pin: Direction, round: Round, guess: number): number {
  const off = (turn: number): number => dot(pin, pinAt(round, turn));
  let [low, high] = [guess - Math.PI / 2, guess + Math.PI / 2];
  const rising = off(high) > off(low);
  for (let i = 0; i < 56; i += 1) {
    const middle = (low + high) / 2;
    if (off(middle) > 0 === rising) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Slope by differences over four places. */
function slopeOf(at: (turn: number) => number, step: number): (turn: number) => number {
  return (turn) =>
    (8 * (at(turn + step) - at(turn - step)) - (at(turn + 2 * step) - at(turn - 2 * step))) / (12 * step);
}

function turning(at: (turn: number) => number): Turning {
  return { at, ratio: slopeOf(at, 2e-3) };
}

/** Tube and far shaft, from the yokes' directions alone: both pins of a cross always stand square to one another. */
export function turnsOf({ first, second, twist }: TwoJoints): { tube: Turning; far: Turning } {
  const near = roundOf(leaning(first, 0));
  const between = roundOf([0, 0, 1]);
  const away = roundOf(leaning(second, twist));
  const tubeAt = (turn: number): number => squareTo(pinAt(near, turn), between, turn + Math.PI / 2);
  const farAt = (turn: number): number => squareTo(pinAt(between, tubeAt(turn)), away, tubeAt(turn) - Math.PI / 2);
  return { tube: turning(tubeAt), far: turning(farAt) };
}

/** Greatest and least ratio in a turn. */
export function spread({ ratio }: Turning): { greatest: number; least: number } {
  return { greatest: peakOf(ratio), least: -peakOf((turn) => -ratio(turn)) };
}

/** Greatest acceleration in a turn for a driving speed of 1 rad/s. */
export function greatestSlope({ ratio }: Turning): number {
  const slope = slopeOf(ratio, 2e-3);
  return peakOf((turn) => Math.abs(slope(turn)));
}

/** Highest value in half a turn, after which all repeats: a coarse look, then thirds. */
function peakOf(of: (turn: number) => number): number {
  const count = 60;
  const width = Math.PI / count;
  const values = Array.from({ length: count }, (_, i) => of(i * width));
  const best = values.indexOf(Math.max(...values)) * width;
  let [low, high] = [best - width, best + width];
  for (let i = 0; i < 20; i += 1) {
    const [left, right] = [low + (high - low) / 3, high - (high - low) / 3];
    if (of(left) < of(right)) low = left;
    else high = right;
  }
  return of((low + high) / 2);
}
