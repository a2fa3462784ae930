import fc from 'fast-check';
import type { SetupDocument } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { armEndAt, ballAt, upperAt, type SideView } from '../references/sideView.ts';

/** How the implement is held. */
export type Held = 'bareBalls' | 'uFrame' | 'triangle' | 'clawEnds' | 'hookEnds' | 'bar';

/** A tractor's linkage and lift with everything exact, each figure by its field [mm, kg, bar, deg]. */
export type Figures = Readonly<Record<string, number>>;

/** One generated lift: exact figures of each machine, and what is known of it. */
export interface LiftCase {
  readonly held: Held;
  readonly tractor: Figures;
  readonly implement: Figures;
  readonly coupler: Figures;
  /** Top link that makes the implement, or the frame, stand level with its links at working height [mm]. */
  readonly sideView: SideView;
}

const whole = (min: number, max: number): fc.Arbitrary<number> => even(min, max).map(Math.round);
const tenth = (value: number): number => Math.round(value * 10) / 10;

const ballWidth = 35;

const shape = fc.record({
  size: even(0.85, 1.3),
  link: even(700, 820),
  pivotBehind: whole(70, 150),
  pivotHeight: whole(390, 500),
  pivotSpan: whole(400, 500),
  ballSpan: whole(690, 760),
  topBehind: even(40, 170),
  topAbove: even(340, 460),
  topTilt: even(-1, 1),
  mast: even(440, 620),
  setback: whole(-20, 70),
  armBehind: even(60, 140),
  armAbove: even(370, 450),
  arm: even(200, 270),
  armLevel: even(-15, 20),
  along: even(0.48, 0.62),
  above: whole(-20, 40),
  aside: whole(0, 80),
  drop: even(0.2, 0.33),
  rise: even(0.3, 0.5),
  work: even(-0.12, 0.12),
  carry: even(0.15, 0.95),
});

const load = fc.record({
  atBalls: whole(700, 2200),
  behindShare: even(0.55, 0.97),
  loadShare: even(0.35, 0.95),
  centreBehind: whole(250, 900),
  centreAbove: whole(-150, 300),
  carriedShare: fc.oneof(fc.constant(0), even(0.1, 0.4)),
  carriedBehind: whole(300, 900),
  carriedAbove: whole(0, 500),
  lowestBehind: whole(300, 1000),
  lowestBelow: whole(50, 420),
  hookBehind: whole(90, 130),
  hookRise: whole(-20, 30),
  couplerMass: whole(20, 80),
  couplerBehind: whole(20, 110),
  couplerAbove: whole(0, 300),
  hungMass: fc.oneof(fc.constant(0), whole(20, 120)),
  testMast: whole(440, 520),
});

type Shape = typeof shape extends fc.Arbitrary<infer T> ? T : never;
type Load = typeof load extends fc.Arbitrary<infer T> ? T : never;

/** Every way of holding, bare balls as often as all frames. */
export const helds: fc.Arbitrary<Held> = fc.constantFrom(
  'bareBalls',
  'bareBalls',
  'uFrame',
  'uFrame',
  'triangle',
  'clawEnds',
  'hookEnds',
  'bar',
);

/** Lifts of every size whose loops stay well clear of being straight or folded, all through the stroke. */
export function liftCases(held: fc.Arbitrary<Held> = helds): fc.Arbitrary<LiftCase> {
  return fc
    .tuple(held, shape, load)
    .map(([how, of, with_]) => caseOf(how, of, with_))
    .filter((one): one is LiftCase => one !== null);
}

