import type { Bounds, Item, Point } from '../scene.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Stage } from '../stage.ts';
import { arc, body, circle, hatch, line } from '../strokes.ts';
import type { Misfit } from '../view/misfits.ts';
import { showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';

/** What goes into what, with the size of the opening and whether it opens upward. */
interface Seat {
  readonly title: string;
  readonly opening: number;
  /** How far the far edge of the pin stands inside the opening, for a value of the finding's quantity. */
  readonly spare: (quantity: number) => number;
  readonly opens: 1 | -1;
}

function seatOf({ seats, upper, bar }: Stage, { gauge }: Misfit): Seat {
  const plain = { spare: (quantity: number): number => quantity, opens: 1 } as const;
  switch (gauge.finding.id) {
    case 'rear.upperPin':
      return { ...plain, title: 'Upper pin and top hook', opening: upper.hook?.throat.value ?? 0 };
    case 'rear.jaw':
      return { ...plain, title: 'Bar and jaw', opening: bar?.opening.value ?? 0, opens: -1 };
    case 'rear.claw':
      return { ...plain, title: 'Ball and claw', opening: seats.opening.value, spare: (quantity) => -quantity };
    default:
      return { ...plain, title: 'Lower pin and hook', opening: seats.opening.value };
  }
}

/** A pin in an open seat, seen from the left: pushed to the front, so that the back shows all that is missing or loose. */
export function seatDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const seat = seatOf(stage, misfit);
  const half = seat.opening / 2;
  const high = half * 1.5 + 4;
  const low = -half - half * 0.9 - 6;
  const side = half + half * 0.9 + 8;
  const box: Bounds = {
    left: -side,
    right: side,
    top: seat.opens === 1 ? high : -low,
    bottom: seat.opens === 1 ? low : -high,
  };
  return {
    finding: misfit.gauge.finding,
    title: seat.title,
    note: 'From the left, in section, pushed to the front.',
    box,
    around: { left: 2, right: 2, above: blockHeight + 2, below: 2 },
    draw: (pen) => drawn(stage, misfit, seat, box, pen),
  };
}

function drawn(stage: Stage, misfit: Misfit, seat: Seat, box: Bounds, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const half = seat.opening / 2;
  const edge = (quantity: number): number => half - seat.spare(quantity);
  const [limit, best, worst] = [miss.limit, miss.best, miss.worst].map(edge) as [number, number, number];
  const right = edge(middleOf(misfit));
  const radius = (right + half) / 2;
  const centre: Point = [right - radius, 0];
  const z = box.top + onPaper(pen, 4.5);
  const reach = Math.min(radius, half) * 0.7;
  const band = (from: number, to: number): Point[] => [
    [from, -reach],
    [to, -reach],
    [to, reach],
    [from, reach],
  ];
  const areas = [
    ...(limit === best ? [] : [hatch('misfit', band(limit, best))]),
    ...(best === worst ? [] : [hatch('thin', band(best, worst), true)]),
  ];
  return {
    items: [
      ...section(seat, box),
      { ...circle('misfit', centre, radius), fill: 'sheet' },
      line('centre', [centre[0] - radius * 1.15, 0], [centre[0] + radius * 1.15, 0]),
      line('centre', [centre[0], -radius * 1.15], [centre[0], radius * 1.15]),
      ...wall(seat, box),
      ...showing(gauge.finding.id, areas),
      detailDimension(misfit, [limit, 0], [worst, 0], [1, 0], -z),
      ...missBlock(stage, pen, misfit, [0, z + onPaper(pen, 3.2)], pen.sheet.beside === 0 ? 80 : pen.sheet.beside - 10),
    ],
    says: [],
  };
}

/** The cut face around a U-shaped seat. */
function section({ opening, opens }: Seat, { left, right }: Bounds): Item[] {
  const half = opening / 2;
  const top = half * 1.1;
  const foot = -half * 1.9 - 6;
  const face: Point[] = [
    [left, foot],
    [right, foot],
    [right, top],
    [half, top],
    ...arc([0, 0], half, 0, -180),
    [-half, top],
    [left, top],
  ];
  const turned = face.map(([y, z]): Point => [y, opens * z]);
  return [body('thin', turned), { ...hatch('thin', turned), spacing: 1.6 }];
}

/** The wall that a thick pin covers, dashed over it. */
function wall({ opening, opens }: Seat, box: Bounds): Item[] {
  void box;
  const half = opening / 2;
  return [line('hidden', [half, 0], [half, opens * half * 1.1])];
}
