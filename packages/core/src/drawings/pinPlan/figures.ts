import type { PinTarget } from '../../engine/pinplan/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { targetFigures } from '../../words/index.ts';

/** The figures of a target in the unit that stands second, without its name. */
export function otherFigures(target: PinTarget, system: UnitSystem): ReturnType<typeof targetFigures> {
  const figures = targetFigures(target, system === 'us' ? 'metric' : 'us');
  return Object.fromEntries(
    Object.entries(figures).map(([key, text]) => [key, text.replace(/ (in|mm)(?= or |$)/, '')]),
  ) as ReturnType<typeof targetFigures>;
}
