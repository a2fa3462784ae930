import fc from 'fast-check';
import { even } from '../even.ts';
import { helds, liftCases, type Held, type LiftCase } from './generateLift.ts';

/** Which point of a splined shaft, of a yoke, or of a closed shaft a reading was taken to. */
export interface Told {
  readonly stub: 'groove' | 'shaftEnd' | 'crossCentre';
  readonly input: 'groove' | 'shaftEnd' | 'crossCentre';
  readonly reachFront: 'shaftEnd' | 'groove';
  readonly reachRear: 'shaftEnd' | 'groove';
  readonly closed: 'crossCentre' | 'pinToPin' | 'yokeEnds';
}

/** Where the drive truly is, whatever was read of it: grooves, lengths along the shafts, and what may move [mm, deg]. */
export interface Drive {
  readonly stubBehind: number;
  readonly stubHeight: number;
  readonly stubAside: number;
  readonly stubGrooveToEnd: number;
  readonly endToCrossFront: number;
  /** Groove of the input shaft from the lower pins, implement level. */
  readonly inputBehind: number;
  readonly inputAbove: number;
  readonly inputAside: number;
  readonly inputAngle: number;
  /** Null where nothing is said of it. */
  readonly inputYaw: number | null;
  readonly inputGrooveToEnd: number;
  readonly endToCrossRear: number;
  readonly shiftLeft: number;
  readonly shiftRight: number;
  readonly sway: number;
  /** Cross to cross. */
  readonly closedLength: number;
  readonly closedOverlap: number;
  readonly profileLength: number;
  readonly yokeOverCross: number;
}

/** Guard and what stands about it [mm]. */
export interface Beside {
  readonly guardTubeDiameter: number;
  readonly guardConeDiameter: number;
  readonly guardConeLength: number;
  readonly windowWidth: number;
  readonly windowTop: number;
  /** Null where nothing crosses below the opening. */
  readonly windowBottom: number | null;
  readonly windowBehind: number;
  readonly topLinkRadius: number;
  readonly drawbar: DrawbarCase | null;
}

/** A drawbar as a box: from the side, and from behind where that is drawn. */
export interface DrawbarCase {
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
  readonly left: number;
  readonly right: number;
  readonly fromBehind: boolean;
}

/** A lift with a drive on it. */
export interface ShaftCase {
  readonly lift: LiftCase;
  readonly drive: Drive;
  readonly beside: Beside;
  readonly told: Told;
}

const toldWays: fc.Arbitrary<Told> = fc.record({
  stub: fc.constantFrom('groove', 'shaftEnd', 'crossCentre'),
  input: fc.constantFrom('groove', 'shaftEnd', 'crossCentre'),
  reachFront: fc.constantFrom('shaftEnd', 'groove'),
  reachRear: fc.constantFrom('shaftEnd', 'groove'),
  closed: fc.constantFrom('crossCentre', 'pinToPin', 'yokeEnds'),
});

/** Nothing, or else anything in a range. */
const perhaps = (min: number, max: number): fc.Arbitrary<number> => fc.oneof(fc.constant(0), even(min, max));

const shares = fc.record({
  stubBehindPivot: even(140, 240),
  stubAbovePivot: even(40, 210),
  stubAside: perhaps(-40, 40),
  stubGrooveToEnd: even(25, 45),
  endToCrossFront: even(45, 90),
  inputBehind: even(120, 600),
  inputAbove: even(40, 360),
  inputAside: perhaps(-180, 180),
  inputAngle: perhaps(-10, 10),
  inputYaw: fc.oneof(fc.constant(null), fc.constant(null), even(-15, 15)),
  inputGrooveToEnd: even(25, 45),
  endToCrossRear: even(45, 90),
  shiftLeft: perhaps(20, 350),
  shiftRight: perhaps(20, 350),
  sway: fc.oneof(fc.constant(0), even(0, 25), even(0, 25)),
  profileShare: even(0.62, 0.85),
  closedShare: even(0.7, 1),
  yokeOverCross: even(60, 120),
  hookBehind: even(-40, 40),
  hookHeight: even(-40, 40),
});

const besides = fc.record({
  guardTubeDiameter: even(55, 95),
  guardConeExtra: even(30, 90),
  guardConeLength: even(90, 200),
  windowWidth: even(480, 650),
  windowTop: even(300, 430),
  windowBottom: fc.oneof(fc.constant(null), even(-160, 20)),
  windowBehind: even(0, 110),
  topLinkRadius: even(12, 35),
  drawbar: fc.oneof(
    fc.constant(null),
    fc.record({
      from: even(-50, 150),
      reach: even(100, 480),
      below: even(120, 330),
      thick: even(30, 70),
      left: even(-160, 40),
      wide: even(60, 130),
      fromBehind: fc.boolean(),
    }),
  ),
});

type Shares = typeof shares extends fc.Arbitrary<infer T> ? T : never;
type Besides = typeof besides extends fc.Arbitrary<infer T> ? T : never;

/** Drives of every kind on lifts of every size, read by every convention. */
export function shaftCases(held: fc.Arbitrary<Held> = helds): fc.Arbitrary<ShaftCase> {
  return fc
    .tuple(liftCases(held), shares, besides, toldWays)
    .map(([lift, of, beside, told]) => caseOf(lift, of, beside, told));
}

function caseOf(lift: LiftCase, of: Shares, beside: Besides, told: Told): ShaftCase {
  const { pivot } = lift.sideView;
  const pulled = lift.held === 'uFrame' ? hookMoved(lift, of) : lift;
  const stubBehind = pivot.x + of.stubBehindPivot;
  const grooves = pivot.x + lift.sideView.link + of.inputBehind - stubBehind;
  const reaches = of.stubGrooveToEnd + of.endToCrossFront + of.inputGrooveToEnd + of.endToCrossRear;
  const closedLength = Math.max(220, (grooves - reaches) * of.closedShare - 40);
  return {
    lift: { ...pulled, tractor: { ...pulled.tractor, sidePlay: of.sway } },
    drive: {
      ...of,
      stubBehind,
      stubHeight: pivot.z + of.stubAbovePivot,
      closedLength,
      closedOverlap: closedLength * of.profileShare,
      profileLength: closedLength * of.profileShare + 40,
    },
    beside: {
      ...beside,
      guardConeDiameter: beside.guardTubeDiameter + beside.guardConeExtra,
      drawbar: beside.drawbar === null ? null : drawbarOf(beside.drawbar, stubBehind, pivot.z + of.stubAbovePivot),
    },
    told,
  };
}

/** A top hook that does not suit the mast: the implement stands turned in its coupler. */
function hookMoved(lift: LiftCase, { hookBehind, hookHeight }: Shares): LiftCase {
  const { topHookBehind = 0, topHookHeight = 460 } = lift.coupler;
  const coupler = { topHookBehind: topHookBehind + hookBehind, topHookHeight: topHookHeight + hookHeight };
  return { ...lift, coupler: { ...lift.coupler, ...coupler } };
}

function drawbarOf(of: NonNullable<Besides['drawbar']>, stubBehind: number, stubHeight: number): DrawbarCase {
  const top = stubHeight - of.below;
  return {
    from: of.from,
    to: stubBehind + of.reach - 100,
    bottom: top - of.thick,
    top,
    left: of.left,
    right: of.left + of.wide,
    fromBehind: of.fromBehind,
  };
}
