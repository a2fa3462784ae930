import { apexOf } from '../parts/counterparts.ts';
import { beam } from '../parts/beam.ts';
import type { Stage } from '../stage.ts';

/** How much room the parts themselves take around the centre between the lower pins [mm]. */
export interface Extent {
  readonly half: number;
  readonly top: number;
  readonly bottom: number;
}

/** The room that the parts of a stage take. */
export function extentOf(stage: Stage): Extent {
  const { upper } = stage;
  const top = upper.exists && stage.frame === null ? upper.distance.value + 36 : 220;
  const hook = (upper.hook?.distance.value ?? 0) + 30;
  if (stage.frame !== null) return frameExtent(stage.frame);
  if (stage.bar !== null) {
    const half = Math.max(stage.bar.length.value, stage.bar.span.value) / 2 + 70;
    return { half, top, bottom: -stage.bar.diameter.value / 2 - 40 };
  }
  return { half: lowerHalf(stage) + 36, top: Math.max(top, hook), bottom: beam.bottom };
}

function frameExtent({ frameWidth, frameAngle, receiverWidth }: NonNullable<Stage['frame']>): Extent {
  const half = Math.max(frameWidth.value, receiverWidth.value) / 2 + 110;
  return { half, top: apexOf(frameWidth.value, frameAngle.value) + 24, bottom: beam.bottom };
}

function lowerHalf({ pins, seats }: Stage): number {
  const shoulder = pins.shoulders.value / 2;
  const tip = shoulder + Math.max(0, pins.sign * pins.standOut.value, pins.sign === -1 ? pins.plate : 0);
  const outer = pins.doubleGap === null ? 0 : shoulder + Math.max(0, pins.sign) * (pins.doubleGap.value + pins.plate);
  return Math.max(tip, outer, seats.centres.value / 2 + Math.max(22, seats.width.value / 2));
}
