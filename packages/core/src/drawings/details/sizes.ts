import { fineSentence, fineText } from '../figureText.ts';
import { widthOf } from '../lettering.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Lettering } from '../scene.ts';
import type { Shown } from '../shown.ts';
import { lettering, type Part } from '../view/part.ts';

/** A size that an enlarged view compares; a round one is a diameter. */
export interface Size {
  readonly name: string;
  readonly figure: Shown;
  readonly round: boolean;
}

/** Room that two sizes take under a view [paper mm]. */
export const sizesHeight = 13;

/** Sizes as a caliper reads them, one under the other in the middle below a height. */
export function sizesUnder(pen: Pen, z: number, sizes: readonly Size[]): Part {
  const { letters } = pen.sheet;
  const texts = sizes.map((size) => sizeText(pen, size));
  const start = -onPaper(pen, Math.max(...texts.map(widthWithSign)) / 2);
  return {
    items: texts.map((text, i) => ({
      ...text,
      at: [start, z - onPaper(pen, letters.note * (1.3 + 1.4 * i))] as const,
    })),
    says: sizes.map(
      ({ name, figure, round }) =>
        `${round ? 'Diameter' : 'Width'} of the ${name}: ${fineSentence(figure, pen.system)}.`,
    ),
  };
}

function sizeText(pen: Pen, { name, figure, round }: Size): Lettering {
  const { letters, least } = pen.sheet;
  const { text, second } = fineText(figure, pen.system);
  const isRange = figure.low !== figure.high;
  const other = second === null || isRange ? {} : { second: { text: second, size: least } };
  const tone = figure.standing === 'measured' ? 'ink' : 'second';
  const written = lettering([0, 0], `${text} ${name}`, letters.note, { tone, ...other });
  return round ? { ...written, diameter: true } : written;
}

function widthWithSign({ text, size, second, diameter }: Lettering): number {
  const other = second === undefined ? 0 : widthOf(second.text, second.size) + second.size / 2;
  return widthOf(text, size) + other + (diameter === true ? size : 0);
}
