import type { CheckId } from '../../engine/hookup/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import { pinOutline, retainingHole } from '../parts/pins.ts';
import type { Bounds, Item, Point } from '../scene.ts';
import type { Stage } from '../stage.ts';
import { body, hatch, line, outline, rectangle, rounded } from '../strokes.ts';
import type { Misfit } from '../view/misfits.ts';
import { lettering, showing, type Part } from '../view/part.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';

/** A right lower pin and what takes it, pushed over until the left side fits, so that this side shows all that is missing. */
export function pinDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const both = misfit.gauge.sides === 2;
  const place = placed(stage, misfit);
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

/** Where things stand along the pin, with the end of the band that is missed at zero or at its limit [mm]. */
interface Placed {
  readonly shoulder: number;
  /** Near and far face of the hook or ball. */
  readonly holder: readonly [number, number];
  /** Where a ball is wanted, if it can't get there. */
  readonly wanted: readonly [number, number] | null;
  readonly edge: (quantity: number) => number;
}

type Placer = (stage: Stage, quantity: number, misfit: Misfit) => Placed;

const placers: Partial<Readonly<Record<CheckId, Placer>>> = {
  'rear.shoulders': ({ pins, seats }, quantity) => ({
    shoulder: -pins.sign * quantity,
    holder: [0, pins.sign * seats.width.value],
    wanted: null,
    edge: (q) => -pins.sign * q,
  }),
  'rear.pinSeat': (stage, quantity) =>
    fromFarFace(stage, quantity, (stage.pins.doubleGap ?? stage.pins.standOut).value),
  'rear.retention': (stage, quantity) =>
    fromFarFace(stage, quantity, stage.pins.toHole.value - stage.pins.washer.value),
  'front.retention': (stage, quantity) =>
    fromFarFace(stage, quantity, stage.pins.toHole.value - stage.pins.washer.value),
  'front.span': ({ pins, seats }, quantity, { miss }) => {
    const half = seats.width.value / 2;
    const wanted = quantity - miss.limit;
    return {
      shoulder: wanted - pins.sign * half,
      holder: [-half, half],
      wanted: [wanted - half, wanted + half],
      edge: (q) => q - miss.limit,
    };
  },
};

function placed(stage: Stage, misfit: Misfit): Placed {
  const placer = placers[misfit.gauge.finding.id] ?? bushingEnd;
  return placer(stage, middleOf(misfit), misfit);
}

function fromFarFace({ pins, seats }: Stage, quantity: number, reach: number): Placed {
  const { sign } = pins;
  return {
    shoulder: sign * (quantity - reach),
    holder: [-sign * seats.width.value, 0],
    wanted: null,
    edge: (q) => sign * q,
  };
}

/** The bushing ends at zero; it stands against the shoulder. */
function bushingEnd({ pins }: Stage): Placed {
  const length = pins.bushing?.length.value ?? 0;
  return { shoulder: -pins.sign * length, holder: [-pins.sign * length, 0], wanted: null, edge: (q) => pins.sign * q };
}

function boxOf({ pins, seats }: Stage, { shoulder, holder, wanted }: Placed): Bounds {
  const tip = shoulder + pins.sign * (pins.doubleGap?.value ?? pins.standOut.value);
  const ends = [tip, shoulder - pins.sign * pins.plate, ...holder, ...(wanted ?? [])];
  const ball = (seats.looseBall?.diameter.value ?? seats.opening.value * 1.9) / 2 + 8;
  const reach = Math.max(
    pins.diameter.value / 2 + 24,
    seats.kind === 'hooks' || seats.kind === 'hookEnds' ? seats.opening.value / 2 + 24 : ball,
  );
  return { left: Math.min(...ends) - 4, right: Math.max(...ends) + 4, top: reach, bottom: -reach };
}

