import type { Bounds, Item, Point } from '../scene.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Stage } from '../stage.ts';
import { arc, circle, hatch, line } from '../strokes.ts';
import type { Misfit } from '../view/misfits.ts';
import { showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';

interface Ring {
  readonly title: string;
  readonly bore: number;
  readonly outer: number;
}

function ringOf({ seats, pins, upper }: Stage, { gauge }: Misfit): Ring {
  const { id } = gauge.finding;
  if (id.endsWith('bushingBore')) {
    const bore = pins.bushing?.inside.value ?? pins.diameter.value;
    return { title: 'Lower pin and bushing', bore, outer: Math.max(bore + 4, pins.bushing?.outside.value ?? 0) };
  }
  if (id === 'front.upperPin') return ball('Upper pin and top-link ball', upper.ball?.bore.value ?? upper.pin.value);
  if (id === 'rear.ballOnPin') {
    const bore = seats.looseBall?.bore.value ?? pins.diameter.value;
    return { title: 'Lower pin and loose ball', bore, outer: Math.max(bore + 6, seats.looseBall?.diameter.value ?? 0) };
  }
  return ball('Lower pin and link ball', seats.opening.value);
}

function ball(title: string, bore: number): Ring {
  return { title, bore, outer: bore * 1.85 };
}

/** A pin in a bore, seen along the pin: pushed to the front, so that the back shows all that is missing or loose. */
export function boreDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const ring = ringOf(stage, misfit);
  const reach = Math.max(ring.outer, ring.bore + 2 * Math.abs(misfit.miss.worst)) / 2 + 2;
  const box: Bounds = { left: -reach, right: reach, top: reach, bottom: -reach };
  return {
    finding: misfit.gauge.finding,
    title: ring.title,
    note: 'Along the pin, in section, pushed to the front.',
    box,
    around: { left: 2, right: 2, above: blockHeight + 2, below: 2 },
    draw: (pen) => drawn(stage, misfit, ring, box, pen),
  };
}

function drawn(stage: Stage, misfit: Misfit, ring: Ring, box: Bounds, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const half = ring.bore / 2;
  const [limit, best, worst] = [miss.limit, miss.best, miss.worst].map((quantity) => half - quantity) as [
    number,
    number,
    number,
  ];
  const right = half - middleOf(misfit);
  const radius = (right + half) / 2;
  const centre: Point = [right - radius, 0];
  const z = box.top + onPaper(pen, 4.5);
  const reach = half * 0.5;
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
  const items: Item[] = [
    circle('thin', [0, 0], ring.outer / 2),
    { ...hatch('thin', annulus(ring)), spacing: 1.6 },
    circle('thin', [0, 0], half),
    { ...circle('misfit', centre, radius), fill: 'sheet' },
    circle('hidden', [0, 0], half),
    line('centre', [centre[0] - radius * 1.15, 0], [centre[0] + radius * 1.15, 0]),
    line('centre', [centre[0], -radius * 1.15], [centre[0], radius * 1.15]),
    ...showing(gauge.finding.id, areas),
    detailDimension(misfit, [limit, 0], [worst, 0], [1, 0], -z),
    ...missBlock(stage, pen, misfit, [0, z + onPaper(pen, 3.2)], pen.sheet.beside === 0 ? 80 : pen.sheet.beside - 10),
  ];
  return { items, says: [] };
}

/** The ring as one outline: out along the outer circle, back along the inner one. */
function annulus({ outer, bore }: Ring): Point[] {
  return [...arc([0, 0], outer / 2, 0, 360), ...arc([0, 0], bore / 2, 360, 0)];
}
