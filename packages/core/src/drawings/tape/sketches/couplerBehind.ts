import { bothSides } from '../../parts/mirror.ts';
import type { Point } from '../../scene.ts';
import { body, hatch, line, rectangle, rounded } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** Sizes [mm]: the balls of the lower links lie at the height 0, the middle of the coupler at 0. */
const sizes = {
  hook: 356,
  half: 12.5,
  hookHigh: 34,
  post: [318, 372],
  posts: [-64, 390],
  beam: [330, 390],
  brace: 292,
  lowBar: [-118, -86],
  topHook: 470,
} as const;

const { hook, half, hookHigh, post, posts, beam, brace, lowBar, topHook } = sizes;

/** Points of the sketch. */
export const points = {
  leftHook: [-hook, hookHigh],
  rightHook: [hook, hookHigh],
  rightHookOut: [hook + half, hookHigh - 26],
  leftPostIn: [-post[0], 170],
  rightPostIn: [post[0], 170],
  rightPostOut: [post[1], 170],
  ball: [-hook, 0],
  braceUnder: [0, brace],
  beamUnder: [150, beam[0]],
  lowTop: [0, lowBar[1]],
  lowUnder: [60, lowBar[0]],
  hookSeat: [hook, hookHigh],
} as const satisfies Readonly<Record<string, Point>>;

/** A rigid coupler from behind: posts, beam, tower, hooks, and what crosses its opening. */
export function couplerBehind(): Sketch {
  return {
    view: 'Coupler, from behind',
    ground: null,
    show: { left: -430, right: 430, bottom: -150, top: 520 },
    pieces: [
      piece(
        'balls',
        bothSides([body('ghost', rounded([hook - 20, -30], [hook + 20, 30], 14))]),
        line('centre', [-420, 0], [420, 0]),
      ),
      piece(
        'frame',
        bothSides([body('thin', rectangle([post[0], posts[0]], [post[1], posts[1]]))]),
        body('thin', rectangle([-post[1], beam[0]], [post[1], beam[1]])),
        body('thin', [
          [-110, beam[1]],
          [110, beam[1]],
          [34, topHook + 20],
          [-34, topHook + 20],
        ]),
      ),
      piece(
        'crossing',
        body('thin', rectangle([-70, brace], [70, beam[0]])),
        body('thin', rectangle([-post[0], lowBar[0]], [post[0], lowBar[1]])),
      ),
      piece(
        'hooks',
        bothSides([
          body('thin', rounded([hook - half, hookHigh - 34], [hook + half, hookHigh + 22], 3)),
          line('hidden', [hook - half, hookHigh - 12], [hook + half, hookHigh - 12]),
          line('centre', [hook, hookHigh - 50], [hook, hookHigh + 40]),
        ]),
      ),
      piece('topHook', body('thin', rounded([-16, topHook - 40], [16, topHook + 26], 4))),
      piece('middle', line('centre', [0, -200], [0, 540])),
    ],
  };
}

/** Points of a lower hook from behind, its middle at 0. */
export const hookFacePoints = { left: [-12.5, 0], right: [12.5, 0], plate: [23, -38] } as const satisfies Readonly<
  Record<string, Point>
>;

/** A lower hook from behind, enlarged. */
export function hookFace(): Sketch {
  return {
    view: 'One lower hook, from behind',
    ground: null,
    show: { left: -62, right: 62, bottom: -46, top: 60 },
    pieces: [
      piece('frame', body('thin', rectangle([-27, -140], [27, -26]))),
      piece('hook', body('thin', rounded([-12.5, -34], [12.5, 26], 3)), line('hidden', [-12.5, -8], [12.5, -8])),
    ],
  };
}

/** Points of the top hook from behind, the axis of its pin at 0. */
export const topFacePoints = {
  left: [-16, 12],
  right: [16, 12],
  base: [30, -50],
  cheekLeft: [-46, -2],
  cheekRight: [46, -2],
  cheekOut: [60, -26],
} as const satisfies Readonly<Record<string, Point>>;

/** The top hook from behind: one hook that goes between the mast plates, or two cheeks that go outside them. */
export function topHookFace(isDouble: boolean): Sketch {
  const cheek = rectangle([46, -90], [60, 40]);
  return {
    view: 'Top hook, from behind',
    ground: null,
    show: isDouble ? { left: -100, right: 100, bottom: -66, top: 66 } : { left: -70, right: 70, bottom: -54, top: 66 },
    pieces: [
      piece('frame', body('thin', rectangle([-76, -160], [76, isDouble ? -60 : -42]))),
      piece('seat', line('centre', [-90, 0], [90, 0])),
      piece(
        'hook',
        isDouble
          ? bothSides([body('thin', cheek), hatch('thin', cheek)])
          : [body('thin', rounded([-16, -70], [16, 34], 4)), line('hidden', [-16, -10], [16, -10])],
      ),
    ],
  };
}
