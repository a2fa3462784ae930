import type { Point } from '../../scene.ts';
import { body, circle, hatch, line, rectangle, rounded } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Sizes [mm]: the rod leaves the barrel at 0. */
const sizes = { barrel: 230, radius: 38, rod: 16, out: 200, retracted: 22, eye: 30 } as const;

const { barrel, radius, rod, out, retracted, eye } = sizes;

/** Points of the sketch. */
export const points = {
  eyeIn: [retracted + 2 * eye, 0],
  eyeOut: [out + 2 * eye, 0],
  barrelEnd: [0, radius * 0.7],
} as const satisfies Readonly<Record<string, Point>>;

/** A hydraulic cylinder with its rod out, and where its eye stands with the rod in. */
export function cylinder(): Sketch {
  const shell = rectangle([-barrel, -radius], [0, radius]);
  return {
    view: 'Hydraulic cylinder, from the side',
    ground: null,
    show: { left: -120, right: out + 2 * eye + 10, bottom: -62, top: 96 },
    pieces: [
      piece('rod', body('thin', rectangle([-20, -rod], [out + 4, rod]))),
      piece('eye', { ...circle('thin', [out + eye, 0], eye), fill: 'sheet' }, circle('thin', [out + eye, 0], 13)),
      piece('retracted', circle('hidden', [retracted + eye, 0], eye), circle('hidden', [retracted + eye, 0], 13)),
      piece(
        'barrel',
        body('thin', shell),
        hatch('thin', shell),
        body('thin', rounded([-26, -radius - 7], [0, radius + 7], 4)),
      ),
      piece('axis', line('centre', [-240, 0], [out + 80, 0])),
    ],
  };
}
