import type { LineRole } from './scene.ts';

/** Widths of lines [paper mm]: two steps, and a third for the misfit alone. */
export const lineWidths: Readonly<Record<LineRole, number>> = {
  heavy: 0.5,
  thin: 0.25,
  hidden: 0.25,
  centre: 0.2,
  ghost: 0.25,
  misfit: 0.65,
  dimension: 0.25,
};

/** Lengths of dashes and gaps in turn, of the lines that are not drawn through [paper mm]. */
export const lineDashes = { hidden: [1.6, 0.8], centre: [3.7, 0.8, 0.5, 0.8] } as const;
