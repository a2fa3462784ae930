/** A point of the side view, x rearward and z up [mm]. */
export interface Point {
  readonly x: number;
  readonly z: number;
}

/** A linkage as it projects into the side view, in plain numbers [mm]. */
export interface SideView {
  readonly pivot: Point;
  readonly link: number;
  readonly topPivot: Point;
  readonly topLink: number;
  /** Upper point of the held body in its own frame. */
  readonly upper: Point;
  /** From the ball to the body's origin, turning with the links; null where the body sits on the balls. */
  readonly onLink: Point | null;
  readonly arm: {
    readonly pivot: Point;
    readonly length: number;
    readonly along: number;
    readonly above: number;
    readonly rod: number;
  };
}

/** The lower link at one height. */
export interface Ball {
  readonly at: Point;
  readonly angle: number;
}

/** The held body at one height; `lean` is the sine between its upper arm and square to the line to the top pivot. */
export interface Body {
  readonly origin: Point;
  readonly upper: Point;
  readonly pitch: number;
  readonly lean: number;
}

/** The lift arm at one height. */
export interface Arm {
  readonly end: Point;
  readonly foot: Point;
  readonly angle: number;
  readonly lean: number;
}

/** a × b = a_x·b_z − a_z·b_x. */
export function cross(a: Point, b: Point): number {
  return a.x * b.z - a.z * b.x;
}

/** a − b. */
export function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, z: a.z - b.z };
}

/** Distance between two points. */
export function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.z - b.z);
}

/** A point at an offset from another, the offset turned by an angle. */
export function placed(from: Point, arm: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: from.x + arm.x * cos - arm.z * sin, z: from.z + arm.x * sin + arm.z * cos };
}

/** Where a function that changes sign over [low, high] is zero, by halving; null where it does not. */
export function rootOf(of: (value: number) => number, low: number, high: number): number | null {
  let [a, b] = [low, high];
  const sign = Math.sign(of(a));
  if (sign === 0) return a;
  if (Math.sign(of(b)) === sign) return null;
  for (let i = 0; i < 200 && (a + b) / 2 !== a && (a + b) / 2 !== b; i += 1) {
    const cut = (a + b) / 2;
    if (Math.sign(of(cut)) === sign) a = cut;
    else b = cut;
  }
  return (a + b) / 2;
}

/** The ball at a height, behind the pivot: |P − A| = ℓ and P_z = height, solved for the angle. */
export function ballAt(view: SideView, height: number): Ball | null {
  const angle = rootOf((theta) => view.pivot.z + view.link * Math.sin(theta) - height, -Math.PI / 2, Math.PI / 2);
  if (angle === null) return null;
  return { at: placed(view.pivot, { x: view.link, z: 0 }, angle), angle };
}

/**
 * The held body: |Q − B| = t with Q at its distance from the origin O, on the side where (B − O) × (Q − O) < 0. Going round
 * that side from the line to B, Q gets ever farther from B, so that halving finds the one place.
 */
export function upperAt(view: SideView, ball: Ball): Body | null {
  const origin = view.onLink === null ? ball.at : placed(ball.at, view.onLink, ball.angle);
  const toPivot = minus(view.topPivot, origin);
  const bearing = Math.atan2(toPivot.z, toPivot.x);
  const mast = Math.hypot(view.upper.x, view.upper.z);
  const upper = (turn: number): Point => placed(origin, { x: mast, z: 0 }, bearing - turn);
  const turn = rootOf((value) => apart(upper(value), view.topPivot) - view.topLink, 0, Math.PI);
  if (turn === null) return null;
  const raw = bearing - turn - Math.atan2(view.upper.z, view.upper.x);
  return { origin, upper: upper(turn), pitch: wrapped(raw), lean: Math.cos(turn) };
}

/** The lift arm: |K − N| = s with K at its distance from the pivot R, on the rearward side of the line from R to N. */
export function armEndAt(view: SideView, ball: Ball): Arm | null {
  const { arm } = view;
  const foot = placed(view.pivot, { x: arm.along, z: arm.above }, ball.angle);
  const toFoot = minus(foot, arm.pivot);
  const bearing = Math.atan2(toFoot.z, toFoot.x);
  const end = (turn: number): Point => placed(arm.pivot, { x: arm.length, z: 0 }, bearing + turn);
  const turn = rootOf((value) => apart(end(value), foot) - arm.rod, 0, Math.PI);
  if (turn === null) return null;
  return { end: end(turn), foot, angle: wrapped(bearing + turn), lean: Math.cos(turn) };
}

function wrapped(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** Slope of a function by central differences, carried to fourth order. */
export function slopeAt(of: (value: number) => number, at: number, step: number): number {
  const central = (by: number): number => (of(at + by) - of(at - by)) / (2 * by);
  return (4 * central(step / 2) - central(step)) / 3;
}
