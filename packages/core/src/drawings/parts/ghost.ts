import type { Bounds, Item, Point, Stroke } from '../scene.ts';
import { arc, outline, rectangle, rounded, run } from '../strokes.ts';
import { cropped } from './crop.ts';
import { mirrored } from '../strokes.ts';

/** The tractor behind: proportions made up from where the tyres may stand; context, never information. */
export function ghostTractor(inner: number, behind: Bounds): Item[] {
  const wide = Math.max(240, inner * 0.5);
  const axle = 120;
  const right: Stroke[] = [
    outline('ghost', rounded([inner, axle - 620], [inner + wide, axle + 620], 70)),
    run('ghost', [
      [inner - 40, axle + 690],
      [inner - 40, behind.top],
    ]),
    outline('ghost', rectangle([190, axle - 52], [inner, axle + 52])),
  ];
  const middle: Stroke[] = [
    run('ghost', [
      [-190, axle + 140],
      [190, axle + 140],
      [190, axle - 60],
      [130, axle - 230],
      [-130, axle - 230],
      [-190, axle - 60],
      [-190, axle + 140],
    ]),
    run('ghost', arc([0, axle], 70, 0, 360)),
    run('ghost', arc([0, axle], 24, 0, 360)),
  ];
  return [...right, ...right.map(mirrorImage), ...middle].flatMap((stroke) => cropped(stroke, behind));
}

function mirrorImage(stroke: Stroke): Stroke {
  return { ...stroke, points: mirrored(stroke.points) as Point[] };
}
