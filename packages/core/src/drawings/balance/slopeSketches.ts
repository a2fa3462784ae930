import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item, LineRole, Point } from '../scene.ts';
import { body, circle, hatch, line, outline, rectangle, rounded, run } from '../strokes.ts';
import { loadMark } from '../side/parts/loadMark.ts';
import { solidPin } from '../side/parts/bars.ts';
import { wheelAt } from '../side/parts/tractor.ts';
import { placed, placedItem, poseAt, type Pose } from '../side/pose.ts';
import { lettering } from '../view/part.ts';
import { frontWheel } from './seeSawStill.ts';
import type { AtLimit } from './slopeModel.ts';
import { limitText } from './slopeWords.ts';

/** A tractor on its slope, downhill to the right; the lower wheel stands at the origin [mm]. */
export interface SlopeSketch {
  readonly limit: AtLimit;
  readonly pose: Pose;
  /** From where to where the slope is drawn, along itself. */
  readonly from: number;
  readonly to: number;
  readonly bodies: readonly Item[];
  readonly centre: Point;
  /** Where the tipping axis passes the centre: the line of gravity goes through it. */
  readonly edge: Point;
  readonly box: Bounds;
}

/** What of a slope is drawn above and below the wheels, along itself [mm]. */
const around = { above: 220, below: 420 } as const;

/** Opens the picture of a limit: from behind for one sideways, from the side for one uphill. */
export function openSketch(limit: AtLimit): SlopeSketch {
  const seen = limit.which === 'sideways' ? fromBehind(limit) : fromSide(limit);
  const pose = poseAt([0, 0], -(limit.angle ?? 0));
  const items = seen.bodies.map((item) => placedItem(pose, item));
  const points = [
    ...items.flatMap((item): Point[] => {
      if (item.kind === 'stroke') return [...item.points];
      if (item.kind !== 'circle') return [];
      const { centre, radius } = item;
      return [
        [centre[0] - radius, centre[1] - radius],
        [centre[0] + radius, centre[1] + radius],
      ];
    }),
    placed(pose, [seen.from, 0]),
    placed(pose, [seen.to, 0]),
    placed(pose, seen.centre),
  ];
  const [xs, zs] = [points.map(([x]) => x), points.map(([, z]) => z)];
  return {
    limit,
    pose,
    ...seen,
    bodies: items,
    box: { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...zs), top: Math.max(...zs) },
  };
}

type Seen = Pick<SlopeSketch, 'from' | 'to' | 'bodies' | 'centre' | 'edge'>;

/** Two tyres, the body for place, and the axis about which it tips: from the lower tyre to the pivot of the front axle. */
function fromBehind({ track, tyreWidth, tyre, pivotHeight, ahead, height, aside, ...rest }: AtLimit): Seen {
  const half = track / 2;
  const share = ahead / rest.wheelbase;
  const role: LineRole = rest.isTyreMeasured ? 'thin' : 'hidden';
  const tyreAt = (y: number): Item =>
    body(role, rounded([y - tyreWidth / 2 - half, 0], [y + tyreWidth / 2 - half, 2 * tyre], tyreWidth / 3));
  const wide = half - tyreWidth / 2;
  return {
    from: -track - tyreWidth / 2 - around.above,
    to: tyreWidth / 2 + around.below,
    centre: [aside - half, height],
    edge: [-half * share, share * pivotHeight],
    bodies: [
      outline('ghost', rectangle([-half - wide, tyre * 0.75], [-half + wide, tyre * 1.25])),
      outline('ghost', rounded([-half - wide * 0.62, tyre * 0.6], [-half + wide * 0.62, tyre * 2.15], 60)),
      tyreAt(-half),
      tyreAt(half),
      line('centre', [0, 0], [-half, pivotHeight]),
      circle('thin', [-half, pivotHeight], tyre * 0.07),
    ],
  };
}

/** Rear wheel, front wheel and the body for place; it tips about where the rear wheels stand. */
function fromSide({ wheelbase, tyre, ahead, height, isTyreMeasured }: AtLimit): Seen {
  const front = tyre * frontWheel;
  const role: LineRole = isTyreMeasured ? 'thin' : 'hidden';
  return {
    from: -wheelbase - front - around.above,
    to: tyre * 0.75 + around.below,
    centre: [-ahead, height],
    edge: [0, 0],
    bodies: [
      outline('ghost', rounded([-wheelbase - front * 0.8, tyre * 0.75], [tyre * 0.35, tyre * 1.75], 80)),
      ...wheelAt(role, [0, tyre], tyre).slice(0, 1),
      ...wheelAt('ghost', [0, tyre], tyre).slice(1),
      { ...circle('hidden', [-wheelbase, front], front), fill: 'sheet' },
    ],
  };
}

/** Room that a sketch takes below its lowest point, for the angle [paper mm]. */
export const angleRoom = 6;

/** The sketch with its slope, the line of gravity, and the angle. */
export function sketchItems(pen: Pen, sketch: SlopeSketch): Item[] {
  const { limit, pose, from, to, bodies, centre, edge } = sketch;
  const depth = onPaper(pen, 1.8);
  const slope = [
    [from, 0],
    [to, 0],
    [to, -depth],
    [from, -depth],
  ] as const;
  const [mark, pivot] = [placed(pose, centre), placed(pose, edge)];
  return [
    hatch(
      'thin',
      slope.map((point) => placed(pose, point)),
    ),
    line('thin', placed(pose, [from, 0]), placed(pose, [to, 0])),
    ...bodies,
    ...(limit.angle === null ? [] : [...gravity(pen, sketch, mark), ...angleItems(pen, sketch, limit.angle)]),
    ...(limit.angle === null ? [] : [solidPin('heavy', pivot, onPaper(pen, 0.9))]),
    ...loadMark('thin', mark, onPaper(pen, 2)),
  ];
}

/** The line of gravity: straight down from the centre, through the tipping axis. */
function gravity(pen: Pen, { box }: SlopeSketch, [x, z]: Point): Item[] {
  const foot = box.bottom;
  const [long, half] = [onPaper(pen, 2.6), onPaper(pen, 0.6)];
  return [
    run('heavy', [
      [x, z],
      [x, foot],
    ]),
    {
      ...outline('heavy', [
        [x, foot],
        [x - half, foot + long],
        [x + half, foot + long],
      ]),
      fill: 'line',
    },
  ];
}

/** The angle between the slope and the level, at the foot of the slope. */
function angleItems(pen: Pen, { pose, from, to }: SlopeSketch, angle: number): Item[] {
  const toe = placed(pose, [to, 0]);
  const radius = Math.min((to - from) * 0.5, onPaper(pen, 24));
  const size = pen.sheet.letters.dimension;
  const points = Array.from({ length: 13 }, (_, i): Point => {
    const turn = Math.PI - (angle * i * Math.PI) / 12 / 180;
    return [toe[0] + radius * Math.cos(turn), toe[1] + radius * Math.sin(turn)];
  });
  return [
    line('dimension', toe, [toe[0] - radius - onPaper(pen, 3), toe[1]]),
    run('dimension', points),
    lettering([toe[0] - radius, toe[1] - onPaper(pen, 1.6 + size * 0.7)], limitText(angle), size, {
      anchor: 'middle',
      weight: 600,
    }),
  ];
}
