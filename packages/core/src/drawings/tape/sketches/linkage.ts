import { barBetween, disc, plank, solidPin } from '../../side/parts/bars.ts';
import { placed, poseAlong } from '../../side/pose.ts';
import { wheelAt } from '../../side/parts/tractor.ts';
import type { Point } from '../../scene.ts';
import { body, line, run } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';
import { spline, splineAt } from './splines.ts';

/** How high the lift stands. */
export type LiftHeight = 'low' | 'middle' | 'high';

/** Sizes [mm]: the rear axle is at 0, rearward to the right, heights above the ground. */
const sizes = {
  axle: 560,
  lowerPivot: [120, 420],
  link: 760,
  hole: 400,
  holeAbove: 34,
  topPivot: [262, 790],
  topLink: 640,
  arm: [190, 960],
  armLength: 265,
  rod: 590,
  face: 250,
  stub: 610,
  crank: 135,
  crankTurn: 52,
  cylinderFoot: [120, 640],
} as const;

const {
  axle,
  lowerPivot,
  link,
  hole,
  holeAbove,
  topPivot,
  topLink,
  arm,
  armLength,
  rod,
  face,
  stub,
  crank,
  crankTurn,
} = sizes;

const linkAngles: Readonly<Record<LiftHeight, number>> = { low: -17, middle: -2, high: 27 };

/** Where everything stands at a height of the lift. */
export interface LinkagePoints {
  readonly ball: Point;
  readonly rodHole: Point;
  readonly onLink: Point;
  readonly armEnd: Point;
  readonly crankPin: Point;
  readonly topEnd: Point;
  /** Along the lower link, and square up from it. */
  readonly linkAlong: Point;
}

/** Points that stay where they are. */
export const fixed = {
  axle: [0, axle],
  lowerPivot,
  topPivot,
  arm,
  cylinderFoot: sizes.cylinderFoot,
  groove: [face + spline.groove, stub],
  stubEnd: [face + spline.end, stub],
  stubCross: [face + spline.end + 57, stub],
  stubTop: [face + spline.groove, stub + spline.radius],
  yokeEnd: [face + spline.end - 43, stub + 29],
  otherHole: [topPivot[0], topPivot[1] + 62],
  armLevel: [arm[0] + 400, arm[1]],
  tyreBack: [axle, axle],
  hub: [70, axle],
} as const satisfies Readonly<Record<string, Point>>;

/** The linkage at a height: the rod’s length and the arm’s say where the arm stands. */
export function linkageAt(height: LiftHeight): LinkagePoints {
  const angle = (linkAngles[height] * Math.PI) / 180;
  const linkAlong: Point = [Math.cos(angle), Math.sin(angle)];
  const pose = { at: lowerPivot, cos: linkAlong[0], sin: linkAlong[1] };
  const rodHole = placed(pose, [hole, holeAbove]);
  const armEnd = meeting(arm, armLength, rodHole, rod);
  const armPose = poseAlong(arm, armEnd);
  const turn = (crankTurn * Math.PI) / 180;
  const ball = placed(pose, [link, 0]);
  return {
    ball,
    rodHole,
    onLink: placed(pose, [hole, 0]),
    armEnd,
    crankPin: placed(armPose, [crank * Math.cos(turn), crank * Math.sin(turn)]),
    topEnd: [topPivot[0] + Math.sqrt(topLink ** 2 - (ball[1] + 460 - topPivot[1]) ** 2), ball[1] + 460],
    linkAlong,
  };
}

/** Where two circles meet, on the right of the line between their middles. */
function meeting(a: Point, ra: number, b: Point, rb: number): Point {
  const distance = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const along = (distance ** 2 + ra ** 2 - rb ** 2) / (2 * distance);
  return placed(poseAlong(a, b), [along, Math.sqrt(ra ** 2 - along ** 2)]);
}

