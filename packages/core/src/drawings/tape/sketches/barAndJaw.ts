import { bothSides } from '../../parts/mirror.ts';
import type { Point } from '../../scene.ts';
import { arc, body, circle, hatch, line, rectangle, rounded } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Sizes [mm]: the bar’s axis is at 0. */
const sizes = { bar: 25, jaw: 26.5, lip: 62, back: 78, span: 330, jawWide: 24, free: 362, linkEnd: 40 } as const;

const { bar, jaw, lip, back, span, jawWide, free, linkEnd } = sizes;

/** Points of the sketches. */
export const points = {
  jawLeft: [-jaw, -12],
  jawRight: [jaw, -12],
  mouth: [jaw + 7, -lip],
  barLeft: [-bar, 0],
  barRight: [bar, 0],
  jawOutLeft: [-span, 40],
  jawOutRight: [span, 40],
  jawInRight: [span - jawWide, 66],
  barEndLeft: [-free, 0],
  barEndRight: [free, 0],
  linkOutRight: [free + linkEnd, 10],
} as const satisfies Readonly<Record<string, Point>>;

/** A jaw over its bar, from the side; or the bar alone between its link ends. */
export function jawSide(isBarOnly = false): Sketch {
  const shape: Point[] = [
    [-back, 70],
    [-back, -lip],
    [-jaw - 7, -lip],
    [-jaw, -lip + 14],
    ...arc([0, 0], jaw, 180, 0),
    [jaw, -lip + 14],
    [jaw + 7, -lip],
    [back, -lip],
    [back, 70],
  ];
  return {
    view: isBarOnly ? 'Bar between the link ends, along itself' : 'Jaw of the implement, from the side',
    ground: null,
    show: { left: -110, right: 110, bottom: -76, top: 76 },
    pieces: [
      piece(
        'jaw',
        isBarOnly ? [body('ghost', rounded([-64, -70], [64, 52], 40))] : [body('thin', shape), hatch('thin', shape)],
      ),
      piece('bar', { ...circle(isBarOnly ? 'thin' : 'ghost', [0, isBarOnly ? 0 : -2], bar), fill: 'sheet' }),
    ],
  };
}

/** Bar and jaws from behind. */
export function barBehind(): Sketch {
  return {
    view: 'Bar and jaws, from behind',
    ground: null,
    show: { left: -440, right: 440, bottom: -110, top: 190 },
    pieces: [
      piece('implement', body('ghost', rectangle([-400, 110], [400, 180]))),
      piece('bar', body('thin', rectangle([-free, -bar], [free, bar]))),
      piece('links', bothSides([body('thin', rounded([free, -46], [free + linkEnd, 46], 10))])),
      piece(
        'jaws',
        bothSides([
          body('thin', rectangle([span - jawWide, -42], [span, 112])),
          line('hidden', [span - jawWide, bar], [span, bar]),
        ]),
      ),
    ],
  };
}