function caseOf(held: Held, of: Shape, with_: Load): LiftCase | null {
  const link = Math.round(of.link * of.size);
  const splay = (of.ballSpan - of.pivotSpan) / 2;
  const projected = Math.sqrt(link ** 2 - splay ** 2);
  const pivot = { x: of.pivotBehind, z: of.pivotHeight };
  const topPivot = {
    x: Math.round(pivot.x + of.topBehind * of.size),
    z: Math.round(pivot.z + of.topAbove * of.size),
  };
  const armPivot = { x: Math.round(pivot.x + of.armBehind * of.size), z: Math.round(pivot.z + of.armAbove * of.size) };
  const arm = Math.round(of.arm * of.size);
  const along = Math.round(of.along * link);
  const mast = Math.round(of.mast * of.size);
  const tilt = (of.armLevel * Math.PI) / 180;
  const armEnd = { x: armPivot.x + arm * Math.cos(tilt), z: armPivot.z + arm * Math.sin(tilt) };
  const alongProjected = (along * projected) / link;
  const rodProjected = Math.hypot(armEnd.x - (pivot.x + alongProjected), armEnd.z - (pivot.z + of.above));
  const rod = Math.round(Math.hypot(rodProjected, of.aside));
  const ballHeightLow = Math.round(pivot.z - of.drop * link);
  const ballHeightHigh = Math.round(pivot.z + of.rise * link);
  const workBall = Math.round(pivot.z + of.work * link);
  const isOnLink = held === 'hookEnds' || held === 'bar';
  const isFramed = held === 'uFrame' || held === 'triangle';
  const { hookBehind, hookRise } = with_;
  const hasHooks = isOnLink || isFramed;
  const upper = { x: isFramed ? 0 : of.setback, z: mast };
  const onLink = isOnLink ? { x: hookBehind, z: hookRise } : null;
  const bare: SideView = {
    pivot,
    link: projected,
    topPivot,
    topLink: 0,
    upper,
    onLink,
    arm: {
      pivot: armPivot,
      length: arm,
      along: alongProjected,
      above: of.above,
      rod: Math.sqrt(Math.max(0, rod ** 2 - of.aside ** 2)),
    },
  };
  const ball = ballAt(bare, workBall);
  if (ball === null) return null;
  const origin = onLink === null ? ball.at : offset(ball.at, onLink, ball.angle);
  const topLink = Math.hypot(origin.x + upper.x - topPivot.x, origin.z + upper.z - topPivot.z);
  const sideView = { ...bare, topLink };
  if (!isClear(sideView, ballHeightLow, ballHeightHigh)) return null;
  const rated = with_.atBalls * with_.behindShare;
  const mass = Math.round(rated * with_.loadShare);
  const material = { carriedMass: Math.round(mass * with_.carriedShare), carriedBehind: with_.carriedBehind };
  const carried = material.carriedMass === 0 ? {} : { ...material, carriedAbove: with_.carriedAbove };
  return {
    held,
    sideView,
    tractor: {
      lowerLinkLength: link,
      lowerLinkPivotSpan: of.pivotSpan,
      lowerLinkPivotBehindAxle: pivot.x,
      lowerLinkPivotHeight: pivot.z,
      topLinkPivotBehindAxle: topPivot.x,
      topLinkPivotHeight: topPivot.z,
      ballHeightLow,
      ballHeightHigh,
      liftArmPivotBehindAxle: armPivot.x,
      liftArmPivotHeight: armPivot.z,
      liftArmLength: arm,
      liftRodLength: rod,
      liftRodAlong: along,
      liftRodAbove: of.above,
      liftRodAside: of.aside,
      liftAtBalls: with_.atBalls,
      liftAt610: Math.round(rated),
      liftTestMastHeight: with_.testMast,
      tyreRadius: Math.round(540 * of.size),
      tyreInnerSpan: of.ballSpan + 60,
      lowerLinkThickness: 20,
      sidePlay: 10,
    },
    implement: {
      shoulderSpan: of.ballSpan - ballWidth,
      mastHeight: mast,
      mastSetback: of.setback,
      mass,
      centreBehind: with_.centreBehind,
      centreAbove: with_.centreAbove,
      ...carried,
      parkedPinHeight: ballHeightLow + 60 + (hasHooks ? hookRise : 0),
      workPinHeight: tenth(origin.z + (isFramed ? hookRise : 0)),
      carryHeight: Math.round(pivot.z + of.carry * of.rise * link),
      lowestBehind: with_.lowestBehind,
      lowestBelow: with_.lowestBelow,
      clearanceWanted: 150,
    },
    coupler:
      held === 'bareBalls'
        ? {}
        : {
            hookBehind,
            hookRise,
            seatDepth: 25,
            topHookHeight: mast,
            topHookBehind: of.setback,
            mass: with_.couplerMass,
            centreBehind: with_.couplerBehind,
            centreAbove: with_.couplerAbove,
            hungMass: with_.hungMass,
            hungBehind: 60,
            hungAbove: 250,
          },
  };
}

