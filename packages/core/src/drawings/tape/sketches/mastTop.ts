import { bothSides } from '../../parts/mirror.ts';
import type { Point } from '../../scene.ts';
import { arc, body, circle, hatch, line, rectangle } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Sizes [mm]: the upper pin’s axis is at 0. */
const sizes = { radius: 9.5, inner: 26, outer: 37, low: -70, high: 34, end: 58, head: 8 } as const;

const { radius, inner, outer, low, high, end, head } = sizes;

/** Points of the sketches. */
export const points = {
  innerLeft: [-inner, -24],
  innerRight: [inner, -24],
  outerLeft: [-outer, -24],
  outerRight: [outer, -24],
  innerRightLow: [inner, -48],
  outerRightLow: [outer, -44],
  headLeft: [-end, 0],
  pinEnd: [end, 0],
  pinLeft: [-radius, 0],
  pinRight: [radius, 0],
} as const satisfies Readonly<Record<string, Point>>;

/** The top of a mast from behind: two plates and the upper pin through them. */
export function clevisBehind(): Sketch {
  const plate = rectangle([inner, low - 60], [outer, high]);
  return {
    view: 'Top of the mast, from behind',
    ground: null,
    show: { left: -78, right: 78, bottom: -62, top: 46 },
    pieces: [
      piece(
        'pin',
        body('thin', rectangle([-end, -radius], [end, radius])),
        body('thin', rectangle([-end, -radius - 5], [-end + head, radius + 5])),
      ),
      piece('plates', bothSides([body('thin', plate), hatch('thin', plate)])),
      piece(
        'pin',
        line('hidden', [-outer, radius], [outer, radius]),
        line('hidden', [-outer, -radius], [outer, -radius]),
      ),
      piece('axis', line('centre', [-end - 8, 0], [end + 8, 0])),
    ],
  };
}

/** The top of a mast from the side: one plate with the end of the upper pin. */
export function mastTopSide(): Sketch {
  return {
    view: 'Top of the mast, from the side',
    ground: null,
    show: { left: -46, right: 46, bottom: -34, top: 42 },
    pieces: [
      piece('plate', body('thin', [...arc([0, 0], 32, 0, 180), [-40, -120], [46, -120]])),
      piece('pin', { ...circle('thin', [0, 0], radius), fill: 'sheet' }),
    ],
  };
}
