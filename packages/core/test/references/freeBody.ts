import { solvedSystem } from './linearSystem.ts';
import { apart, armEndAt, ballAt, minus, upperAt, type Point, type SideView } from './sideView.ts';

/** A mass at a point of the side view [kg, mm]. */
export interface Weight {
  readonly mass: number;
  readonly at: Point;
}

/** Forces of a lift at rest, as the masses that would weigh as much [kg, kg·mm]. */
export interface FreeBody {
  /** Turning moment that holds the lift arms. */
  readonly armTorque: number;
  /** Pull in the lift rods and in the top link. */
  readonly rod: number;
  readonly topLink: number;
  /** Force of the lower links on the body they carry. */
  readonly onBody: Point;
}

const unknowns = ['pivotX', 'pivotZ', 'ballX', 'ballZ', 'rod', 'armX', 'armZ', 'torque', 'topLink'] as const;
type Unknown = (typeof unknowns)[number];
type Equation = Readonly<Partial<Record<Unknown, number>>>;

/**
 * Rest of every body by itself: the sums of forces along and up, and of moments, of the lower links, of what the top link
 * holds and of the lift arms; nine equations for nine unknowns.
 */
export function freeBodyAt(
  view: SideView,
  height: number,
  onBody: readonly Weight[],
  onLinks: readonly Weight[] = [],
): FreeBody {
  const ball = ballAt(view, height);
  const body = ball === null ? null : upperAt(view, ball);
  const arm = ball === null ? null : armEndAt(view, ball);
  if (body === null || arm === null) throw new Error('does not close');
  const alongRod = unit(minus(arm.end, arm.foot));
  const alongTop = unit(minus(view.topPivot, body.upper));
  const held = minus(body.origin, view.pivot);
  const foot = minus(arm.foot, view.pivot);
  const mast = minus(body.upper, body.origin);
  const reach = minus(arm.end, view.arm.pivot);
  const moment = (weights: readonly Weight[], about: Point): number =>
    weights.reduce((sum, { mass, at }) => sum + mass * (at.x - about.x), 0);
  const total = (weights: readonly Weight[]): number => weights.reduce((sum, { mass }) => sum + mass, 0);
  const equations: readonly (readonly [Equation, number])[] = [
    [{ pivotX: 1, rod: alongRod.x, ballX: -1 }, 0],
    [{ pivotZ: 1, rod: alongRod.z, ballZ: -1 }, total(onLinks)],
    [{ rod: foot.x * alongRod.z - foot.z * alongRod.x, ballX: held.z, ballZ: -held.x }, moment(onLinks, view.pivot)],
    [{ ballX: 1, topLink: alongTop.x }, 0],
    [{ ballZ: 1, topLink: alongTop.z }, total(onBody)],
    [{ topLink: mast.x * alongTop.z - mast.z * alongTop.x }, moment(onBody, body.origin)],
    [{ armX: 1, rod: -alongRod.x }, 0],
    [{ armZ: 1, rod: -alongRod.z }, 0],
    [{ torque: 1, rod: -(reach.x * alongRod.z - reach.z * alongRod.x) }, 0],
  ];
  const found = solvedSystem(
    equations.map(([row]) => unknowns.map((name) => row[name] ?? 0)),
    equations.map(([, right]) => right),
  );
  const value = (name: Unknown): number => found[unknowns.indexOf(name)] as number;
  return {
    armTorque: value('torque'),
    rod: value('rod'),
    topLink: value('topLink'),
    onBody: { x: value('ballX'), z: value('ballZ') },
  };
}

function unit(arrow: Point): Point {
  const length = apart(arrow, { x: 0, z: 0 });
  return { x: arrow.x / length, z: arrow.z / length };
}
