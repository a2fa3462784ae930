import type { Bounds, Item } from '../scene.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Stage } from '../stage.ts';
import { body, hatch, rectangle, rounded } from '../strokes.ts';
import { gapAreas, placedMiss } from '../gapAreas.ts';
import type { Misfit } from '../misfit.ts';
import { lettering, showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';

/** What stands in the middle and what goes around it. */
interface Clevis {
  readonly title: string;
  readonly inner: string;
  readonly outer: string;
  readonly width: number;
  /** Thickness of what goes around. */
  readonly plate: number;
}

function clevisOf({ upper }: Stage): Clevis {
  const plate = Math.max(6, (upper.clevisOuter.value - upper.clevisGap.value) / 2);
  if (upper.hook?.cheekGap != null) {
    return {
      title: 'Mast between the hook’s cheeks',
      inner: 'mast',
      outer: 'cheek',
      width: upper.clevisOuter.value,
      plate: 12,
    };
  }
  if (upper.hook !== null) {
    return {
      title: 'Top hook in the mast',
      inner: 'hook',
      outer: 'mast plate',
      width: upper.hook.thickness.value,
      plate,
    };
  }
  return {
    title: 'Top-link ball in the mast',
    inner: 'ball',
    outer: 'mast plate',
    width: upper.ball?.width.value ?? 0,
    plate,
  };
}

/** The upper joint from behind, pushed over until the left side touches, so that the right side shows all that is missing. */
export function clevisDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const clevis = clevisOf(stage);
  const half = clevis.width / 2;
  const reach = Math.max(half, half + middleOf(misfit), half + misfit.miss.worst) + clevis.plate + 4;
  const box: Bounds = { left: -half - clevis.plate - 4, right: reach, top: 34, bottom: -34 };
  return {
    finding: misfit.gauge.finding,
    title: clevis.title,
    note: 'From behind, pushed over until the left side touches.',
    box,
    around: { left: 2, right: 2, above: blockHeight + 2, below: 7 },
    draw: (pen) => drawn(stage, misfit, clevis, box, pen),
  };
}

function drawn(stage: Stage, misfit: Misfit, clevis: Clevis, box: Bounds, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const half = clevis.width / 2;
  const edge = (quantity: number): number => half + quantity;
  const face = edge(middleOf(misfit));
  const inner = rounded([-half, -26], [half, 26], clevis.inner === 'ball' ? half * 0.5 : 3);
  const areas = gapAreas(placedMiss(miss, edge), (from, to) => rectangle([from, -26], [to, 26]));
  const z = box.top + onPaper(pen, 4.5);
  const { letters } = pen.sheet;
  const foot = box.bottom - onPaper(pen, letters.note + 0.6);
  const items: Item[] = [
    body('thin', inner),
    { ...hatch('thin', inner), spacing: 1.6 },
    body('heavy', rectangle([-half - clevis.plate, -34], [-half, 34])),
    { ...body('misfit', rectangle([face, -34], [face + clevis.plate, 34])), fill: 'sheet' },
    ...showing(gauge.finding.id, areas),
    detailDimension(misfit, [edge(miss.limit), 34], [edge(miss.worst), 34], [1, 0], -z),
    ...missBlock(stage, pen, misfit, [(box.left + box.right) / 2, z + onPaper(pen, 3.2)]),
    lettering([-half - clevis.plate, foot], clevis.outer, letters.note, { tone: 'second' }),
    lettering([0, -onPaper(pen, letters.note * 0.35)], clevis.inner, letters.note, { anchor: 'middle' }),
  ];
  return { items, says: [] };
}
