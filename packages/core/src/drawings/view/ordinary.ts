import { figureSentence, figureText } from '../figureText.ts';
import { footOf, legEdge } from '../parts/mast.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, Point, Tone } from '../scene.ts';
import type { Shown } from '../shown.ts';
import type { Stage } from '../stage.ts';
import { hatch, line, mirrored, rectangle } from '../strokes.ts';
import type { Layout } from './layout.ts';
import { heightsOf, reachOf, spansOf, type Dimensioned } from './figures.ts';
import { lettering, nothing, together, type Part } from './part.ts';
import { figureLettering, fitted, goesInto, heightDimension, spanDimension } from './spans.ts';

/** Distance of dimension lines from each other [paper mm]. */
export const rowHeight = 9;
export const columnWidth = 10.5;

/** The figure of an undecided lead finding that is worth measuring is drawn in the accent: there the tape goes. */
function toneOf({ answer }: Stage, figure: Dimensioned['figure']): Tone {
  const { lead } = answer;
  const asked = lead?.status === 'undecided' && lead.asks.slice(0, 1).some(({ path }) => path.startsWith(figure.path));
  if (asked) return 'accent';
  return figure.standing === 'measured' ? 'ink' : 'second';
}

/** Heights dimensioned in columns at the left. */
export function heightColumns(stage: Stage, pen: Pen, half: number): Part {
  const lower = -(stage.pins.shoulders.value / 2 + Math.max(0, stage.pins.sign) * stage.pins.standOut.value);
  return together(
    ...heightsOf(stage).map((height, i): Part => {
      const y = -half - onPaper(pen, 6 + i * columnWidth);
      const label = figureLettering(pen, [y, height.drawnAt / 2], figureText(height.figure, pen.system), '', {
        tone: toneOf(stage, height.figure),
        upward: true,
        room: height.drawnAt / pen.perPaper - 7,
      });
      const dimension = heightDimension(
        [stage.bar === null ? lower : -half, 0],
        [height.from, height.drawnAt],
        y,
        label,
      );
      return { items: [dimension], says: [said(height, pen)] };
    }),
  );
}

/** Heights written on level lines, where there is no room for columns. */
export function heightLevels(stage: Stage, pen: Pen, { panel }: Layout): Part {
  const heights = heightsOf(stage);
  const foot = stage.bar === null ? footOf(stage.pins) : stage.bar.span.value / 2 - 10;
  const left = panel.left + onPaper(pen, pen.sheet.margin);
  return together(
    ...heights.map((height, i): Part => {
      const above = i === heights.length - 1;
      const z = height.drawnAt + onPaper(pen, above ? 1.2 : -pen.sheet.letters.dimension);
      const { text, second } = figureText(height.figure, pen.system);
      const words = `${height.name} ${text}`;
      const fit = fitted(
        pen,
        words,
        second,
        (Math.min(height.from, -legEdge(stage.upper, foot, z)) - left) / pen.perPaper - 3,
      );
      const label = lettering([left, z], words, fit.size, { ...fit.second, tone: toneOf(stage, height.figure) });
      const level = line('dimension', [left, height.drawnAt], [height.from, height.drawnAt]);
      return { items: [level, label], says: [said(height, pen)] };
    }),
  );
}

/** Spans dimensioned in rows below, from a first row downward. */
export function spanRows(stage: Stage, pen: Pen, first: number): Part {
  const rows = spansOf(stage).map((span, i): Part => {
    const z = first - onPaper(pen, i * rowHeight);
    const [figure, tone] = [figureText(span.figure, pen.system), toneOf(stage, span.figure)];
    const room = (2 * span.drawnAt) / pen.perPaper - 7;
    const isRoomy = goesInto(pen, `${figure.text} ${span.name}`, room);
    const label = figureLettering(pen, [0, z], figure, isRoomy ? span.name : '', { tone, room });
    const under = isRoomy ? [] : [underLine(pen, z, span.name, tone)];
    return { items: [spanDimension(span.drawnAt, span.from, z, label), ...under], says: [said(span, pen)] };
  });
  return together(...rows, reachRow(stage, pen, first - onPaper(pen, rows.length * rowHeight)));
}

/** The range that the links' balls can be set in, hatched on both sides. */
function reachRow(stage: Stage, pen: Pen, z: number): Part {
  const reach = reachOf(stage);
  if (reach === null) return nothing;
  const height = onPaper(pen, 2);
  const right: Point[] = rectangle([reach.low / 2, z], [reach.high / 2, z + height]);
  const ends: Item[] = [reach.low, reach.high, -reach.low, -reach.high].map((y) =>
    line('thin', [y / 2, z - onPaper(pen, 0.7)], [y / 2, z + height + onPaper(pen, 0.7)]),
  );
  const label = reachLabel(pen, reach, z, toneOf(stage, reach));
  return {
    items: [hatch('thin', right), hatch('thin', mirrored(right), true), ...ends, label],
    says: [`The links can be set to ${figureSentence(reach, pen.system)}, ball centre to ball centre.`],
  };
}

/** The range in words between its two bars: without the other unit where that is too wide. */
function reachLabel(pen: Pen, reach: Shown, z: number, tone: Tone): Item {
  const { text, second } = figureText(reach, pen.system);
  const words = `links reach ${text}`;
  const room = reach.low / pen.perPaper - 5;
  if (!goesInto(pen, words, room)) return underLine(pen, z, words, tone);
  const fit = fitted(pen, words, second, room);
  return lettering([0, z], words, fit.size, { ...fit.second, tone, anchor: 'middle' });
}

/** What does not go onto its line stands under it. */
function underLine(pen: Pen, z: number, text: string, tone: Tone): Item {
  const { least } = pen.sheet;
  return lettering([0, z - onPaper(pen, least + 0.4)], text, least, { tone, anchor: 'middle' });
}

/** How many rows of spans there are. */
export function rowsOf(stage: Stage): number {
  return spansOf(stage).length + (reachOf(stage) === null ? 0 : 1);
}

function said({ said: name, figure }: Dimensioned, pen: Pen): string {
  return `${name}: ${figureSentence(figure, pen.system)}.`;
}
