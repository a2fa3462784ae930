import fc from 'fast-check';
import type { SetupDocument } from '../../src/records/index.ts';
import { even } from '../even.ts';
import { documentOf, helds, liftCases, type Held, type LiftCase, type Spoken } from './generateLift.ts';

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

const exactly: Spoken = (_, value) => value;

/** How far the point read lies before the cross centre. */
function beforeCross(point: Told['stub'], grooveToEnd: number, endToCross: number): number {
  if (point === 'crossCentre') return 0;
  return point === 'groove' ? grooveToEnd + endToCross : endToCross;
}

/** The setup document of a case: every length as a reading to the point that it was taken to. */
export function shaftDocument(one: ShaftCase, spoken: Spoken = exactly): SetupDocument {
  const document = documentOf(one.lift, spoken);
  const machine = (name: string): Record<string, unknown> => (document[name] ?? {}) as Record<string, unknown>;
  const { tractor, implement, coupler, shaft } = fieldsOf(one, spoken);
  return {
    ...document,
    tractor: { ...machine('tractor'), ...tractor },
    implement: { ...machine('implement'), ...implement },
    ...(document['coupler'] === undefined ? {} : { coupler: { ...machine('coupler'), ...coupler } }),
    shaft,
  };
}

type Fields = Record<string, unknown>;

function fieldsOf({ drive, beside, told }: ShaftCase, spoken: Spoken): Record<string, Fields> {
  const said = (machine: string, figures: Readonly<Record<string, number | null>>): Fields =>
    Object.fromEntries(
      Object.entries(figures).flatMap(([key, value]) =>
        value === null ? [] : [[key, spoken(`${machine}.${key}`, value)]],
      ),
    );
  const read = (path: string, value: number, from: string): unknown => {
    const said = spoken(path, value);
    return typeof said === 'number' ? { value: said, from } : { ...(said as object), from };
  };
  const rad = Math.PI / 180;
  const [tilt, yaw] = [drive.inputAngle * rad, (drive.inputYaw ?? 0) * rad];
  const front = beforeCross(told.stub, drive.stubGrooveToEnd, drive.endToCrossFront);
  const rear = beforeCross(told.input, drive.inputGrooveToEnd, drive.endToCrossRear);
  const fromGroove = (d: number, total: number): number => total - d;
  const stubAhead = fromGroove(front, drive.stubGrooveToEnd + drive.endToCrossFront);
  const inputAhead = fromGroove(rear, drive.inputGrooveToEnd + drive.endToCrossRear);
  const [wayFront, wayRear] = [
    drive.stubGrooveToEnd + drive.endToCrossFront,
    drive.inputGrooveToEnd + drive.endToCrossRear,
  ];
  const closed = { crossCentre: 0, pinToPin: wayFront + wayRear, yokeEnds: 2 * drive.yokeOverCross }[told.closed];
  return {
    tractor: {
      ...said('tractor', {
        stubHeight: drive.stubHeight,
        stubAside: drive.stubAside,
        stubGrooveToEnd: drive.stubGrooveToEnd,
      }),
      stubBehindAxle: read('tractor.stubBehindAxle', drive.stubBehind + stubAhead, told.stub),
      ...(beside.drawbar === null ? {} : { outlines: [drawbarOutline(beside.drawbar)] }),
    },
    implement: {
      driven: true,
      ...said('implement', {
        inputAbove: drive.inputAbove - inputAhead * Math.cos(yaw) * Math.sin(tilt),
        inputAside: drive.inputAside + inputAhead * Math.sin(yaw),
        inputAngle: drive.inputAngle,
        inputYaw: drive.inputYaw,
        inputGrooveToEnd: drive.inputGrooveToEnd,
        shiftLeft: drive.shiftLeft,
        shiftRight: drive.shiftRight,
      }),
      inputBehind: read(
        'implement.inputBehind',
        drive.inputBehind - inputAhead * Math.cos(yaw) * Math.cos(tilt),
        told.input,
      ),
    },
    coupler: said('coupler', {
      windowWidth: beside.windowWidth,
      windowTop: beside.windowTop,
      windowBottom: beside.windowBottom,
      windowBehind: beside.windowBehind,
    }),
    shaft: {
      closedLength: read('shaft.closedLength', drive.closedLength + closed, told.closed),
      ...said('shaft', {
        closedOverlap: drive.closedOverlap,
        profileLength: drive.profileLength,
        yokeOverCross: drive.yokeOverCross,
        bindAngle: 70,
        guardTubeDiameter: beside.guardTubeDiameter,
        guardConeDiameter: beside.guardConeDiameter,
        guardConeLength: beside.guardConeLength,
      }),
      yokeReachFront: read(
        'shaft.yokeReachFront',
        drive.endToCrossFront + (told.reachFront === 'groove' ? drive.stubGrooveToEnd : 0),
        told.reachFront,
      ),
      yokeReachRear: read(
        'shaft.yokeReachRear',
        drive.endToCrossRear + (told.reachRear === 'groove' ? drive.inputGrooveToEnd : 0),
        told.reachRear,
      ),
    },
  };
}

function drawbarOutline(of: DrawbarCase): Fields {
  const side = [
    [of.from, of.bottom],
    [of.to, of.bottom],
    [of.to, of.top],
    [of.from, of.top],
  ];
  const rear = [
    [of.left, of.bottom],
    [of.right, of.bottom],
    [of.right, of.top],
    [of.left, of.top],
  ];
  return { name: 'drawbar', part: 'drawbar', side, ...(of.fromBehind ? { rear } : {}) };
}
