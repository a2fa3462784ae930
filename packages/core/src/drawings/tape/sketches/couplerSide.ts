import { barBetween, disc, plank, solidPin } from '../../side/parts/bars.ts';
import { loadMark } from '../../side/parts/loadMark.ts';
import type { Point, Stroke } from '../../scene.ts';
import { arc, body, circle, line, rectangle, rounded, run } from '../../strokes.ts';
import { piece, type Piece, type Sketch } from '../sketch.ts';

/** Sizes [mm]: the balls of the lower links are at 0, rearward to the right. */
const sizes = {
  post: [62, 114],
  low: -64,
  high: 520,
  lower: [158, 34],
  top: [212, 470],
  seat: 12,
  throat: 10,
  weights: [84, 300],
} as const;

const { post, low, high, lower, top, seat, throat, weights } = sizes;

/** Points of the sketch. */
export const points = {
  ball: [0, 0],
  lowerSeat: lower,
  lowerBottom: [lower[0], lower[1] - seat],
  lowerTip: [lower[0] + seat + 5, lower[1] + seat * 1.8],
  topSeat: top,
  topTip: [top[0] + throat + 5, top[1] + throat * 1.8],
  postMiddle: [(post[0] + post[1]) / 2, -40],
  hookBack: [lower[0] + seat + 17, lower[1]],
  gravity: [98, 212],
  frameMiddle: [88, 330],
  weights,
  weightsFace: [weights[0] - 96, weights[1]],
  weightsTop: [weights[0], weights[1] + 90],
  frontTop: [36, 448],
  frontLug: [-30, 6],
} as const satisfies Readonly<Record<string, Point>>;

/** A hook from the side, open upward: its back on the frame, its seat around the pin, and its lip. */
function hookOutline([x, z]: Point, radius: number, back: number): Stroke {
  const wall = radius + 16;
  const shape: Point[] = [
    [back - x, -wall],
    ...arc([wall - 12, -wall + 12], 12, -90, 0),
    [wall, radius],
    [radius + 5, radius * 1.8],
    [radius, radius * 0.8],
    ...arc([0, 0], radius, 0, -180),
    [-radius, radius * 2 + 10],
    [back - x, radius * 2 + 10],
  ];
  return body(
    'thin',
    shape.map(([dx, dz]): Point => [x + dx, z + dz]),
  );
}

/** What stands on the frame besides itself. */
interface Shown {
  readonly mark?: boolean;
  readonly weights?: boolean;
  readonly isFree?: boolean;
}

/** A rigid coupler from its left side, on the balls of the lower links. */
export function couplerSide({ mark, weights: isLoaded, isFree }: Shown = {}): Sketch {
  return {
    view: 'Coupler, from its left side',
    ground: null,
    show: { left: -190, right: 300, bottom: -110, top: 560 },
    pieces: [
      piece('links', isFree === true ? [] : links()),
      piece(
        'hooks',
        hookOutline(lower, seat, post[1] - 4),
        hookOutline(top, throat, post[1] - 4),
        circle('hidden', lower, seat - 1),
        circle('hidden', top, throat - 0.5),
      ),
      piece(
        'frame',
        body('thin', rounded([post[0], low], [post[1], high], 6)),
        line('centre', [points.postMiddle[0], low - 20], [points.postMiddle[0], high + 20]),
        ...[points.ball, points.frontTop].map((at) => plank('thin', [post[0] + 4, at[1]], [at[0], at[1]], 26)),
      ),
      piece(
        'balls',
        disc('thin', points.ball, 30),
        solidPin('thin', points.ball, 11),
        disc('thin', points.frontTop, 24),
        solidPin('thin', points.frontTop, 9.5),
      ),
      ...(isLoaded === true ? [weightPiece()] : []),
      ...(mark === true ? [piece('gravity', loadMark('thin', points.gravity, 26))] : []),
    ],
  };
}

/** Lower link and top link, for place only. */
function links() {
  return [
    ...barBetween('ghost', [-900, -70], points.ball, { half: 19, eyes: [34, 34] }),
    ...barBetween('ghost', [-900, 300], points.frontTop, { half: 12, eyes: [22, 22] }),
  ];
}

function weightPiece(): Piece {
  const [x, z] = weights;
  return piece(
    'weights',
    body('thin', rounded([x - 96, z - 130], [x + 80, z + 90], 16)),
    run('thin', [
      [post[0] - 6, z + 90],
      [post[0] - 6, z + 122],
      [post[1] + 6, z + 122],
      [post[1] + 6, z + 90],
    ]),
    ...loadMark('thin', weights, 26),
  );
}

