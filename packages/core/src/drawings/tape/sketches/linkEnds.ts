import type { Point } from '../../scene.ts';
import { arc, body, hatch, line, rectangle, rounded } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Sizes of a link’s end from behind [mm]: the axis of its bore lies level through 0. */
interface LinkEnd {
  readonly view: string;
  readonly half: number;
  readonly bore: number;
  readonly eye: number;
}

const ends = {
  lower: { view: 'Ball of a lower link, from behind', half: 18, bore: 11.2, eye: 11 },
  upper: { view: 'Ball of the top link, from behind', half: 25, bore: 9.8, eye: 12 },
} as const satisfies Readonly<Record<string, LinkEnd>>;

/** Which link is meant. */
export type LinkName = keyof typeof ends;

/** Both faces of the ball and of the eye around it. */
export function endPoints(which: LinkName): Readonly<Record<'left' | 'right' | 'eyeLeft' | 'eyeRight', Point>> {
  const { half, eye, bore } = ends[which];
  const z = bore + 3;
  return { left: [-half, z], right: [half, z], eyeLeft: [-eye, 32], eyeRight: [eye, -32] };
}

/** The end of a link with its ball from behind: the ball is wider than the link. */
export function linkEnd(which: LinkName): Sketch {
  const { view, half, bore, eye } = ends[which];
  const radius = Math.hypot(half, bore + 6);
  const flat = (Math.acos(half / radius) * 180) / Math.PI;
  const round = (from: number): Point[] => arc([0, 0], radius, from + flat, from + 180 - flat);
  return {
    view,
    ground: null,
    show: { left: -68, right: 68, bottom: -48, top: 64 },
    pieces: [
      piece(
        'link',
        body('thin', rounded([-eye, -40], [eye, 40], 8)),
        hatch('thin', rounded([-eye, -40], [eye, 40], 8)),
      ),
      piece('ball', body('thin', [...round(0), ...round(180)])),
      piece(
        'bore',
        line('hidden', [-half, bore], [half, bore]),
        line('hidden', [-half, -bore], [half, -bore]),
        line('centre', [-half - 14, 0], [half + 14, 0]),
      ),
    ],
  };
}

/** Points of a lower link cut across, with a bolt head that stands out. */
export const linkSection = {
  left: [-9, 0],
  right: [20, 0],
  barRight: [9, -34],
  bolt: [20, 0],
} as const satisfies Readonly<Record<string, Point>>;

/** A piece of a lower link from above: the bar and what stands out of it. */
export function linkPiece(): Sketch {
  const bar = rectangle([-9, -140], [9, 140]);
  return {
    view: 'A lower link, from above',
    isPlan: true,
    ground: null,
    show: { left: -62, right: 62, bottom: -44, top: 58 },
    pieces: [
      piece(
        'link',
        body('thin', bar),
        hatch('thin', bar),
        body('thin', rounded([9, -14], [20, 14], 3)),
        line('thin', [14, -14], [14, 14]),
      ),
    ],
  };
}

/** Points of the top link: its axis and the outside of its thickest part. */
export const topLinkPoints = {
  axis: [0, 0],
  outside: [0, 19],
  bar: [84, 11],
  under: [0, -19],
} as const satisfies Readonly<Record<string, Point>>;

/** The sleeve of the top link from the side. */
export function topLinkSleeve(): Sketch {
  return {
    view: 'Top link, from the side',
    ground: null,
    show: { left: -84, right: 100, bottom: -40, top: 52 },
    pieces: [
      piece('rods', body('thin', rectangle([-300, -11], [300, 11]))),
      piece('sleeve', body('thin', rounded([-190, -19], [64, 19], 4))),
      piece('axis', line('centre', [-200, 0], [220, 0])),
    ],
  };
}
