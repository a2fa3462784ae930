import type { Shown } from '../shown.ts';
import type { Stage } from '../stage.ts';
import type { Misfit } from '../misfit.ts';
import type { Bounds, Item } from '../scene.ts';
import { onPaper, type Pen } from '../pen.ts';
import { circle, line, rectangle } from '../strokes.ts';
import { gapAreas } from '../gapAreas.ts';
import type { Miss } from '../miss.ts';
import { showing } from '../view/part.ts';
import { missBlock } from './missBlock.ts';
import { detailDimension } from './plan.ts';
import type { Size } from './sizes.ts';

/** A name and the figure that goes with it. */
export type Named = readonly [name: string, figure: Shown];

/** What goes in, as it is listed under the view. */
export function roundSize([name, figure]: Named): Size {
  return { name, figure, round: true };
}

/** What a pin, seen along its axis, is pushed against: the far edge of its opening and of the pin. */
export interface Pushed {
  /** Half of the opening: where its front lies left of the axis, and its back right of it. */
  readonly half: number;
  /** Where the pin ends on the right. */
  readonly right: number;
  /** How far the hatching of the gap reaches up and down. */
  readonly reach: number;
}

/** The pin itself with its axes. */
export function pushedPin({ half, right }: Pushed): Item[] {
  const radius = (right + half) / 2;
  const centre = right - radius;
  return [
    { ...circle('misfit', [centre, 0], radius), fill: 'sheet' },
    line('centre', [centre - radius * 1.15, 0], [centre + radius * 1.15, 0]),
    line('centre', [centre, -radius * 1.15], [centre, radius * 1.15]),
  ];
}

/** Where a miss is drawn: on what stage, for which misfit, in which box, with which pen. */
interface Place {
  readonly stage: Stage;
  readonly misfit: Misfit;
  readonly box: Bounds;
  readonly pen: Pen;
}

/** The gap behind the pin, its dimension, and the miss in large figures above. */
export function pushedMiss({ stage, misfit, box, pen }: Place, miss: Miss, { reach }: Pushed): Item[] {
  const z = box.top + onPaper(pen, 4.5);
  return [
    ...showing(
      misfit.gauge.finding.id,
      gapAreas(miss, (from, to) => rectangle([from, -reach], [to, reach])),
    ),
    detailDimension(misfit, [miss.limit, 0], [miss.worst, 0], [1, 0], -z),
    ...missBlock(stage, pen, misfit, [0, z + onPaper(pen, 3.2)]),
  ];
}