/** Points of a lower hook, enlarged: the middle of its seat is at 0. */
export const hookPoints = {
  seatLeft: [-seat, 0],
  seatRight: [seat, 0],
  bottom: [0, -seat],
  tip: [seat + 5, seat * 1.8],
  mouth: [-seat, seat * 1.9],
  outside: [seat + 16, -2],
  under: [-6, -seat - 16],
  blockLow: [-52, -56],
  blockRight: [56, -56],
} as const satisfies Readonly<Record<string, Point>>;

/** A lower hook from the side, with its latch and the square block that both sweep, where they are asked for. */
export function lowerHook(isSwept: boolean): Sketch {
  return {
    view: 'One lower hook, from the left side',
    ground: null,
    show: isSwept ? { left: -110, right: 100, bottom: -92, top: 66 } : { left: -76, right: 112, bottom: -52, top: 68 },
    pieces: [
      piece('frame', body('thin', rectangle([-120, -150], [-46, 150]))),
      piece('hook', hookOutline([0, 0], seat, -68)),
      ...(isSwept ? [piece('latch', latch()), blockPiece(hookPoints.blockLow, 108)] : []),
      piece('pin', isSwept ? [solidPin('thin', [0, 0], 11)] : []),
    ],
  };
}

function latch() {
  return [
    plank('thin', [-34, 46], [24, 18], 6),
    disc('thin', [-34, 46], 9),
    run('hidden', arc([-34, 46], 62, -26, 36)),
  ];
}

function blockPiece([x, z]: Point, size: number): Piece {
  const corners = rectangle([x, z], [x + size, z + size]);
  return piece(
    'block',
    { kind: 'stroke', role: 'heavy', points: corners, closed: true },
    { kind: 'stroke', role: 'dimension', points: [corners[0] as Point, corners[2] as Point], closed: false },
  );
}

/** Points of the top hook, enlarged: the middle of a seated pin is at 0. */
export const topPoints = {
  throatLeft: [-throat, 4],
  throatRight: [throat, 4],
  tip: [throat + 5, throat * 1.8],
  outside: [throat + 16, 0],
  pinDown: [0, 9.5],
  pinUp: [0, 18.5],
  blockLow: [-46, -50],
  blockRight: [50, -50],
} as const satisfies Readonly<Record<string, Point>>;

/** The top hook from the side: open, with its pin held down, or with the block that it sweeps. */
export function topHook(about: 'throat' | 'play' | 'room'): Sketch {
  return {
    view: 'Top hook, from the left side',
    ground: null,
    show:
      about === 'room'
        ? { left: -104, right: 94, bottom: -86, top: 62 }
        : about === 'play'
          ? { left: -70, right: 112, bottom: -50, top: 64 }
          : { left: -66, right: 74, bottom: -42, top: 60 },
    pieces: [
      piece('frame', body('thin', rectangle([-120, -150], [-42, 150]))),
      piece('hook', hookOutline([0, 0], throat, -66)),
      ...(about === 'throat'
        ? []
        : [piece('latch', plank('thin', [-31, 38], [22, 25], 6), disc('thin', [-31, 38], 9))]),
      ...(about === 'room' ? [blockPiece(topPoints.blockLow, 96)] : []),
      ...(about === 'throat' ? [] : [piece('pin', disc('thin', [0, 0], 9.5))]),
      ...(about === 'play' ? [piece('pinUp', { kind: 'circle', role: 'hidden', centre: [0, 9], radius: 9.5 })] : []),
    ],
  };
}

/** Points of a claw: the middle of the ball that it is made for is at 0. */
export const clawPoints = {
  left: [-28, 0],
  right: [28, 0],
  mouth: [27, 15],
  outside: [43, -8],
} as const satisfies Readonly<Record<string, Point>>;

/** A claw on a link’s end, open upward. */
export function claw(): Sketch {
  const radius = 28;
  return {
    view: 'Claw of a lower link, from the left side',
    ground: null,
    show: { left: -92, right: 84, bottom: -56, top: 66 },
    pieces: [
      piece('link', plank('ghost', [-300, -30], [-20, -6], 19)),
      piece('claw', body('thin', [...arc([0, 0], radius + 15, -205, 25), ...arc([0, 0], radius, 25, -205)])),
      piece('ball', { kind: 'circle', role: 'hidden', centre: [0, 0], radius: radius - 0.5 }),
    ],
  };
}
