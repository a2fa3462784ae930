import { poseAt, placedItem } from '../../side/pose.ts';
import { cross, fixed, sizes as drawn } from '../../shaft/parts.ts';
import type { Item, Point } from '../../scene.ts';
import { body, circle, line, rectangle, run } from '../../strokes.ts';
import { piece, type Piece, type Sketch } from '../sketch.ts';
import { spline, splineItems } from './splines.ts';

/** Sizes [mm]: the cross centre at the tractor is at 0, the shaft runs to the right. */
const sizes = {
  length: 620,
  hub: 122,
  lock: 91,
  reach: 57,
  outerFrom: 90,
  outerTo: 505,
  innerFrom: 150,
  guardTube: 32,
  guardCone: 74,
  cone: 118,
  bend: 42,
} as const;

const { length, hub, lock, reach, outerFrom, outerTo, innerFrom, guardTube, guardCone, cone, bend } = sizes;
const { outer, inner } = drawn;

/** Points of the shaft. */
export const points = {
  frontCross: [0, 0],
  rearCross: [length, 0],
  frontLock: [-lock, drawn.hub + 1.5],
  rearLock: [length + lock, drawn.hub + 1.5],
  frontYoke: [-hub, 0],
  rearYoke: [length + hub, 0],
  yokeFace: [-hub, 20],
  innerEnd: [innerFrom, -inner],
  outerEnd: [outerTo, -outer],
  outerStart: [outerFrom, outer],
  fixedEar: [-8, drawn.ear],
  stubEnd: [-reach, 0],
  groove: [-reach - (spline.end - spline.groove), spline.radius - spline.depth],
  tubeTop: [300, guardTube],
  tubeBottom: [300, -guardTube],
  coneTop: [0, guardCone],
  coneBottom: [0, -guardCone],
  coneEnd: [cone, -guardTube],
  steelTube: [300, outer],
} as const satisfies Readonly<Record<string, Point>>;

/** The yoke that slides on splines, from its outer end to its ears, with its lock pin. */
function yoke(): Item[] {
  const { hub: high, ear } = drawn;
  return [
    body('thin', [
      [-hub, -high],
      [-40, -high],
      [-20, -ear],
      [10, -ear],
      [10, ear],
      [-20, ear],
      [-40, high],
      [-hub, high],
    ]),
    body('thin', rectangle([-lock - 7, high - 3], [-lock + 7, high + 6])),
  ];
}

function flipped(items: readonly Item[]): Item[] {
  const over = ([x, z]: Point): Point => [length - x, z];
  return items.map((item) => {
    if (item.kind === 'stroke') return { ...item, points: item.points.map(over) };
    return item.kind === 'circle' ? { ...item, centre: over(item.centre) } : item;
  });
}

function joints(): Piece[] {
  const ends = [fixed('thin', outerFrom, outer), ...yoke(), ...cross('thin', [0, 0])];
  return [
    piece('front', ends.slice(0, 1)),
    piece('rear', flipped([fixed('thin', 80, inner)])),
    piece('yokes', yoke(), flipped(yoke())),
    piece('crosses', cross('thin', [0, 0]), cross('thin', [length, 0])),
  ];
}

/** The whole shaft, pushed right together; its guard where it is asked for. */
export function closedShaft(): Sketch {
  return {
    view: 'Drive shaft, pushed right together',
    ground: null,
    show: { left: -hub - 20, right: length + hub + 20, bottom: -150, top: 150 },
    pieces: [
      piece('inner', body('thin', rectangle([outerTo, -inner], [length - 80, inner]))),
      piece('outer', body('thin', rectangle([outerFrom, -outer], [outerTo, outer]))),
      piece(
        'hidden',
        run('hidden', [
          [outerTo, inner],
          [innerFrom, inner],
          [innerFrom, -inner],
          [outerTo, -inner],
        ]),
      ),
      ...joints(),
      piece('axis', line('centre', [-hub - 14, 0], [length + hub + 14, 0])),
    ],
  };
}

/** One half of a shaft, drawn out of the other. */
export function halfShaft(): Sketch {
  return {
    view: 'One half of the drive shaft, pulled apart',
    ground: null,
    show: { left: -hub - 20, right: outerTo + 30, bottom: -110, top: 120 },
    pieces: [
      piece('tube', body('thin', rectangle([outerFrom, -outer], [outerTo, outer]))),
      piece('yokes', fixed('thin', outerFrom, outer), yoke()),
      piece('crosses', cross('thin', [0, 0])),
      piece('axis', line('centre', [-hub - 14, 0], [outerTo + 16, 0])),
    ],
  };
}

