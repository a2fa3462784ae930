import type { Item, Point } from '../../scene.ts';
import { arc, body, circle, hatch, line, rectangle, rounded } from '../../strokes.ts';
import { piece, type Piece, type Sketch } from '../sketch.ts';

/** What may sit on the pin besides itself. */
export type OnPin = 'nothing' | 'washer' | 'bushing' | 'ball' | 'secondPlate';

/** Sizes [mm]: the step is at 0 and the pin runs to the right. */
const sizes = {
  radius: 11,
  tip: 64,
  collar: 10,
  collarRadius: 19,
  plate: 14,
  reach: 52,
  hole: 48,
  holeRadius: 5.5,
  washer: [37.5, 42],
  washerRadius: 21,
  bushing: 44,
  bushingRadius: 14.3,
  ball: [2, 42],
  ballRadius: 28,
  gap: 70,
} as const;

const { radius, tip, collar, collarRadius, plate, reach, hole, holeRadius, washer, bushing, ball, gap } = sizes;

/** Points of the sketch. */
export const points = {
  step: [0, 15],
  stepBelow: [0, -15],
  tip: [tip, 0],
  bodyBottom: [22, -radius],
  bodyTop: [22, radius],
  chamfer: [tip - 1.5, radius - 2],
  collarTop: [-collar / 2, collarRadius],
  plateOutside: [-collar, 38],
  plateInside: [-collar - plate, 38],
  collarFace: [-collar, 24],
  holeNear: [hole - holeRadius, 0],
  holeMiddle: [hole, 0],
  holeFar: [hole + holeRadius, 0],
  washerNear: [washer[0], 17],
  washerFar: [washer[1], 17],
  washerTop: [washer[0], sizes.washerRadius],
  bushingEnd: [bushing, sizes.bushingRadius],
  bushingStart: [0, sizes.bushingRadius],
  ballNear: [ball[0], 15],
  ballFar: [ball[1], 15],
  ballBottom: [22, -sizes.ballRadius],
  ballTop: [22, sizes.ballRadius],
  ballShoulder: [ball[1] - 4, 23],
  secondPlate: [gap, 16],
  secondPlateFar: [gap + plate, 28],
} as const satisfies Readonly<Record<string, Point>>;

/** One lower pin, enlarged, from behind: its plate, its step, its hole, and what sits on it. */
export function pinClose(on: OnPin = 'nothing'): Sketch {
  const isDouble = on === 'secondPlate';
  const end = isDouble ? gap + plate + 16 : tip;
  return {
    view: 'One lower pin, from behind',
    ground: null,
    show: { left: -62, right: 100, bottom: -56, top: 58 },
    pieces: [
      piece('frame', frame()),
      piece('pin', pin(end), ...(isDouble ? [] : [circle('thin', [hole, 0], holeRadius)])),
      piece('plate', plateAt(isDouble ? -plate : -collar - plate)),
      ...(isDouble
        ? [piece('secondPlate', plateAt(gap))]
        : [piece('collar', body('thin', rounded([-collar, -collarRadius], [0, collarRadius], 2)))]),
      ...pieceOn(on),
    ],
  };
}

function pin(end: number): Item {
  return body('thin', [
    [-collar - plate, -radius],
    [end - 4, -radius],
    [end, -radius + 4],
    [end, radius - 4],
    [end - 4, radius],
    [-collar - plate, radius],
  ]);
}

function plateAt(x: number): Item[] {
  const outline = rectangle([x, -reach], [x + plate, reach]);
  return [body('thin', outline), hatch('thin', outline)];
}

/** The machine that the plate is welded to, for place only. */
function frame(): Item[] {
  return [
    line('ghost', [-200, 30], [-24, 30]),
    line('ghost', [-200, -30], [-24, -30]),
    line('centre', [-36, 0], [120, 0]),
  ];
}

function pieceOn(on: OnPin): Piece[] {
  switch (on) {
    case 'washer':
      return [
        piece('washer', body('thin', rectangle([washer[0], -sizes.washerRadius], [washer[1], sizes.washerRadius]))),
      ];
    case 'bushing': {
      const outline = rectangle([0, -sizes.bushingRadius], [bushing, sizes.bushingRadius]);
      return [piece('bushing', body('thin', outline), hatch('thin', outline, true))];
    }
    case 'ball': {
      const middle: Point = [(ball[0] + ball[1]) / 2, 0];
      const flat = (Math.acos((ball[1] - ball[0]) / 2 / sizes.ballRadius) * 180) / Math.PI;
      const round = (from: number): Point[] => arc(middle, sizes.ballRadius, from + flat, from + 180 - flat);
      return [piece('ball', body('thin', [...round(0), ...round(180)]))];
    }
    default:
      return [];
  }
}
