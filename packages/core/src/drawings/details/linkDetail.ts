import type { Bounds, Item } from '../scene.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Stage } from '../stage.ts';
import { body, breakLine, circle, line, rectangle } from '../strokes.ts';
import { gapAreas } from '../gapAreas.ts';
import type { Misfit } from '../misfit.ts';
import { lettering, showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';

const shown = 120;
const eye = 26;

/** The implement's end of the top link laid straight: how far it reaches, and where the upper pin wants it. */
export function linkDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const { limit, worst } = misfit.miss;
  const box: Bounds = {
    left: Math.min(limit, worst) - shown,
    right: Math.max(limit, worst) + eye + 4,
    top: eye + 6,
    bottom: -eye - 6,
  };
  return {
    finding: misfit.gauge.finding,
    title: 'Top link, laid straight',
    note: 'Links level, implement standing level; pin to pin.',
    box,
    around: { left: 2, right: 2, above: blockHeight + 2, below: 12 },
    draw: (pen) => drawn(stage, misfit, box, pen),
  };
}

/** Distances count from the pin at the tractor, far to the left of what is shown. */
function drawn(stage: Stage, misfit: Misfit, box: Bounds, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const wanted = middleOf(misfit);
  const bore = (stage.upper.ball?.bore.value ?? 20) / 2;
  const z = box.top + onPaper(pen, 4.5);
  const { letters } = pen.sheet;
  const foot = box.bottom - onPaper(pen, letters.note + 0.4);
  const areas = gapAreas(miss, (from, to) => rectangle([from, -8], [to, 8]));
  const end = gauge.finding.side === 'high' ? 'at its longest' : 'at its shortest';
  const items: Item[] = [
    body('thin', rectangle([box.left, -11], [miss.limit - eye + 4, 11])),
    breakLine([box.left, -11], 11),
    { ...circle('thin', [miss.limit, 0], eye), fill: 'sheet' },
    circle('thin', [miss.limit, 0], bore),
    ...showing(gauge.finding.id, areas),
    { ...circle('misfit', [wanted, 0], stage.upper.pin.value / 2), fill: 'sheet' },
    line('centre', [miss.limit, -eye - 5], [miss.limit, eye + 3]),
    line('centre', [wanted, -eye - 5], [wanted, eye + 3]),
    detailDimension(misfit, [miss.limit, eye + 3], [miss.worst, eye + 3], [1, 0], -z),
    ...missBlock(stage, pen, misfit, [(box.left + box.right) / 2, z + onPaper(pen, 3.2)]),
    lettering([box.left, foot], `top link ${end}`, letters.note, { tone: 'second' }),
    lettering([box.left, foot - onPaper(pen, letters.note * 1.3)], 'ring: where the upper pin is', letters.note, {
      tone: 'second',
    }),
  ];
  return { items, says: [] };
}
