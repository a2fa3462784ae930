import { bothSides } from '../../parts/mirror.ts';
import { disc } from '../../side/parts/bars.ts';
import type { Point } from '../../scene.ts';
import { body, circle, line, outline, rectangle, rounded } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Sizes [mm]: the middle of the tractor is at 0, heights above the ground. */
const sizes = {
  tyre: [370, 650],
  tyreHigh: 1120,
  ball: 360,
  ballHigh: 390,
  ballHalf: 18,
  ballRadius: 24,
  stub: [70, 600],
  arm: 225,
  armHigh: 960,
  rodFoot: 318,
  rodFootHigh: 420,
} as const;

const { tyre, tyreHigh, ball, ballHigh, ballHalf, ballRadius, stub, arm, armHigh, rodFoot, rodFootHigh } = sizes;
const [inner, outer] = tyre;

/** Points of the sketch. */
export const points = {
  leftBall: [-ball, ballHigh],
  rightBall: [ball, ballHigh],
  leftInner: [-ball + ballHalf, ballHigh - 10],
  rightInner: [ball - ballHalf, ballHigh - 10],
  leftOuter: [-ball - ballHalf, ballHigh - 10],
  rightOuter: [ball + ballHalf, ballHigh - 10],
  tyreInLeft: [-inner, 520],
  tyreInRight: [inner, 520],
  tyreOutLeft: [-outer, 520],
  tyreOutRight: [outer, 520],
  tyreMidLeft: [-(inner + outer) / 2, 0],
  tyreMidRight: [(inner + outer) / 2, 0],
  rim: [inner + 60, 400],
  fender: [inner - 30, tyreHigh + 40],
  middle: [0, stub[1]],
  stub,
  stubSide: [stub[0] + 17.5, stub[1]],
  leftLink: [-ball, ballHigh + 90],
  rodTop: [arm, armHigh],
  rodFoot: [rodFoot, rodFootHigh],
  rodSide: [arm + 46, armHigh - 240],
} as const satisfies Readonly<Record<string, Point>>;

/** What hangs below the arms is in question, or the tyres. */
export type Behind = 'links' | 'tyres';

/** A tractor from behind: tyres, lift arms and rods, link ends with their balls, PTO stub. */
export function tractorBehind(about: Behind): Sketch {
  return {
    view: 'Tractor, from behind',
    ground: 0,
    show:
      about === 'tyres'
        ? { left: -outer - 70, right: outer + 70, bottom: -30, top: tyreHigh + 60 }
        : { left: -470, right: 470, bottom: 240, top: 900 },
    pieces: [
      piece(
        'body',
        body('ghost', rounded([-210, 380], [210, 1060], 40)),
        bothSides([body('ghost', rectangle([190, 500], [inner, 620]))]),
      ),
      piece(
        'tyres',
        bothSides([
          body('thin', rounded([inner, 0], [outer, tyreHigh], 90)),
          line('ghost', [inner + 60, 300], [inner + 60, 820]),
          line('centre', [(inner + outer) / 2, -60], [(inner + outer) / 2, 260]),
        ]),
      ),
      piece('middle', line('centre', [0, 120], [0, 1200])),
      piece('stub', disc('thin', stub, 62), disc('thin', stub, 17.5), circle('thin', stub, 13)),
      piece('links', bothSides([body('thin', rounded([ball - 13, ballHigh - 40], [ball + 13, ballHigh + 130], 10))])),
      piece(
        'balls',
        bothSides([
          body('thin', rounded([ball - ballHalf, ballHigh - ballRadius], [ball + ballHalf, ballHigh + ballRadius], 10)),
          line('hidden', [ball - ballHalf, ballHigh - 11], [ball + ballHalf, ballHigh - 11]),
          line('hidden', [ball - ballHalf, ballHigh + 11], [ball + ballHalf, ballHigh + 11]),
        ]),
      ),
      piece('rods', bothSides(rodItems())),
    ],
  };
}

/** The right lift rod, leaning outward from its arm to its link. */
function rodItems(): Parameters<typeof bothSides>[0] {
  const lean = (z: number): number => arm + ((rodFoot - arm) * (armHigh - z)) / (armHigh - rodFootHigh);
  return [
    body('thin', [
      [lean(rodFootHigh) - 11, rodFootHigh],
      [lean(rodFootHigh) + 11, rodFootHigh],
      [lean(armHigh) + 11, armHigh],
      [lean(armHigh) - 11, armHigh],
    ]),
    body('thin', rounded([arm - 34, armHigh - 26], [arm + 34, armHigh + 26], 8)),
    body('thin', rounded([rodFoot - 30, rodFootHigh - 22], [rodFoot + 30, rodFootHigh + 22], 8)),
  ];
}

/** Sizes of the links from above [mm]: the middle between their front pivots is at 0, forward is up. */
const plan = { pivot: 230, ball: 360, long: -740, half: 12, boss: 24, sway: 95 } as const;

/** Points of the links from above. */
export const planPoints = {
  leftPivot: [-plan.pivot, 0],
  rightPivot: [plan.pivot, 0],
  leftBall: [-plan.ball, plan.long],
  rightBall: [plan.ball, plan.long],
  leftSwayed: [-plan.ball + plan.sway, plan.long],
  rightSwayed: [plan.ball + plan.sway, plan.long],
  pivotOutside: [plan.pivot + plan.boss, 0],
} as const satisfies Readonly<Record<string, Point>>;

/** Both lower links from above, standing straight and, dashed, pushed to the right. */
export function linksAbove(isSwayed: boolean): Sketch {
  const link = (x0: number, x1: number): Point[] => [
    [x0 - plan.half, 0],
    [x0 + plan.half, 0],
    [x1 + plan.half, plan.long],
    [x1 - plan.half, plan.long],
  ];
  const ends = bothSides([
    body('thin', link(plan.pivot, plan.ball)),
    body('thin', rounded([plan.pivot - plan.boss, -34], [plan.pivot + plan.boss, 34], 8)),
    body('thin', rounded([plan.ball - 21, plan.long - 30], [plan.ball + 21, plan.long + 30], 12)),
  ]);
  const swayed = [-1, 1].flatMap((sign) => [
    outline('hidden', link(sign * plan.pivot, sign * plan.ball + plan.sway)),
    outline(
      'hidden',
      rounded(
        [sign * plan.ball + plan.sway - 21, plan.long - 30],
        [sign * plan.ball + plan.sway + 21, plan.long + 30],
        12,
      ),
    ),
  ]);
  return {
    view: 'Lower links, from above; forward is up',
    isPlan: true,
    ground: null,
    show: { left: -520, right: 520, bottom: plan.long - 60, top: 70 },
    pieces: [
      piece('body', body('ghost', rectangle([-190, -60], [190, 400]))),
      piece('middle', line('centre', [0, plan.long - 40], [0, 200])),
      ...(isSwayed ? [piece('swayed', swayed)] : []),
      piece('links', ends),
    ],
  };
}
