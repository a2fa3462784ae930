import { cross, dot, less, type Spot } from './rigid.ts';
import { solvedSystem } from './linearSystem.ts';
import { rootOf } from './sideView.ts';

/** A mass at a point in space: x rearward, y to the right, z up, from the ground below the rear axle [kg, mm]. */
export interface PointMass {
  readonly mass: number;
  readonly at: Spot;
}

/** Three points that a tractor stands on: both rear tyres, and the pin that its front axle swings on [mm]. */
export interface Supports {
  readonly wheelbase: number;
  readonly rearTrack: number;
  readonly pivotHeight: number;
}

/** Forces of the ground square to it, as the masses that would weigh as much [kg]. */
export interface Reactions {
  readonly left: number;
  readonly right: number;
  readonly front: number;
}

const straightDown: Spot = [0, 0, -1];

/**
 * Rest of one rigid body: three sums of forces and three of moments for six unknown forces, each along its own line. Both
 * tyres share one line sideways, and one rearward force goes through the middle of the axle.
 */
export function reactionsOf(
  masses: readonly PointMass[],
  { wheelbase, rearTrack, pivotHeight }: Supports,
  down: Spot = straightDown,
): Reactions {
  const pivot: Spot = [-wheelbase, 0, pivotHeight];
  const lines: readonly (readonly [at: Spot, along: Spot])[] = [
    [
      [0, -rearTrack / 2, 0],
      [0, 0, 1],
    ],
    [
      [0, rearTrack / 2, 0],
      [0, 0, 1],
    ],
    [pivot, [0, 0, 1]],
    [
      [0, 0, 0],
      [0, 1, 0],
    ],
    [pivot, [0, 1, 0]],
    [
      [0, 0, 0],
      [1, 0, 0],
    ],
  ];
  const columns = lines.map(([at, along]) => [...along, ...cross(at, along)]);
  const pulls = masses.map(({ mass, at }) => [...down, ...cross(at, down)].map((part) => mass * part));
  const rows = columns.map((_, row) => columns.map((column) => column[row] as number));
  const right = rows.map((_, row) => -pulls.reduce((sum, pull) => sum + (pull[row] as number), 0));
  const [onLeft = 0, onRight = 0, onFront = 0] = solvedSystem(rows, right);
  return { left: onLeft, right: onRight, front: onFront };
}

/** A slope that falls to one side, or behind the tractor, by an angle: where gravity points as the tractor sees it. */
const falling = {
  left: (angle: number): Spot => [0, -Math.sin(angle), -Math.cos(angle)],
  right: (angle: number): Spot => [0, Math.sin(angle), -Math.cos(angle)],
  behind: (angle: number): Spot => [Math.sin(angle), 0, -Math.cos(angle)],
} as const;

type Toward = keyof typeof falling;

const other = { left: 'right', right: 'left' } as const;
const steepest = Math.PI / 2 - 1e-6;

/** The slope at which what holds a body on it is gone, by halving from a wall on one side to a wall on the other [deg]. */
function lostAt(holds: (down: Spot) => number, toward: Toward): number {
  const angle = rootOf((slope) => holds(falling[toward](slope)), -steepest, steepest);
  if (angle === null) throw new Error('never tips');
  return (angle * 180) / Math.PI;
}

/** Slope falling to a side at which the upper rear tyre carries nothing any more, the front axle swinging freely [deg]. */
export function tipsSideways(masses: readonly PointMass[], on: Supports, toward: 'left' | 'right'): number {
  return lostAt((down) => reactionsOf(masses, on, down)[other[toward]], toward);
}

/** Slope that the tractor looks up at which its front axle carries nothing any more [deg]. */
export function tipsUphill(masses: readonly PointMass[], on: Supports): number {
  return lostAt((down) => reactionsOf(masses, on, down).front, 'behind');
}

/** Slope at which all turns about the line of both lower tyres: no moment of any mass holds it back [deg]. */
export function tipsOnStop(masses: readonly PointMass[], { rearTrack }: Supports, toward: 'left' | 'right'): number {
  const side = toward === 'right' ? 1 : -1;
  const onLine: Spot = [0, (side * rearTrack) / 2, 0];
  const line: Spot = [side, 0, 0];
  return lostAt(
    (down) => masses.reduce((sum, { mass, at }) => sum + mass * dot(cross(less(at, onLine), down), line), 0),
    toward,
  );
}
