import { bothSides } from '../../parts/mirror.ts';
import type { Point } from '../../scene.ts';
import { body, line, rectangle } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Which of the two triangles is drawn: the one on the implement is measured inside, the one on the coupler outside. */
export type Triangle = 'receiver' | 'frame';

/** Sizes [mm]: half of the width at the foot, the height of the point above it, and the thickness of a leg. */
const sizes = { half: 235, apex: 520, leg: 46 } as const;

const { half, apex, leg } = sizes;

/** Across a leg at one height. */
const across = leg / Math.cos(Math.atan2(half, apex));

/** Ends, corner and wrong places of a triangle. */
export function trianglePoints(
  which: Triangle,
): Readonly<Record<'left' | 'right' | 'corner' | 'leftLeg' | 'rightLeg' | 'other' | 'higher', Point>> {
  const other = which === 'receiver' ? half + across : half - across;
  const high = apex * 0.42;
  return {
    left: [-half, 0],
    right: [half, 0],
    corner: [0, apex],
    leftLeg: [-half * 0.5, apex * 0.5],
    rightLeg: [half * 0.5, apex * 0.5],
    other: [other, 0],
    higher: [half * (1 - high / apex), high],
  };
}

/** A triangular receiver or frame from behind. */
export function triangle(which: Triangle): Sketch {
  const out = which === 'receiver' ? across : -across;
  const top = which === 'receiver' ? apex * 0.86 : apex * (1 - 20 / half);
  const x = (z: number): number => half * (1 - z / apex);
  const legs = bothSides([
    body('thin', [
      [half, 0],
      [half + out, 0],
      [Math.max(0, x(top) + out), top],
      [x(top), top],
    ]),
  ]);
  return {
    view: which === 'receiver' ? 'Receiver on the implement, from behind' : 'Frame of the coupler, from behind',
    ground: null,
    show: { left: -half - 120, right: half + 120, bottom: -90, top: apex + 30 },
    pieces: [
      piece('middle', line('centre', [0, -70], [0, apex + 60])),
      piece(
        'other',
        which === 'receiver'
          ? [body('ghost', rectangle([-half - across, apex * 0.86], [half * 0.14 + across, apex + 40]))].slice(1)
          : bothSides([body('ghost', rectangle([half - across - 4, -52], [half + 50, -18]))]),
      ),
      piece('legs', legs),
    ],
  };
}
