import type { Item, Point } from '../../scene.ts';
import { arc, body, circle, hatch, line } from '../../strokes.ts';
import { piece, type Sketch } from '../sketch.ts';

/** A ring seen along its axis: its bore, its outside, and what stands around it or in it. */
export interface Ring {
  readonly view: string;
  readonly bore: number;
  readonly outside: number;
  /** The eye of a link that the ring sits in, its radius and half the width of the link. */
  readonly eye?: readonly [number, number];
  /** A pin in the bore. */
  readonly pin?: number;
}

/** Ends of the diameters of a ring. */
export function ringPoints({
  bore,
  outside,
}: Ring): Readonly<Record<'boreLeft' | 'boreRight' | 'left' | 'right' | 'rim', Point>> {
  const rim = outside * Math.SQRT1_2;
  return { boreLeft: [-bore, 0], boreRight: [bore, 0], left: [-outside, 0], right: [outside, 0], rim: [rim, -rim] };
}

/** A bushing or a ball along its axis. */
export function ringSketch({ view, bore, outside, eye, pin }: Ring): Sketch {
  const ring: Point[] = [...arc([0, 0], outside, 0, 360), ...arc([0, 0], bore, 360, 0)];
  const reach = eye?.[0] ?? outside;
  return {
    view,
    ground: null,
    show: { left: -reach * 1.5, right: reach * 1.5, bottom: -reach * 1.12, top: reach * 1.12 + bore * 0.9 },
    pieces: [
      piece('eye', eye === undefined ? [] : eyeItems(eye, outside)),
      piece('ring', { ...circle('thin', [0, 0], outside), fill: 'sheet' }, hatch('thin', ring), {
        ...circle('thin', [0, 0], bore),
        fill: 'sheet',
      }),
      piece('pin', pin === undefined ? [] : [{ ...circle('thin', [0, 0], pin), fill: 'sheet' }]),
      piece('axes', axes(bore)),
    ],
  };
}

/** Where the caliper is set a second time, a quarter turn on. */
function axes(bore: number): Item[] {
  const reach = bore * 0.86;
  return [line('centre', [0, -reach], [0, reach])];
}

/** The end of a link that goes off to the lower left. */
function eyeItems([radius, half]: readonly [number, number], ball: number): Item[] {
  const far = radius * 5;
  return [
    body('thin', [
      [-far, -half - far * 0.16],
      [0, -half],
      [0, half],
      [-far, half - far * 0.16],
    ]),
    { ...circle('thin', [0, 0], radius), fill: 'sheet' },
    circle('thin', [0, 0], ball * 1.04),
  ];
}
