import { loadMark } from '../../side/parts/loadMark.ts';
import { barBetween, disc, plank, solidPin } from '../../side/parts/bars.ts';
import { poseAt } from '../../side/pose.ts';
import type { Item, Point } from '../../scene.ts';
import { arc, body, circle, line, rectangle, rounded, run } from '../../strokes.ts';
import { piece, type Piece, type Sketch } from '../sketch.ts';
import { spline, splineAt } from './splines.ts';

/** Sizes [mm], the lower pins at 0, rearward to the right. */
const sizes = {
  rotor: [540, -165],
  rotorRadius: 215,
  hood: 248,
  input: [330, 175],
  bale: [640, 185],
  baleRadius: 470,
} as const satisfies Readonly<Record<string, number | Point>>;

const { rotor, rotorRadius, hood, input, bale, baleRadius } = sizes;

/** Points of the sketch. */
export const points = {
  pin: [0, 0],
  pinTop: [0, 11],
  pinBottom: [0, -11],
  plateFront: [-38, -10],
  middle: [430, -120],
  rotor,
  inputFace: [input[0] - spline.end, input[1]],
  yokeEnd: [input[0] - spline.end + 43, input[1] + 29],
  loadTop: [bale[0], bale[1] + baleRadius],
  upper: [64, 460],
  upperEdge: [64, 486],
  alongMast: [34, 240],
  gravity: [452, 88],
  load: bale,
  loadEdge: [bale[0], bale[1] - baleRadius],
  loadRear: [bale[0] + baleRadius, bale[1]],
  groove: [input[0] - spline.groove, input[1]],
  inputEnd: [input[0] - spline.end, input[1]],
  inputCross: [input[0] - spline.end - 57, input[1]],
  inputTop: [input[0] - spline.groove, input[1] + spline.radius],
  inputAxis: [input[0] - spline.end + 10, input[1]],
  lowest: [rotor[0], rotor[1] - rotorRadius],
  rear: [860, -250],
  hoodRear: [rotor[0] + hood, rotor[1] + 20],
} as const satisfies Readonly<Record<string, Point>>;

/** How far the ground lies below the lower pins [mm]. */
export const grounds = {
  parked: rotor[1] - rotorRadius,
  work: rotor[1] - rotorRadius + 125,
  carried: rotor[1] - rotorRadius - 250,
} as const;

/** What the picture needs besides the machine. */
interface Shown {
  readonly ground?: keyof typeof grounds;
  readonly mark?: boolean;
  readonly joint?: boolean;
}

/** A driven implement from its left side: mast, gearbox with its input shaft, hood and rotor. */
export function implementSide({ ground, mark, joint }: Shown = {}): Sketch {
  return {
    view: 'Implement, from its left side',
    ground: ground === undefined ? null : grounds[ground],
    show: { left: -170, right: 900, bottom: ground === undefined ? -400 : grounds[ground] - 20, top: 500 },
    pieces: [
      ...machine(),
      ...headstock(),
      ...(joint === true ? [jointPiece()] : []),
      ...(mark === true ? [piece('gravity', loadMark('thin', points.gravity, 34))] : []),
    ],
  };
}

function machine(): Piece[] {
  return [
    piece(
      'rotor',
      circle('hidden', rotor, rotorRadius),
      circle('ghost', rotor, 60),
      teeth(),
      line('centre', [rotor[0], points.lowest[1] - 40], [rotor[0], points.lowest[1] + 90]),
    ),
    piece(
      'hood',
      run('thin', arc(rotor, hood, 172, 6)),
      run('thin', [points.hoodRear, [860, -60], points.rear]),
      plank('thin', [130, 20], [rotor[0] - 40, rotor[1] + hood + 6], 16),
    ),
    piece('shaft', splineAt({ at: input, cos: -1, sin: 0 })),
    piece(
      'gearbox',
      body('thin', rounded([input[0], input[1] - 78], [input[0] + 170, input[1] + 78], 22)),
      plank('thin', [input[0] + 85, input[1] - 78], [input[0] + 120, rotor[1] + hood], 26),
    ),
  ];
}

/** Bent ends of the tools around the rotor. */
function teeth(): Item[] {
  return Array.from({ length: 8 }, (_, i) => {
    const angle = ((i * 45 + 10) * Math.PI) / 180;
    const at = (radius: number, turn: number): Point => [
      rotor[0] + radius * Math.cos(angle + turn),
      rotor[1] + radius * Math.sin(angle + turn),
    ];
    return run('ghost', [at(60, 0), at(rotorRadius * 0.86, 0.06), at(rotorRadius, 0.32)]);
  });
}