function offset(from: { x: number; z: number }, arm: { x: number; z: number }, angle: number) {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return { x: from.x + arm.x * cos - arm.z * sin, z: from.z + arm.x * sin + arm.z * cos };
}

/** Every loop closes at 41 heights and nowhere leans past the sine of 64°, both ways. */
function isClear(view: SideView, low: number, high: number): boolean {
  for (let i = 0; i <= 40; i += 1) {
    const height = low + (i / 40) * (high - low);
    const ball = ballAt(view, height);
    const body = ball === null ? null : upperAt(view, ball);
    const arm = ball === null ? null : armEndAt(view, ball);
    if (body === null || arm === null || Math.abs(body.lean) > 0.9 || Math.abs(arm.lean) > 0.9) return false;
    if (ball === null || Math.abs(ball.angle) > 0.75) return false;
  }
  return true;
}

/** What is said of one figure beyond its value. */
export type Spoken = (path: string, value: number) => unknown;

const exactly: Spoken = (_, value) => value;

/** The setup document of a case; what the hook-up needs beyond the lift is given so that it fits. */
export function documentOf(one: LiftCase, spoken: Spoken = exactly): SetupDocument {
  const said = (machine: string, figures: Figures): Record<string, unknown> =>
    Object.fromEntries(Object.entries(figures).map(([key, value]) => [key, spoken(`${machine}.${key}`, value)]));
  const pins = { lowerPinDiameter: 22.2, standOut: 62, shoulderToHole: 46, washer: 2, upperPinDiameter: 19 };
  const clevis = { clevisGap: 46, clevisOuterWidth: 70 };
  const { shoulderSpan = 683, mastHeight = 460 } = one.implement;
  const isFramed = one.held === 'uFrame' || one.held === 'triangle';
  const front = { ...pins, ...clevis, shoulderSpan, mastHeight: spoken('coupler.front.mastHeight', mastHeight) };
  const coupler = {
    kind: one.held,
    hookSpan: shoulderSpan + 30,
    hookWidth: 25,
    hookSeat: 22.8,
    topHookThroat: 21,
    topHookThickness: 25,
    roomNeededLower: 80,
    roomNeededUpper: 80,
    clawSize: 44,
    frameWidth: 500,
    frameAngle: 60,
    barDiameter: 40,
    barLength: 640,
    front: { ...front, mastSetback: isFramed ? 0 : (one.implement['mastSetback'] ?? 0) },
    ...said('coupler', one.coupler),
  };
  return {
    hitchwright: 1,
    units: 'metric',
    tractor: {
      lowerBallBore: 22.4,
      lowerBallWidth: ballWidth,
      upperBallBore: 19.3,
      upperBallWidth: 42,
      ballSpan: { adjustable: { between: [shoulderSpan + ballWidth - 60, shoulderSpan + ballWidth + 60] } },
      topLinkLength: { adjustable: { between: [one.sideView.topLink - 120, one.sideView.topLink + 120] } },
      ...said('tractor', one.tractor),
    },
    ...(one.held === 'bareBalls' ? {} : { coupler }),
    implement: {
      mounting: 'threePoint',
      freeRoomLower: 110,
      freeRoomUpper: 110,
      pinBallDiameter: 44,
      pinBallWidth: ballWidth,
      pinBallBore: 22.8,
      receiver: one.held === 'bar' ? 'jaws' : 'triangle',
      receiverWidth: 504,
      receiverAngle: 60,
      jawOpening: 41,
      jawSpan: 620,
      ...pins,
      ...clevis,
      ...said('implement', one.implement),
    },
  };
}

