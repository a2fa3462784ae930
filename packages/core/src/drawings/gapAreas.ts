import type { Miss } from './miss.ts';
import type { Hatch, Point } from './scene.ts';
import { hatch } from './strokes.ts';

/** The gap to close, in the accent, and beyond it in ink the tolerance of what was measured; positions along what is measured [mm]. */
export function gapAreas({ limit, best, worst }: Miss, band: (from: number, to: number) => readonly Point[]): Hatch[] {
  return [
    ...(limit === best ? [] : [hatch('misfit', band(limit, best))]),
    ...(best === worst ? [] : [hatch('thin', band(best, worst), true)]),
  ];
}

/** A miss with each of its ends moved to where it is drawn. */
export function placedMiss({ limit, best, worst }: Miss, at: (quantity: number) => number): Miss {
  return { limit: at(limit), best: at(best), worst: at(worst) };
}
