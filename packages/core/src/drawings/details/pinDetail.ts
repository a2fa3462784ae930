import { onPaper, type Pen } from '../pen.ts';
import { pinOutline, retainingHole } from '../parts/pins.ts';
import type { Bounds, Item, Point } from '../scene.ts';
import type { Stage } from '../stage.ts';
import { body, hatch, line, outline, rectangle, rounded } from '../strokes.ts';
import type { Misfit } from '../misfit.ts';
import { showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { pinNames, wantedMarks } from './pinNames.ts';
import { pinPlace, type PinPlace } from './pinPlace.ts';
import { detailDimension, type DetailPlan } from './plan.ts';
import { gapAreas, placedMiss } from '../gapAreas.ts';

/** A right lower pin and what takes it, pushed over until the left side fits, so that this side shows all that is missing. */
export function pinDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const both = misfit.gauge.sides === 2;
  const place = pinPlace(stage, misfit);
  const holder = { hooks: 'hook', hookEnds: 'hook', balls: 'link ball', claws: 'ball' }[stage.seats.kind];
  return {
    finding: misfit.gauge.finding,
    title: `Right lower pin and ${holder}`,
    note: both ? 'From behind, pushed over until the left side fits.' : 'From behind; the left side is the same.',
    box: boxOf(stage, place),
    around: { left: 2, right: 2, above: blockHeight + 2, below: 7 },
    draw: (pen) => drawn(stage, misfit, place, pen),
  };
}

function boxOf({ pins, seats }: Stage, { shoulder, holder, wanted }: PinPlace): Bounds {
  const tip = shoulder + pins.sign * (pins.doubleGap?.value ?? pins.standOut.value);
  const ends = [tip, shoulder - pins.sign * pins.plate, ...holder, ...(wanted ?? [])];
  const ball = (seats.looseBall?.diameter.value ?? seats.opening.value * 1.9) / 2 + 8;
  const reach = Math.max(
    pins.diameter.value / 2 + 24,
    seats.kind === 'hooks' || seats.kind === 'hookEnds' ? seats.opening.value / 2 + 24 : ball,
  );
  return { left: Math.min(...ends) - 4, right: Math.max(...ends) + 4, top: reach, bottom: -reach };
}

function drawn(stage: Stage, misfit: Misfit, place: PinPlace, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const { pins } = stage;
  const box = boxOf(stage, place);
  const reach = box.top;
  const plate = body('heavy', rectangle([place.shoulder, -reach], [place.shoulder - pins.sign * pins.plate, reach]));
  const pin: Item = body('misfit', pinOutline(pins, place.shoulder));
  const drawnMiss = placedMiss(miss, place.edge);
  const height = pins.diameter.value / 2 + 10;
  const areas =
    place.wanted !== null ? [] : gapAreas(drawnMiss, (from, to) => rectangle([from, -height], [to, height]));
  const z = reach + onPaper(pen, 4.5);
  const dimension = detailDimension(misfit, [drawnMiss.limit, height], [drawnMiss.worst, height], [1, 0], -z);
  const middle: Point = [(box.left + box.right) / 2, z + onPaper(pen, 3.2)];
  return {
    items: [
      ...holderItems(stage, misfit, place),
      pin,
      ...retainingHole(pins, place.shoulder, 'thin'),
      plate,
      ...secondPlate(stage, place, reach),
      ...showing(gauge.finding.id, areas),
      ...holderEdges(stage, place),
      dimension,
      ...missBlock(stage, pen, misfit, middle),
      ...(place.wanted === null ? pinNames(stage, misfit, place, -reach, pen) : wantedMarks(stage, place, -reach, pen)),
    ],
    says: [],
  };
}

/** The hook or ball where pin and plate cover it. */
function holderEdges({ seats }: Stage, { holder }: PinPlace): Item[] {
  const reach = seats.kind === 'hooks' || seats.kind === 'hookEnds' ? seats.opening.value / 2 : 0;
  return reach === 0 ? [] : holder.map((face) => line('hidden', [face, -reach - 20], [face, reach + 14]));
}

function secondPlate({ pins }: Stage, { shoulder }: PinPlace, reach: number): Item[] {
  if (pins.doubleGap === null) return [];
  const face = shoulder + pins.sign * pins.doubleGap.value;
  return [body('heavy', rectangle([face, -reach], [face + pins.sign * pins.plate, reach]))];
}

function holderItems({ seats, pins }: Stage, { gauge }: Misfit, { holder, wanted }: PinPlace): Item[] {
  const [near, far] = holder;
  const seat = seats.opening.value / 2;
  if (gauge.finding.id.endsWith('bushingLength')) {
    const radius = (pins.bushing?.outside.value ?? 0) / 2;
    const sleeve = rectangle([near, -radius], [far, radius]);
    return [body('thin', sleeve), { ...hatch('thin', sleeve), spacing: 1.6 }];
  }
  if (seats.kind === 'hooks' || seats.kind === 'hookEnds') {
    const section = rectangle([near, -seat - 20], [far, seat + 14]);
    return [body('thin', section), { ...hatch('thin', section), spacing: 1.6 }];
  }
  const radius = Math.max(
    (seats.looseBall?.diameter.value ?? seats.opening.value * 1.9) / 2,
    pins.diameter.value / 2 + 8,
  );
  const ball = rounded([near, -radius], [far, radius], Math.abs(far - near) * 0.2);
  const ghost =
    wanted === null
      ? []
      : [outline('hidden', rounded([wanted[0], -radius], [wanted[1], radius], (wanted[1] - wanted[0]) * 0.2))];
  return [body('thin', ball), { ...hatch('thin', ball), spacing: 1.6 }, ...ghost];
}