/** Mast and lower plates with the pins, and the brace behind them. */
function headstock(): Piece[] {
  const { pin, upper } = points;
  return [
    piece('brace', plank('thin', upper, [rotor[0] - 20, rotor[1] + hood + 10], 10)),
    piece(
      'mast',
      barBetween('thin', pin, upper, { half: 21, eyes: [40, 28] }),
      body('thin', rectangle([-16, -30], [150, 26])),
    ),
    piece('upperPin', disc('thin', upper, 9.5)),
    piece('pins', solidPin('thin', pin, 11)),
  ];
}

/** A yoke on the input shaft, with the cross of its joint. */
function jointPiece(): Piece {
  const [x, z] = points.inputCross;
  return piece(
    'joint',
    body('thin', [
      [x + 100, z - 29],
      [x + 48, z - 29],
      [x + 16, z - 25],
      [x - 10, z - 25],
      [x - 10, z + 25],
      [x + 16, z + 25],
      [x + 48, z + 29],
      [x + 100, z + 29],
    ]),
    disc('thin', points.inputCross, 13),
  );
}

/** A spear with a bale: what is carried. */
export function carrierSide(isOnGround: boolean): Sketch {
  return {
    view: 'Loaded implement, from its left side',
    ground: isOnGround ? bale[1] - baleRadius - 120 : null,
    show: { left: -170, right: 1130, bottom: bale[1] - baleRadius - (isOnGround ? 140 : 0), top: bale[1] + baleRadius },
    pieces: [
      piece(
        'load',
        { ...circle('thin', bale, baleRadius), fill: 'sheet' },
        ...[0.72, 0.45, 0.2].map((share) => circle('ghost', bale, baleRadius * share)),
      ),
      piece('spear', plank('thin', [120, 60], [980, 60], 14)),
      piece(
        'mast',
        barBetween('thin', points.pin, points.upper, { half: 21, eyes: [40, 28] }),
        body('thin', rectangle([-16, -60], [150, 90])),
      ),
      piece('upperPin', disc('thin', points.upper, 9.5)),
      piece('pins', solidPin('thin', points.pin, 11)),
    ],
  };
}

/** Points of the plate with two rows of pins. */
export const rowPoints = {
  first: [0, 0],
  second: [46, 150],
  secondTop: [46, 161],
  plateTop: [46, 214],
} as const satisfies Readonly<Record<string, Point>>;

/** A plate that carries two rows of lower pins, from the side. */
export function twoRows(): Sketch {
  const { first, second } = rowPoints;
  return {
    view: 'Pin plate of the implement, from its left side',
    ground: null,
    show: { left: -270, right: 200, bottom: -80, top: 220 },
    pieces: [
      piece('frame', plank('ghost', [60, 60], [600, 20], 36)),
      piece('plate', body('thin', [...arc(first, 46, 180, 330), [100, 70], ...arc(second, 46, -20, 150)])),
      ...[first, second].map((at) => piece('pins', solidPin('thin', at, 11))),
    ],
  };
}

const tilt = 14;

/** Points of the tilted input shaft: its front end, and one on the level and one on the axis behind it. */
export const tiltPoints = {
  corner: [0, 0],
  level: [200, 0],
  axis: poseAxis(200),
} as const satisfies Readonly<Record<string, Point>>;

function poseAxis(along: number): Point {
  const angle = (tilt * Math.PI) / 180;
  return [along * Math.cos(angle), along * Math.sin(angle)];
}

/** The input shaft from the side, its rear end higher. */
export function inputTilted(): Sketch {
  const pose = poseAt([0, 0], tilt);
  const back = poseAxis(150);
  const box = rounded([150, -62], [290, 62], 16).map(([x, z]): Point => [
    x * pose.cos - z * pose.sin,
    x * pose.sin + z * pose.cos,
  ]);
  return {
    view: 'Input shaft, from the left side',
    ground: null,
    show: { left: -70, right: 330, bottom: -90, top: 130 },
    pieces: [
      piece('axis', line('centre', poseAxis(-60), poseAxis(340))),
      piece('gearbox', body('thin', box)),
      piece('shaft', splineAt({ at: back, cos: -pose.cos, sin: -pose.sin })),
    ],
  };
}