/** The joint on a splined shaft, its yoke latched on it: the shaft inside it dashed. */
export function jointOnShaft(shaft: string): Sketch {
  const inside = splineItems().map((item) => placedItem(poseAt([-reach - spline.end, 0], 0), item));
  return {
    view: `Joint on the ${shaft}, from the side`,
    ground: null,
    show: { left: -170, right: 66, bottom: -62, top: 74 },
    pieces: [
      piece('housing', body('ghost', rectangle([-260, -70], [-reach - spline.end, 70]))),
      piece('tube', fixed('thin', 90, outer)),
      piece('yokes', yoke()),
      piece('shaft', inside.map(seenThrough)),
      piece('crosses', cross('thin', [0, 0])),
      piece('axis', line('centre', [-190, 0], [120, 0])),
    ],
  };
}

/** What lies inside something else: its outline dashed, hiding nothing. */
function seenThrough(item: Item): Item {
  if (item.kind !== 'stroke' || item.role === 'centre') return item;
  const { points: corners, closed } = item;
  return { kind: 'stroke', role: closed ? 'hidden' : 'ghost', points: corners, closed };
}

/** Points of the bent joint: on the axis straight on, and on the bent one. */
export const bentPoints = {
  corner: [0, 0],
  straight: [200, 0],
  bent: [200 * Math.cos((bend * Math.PI) / 180), 200 * Math.sin((bend * Math.PI) / 180)],
  yoke: [-hub + 20, -drawn.hub],
} as const satisfies Readonly<Record<string, Point>>;

/** A joint bent by hand until its yokes touch. */
export function bentJoint(): Sketch {
  const pose = poseAt([0, 0], bend);
  const tube = [
    body('thin', rectangle([outerFrom, -outer], [320, outer])),
    fixed('thin', outerFrom, outer),
    line('centre', [0, 0], [300, 0]),
  ];
  return {
    view: 'One joint, from the side',
    ground: null,
    show: { left: -130, right: 250, bottom: -60, top: 200 },
    pieces: [
      piece('axis', line('centre', [-140, 0], [270, 0])),
      piece(
        'tube',
        tube.map((item) => placedItem(pose, item)),
      ),
      piece('yokes', yoke()),
      piece('crosses', cross('thin', [0, 0])),
    ],
  };
}

/** A shaft with its guard: tube and cones, the shaft inside dashed. */
export function guardedShaft(): Sketch {
  const side = (sign: 1 | -1): Point[] => [
    [0, sign * guardCone],
    [cone, sign * guardTube],
    [length - cone, sign * guardTube],
    [length, sign * guardCone],
  ];
  return {
    view: 'Drive shaft with its guard, from the side',
    ground: null,
    show: { left: -hub - 20, right: 470, bottom: -130, top: 130 },
    pieces: [
      piece('yokes', yoke(), flipped(yoke())),
      piece(
        'guard',
        body('thin', [...side(1), ...side(-1).reverse()]),
        line('thin', [cone, -guardTube], [cone, guardTube]),
      ),
      piece(
        'shaft',
        line('hidden', [90, outer], [length - 90, outer]),
        line('hidden', [90, -outer], [length - 90, -outer]),
        circle('hidden', [0, 0], drawn.cross),
      ),
      piece('axis', line('centre', [-hub - 14, 0], [length + 40, 0])),
    ],
  };
}

/** Points of a shield over the guard. */
export const shieldPoints = {
  shieldEdge: [46, -104],
  coneEdge: [0, -guardCone],
  housing: [-170, -80],
  cross: [0, 0],
} as const satisfies Readonly<Record<string, Point>>;

/** The shield of a machine over the cone of the guard, which is dashed inside it. */
export function shieldOver(machine: string): Sketch {
  const [edge] = shieldPoints.shieldEdge;
  return {
    view: `Shield of the ${machine} over the guard, from the side`,
    ground: null,
    show: { left: -210, right: 240, bottom: -170, top: 128 },
    pieces: [
      piece('housing', body('ghost', rectangle([-300, -120], [-170, 120]))),
      piece(
        'guardBehind',
        body('thin', [
          [cone, guardTube],
          [360, guardTube],
          [360, -guardTube],
          [cone, -guardTube],
          [edge, -guardTube - ((cone - edge) / cone) * (guardCone - guardTube)],
          [edge, guardTube + ((cone - edge) / cone) * (guardCone - guardTube)],
        ]),
      ),
      piece('shield', body('thin', rectangle([-170, -104], [edge, 104]))),
      piece(
        'guard',
        ...bothWays([
          [edge, guardTube + ((cone - edge) / cone) * (guardCone - guardTube)],
          [0, guardCone],
          [0, 0],
        ]),
      ),
      piece('axis', line('centre', [-180, 0], [380, 0])),
    ],
  };
}

function bothWays(points: readonly Point[]): Item[] {
  return [
    run('hidden', points),
    run(
      'hidden',
      points.map(([x, z]): Point => [x, -z]),
    ),
  ];
}