function drawn(stage: Stage, misfit: Misfit, place: Placed, pen: Pen): Part {
  const { gauge, miss } = misfit;
  const { pins } = stage;
  const box = boxOf(stage, place);
  const reach = box.top;
  const plate = body('heavy', rectangle([place.shoulder, -reach], [place.shoulder - pins.sign * pins.plate, reach]));
  const pin: Item = body('misfit', pinOutline(pins, place.shoulder));
  const [limit, best, worst] = [miss.limit, miss.best, miss.worst].map(place.edge) as [number, number, number];
  const height = pins.diameter.value / 2 + 10;
  const areas =
    place.wanted !== null
      ? []
      : [
          ...(limit === best ? [] : [hatch('misfit', rectangle([limit, -height], [best, height]))]),
          ...(best === worst ? [] : [hatch('thin', rectangle([best, -height], [worst, height]), true)]),
        ];
  const z = reach + onPaper(pen, 4.5);
  const dimension = detailDimension(misfit, [limit, height], [worst, height], [1, 0], -z);
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
      ...missBlock(stage, pen, misfit, middle, pen.sheet.beside === 0 ? 80 : pen.sheet.beside - 10),
      ...(place.wanted === null ? names(stage, misfit, place, -reach, pen) : wantedMarks(stage, place, -reach, pen)),
    ],
    says: [],
  };
}

/** The hook or ball where pin and plate cover it. */
function holderEdges({ seats }: Stage, { holder }: Placed): Item[] {
  const reach = seats.kind === 'hooks' || seats.kind === 'hookEnds' ? seats.opening.value / 2 : 0;
  return reach === 0 ? [] : holder.map((face) => line('hidden', [face, -reach - 20], [face, reach + 14]));
}

function secondPlate({ pins }: Stage, { shoulder }: Placed, reach: number): Item[] {
  if (pins.doubleGap === null) return [];
  const face = shoulder + pins.sign * pins.doubleGap.value;
  return [body('heavy', rectangle([face, -reach], [face + pins.sign * pins.plate, reach]))];
}

function holderItems({ seats, pins }: Stage, { gauge }: Misfit, { holder, wanted }: Placed): Item[] {
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

/** Where the ball is and where it is wanted, by their centres. */
function wantedMarks({ seats }: Stage, { holder, wanted }: Placed, foot: number, pen: Pen): Item[] {
  if (wanted === null) return [];
  const { letters } = pen.sheet;
  const reach = Math.max(seats.opening.value, 24) + 6;
  const z = foot - onPaper(pen, letters.note + 0.6);
  const here = (holder[0] + holder[1]) / 2;
  const there = (wanted[0] + wanted[1]) / 2;
  const side = there > here ? 1 : -1;
  return [
    ...[here, there].map((y) => line('centre', [y, -reach], [y, reach])),
    lettering([holder[side === 1 ? 0 : 1], z], 'link ball', letters.note, {
      tone: 'second',
      anchor: side === 1 ? 'start' : 'end',
    }),
    lettering([wanted[side === 1 ? 1 : 0], z], 'wanted here', letters.note, {
      tone: 'second',
      anchor: side === 1 ? 'end' : 'start',
    }),
  ];
}

/** What is what, under the drawing. */
function names(
  { seats, pins }: Stage,
  { gauge }: Misfit,
  { holder, shoulder }: Placed,
  foot: number,
  pen: Pen,
): Item[] {
  const { letters } = pen.sheet;
  const z = foot - onPaper(pen, letters.note + 0.6);
  const bushing = gauge.finding.id.endsWith('bushingLength');
  const name = bushing ? 'bushing' : seats.kind === 'hooks' || seats.kind === 'hookEnds' ? 'hook' : 'ball';
  const [near, far] = holder;
  const outward = far > near ? 'start' : 'end';
  const gap = onPaper(pen, 1.5);
  return [
    lettering([shoulder - pins.sign * pins.plate, z], 'plate', letters.note, {
      tone: 'second',
      anchor: pins.sign === 1 ? 'start' : 'end',
    }),
    lettering(
      [outward === 'start' ? Math.max(near, shoulder + gap * 6) : Math.min(near, shoulder - gap * 6), z],
      name,
      letters.note,
      { tone: 'second', anchor: outward },
    ),
  ];
}
