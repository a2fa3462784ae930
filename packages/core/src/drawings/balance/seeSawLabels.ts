import type { Answer } from '../../engine/assess/index.ts';
import type { Rounding } from '../../units/index.ts';
import { widthOf } from '../lettering.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, Tone } from '../scene.ts';
import { line } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { blockNames, massOf, overBracket, wheelNames } from './balanceWords.ts';
import { placeLabels, type Box } from './labelPlaces.ts';
import { wheelMassesOf } from './masses.ts';
import { frontWheel, onBeam, type SeeSaw } from './seeSawStill.ts';

/** A label for something on the beam in a few lines, and the point that it is about [scene mm]. */
interface Named {
  readonly lines: readonly Line[];
  readonly x: number;
  readonly foot: number;
}

/** A line of a label; the other unit follows where there is room. */
interface Line {
  readonly tone: Tone;
  readonly text: string;
  readonly second: string | null;
}

/** Height of a line of a label [part of its size]. */
const leading = 1.2;

/** Names and masses of all that stands on the beam, each over what it is about, and how high they reach [scene mm]. */
export function standingLabels(seeSaw: SeeSaw, answer: Answer, isTipped: boolean): { items: Item[]; top: number } {
  const { pen, layout } = seeSaw;
  const { letters, margin } = pen.sheet;
  const { scale } = layout;
  const names = [...blockLabels(seeSaw, answer), ...wheelLabels(seeSaw, answer)].map((one): Named => ({
    ...one,
    foot: onBeam([one.x, one.foot], isTipped)[1],
  }));
  const boxes = placeLabels(
    names.map(({ x, foot, lines }) => ({
      x: x / scale,
      foot: foot / scale,
      width: Math.max(...lines.map((one) => lineWidth(pen, one))),
      height: (lines.length * leading - 0.45) * letters.note,
    })),
    {
      left: layout.left / scale + margin,
      right: layout.right / scale - margin,
      taken: obstacles(seeSaw, isTipped),
    },
  );
  const items = names.flatMap((one, i) => labelItems(pen, one, boxes[i] as Box));
  return { items, top: Math.max(...boxes.map(({ top }) => onPaper(pen, top))) };
}

function lineWidth({ sheet: { letters } }: Pen, { text, second }: Line): number {
  return widthOf(text, letters.note) + (second === null ? 0 : widthOf(second, letters.second) + letters.second / 2);
}

function labelItems(pen: Pen, { lines, x, foot }: Named, box: Box): Item[] {
  const { note, second: small } = pen.sheet.letters;
  return [
    line('dimension', [x, foot], [x, onPaper(pen, box.bottom - 0.8)]),
    ...lines.map(({ text, second, tone }, i) => {
      const z = box.bottom + (lines.length - 1 - i) * note * leading;
      return lettering([onPaper(pen, box.left), onPaper(pen, z)], text, note, {
        tone,
        ...(second === null ? {} : { second: { text: second, size: small } }),
      });
    }),
  ];
}

/** What labels keep off: blocks, and the wheels by two boxes each. */
function obstacles({ layout: { deck, scale }, blocks, tyre, balance }: SeeSaw, isTipped: boolean): Box[] {
  const box = (x: number, half: number, bottom: number, height: number): Box => {
    const low = onBeam([x, deck + bottom], isTipped)[1];
    return { left: (x - half) / scale, right: (x + half) / scale, bottom: low / scale, top: (low + height) / scale };
  };
  const wheel = (x: number, radius: number): Box[] => [
    box(x, 0.45 * radius, 0, 2 * radius),
    box(x, 0.92 * radius, 0.6 * radius, 0.8 * radius),
  ];
  return [
    ...blocks.map(({ ahead, foot, side }) => box(-ahead, side / 2, foot, side)),
    ...wheel(0, tyre.value),
    ...wheel(-balance.wheelbase, tyre.value * frontWheel),
  ];
}

/** A mass with its name; the other unit beside it where there is room. */
function massLine({ sheet, system }: Pen, name: string, kg: number, round: Rounding): Line {
  const { text, second } = massOf(kg, system, round);
  return { text: `${name} ${text}`.trim(), second: sheet.narrow ? null : second, tone: 'ink' };
}

/** A mass under a long name where there is little room, else beside it. */
function massLines(pen: Pen, name: string, kg: number, round: Rounding): Line[] {
  if (!pen.sheet.narrow || name.length < 9) return [massLine(pen, name, kg, round)];
  return [{ text: name, second: null, tone: 'ink' }, massLine(pen, '', kg, round)];
}

/** Blocks are told over their tops; one that another stands on is told with it, in the order in which they stand. */
function blockLabels({ layout: { deck }, blocks, pen }: SeeSaw, answer: Answer): Named[] {
  const wanted = blocks.filter(({ isWanted }) => isWanted);
  const real = blocks.filter(({ isWanted }) => !isWanted);
  const columns: { readonly x: number; top: number; lines: Line[] }[] = [];
  for (const { what, mass, ahead, foot, side } of real) {
    const own = massLines(pen, blockNames[what], mass, 'nearest');
    const under = columns.find(({ x, top }) => Math.abs(-ahead - x) < side / 2 && foot >= top - 1e-6);
    if (under === undefined) columns.push({ x: -ahead, top: foot + side, lines: own });
    else Object.assign(under, { top: foot + side, lines: [...own, ...under.lines] });
  }
  for (const { mass, ahead, side } of wanted) {
    const at = columns.find(({ x }) => x === -ahead);
    const lines = ballastLines(pen, answer, mass, at !== undefined);
    if (at === undefined) columns.push({ x: -ahead, top: side, lines });
    else Object.assign(at, { top: Math.max(at.top, side), lines: [...at.lines, ...lines] });
  }
  return columns.map(({ x, top, lines }) => ({ x, foot: deck + top, lines }));
}

/** The front weights that it would take, and what their bracket holds where that is less. */
function ballastLines(pen: Pen, answer: Answer, kg: number, isFitted: boolean): Line[] {
  const over = overBracket(answer, kg);
  return [
    ...(isFitted ? [massLine(pen, 'wanted', kg, 'up')] : massLines(pen, blockNames.ballast, kg, 'up')),
    ...(over === null ? [] : massLines(pen, 'bracket holds', over, 'down')),
  ].map((one): Line => ({ ...one, tone: 'accent' }));
}

/** Weights and liquid on the rear wheel, told over it. */
function wheelLabels({ pen, layout: { deck }, tyre }: SeeSaw, answer: Answer): Named[] {
  const lines = wheelMassesOf(answer).map(({ what, figure }) => {
    const about = figure.standing === 'measured' ? '' : ' ≈';
    return massLine(pen, wheelNames[what] + about, figure.value, 'nearest');
  });
  return lines.length === 0 ? [] : [{ lines, x: 0, foot: deck + 2 * tyre.value }];
}
