import type { Answer } from '../engine/assess/index.ts';
import { shown, type Shown } from './shown.ts';

/** A triangular frame and the receiver that it goes into [mm, deg]. */
export interface FrameAndReceiver {
  readonly frameWidth: Shown;
  readonly frameAngle: Shown;
  readonly receiverWidth: Shown;
  readonly receiverAngle: Shown;
}

/** A cross bar and the jaws that drop over it [mm]. */
export interface BarAndJaws {
  readonly diameter: Shown;
  readonly length: Shown;
  readonly opening: Shown;
  readonly span: Shown;
}

/** A triangular frame and its receiver. */
export function frameOf(answer: Answer): FrameAndReceiver {
  const frameWidth = shown(answer, 'coupler.frameWidth', 400);
  const frameAngle = shown(answer, 'coupler.frameAngle', 50);
  return {
    frameWidth,
    frameAngle,
    receiverWidth: shown(answer, 'implement.receiverWidth', frameWidth.value + 4),
    receiverAngle: shown(answer, 'implement.receiverAngle', frameAngle.value),
  };
}

/** A bar and its jaws. */
export function barOf(answer: Answer): BarAndJaws {
  const diameter = shown(answer, 'coupler.barDiameter', 50);
  const length = shown(answer, 'coupler.barLength', 600);
  return {
    diameter,
    length,
    opening: shown(answer, 'implement.jawOpening', diameter.value + 1),
    span: shown(answer, 'implement.jawSpan', length.value - 60),
  };
}
