import type { CheckId } from '../../engine/findings/index.ts';
import type { Misfit } from '../misfit.ts';
import type { Stage } from '../stage.ts';
import { middleOf } from './plan.ts';

/** Where things stand along the pin, with the end of the band that is missed at zero or at its limit [mm]. */
export interface PinPlace {
  readonly shoulder: number;
  /** Near and far face of the hook or ball. */
  readonly holder: readonly [number, number];
  /** Where a ball is wanted, if it can't get there. */
  readonly wanted: readonly [number, number] | null;
  readonly edge: (quantity: number) => number;
}

type Placer = (stage: Stage, quantity: number, misfit: Misfit) => PinPlace;

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

/** Where things stand for a misfit across a lower pin. */
export function pinPlace(stage: Stage, misfit: Misfit): PinPlace {
  const placer = placers[misfit.gauge.finding.id] ?? bushingEnd;
  return placer(stage, middleOf(misfit), misfit);
}

function fromFarFace({ pins, seats }: Stage, quantity: number, reach: number): PinPlace {
  const { sign } = pins;
  return {
    shoulder: sign * (quantity - reach),
    holder: [-sign * seats.width.value, 0],
    wanted: null,
    edge: (q) => sign * q,
  };
}

/** The bushing ends at zero; it stands against the shoulder. */
function bushingEnd({ pins }: Stage): PinPlace {
  const length = pins.bushing?.length.value ?? 0;
  return { shoulder: -pins.sign * length, holder: [-pins.sign * length, 0], wanted: null, edge: (q) => pins.sign * q };
}
