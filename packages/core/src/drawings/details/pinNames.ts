import type { Misfit } from '../misfit.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item } from '../scene.ts';
import type { Stage } from '../stage.ts';
import { line } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import type { PinPlace } from './pinPlace.ts';

/** Where the ball is and where it is wanted, by their centres. */
export function wantedMarks({ seats }: Stage, { holder, wanted }: PinPlace, foot: number, pen: Pen): Item[] {
  if (wanted === null) return [];
  const { letters } = pen.sheet;
  const reach = Math.max(seats.opening.value, 24) + 6;
  const z = foot - onPaper(pen, letters.note + 0.6);
  const here = (holder[0] + holder[1]) / 2;
  const there = (wanted[0] + wanted[1]) / 2;
  const side = there > here ? 1 : -1;
  return [
    ...[here, there].map((y) => line('centre', [y, -reach], [y, reach])),
    lettering([holder[side === 1 ? 0 : 1], z], 'link ball', letters.note, {
      tone: 'second',
      anchor: side === 1 ? 'start' : 'end',
    }),
    lettering([wanted[side === 1 ? 1 : 0], z], 'wanted here', letters.note, {
      tone: 'second',
      anchor: side === 1 ? 'end' : 'start',
    }),
  ];
}

/** What is what, under the drawing. */
export function pinNames(
  { seats, pins }: Stage,
  { gauge }: Misfit,
  { holder, shoulder }: PinPlace,
  foot: number,
  pen: Pen,
): Item[] {
  const { letters } = pen.sheet;
  const z = foot - onPaper(pen, letters.note + 0.6);
  const bushing = gauge.finding.id.endsWith('bushingLength');
  const name = bushing ? 'bushing' : seats.kind === 'hooks' || seats.kind === 'hookEnds' ? 'hook' : 'ball';
  const [near, far] = holder;
  const outward = far > near ? 'start' : 'end';
  const gap = onPaper(pen, 1.5);
  return [
    lettering([shoulder - pins.sign * pins.plate, z], 'plate', letters.note, {
      tone: 'second',
      anchor: pins.sign === 1 ? 'start' : 'end',
    }),
    lettering(
      [outward === 'start' ? Math.max(near, shoulder + gap * 6) : Math.min(near, shoulder - gap * 6), z],
      name,
      letters.note,
      { tone: 'second', anchor: outward },
    ),
  ];
}
