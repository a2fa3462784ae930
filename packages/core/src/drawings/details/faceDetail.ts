import type { Bounds, Item } from '../scene.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Stage } from '../stage.ts';
import { body, hatch, rectangle } from '../strokes.ts';
import { gapAreas } from '../gapAreas.ts';
import type { Misfit } from '../misfit.ts';
import { lettering, showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';

/** The right foot of a frame in its receiver, or the right jaw on its bar, pushed over until the left side fits. */
export function faceDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const [inner, outer] = stage.frame === null ? ['jaw', 'end of the bar'] : ['frame', 'receiver'];
  const spread = Math.max(Math.abs(misfit.miss.worst), Math.abs(misfit.miss.limit), 4);
  const box: Bounds = { left: -34 - spread, right: 34 + spread, top: 30, bottom: -30 };
  return {
    finding: misfit.gauge.finding,
    title: stage.frame === null ? 'Right jaw on the bar' : 'Right foot in the receiver',
    note: 'From behind, pushed over until the left side fits.',
    box,
    around: { left: 2, right: 2, above: blockHeight + 2, below: 7 },
    draw: (pen) => drawn(stage, misfit, { inner, outer, box } as Faces, pen),
  };
}

interface Faces {
  readonly inner: string;
  readonly outer: string;
  readonly box: Bounds;
}

/** The face of what goes inside stands at zero, that of what takes it at the finding's quantity. */
function drawn(stage: Stage, misfit: Misfit, { inner, outer, box }: Faces, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const face = middleOf(misfit);
  const { letters } = pen.sheet;
  const inside = rectangle([box.left, -16], [0, 16]);
  const areas = gapAreas(miss, (from, to) => rectangle([from, -22], [to, 22]));
  const z = box.top + onPaper(pen, 4.5);
  const foot = box.bottom - onPaper(pen, letters.note + 0.6);
  const items: Item[] = [
    body('thin', inside),
    { ...hatch('thin', inside), spacing: 1.6 },
    body('misfit', rectangle([face, -30], [box.right, 30])),
    ...showing(gauge.finding.id, areas),
    detailDimension(misfit, [miss.limit, 30], [miss.worst, 30], [1, 0], -z),
    ...missBlock(stage, pen, misfit, [0, z + onPaper(pen, 3.2)]),
    lettering([box.left, foot], inner, letters.note, { tone: 'second' }),
    lettering([box.right, foot], outer, letters.note, { tone: 'second', anchor: 'end' }),
  ];
  return { items, says: [] };
}
