import type { Pen } from '../pen.ts';
import type { Bounds, Item, Point } from '../scene.ts';
import { unknownAt } from '../shown.ts';
import type { Stage } from '../stage.ts';
import { arc, body, hatch, line } from '../strokes.ts';
import type { Misfit } from '../misfit.ts';
import { together, type Part } from '../view/part.ts';
import { placedMiss } from '../gapAreas.ts';
import { blockHeight } from './missBlock.ts';
import { middleOf, type DetailPlan } from './plan.ts';
import { pushedMiss, pushedPin, roundSize, type Named } from './pushedFront.ts';
import { sizesHeight, sizesUnder, type Size } from './sizes.ts';

/** What goes into what, with the size of the opening and whether it opens upward. */
interface Seat {
  readonly title: string;
  readonly pin: Size;
  readonly seat: Size;
  readonly opening: number;
  /** How far the far edge of the pin stands inside the opening, for a value of the finding's quantity. */
  readonly spare: (quantity: number) => number;
  readonly opens: 1 | -1;
}

function seatOf({ seats, pins, upper, bar }: Stage, { gauge }: Misfit): Seat {
  const none = unknownAt('', 0);
  switch (gauge.finding.id) {
    case 'rear.upperPin':
      return made('Upper pin and top hook', ['upper pin', upper.pin], ['hook throat', upper.hook?.throat ?? none]);
    case 'rear.jaw':
      return { ...made('Bar and jaw', ['bar', bar?.diameter ?? none], ['jaw', bar?.opening ?? none]), opens: -1 };
    case 'rear.claw': {
      const claw = made('Ball and claw', ['ball', seats.looseBall?.diameter ?? none], ['claw', seats.opening]);
      return { ...claw, spare: (quantity) => -quantity };
    }
    default:
      return made(
        'Lower pin and hook',
        ['lower pin', pins.bushing?.outside ?? pins.diameter],
        ['hook seat', seats.opening],
      );
  }
}

function made(title: string, pin: Named, [seatName, seat]: Named): Seat {
  return {
    title,
    pin: roundSize(pin),
    seat: { name: seatName, figure: seat, round: false },
    opening: seat.value,
    spare: (quantity) => quantity,
    opens: 1,
  };
}

/** A pin in an open seat, seen from the left: pushed to the front, so that the back shows all that is missing or loose. */
export function seatDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const seat = seatOf(stage, misfit);
  const half = seat.opening / 2;
  const [high, low, side] = [half * 1.5 + 4, -half * 1.9 - 6, half * 1.9 + 8];
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
    around: { left: 2, right: 2, above: blockHeight + 2, below: sizesHeight },
    draw: (pen) => together(drawn(stage, misfit, seat, box, pen), sizesUnder(pen, box.bottom, [seat.pin, seat.seat])),
  };
}

function drawn(stage: Stage, misfit: Misfit, seat: Seat, box: Bounds, pen: Pen): Part {
  const half = seat.opening / 2;
  const edge = (quantity: number): number => half - seat.spare(quantity);
  const right = edge(middleOf(misfit));
  const pushed = { half, right, reach: Math.min((right + half) / 2, half) * 0.7 };
  return {
    items: [
      ...section(seat, box),
      ...pushedPin(pushed),
      line('hidden', [half, 0], [half, seat.opens * half * 1.1]),
      ...pushedMiss({ stage, misfit, box, pen }, placedMiss(misfit.miss, edge), pushed),
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
