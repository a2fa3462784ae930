import type { Pen } from '../pen.ts';
import type { Bounds, Point } from '../scene.ts';
import { unknownAt } from '../shown.ts';
import type { Stage } from '../stage.ts';
import { arc, circle, hatch } from '../strokes.ts';
import type { Misfit } from '../misfit.ts';
import { together, type Part } from '../view/part.ts';
import { placedMiss } from '../gapAreas.ts';
import { blockHeight } from './missBlock.ts';
import { middleOf, type DetailPlan } from './plan.ts';
import { pushedMiss, pushedPin, roundSize, type Named } from './pushedFront.ts';
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

function made(title: string, pin: Named, [boreName, bore]: Named): Ring {
  return { title, pin: roundSize(pin), bore: roundSize([`bore of the ${boreName}`, bore]), outer: bore.value * 1.85 };
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
  const half = ring.bore.figure.value / 2;
  const pushed = { half, right: half - middleOf(misfit), reach: half * 0.5 };
  return {
    items: [
      circle('thin', [0, 0], ring.outer / 2),
      { ...hatch('thin', annulus(ring.outer / 2, half)), spacing: 1.6 },
      circle('thin', [0, 0], half),
      ...pushedPin(pushed),
      circle('hidden', [0, 0], half),
      ...pushedMiss(
        { stage, misfit, box, pen },
        placedMiss(misfit.miss, (quantity) => half - quantity),
        pushed,
      ),
    ],
    says: [],
  };
}

/** The ring as one outline: out along the outer circle, back along the inner one. */
function annulus(outer: number, inner: number): Point[] {
  return [...arc([0, 0], outer, 0, 360), ...arc([0, 0], inner, 360, 0)];
}