/** The rear of a tractor from its left side, with its linkage; what hangs on the balls is left out. */
export function linkage(height: LiftHeight = 'middle', beside: readonly ('cylinder' | 'joint')[] = []): Sketch {
  const at = linkageAt(height);
  return {
    view: 'Rear of the tractor, from its left side',
    ground: 0,
    show: { left: -330, right: 960, bottom: -20, top: 1180 },
    pieces: [
      piece('wheel', wheelAt('ghost', fixed.axle, axle)),
      piece('housing', housing()),
      piece('axle', disc('thin', fixed.axle, 40)),
      piece('stub', splineAt({ at: [face, stub], cos: 1, sin: 0 })),
      ...(beside.includes('joint') ? [piece('joint', yoke(), disc('thin', fixed.stubCross, 13))] : []),
      piece(
        'topLink',
        barBetween('thin', topPivot, at.topEnd, { half: 11, eyes: [24, 22] }),
        plank('thin', along(topPivot, at.topEnd, 0.25), along(topPivot, at.topEnd, 0.75), 19),
      ),
      piece(
        'topPivot',
        solidPin('thin', topPivot, 10),
        disc('thin', fixed.otherHole, 10),
        solidPin('thin', at.topEnd, 9),
      ),
      piece('lowerLink', barBetween('thin', lowerPivot, at.ball, { half: 19, eyes: [34, 34] }), body('thin', lug(at))),
      ...(beside.includes('cylinder') ? [cylinderPiece(at)] : []),
      piece('rod', barBetween('thin', at.armEnd, at.rodHole, { half: 10, eyes: [20, 20] })),
      piece('arm', barBetween('thin', arm, at.armEnd, { half: 25, eyes: [52, 28] }), disc('thin', arm, 20)),
      piece('pins', solidPin('thin', lowerPivot, 12), solidPin('thin', at.armEnd, 9), solidPin('thin', at.rodHole, 9)),
      piece('linkAxis', line('centre', lowerPivot, at.ball)),
      piece('ball', disc('thin', at.ball, 24), disc('thin', at.ball, 11)),
    ],
  };
}

function along(from: Point, to: Point, share: number): Point {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}

function housing() {
  return [
    run('ghost', [
      [-2000, 1040],
      [170, 1040],
      [face, 930],
      [face, 470],
      [face - 70, 350],
      [-2000, 350],
    ]),
    body('ghost', [
      [face, 740],
      [face + 30, 750],
      [face + 30, 890],
      [face, 900],
    ]),
  ];
}

/** The ear of a lower link that the lift rod hangs in. */
function lug({ linkAlong }: LinkagePoints): Point[] {
  const pose = { at: lowerPivot, cos: linkAlong[0], sin: linkAlong[1] };
  return (
    [
      [hole - 46, 19],
      [hole - 22, holeAbove + 18],
      [hole + 22, holeAbove + 18],
      [hole + 46, 19],
    ] as const
  ).map((point) => placed(pose, point));
}

function yoke() {
  const [x, z] = fixed.stubCross;
  return body('thin', [
    [x - 100, z - 29],
    [x - 48, z - 29],
    [x - 16, z - 25],
    [x + 10, z - 25],
    [x + 10, z + 25],
    [x - 16, z + 25],
    [x - 48, z + 29],
    [x - 100, z + 29],
  ]);
}

/** A lift cylinder outside the housing, from its fixed foot to the crank of the arm. */
function cylinderPiece({ crankPin }: LinkagePoints) {
  const foot = sizes.cylinderFoot;
  return piece(
    'cylinder',
    plank('thin', along(foot, crankPin, 0.5), crankPin, 14),
    plank('thin', foot, along(foot, crankPin, 0.68), 30),
    barBetween('thin', arm, crankPin, { half: 20, eyes: [44, 24] }),
    disc('thin', foot, 26),
    solidPin('thin', foot, 9),
    solidPin('thin', crankPin, 9),
  );
}
