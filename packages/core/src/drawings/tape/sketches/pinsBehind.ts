import { bothSides } from '../../parts/mirror.ts';
import type { Item, Point } from '../../scene.ts';
import { body, circle, line, rectangle, rounded } from '../../strokes.ts';
import { piece, type Piece, type Sketch } from '../sketch.ts';

/** Whose pins are drawn. */
export type PinOwner = 'implement' | 'secondRow' | 'coupler';

/** Sizes [mm]: lower pins with a collar before their plate, mast, clevis and upper pin. */
export const sizes = {
  step: 340,
  collar: 10,
  collarRadius: 19,
  plate: 14,
  plateReach: 58,
  radius: 11,
  standOut: 64,
  hole: 46,
  holeRadius: 5.5,
  mast: 460,
  clevisGap: 52,
  clevisPlate: 11,
  upperRadius: 9.5,
  bar: 22,
  ball: 40,
  ballRadius: 24,
} as const;

const {
  step,
  collar,
  collarRadius,
  plate,
  plateReach,
  radius,
  standOut,
  hole,
  holeRadius,
  mast,
  bar,
  ball,
  ballRadius,
} = sizes;

/** Points of the sketch; the middle of the lower pins is its origin. */
export const points = {
  leftStep: [-step, 0],
  rightStep: [step, 0],
  leftTip: [-step - standOut, 0],
  rightTip: [step + standOut, 0],
  rightPlateInside: [step - collar - plate, -plateReach * 0.62],
  leftPlateInside: [-step + collar + plate, -plateReach * 0.62],
  leftPlateOutside: [-step + collar, plateReach * 0.62],
  middle: [0, 0],
  upper: [0, mast],
  plateTop: [sizes.clevisGap / 2 + sizes.clevisPlate / 2, mast + 32],
  pinBottom: [step + 24, -radius],
  barTop: [-200, radius + sizes.bar],
  leg: [182, 262],
  leftBall: [-step - sizes.ball / 2, 0],
  rightBall: [step + sizes.ball / 2, 0],
} as const satisfies Readonly<Record<string, Point>>;

/** Lower pins, mast and upper pin from behind; the machine behind them for place only. */
export function pinsBehind(owner: PinOwner, beside: 'nothing' | 'bar' | 'balls' = 'nothing'): Sketch {
  return {
    view:
      { implement: 'Implement', secondRow: 'Second pin row of the implement', coupler: 'Front of the coupler' }[owner] +
      ', from behind',
    ground: null,
    show: { left: -440, right: 440, bottom: owner === 'secondRow' ? -200 : -130, top: beside === 'bar' ? 560 : 500 },
    pieces: [
      piece('body', bodyOf(owner)),
      piece('mast', mastItems()),
      piece(
        'plates',
        bothSides([body('thin', rectangle([step - collar - plate, -plateReach], [step - collar, plateReach]))]),
      ),
      piece('pins', bothSides(pinItems())),
      ...(beside === 'bar' ? [barPiece()] : []),
      ...(beside === 'balls'
        ? [piece('balls', bothSides([body('thin', rounded([step, -ballRadius], [step + ball, ballRadius], 14))]))]
        : []),
    ],
  };
}

/** A bar laid over both pins, and the line through their centres. */
function barPiece(): Piece {
  const half = step + standOut * 0.6;
  return piece(
    'bar',
    body('thin', rectangle([-half, radius], [half, radius + bar])),
    line('centre', [-step - 90, 0], [step + 90, 0]),
  );
}

/** A lower pin with its collar and the hole of its retaining pin, on the right. */
function pinItems(): Parameters<typeof bothSides>[0] {
  const tip = step + standOut;
  return [
    body('thin', [
      [step, -radius],
      [tip - 4, -radius],
      [tip, -radius + 4],
      [tip, radius - 4],
      [tip - 4, radius],
      [step, radius],
    ]),
    body('thin', rounded([step - collar, -collarRadius], [step, collarRadius], 2)),
    circle('thin', [step + hole, 0], holeRadius),
  ];
}

function mastItems(): Item[] {
  const { clevisGap, clevisPlate, upperRadius } = sizes;
  const inner = clevisGap / 2;
  const outer = inner + clevisPlate;
  const foot = step - collar - plate;
  return [
    ...bothSides([
      body('thin', [
        [foot, plateReach - 4],
        [foot - 38, plateReach - 4],
        [inner - 1, mast - 74],
        [outer, mast - 74],
        [outer + 8, mast - 60],
      ]),
      body('thin', rectangle([inner, mast - 78], [outer, mast + 32])),
    ]),
    body('thin', rectangle([-outer - 14, mast - upperRadius], [outer + 14, mast + upperRadius])),
  ];
}

function bodyOf(owner: PinOwner): Item[] {
  if (owner === 'coupler') {
    return [
      ...bothSides([body('ghost', rectangle([step - 60, -80], [step - 24, 200]))]),
      body('ghost', rectangle([-step + 24, 200], [step - 24, 250])),
    ];
  }
  if (owner === 'implement') return [body('ghost', rectangle([-420, -122], [420, -66]))];
  return [
    body('ghost', rectangle([-step + collar + plate, -196], [step - collar - plate, -150])),
    ...bothSides([
      body('ghost', rectangle([step - collar - plate, -196], [step - collar, -plateReach])),
      body('ghost', rectangle([step - collar, -150 - radius], [step + standOut, -150 + radius])),
      circle('ghost', [step + hole, -150], holeRadius),
    ]),
  ];
}