/** What a tape, a plumb line or a scale leaves open, either way, by field [mm, kg]. */
const tolerances: Readonly<Record<string, number>> = {
  'tractor.lowerLinkLength': 3,
  'tractor.lowerLinkPivotSpan': 4,
  'tractor.lowerLinkPivotBehindAxle': 4,
  'tractor.lowerLinkPivotHeight': 3,
  'tractor.topLinkPivotBehindAxle': 3,
  'tractor.topLinkPivotHeight': 3,
  'tractor.ballHeightLow': 5,
  'tractor.ballHeightHigh': 5,
  'tractor.liftArmPivotBehindAxle': 3,
  'tractor.liftArmPivotHeight': 3,
  'tractor.liftArmLength': 2,
  'tractor.liftRodLength': 3,
  'tractor.liftRodAlong': 3,
  'tractor.liftRodAside': 5,
  'tractor.tyreRadius': 10,
  'tractor.tyreInnerSpan': 5,
  'implement.shoulderSpan': 1.5,
  'implement.mastHeight': 2,
  'implement.mastSetback': 3,
  'implement.mass': 4,
  'implement.centreBehind': 15,
  'implement.centreAbove': 20,
  'implement.workPinHeight': 5,
  'implement.carryHeight': 5,
  'implement.lowestBehind': 5,
  'implement.lowestBelow': 4,
  'coupler.hookBehind': 3,
  'coupler.hookRise': 3,
  'coupler.mass': 3,
  'coupler.front.mastHeight': 2,
};

/** Ten figures that were taken with a tape, or with a plumb line or a scale; a coupler that is not there takes none. */
export const tapePaths: fc.Arbitrary<readonly string[]> = fc.shuffledSubarray(Object.keys(tolerances), {
  minLength: 10,
  maxLength: 10,
});

/** Says the taped figures with their tolerance, or some times as much but no more than a fifth, the others exactly. */
export function tapes(paths: readonly string[], times = 1): Spoken {
  return (path, value) => {
    if (!paths.includes(path)) return value;
    const plusMinus = (tolerances[path] ?? 0) * times;
    return { value, plusMinus: times === 1 ? plusMinus : Math.min(plusMinus, Math.abs(value) / 5) };
  };
}

/** What is not known of a lift; `nothing` adds the lift cylinder. */
export type Unknown = 'nothing' | 'arms' | 'ballHeights' | 'linkage' | 'liftAtBalls';

/** Leaves figures out of a document, or puts others in their place. */
export function unknownTo(unknown: Unknown, { sideView }: LiftCase): { path: string; value: unknown }[] {
  const left = (keys: readonly string[]) => keys.map((key) => ({ path: `tractor.${key}`, value: undefined }));
  const put = (figures: Readonly<Record<string, number>>) =>
    Object.entries(figures).map(([key, value]) => ({ path: `tractor.${key}`, value: Math.round(value) }));
  switch (unknown) {
    case 'arms':
      return left(['liftArmPivotBehindAxle', 'liftArmPivotHeight', 'liftArmLength', 'liftRodLength', 'liftRodAlong']);
    case 'linkage':
      return left(['lowerLinkLength']);
    case 'liftAtBalls':
      return left(['liftAtBalls']);
    case 'ballHeights':
      return put({ liftArmLowest: armAngle(sideView, -0.2), liftArmHighest: armAngle(sideView, 0.3) });
    default: {
      const { pivot } = sideView.arm;
      return put({
        cylinderBore: 65,
        liftPressure: 170,
        cylinderPivotBehindAxle: pivot.x - 230,
        cylinderPivotHeight: pivot.z - 20,
        cylinderCrank: 90,
        cylinderCrankAngle: -95,
      });
    }
  }
}

/** Angle of the lift arm with the balls some share of the link's length above its pivot [deg]. */
function armAngle(view: SideView, share: number): number {
  const ball = ballAt(view, view.pivot.z + share * view.link);
  const arm = ball === null ? null : armEndAt(view, ball);
  if (arm === null) throw new Error('does not close');
  return (arm.angle * 180) / Math.PI;
}
