import type { Point } from '@hitchwright/core/drawings';

/** Signs that the bundled fonts lack and that are drawn instead. */
export type SignName = '≈' | '≤' | '≥' | '→' | '⌀';

/** A drawn sign: lines and a circle, right and up from its place on the baseline [parts of the letters' size]. */
export interface DrawnSign {
  readonly width: number;
  readonly lines: readonly (readonly Point[])[];
  readonly circle?: { readonly centre: Point; readonly radius: number };
}

const wave = (height: number): readonly Point[] =>
  Array.from({ length: 13 }, (_, i): Point => [0.08 + i * 0.035, height + 0.055 * Math.sin((i / 12) * 2 * Math.PI)]);

/** Left where the sign points to the right, else right. */
const angle = (from: number, to: number): readonly Point[] => [
  [from, 0.62],
  [to, 0.4],
  [from, 0.18],
];

/** Every drawn sign by its letter. */
export const drawnSigns: Readonly<Record<SignName, DrawnSign>> = {
  '≈': { width: 0.58, lines: [wave(0.42), wave(0.24)] },
  '≤': { width: 0.56, lines: [angle(0.48, 0.08), line([0.08, 0.08], [0.48, 0.08])] },
  '≥': { width: 0.56, lines: [angle(0.08, 0.48), line([0.08, 0.08], [0.48, 0.08])] },
  '→': {
    width: 0.86,
    lines: [
      line([0.08, 0.33], [0.78, 0.33]),
      [
        [0.58, 0.5],
        [0.78, 0.33],
        [0.58, 0.16],
      ],
    ],
  },
  '⌀': { width: 0.82, lines: [line([0.12, -0.09], [0.7, 0.75])], circle: { centre: [0.41, 0.33], radius: 0.3 } },
};

function line(from: Point, to: Point): readonly Point[] {
  return [from, to];
}

/** Whether a letter is one of the drawn signs. */
export function isSign(letter: string): letter is SignName {
  return Object.hasOwn(drawnSigns, letter);
}

/** How far the text goes on after a sign [part of the letters' size]. */
export function signWidth(sign: SignName): number {
  return drawnSigns[sign].width;
}
