import { barBetween, disc } from '../../side/parts/bars.ts';
import { loadMark } from '../../side/parts/loadMark.ts';
import { wheelAt } from '../../side/parts/tractor.ts';
import type { Point } from '../../scene.ts';
import { arc, body, circle, line, outline, rectangle, rounded, run } from '../../strokes.ts';
import { piece, type Piece, type Sketch } from '../sketch.ts';

/** Sizes [mm]: the rear axle is at 0, rearward to the right, heights above the ground. */
export const sizes = { rear: 560, front: 340, base: 1720 } as const;

const { rear, front, base } = sizes;

/** Points of the sketch. */
export const points = {
  rearAxle: [0, rear],
  rearGround: [0, 0],
  rearTop: [0, 2 * rear],
  rearTyreBack: [rear, rear],
  frontAxle: [-base, front],
  frontTyreAhead: [-base - front, front],
  seat: [-300, 980],
  seatBack: [-150, 1330],
  weights: [-base - 520, 500],
  weightsFace: [-base - 600, 560],
  loader: [-base - 240, 640],
  bucketPin: [-base - 520, 330],
  load: [-base - 800, 520],
  bucketEdge: [-base - 1150, 180],
} as const satisfies Readonly<Record<string, Point>>;

/** What stands on the tractor, and what of it is in question. */
interface Shown {
  readonly ahead?: 'weights' | 'loader' | 'load';
}

/** A tractor from its left side. */
export function tractorSide({ ahead }: Shown = {}): Sketch {
  const left = ahead === undefined ? -base - front - 60 : ahead === 'weights' ? -base - 680 : -base - 1240;
  return {
    view: 'Tractor, from its left side',
    ground: 0,
    show: { left, right: rear + 60, bottom: -20, top: 1560 },
    pieces: [
      piece('body', bodyOutline()),
      piece(
        'rearWheel',
        { ...circle('thin', points.rearAxle, rear), fill: 'sheet' },
        wheelAt('ghost', points.rearAxle, rear).slice(1),
      ),
      piece(
        'frontWheel',
        { ...circle('thin', points.frontAxle, front), fill: 'sheet' },
        wheelAt('ghost', points.frontAxle, front).slice(1),
      ),
      piece('seat', seat()),
      ...(ahead === 'weights' ? [weights()] : []),
      ...(ahead === 'loader' || ahead === 'load' ? loader(ahead) : []),
    ],
  };
}

function bodyOutline() {
  return [
    outline('ghost', [
      [-base - 260, 560],
      [-base - 260, 980],
      [-base - 200, 1030],
      [-560, 1080],
      [-520, 720],
      [-60, 720],
      [-60, 420],
      [-base + 120, 420],
      [-base + 60, 560],
    ]),
    run('ghost', arc(points.rearAxle, rear * 1.08, 38, 158)),
    run('ghost', [
      [70, 1180],
      [40, 1900],
    ]),
    run('ghost', [
      [150, 1130],
      [110, 1900],
    ]),
  ];
}

function seat() {
  const [x, middle] = points.seat;
  const z = middle + 30;
  return [
    body('thin', rounded([x - 190, z - 60], [x + 190, z], 30)),
    body('thin', [
      [x + 130, z],
      [x + 180, z - 20],
      [x + 260, z + 360],
      [x + 200, z + 380],
    ]),
    line('thin', [x, z - 60], [x, z - 290]),
    run('ghost', [
      [x - 430, z + 60],
      [x - 330, z + 330],
    ]),
  ];
}

function weights(): Piece {
  const [x, z] = points.weights;
  return piece(
    'weights',
    body('ghost', rectangle([x - 30, 560], [-base - 200, 640])),
    body('thin', [
      [x - 80, z - 120],
      [x + 80, z - 120],
      [x + 80, z + 90],
      [x + 40, z + 150],
      [x - 40, z + 150],
      [x - 80, z + 90],
    ]),
    ...loadMark('thin', points.weights, 40),
  );
}

/** Loader arms low, with an empty or a full bucket. */
function loader(ahead: 'loader' | 'load'): Piece[] {
  const pin = points.bucketPin;
  const arms = piece(
    'loader',
    body('thin', rectangle([-880, 640], [-760, 1220])),
    ...barBetween('thin', [-820, 1170], [-base + 40, 1010], { half: 42, eyes: [52, 46] }).slice(0, 1),
    ...barBetween('thin', [-base + 20, 1020], pin, { half: 40, eyes: [46, 40] }),
    disc('thin', [-820, 1170], 46),
    body('thin', [
      [pin[0] + 20, 170],
      [points.bucketEdge[0], 150],
      points.bucketEdge,
      [pin[0] - 190, 240],
      [pin[0] - 90, 640],
      [pin[0] - 20, 660],
    ]),
  );
  if (ahead === 'loader') return [arms, piece('gravity', ...loadMark('thin', points.loader, 52))];
  const [x, z] = points.load;
  return [
    arms,
    piece(
      'load',
      { ...circle('thin', [x, z], 270), fill: 'sheet' },
      circle('ghost', [x, z], 170),
      ...loadMark('thin', [x, z], 44),
    ),
  ];
}

/** Points of the front axle. */
export const frontPoints = {
  ground: [0, 0],
  pivot: [0, 395],
  axleBottom: [0, 330],
  wheel: [560, 340],
} as const satisfies Readonly<Record<string, Point>>;

/** The front axle from ahead, with the pin that it swings on. */
export function frontAxle(): Sketch {
  const [, z] = frontPoints.pivot;
  const tyre = (x: number) => body('thin', rounded([x - 105, 0], [x + 105, 2 * front], 70));
  return {
    view: 'Front axle, from ahead',
    ground: 0,
    show: { left: -720, right: 720, bottom: -20, top: 900 },
    pieces: [
      piece(
        'body',
        body('ghost', rounded([-210, 440], [210, 1090], 60)),
        body('ghost', rectangle([-130, z - 20], [130, 470])),
      ),
      piece('tyres', tyre(-560), tyre(560)),
      piece(
        'axle',
        body('thin', [
          [-470, 300],
          [-60, 330],
          [60, 330],
          [470, 300],
          [470, 380],
          [90, 440],
          [-90, 440],
          [-470, 380],
        ]),
      ),
      piece('pivot', disc('thin', frontPoints.pivot, 34)),
    ],
  };
}
