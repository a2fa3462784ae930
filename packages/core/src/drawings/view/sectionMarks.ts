import { onPaper, type Pen } from '../pen.ts';
import type { Item, Point } from '../scene.ts';
import type { Stage } from '../stage.ts';
import { body, line } from '../strokes.ts';
import { lettering } from './part.ts';

/** Where the section A–A is taken and which way it looks: two strokes on the centre line with arrows to the right. */
export function sectionMarks({ upper }: Stage, pen: Pen): Item[] {
  const hook = upper.hook?.distance.value ?? upper.distance.value;
  const top = Math.max(hook, upper.distance.value) + onPaper(pen, 9);
  const bottom = Math.min(hook, upper.distance.value) - Math.max(78, onPaper(pen, 11));
  return [...mark(pen, top), ...mark(pen, bottom)];
}

function mark(pen: Pen, z: number): Item[] {
  const p = (length: number): number => onPaper(pen, length);
  const head: Point[] = [
    [p(4), z],
    [p(1.6), z + p(0.7)],
    [p(1.6), z - p(0.7)],
  ];
  return [
    line('heavy', [0, z - p(1.8)], [0, z + p(1.8)]),
    line('thin', [0, z], [p(2), z]),
    { ...body('heavy', head), fill: 'line' },
    lettering([-p(1.6), z - p(1.4)], 'A', pen.sheet.letters.dimension, { weight: 600, anchor: 'end' }),
  ];
}
