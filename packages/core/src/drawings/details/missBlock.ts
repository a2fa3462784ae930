import { widthOf } from '../lettering.ts';
import { missLabel } from '../missWords.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Lettering, Point } from '../scene.ts';
import type { Stage } from '../stage.ts';
import type { Misfit } from '../misfit.ts';
import { lettering } from '../view/part.ts';

/** Heights of the two lines over a dimension of a misfit, with the gaps between them [paper mm]. */
export const blockHeight = 24;

/** The figure of a misfit, large, and under it the other unit and what is wrong; its foot at a point, centred. */
export function missBlock(stage: Stage, pen: Pen, { gauge }: Misfit, [y, z]: Point): Lettering[] {
  const { letters, beside } = pen.sheet;
  const width = beside === 0 ? 80 : beside - 10;
  const { figure, second, word } = missLabel(gauge.finding, pen.system, stage.pins.sign === -1);
  const size = Math.min(letters.detailMisfit, width / widthOf(figure, 1));
  const line = second === '' ? word : `(${second}) ${word}`;
  const small = Math.max(pen.sheet.least, Math.min(letters.word, width / widthOf(line, 1)));
  const { id } = gauge.finding;
  return [
    {
      ...lettering([y, z + onPaper(pen, small * 1.35)], figure, size, {
        tone: 'accent',
        weight: 700,
        anchor: 'middle',
      }),
      finding: id,
    },
    { ...lettering([y, z], line, small, { tone: 'accent', weight: 500, anchor: 'middle' }), finding: id },
  ];
}
