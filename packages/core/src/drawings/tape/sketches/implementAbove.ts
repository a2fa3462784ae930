import { bothSides } from '../../parts/mirror.ts';
import { loadMark } from '../../side/parts/loadMark.ts';
import type { Point } from '../../scene.ts';
import { body, line, outline, rectangle, rounded } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';
import { spline, splineAt } from './splines.ts';

/** Sizes [mm]: the middle between the lower pins is at 0, forward is up. */
const sizes = {
  step: 340,
  tip: 404,
  aside: 110,
  gearbox: -210,
  deck: 760,
  front: -300,
  back: -640,
  work: 690,
  shift: 270,
  yaw: 16,
} as const;

const { step, tip, aside, gearbox, deck, front, back, work, shift, yaw } = sizes;

/** Points of the sketch. */
export const points = {
  middle: [0, 0],
  inputEnd: [aside, gearbox + spline.end],
  gearboxSide: [aside + 80, gearbox - 70],
  leftPin: [-step, 0],
  gravity: [95, -420],
  leftEdge: [-deck, -470],
  rightEdge: [deck, -470],
  leftShifted: [-deck - shift, -470],
  rightShifted: [deck + shift, -470],
  leftWork: [-work, back],
  rightWork: [work, back],
  deckMiddle: [0, -470],
  leftDeck: [-deck, -560],
} as const satisfies Readonly<Record<string, Point>>;

/** What of the picture is in question. */
export type Above = 'input' | 'gravity' | 'left' | 'right' | 'width';

/** An implement from above, its input shaft to the right of the middle. */
export function implementAbove(about: Above): Sketch {
  const way = about === 'left' ? -1 : about === 'right' ? 1 : 0;
  return {
    view: 'Implement, from above; forward is up',
    isPlan: true,
    ground: null,
    show: {
      left: Math.min(-deck, -deck + way * shift) - 20,
      right: Math.max(deck, deck + way * shift) + 20,
      bottom: back - 60,
      top: 60,
    },
    pieces: [
      piece('middle', line('centre', [0, back - 130], [0, 150])),
      ...(way === 0
        ? []
        : [piece('shifted', outline('hidden', rectangle([-deck + way * shift, back], [deck + way * shift, front])))]),
      piece(
        'deck',
        body('thin', rectangle([-deck, back], [deck, front])),
        bothSides([line('thin', [deck - 22, back], [deck - 22, front])]),
      ),
      piece(
        'tools',
        bothSides([line('hidden', [work, back], [work, front]), line('hidden', [0, back + 36], [work, back + 36])]),
      ),
      piece(
        'frame',
        body('thin', rectangle([-step - 10, -70], [step + 10, -24])),
        bothSides([
          body('thin', rectangle([120, front], [170, -70])),
          body('thin', rectangle([step - 24, -110], [step - 10, 40])),
        ]),
      ),
      piece(
        'pins',
        bothSides([
          body('thin', rectangle([step - 10, -11], [tip, 11])),
          body('thin', rectangle([step - 10, -19], [step, 19])),
        ]),
      ),
      piece('shaft', splineAt({ at: [aside, gearbox], cos: 0, sin: 1 })),
      piece('gearbox', body('thin', rounded([aside - 80, gearbox - 170], [aside + 80, gearbox], 20))),
      ...(about === 'gravity' ? [piece('gravity', loadMark('thin', points.gravity, 40))] : []),
    ],
  };
}

/** Points of the turned input shaft, its gearbox at 0. */
export const yawPoints = {
  corner: [0, 0],
  ahead: [0, 160],
  axis: [160 * Math.sin((yaw * Math.PI) / 180), 160 * Math.cos((yaw * Math.PI) / 180)],
} as const satisfies Readonly<Record<string, Point>>;

/** The input shaft from above, turned to the right. */
export function inputTurned(): Sketch {
  const [sin, cos] = [Math.sin((yaw * Math.PI) / 180), Math.cos((yaw * Math.PI) / 180)];
  const at = (along: number, across: number): Point => [along * sin + across * cos, along * cos - across * sin];
  return {
    view: 'Input shaft, from above; forward is up',
    isPlan: true,
    ground: null,
    show: { left: -190, right: 190, bottom: -70, top: 210 },
    pieces: [
      piece('middle', line('centre', [0, -110], [0, 260])),
      piece('axis', line('centre', at(-80, 0), at(260, 0))),
      piece(
        'gearbox',
        body(
          'thin',
          rounded([-62, -90], [62, 40], 16).map(([x, z]) => at(z, x)),
        ),
      ),
      piece('shaft', splineAt({ at: at(40, 0), cos: sin, sin: cos })),
    ],
  };
}
