import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Point } from '../scene.ts';
import { unknownAt, type Shown } from '../shown.ts';
import type { Stage } from '../stage.ts';
import { arc, circle, hatch, line, rectangle } from '../strokes.ts';
import type { Misfit } from '../misfit.ts';
import { showing, together, type Part } from '../view/part.ts';
import { gapAreas, placedMiss } from '../gapAreas.ts';
import { blockHeight, missBlock } from './missBlock.ts';
import { detailDimension, middleOf, type DetailPlan } from './plan.ts';
import { sizesHeight, sizesUnder, type Size } from './sizes.ts';

interface Ring {
  readonly title: string;
  readonly pin: Size;
  readonly bore: Size;
  readonly outer: number;
}

function ringOf({ seats, pins, upper }: Stage, { gauge }: Misfit): Ring {
  const { id } = gauge.finding;
  const none = unknownAt('', 20);
  if (id.endsWith('bushingBore')) {
    const { inside, outside } = pins.bushing ?? { inside: none, outside: none };
    return {
      ...made('Lower pin and bushing', ['lower pin', pins.diameter], ['bushing', inside]),
      outer: Math.max(inside.value + 4, outside.value),
    };
  }
  if (id === 'front.upperPin') {
    return made('Upper pin and top-link ball', ['upper pin', upper.pin], ['ball', upper.ball?.bore ?? none]);
  }
  if (id === 'rear.ballOnPin') {
    const { bore, diameter } = seats.looseBall ?? { bore: none, diameter: none };
    return {
      ...made('Lower pin and loose ball', ['lower pin', pins.diameter], ['ball', bore]),
      outer: Math.max(bore.value + 6, diameter.value),
    };
  }
  return made(
    'Lower pin and link ball',
    ['lower pin', pins.bushing?.outside ?? pins.diameter],
    ['ball', seats.opening],
  );
}

function made(
  title: string,
  [pinName, pin]: readonly [string, Shown],
  [boreName, bore]: readonly [string, Shown],
): Ring {
  return {
    title,
    pin: { name: pinName, figure: pin, round: true },
    bore: { name: `bore of the ${boreName}`, figure: bore, round: true },
    outer: bore.value * 1.85,
  };
}

/** A pin in a bore, seen along the pin: pushed to the front, so that the back shows all that is missing or loose. */
export function boreDetail(stage: Stage, misfit: Misfit): DetailPlan {
  const ring = ringOf(stage, misfit);
  const reach = Math.max(ring.outer, ring.bore.figure.value + 2 * Math.abs(misfit.miss.worst)) / 2 + 2;
  const box: Bounds = { left: -reach, right: reach, top: reach, bottom: -reach };
  return {
    finding: misfit.gauge.finding,
    title: ring.title,
    note: 'Along the pin, in section, pushed to the front.',
    box,
    around: { left: 2, right: 2, above: blockHeight + 2, below: sizesHeight },
    draw: (pen) => together(drawn(stage, misfit, ring, box, pen), sizesUnder(pen, box.bottom, [ring.pin, ring.bore])),
  };
}

function drawn(stage: Stage, misfit: Misfit, ring: Ring, box: Bounds, pen: Pen): Part {
  const { finding } = misfit.gauge;
  const half = ring.bore.figure.value / 2;
  const miss = placedMiss(misfit.miss, (quantity) => half - quantity);
  const right = half - middleOf(misfit);
  const radius = (right + half) / 2;
  const centre = right - radius;
  const z = box.top + onPaper(pen, 4.5);
  const reach = half * 0.5;
  return {
    items: [
      circle('thin', [0, 0], ring.outer / 2),
      { ...hatch('thin', annulus(ring.outer / 2, half)), spacing: 1.6 },
      circle('thin', [0, 0], half),
      { ...circle('misfit', [centre, 0], radius), fill: 'sheet' },
      circle('hidden', [0, 0], half),
      line('centre', [centre - radius * 1.15, 0], [centre + radius * 1.15, 0]),
      line('centre', [centre, -radius * 1.15], [centre, radius * 1.15]),
      ...showing(
        finding.id,
        gapAreas(miss, (from, to) => rectangle([from, -reach], [to, reach])),
      ),
      detailDimension(misfit, [miss.limit, 0], [miss.worst, 0], [1, 0], -z),
      ...missBlock(stage, pen, misfit, [0, z + onPaper(pen, 3.2)]),
    ],
    says: [],
  };
}

/** The ring as one outline: out along the outer circle, back along the inner one. */
function annulus(outer: number, inner: number): Point[] {
  return [...arc([0, 0], outer, 0, 360), ...arc([0, 0], inner, 360, 0)];
}
