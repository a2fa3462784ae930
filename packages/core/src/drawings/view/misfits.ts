import { tailLength, isShort } from '../dimensionParts.ts';
import { gapAreas, placedMiss } from '../gapAreas.ts';
import { edgeAt, gaugeOf, type Gauge } from '../gauge.ts';
import { widthOf } from '../lettering.ts';
import type { Misfit } from '../misfit.ts';
import { missLabel, oneSideText, type MissLabel } from '../missWords.ts';
import { onPaper, type Pen } from '../pen.ts';
import { plateReach } from '../parts/pins.ts';
import type { Dimension, Item, Point } from '../scene.ts';
import { titleOf } from '../../words/index.ts';
import { isOnStage, type Stage } from '../stage.ts';
import { hatch, mirrored, rectangle } from '../strokes.ts';
import { lettering, nothing, showing, together, type Part } from './part.ts';

/** The gap and the tolerance at an edge, on both sides where it has two. */
function gapAndTolerance({ gauge, miss }: Misfit, band: (from: number, to: number) => Point[]): Item[] {
  const drawn = placedMiss(miss, (quantity) => edgeAt(gauge, quantity));
  return gapAreas(drawn, band).flatMap((area) =>
    gauge.sides === 2 ? [area, { ...area, outline: mirrored(area.outline), falling: !area.falling }] : [area],
  );
}

/** What is hatched behind the implement. */
export function misfitAreas(stage: Stage, pen: Pen, misfits: readonly Misfit[]): Item[] {
  const upper = misfits.filter(({ gauge }) => gauge.place === 'upper');
  const reach = stage.upper.clevisOuter.value / 2 + 16 + onPaper(pen, 5);
  const drawn = upper.flatMap((misfit) =>
    showing(
      misfit.gauge.finding.id,
      gapAndTolerance(misfit, (from, to) => rectangle([-reach, from], [reach, to])),
    ),
  );
  return [...drawn, ...openRange(stage, reach)];
}

/** Where the upper pin may be, while nobody knows whether it meets its hook. */
function openRange(stage: Stage, reach: number): Item[] {
  const finding = stage.answer.findings.find(({ id }) => id === 'rear.mast');
  if (finding?.status !== 'undecided' || !isOnStage(stage, finding)) return [];
  const gauge = gaugeOf(stage, finding);
  const { low, high } = finding.quantity ?? { low: null, high: null };
  if (gauge === null || low === null || high === null) return [];
  return showing(finding.id, [hatch('thin', rectangle([-reach, edgeAt(gauge, low)], [reach, edgeAt(gauge, high)]))]);
}

/** How high above and how low below the pins a lower misfit is hatched [mm]. */
const lowerReach = 24;

/** The misfits with their dimensions: one at the upper pin, else one across the clevis, where there is room for one; and one across the lower pins. */
export function misfitDimensions(
  stage: Stage,
  pen: Pen,
  misfits: readonly Misfit[],
  room: { half: number; row: number; alone: boolean },
): Part {
  const first = (place: Gauge['place']): Misfit | undefined => misfits.find(({ gauge }) => gauge.place === place);
  const [upper, clevis, lower] = [first('upper'), first('clevis'), first('lower')];
  return together(
    upper === undefined ? nothing : upperMisfit(stage, pen, upper, room.half),
    clevis === undefined || upper !== undefined ? nothing : clevisMisfit(stage, pen, clevis),
    lower === undefined ? nothing : lowerMisfit(stage, pen, lower, room),
    { items: [], says: misfits.map((misfit) => missSaid(stage, pen, misfit)) },
  );
}

function missSaid({ pins }: Stage, pen: Pen, { gauge }: Misfit): string {
  const { figure, second, word } = missLabel(gauge.finding, pen.system, pins.sign === -1);
  return `Misfit, ${titleOf(gauge.finding).toLowerCase()}: ${figure} (${second}), ${word}${gauge.sides === 2 ? ', both sides together' : ''}.`;
}

function misfitDimension({ gauge }: Misfit, from: Point, to: Point, along: Point, at: number): Dimension {
  const { finding, sides } = gauge;
  return {
    kind: 'dimension',
    role: 'misfit',
    finding: finding.id,
    from,
    to,
    along,
    at,
    sides,
    mmPerUnit: 1,
    label: null,
  };
}

function upperMisfit({ upper, pins }: Stage, pen: Pen, misfit: Misfit, half: number): Part {
  const { gauge, miss } = misfit;
  const reach = upper.clevisOuter.value / 2 + 16;
  const y = reach + onPaper(pen, 9);
  const [limit, worst] = [edgeAt(gauge, miss.limit), edgeAt(gauge, miss.worst)];
  const dimension = misfitDimension(misfit, [(upper.hook?.thickness.value ?? 0) / 2, limit], [reach, worst], [0, 1], y);
  const label = missLabel(gauge.finding, pen.system, pins.sign === -1);
  const left = y + onPaper(pen, 2.6);
  const { letters } = pen.sheet;
  const room = (half - left) / pen.perPaper;
  const { figure, word, size } = fittedMiss(label, letters.misfit, room);
  const small = Math.max(pen.sheet.least, Math.min(letters.word, room / widthOf(word, 1)));
  const block = size * 0.75 + letters.word * 1.25;
  const top = (limit + worst) / 2 + onPaper(pen, block / 2);
  const items = [
    dimension,
    lettering([left, top - onPaper(pen, size * 0.75)], figure, size, { tone: 'accent', weight: 700 }),
    lettering([left, top - onPaper(pen, block)], word, small, { tone: 'accent', weight: 500 }),
  ];
  return { items: showing(gauge.finding.id, items), says: [] };
}

/** Both ends of a tolerance where they fit at a good size, else the worse end, large [paper mm]. */
function fittedMiss(label: MissLabel, wanted: number, room: number): { figure: string; word: string; size: number } {
  const size = (figure: string): number => Math.min(wanted, room / widthOf(figure, 1));
  if (label.figure === label.worst || size(label.figure) >= 0.75 * wanted)
    return { ...label, size: size(label.figure) };
  return { figure: label.worst, word: `${label.word}, at most`, size: size(label.worst) };
}

function clevisMisfit({ upper }: Stage, pen: Pen, misfit: Misfit): Part {
  const { gauge, miss } = misfit;
  const top = upper.distance.value + 28;
  const [limit, worst] = [edgeAt(gauge, miss.limit), edgeAt(gauge, miss.worst)];
  const z = top + onPaper(pen, 5);
  const dimension = misfitDimension(misfit, [limit, top], [worst, top], [1, 0], -z);
  const left = Math.max(limit, worst) + onPaper(pen, tailLength + 1.5);
  const text = oneSideText(gauge.finding, pen.system);
  const label = lettering([left, z - onPaper(pen, pen.sheet.letters.word * 0.35)], text, pen.sheet.letters.word, {
    tone: 'accent',
    weight: 600,
  });
  const areas = gapAndTolerance(misfit, (from, to) => rectangle([from, top - 86], [to, top]));
  return { items: showing(gauge.finding.id, [...areas, dimension, label]), says: [] };
}

function lowerMisfit(stage: Stage, pen: Pen, misfit: Misfit, room: { row: number; alone: boolean }): Part {
  const { gauge, miss } = misfit;
  const [limit, worst] = [edgeAt(gauge, miss.limit), edgeAt(gauge, miss.worst)];
  const reach = stage.frame === null && stage.bar === null ? lowerReach : plateReach;
  const dimension = misfitDimension(misfit, [limit, -reach], [worst, -reach], [1, 0], -room.row);
  const short = isShort(Math.abs(worst - limit) / pen.perPaper);
  const right = Math.min(limit, worst) - onPaper(pen, (short ? tailLength : 0) + 1.5);
  const text = lowerText(stage, pen, misfit, room.alone);
  const label = lettering(
    [right, room.row - onPaper(pen, pen.sheet.letters.word * 0.35)],
    text,
    pen.sheet.letters.word,
    { tone: 'accent', weight: 600, anchor: 'end' },
  );
  const areas = gapAndTolerance(misfit, (from, to) => rectangle([from, -reach], [to, reach]));
  return { items: showing(gauge.finding.id, [...areas, dimension, label]), says: [] };
}

/** With an enlarged view beside it the share of one side is enough; alone it says everything. */
function lowerText({ pins }: Stage, pen: Pen, { gauge }: Misfit, alone: boolean): string {
  const { figure, word } = missLabel(gauge.finding, pen.system, pins.sign === -1);
  if (gauge.sides === 1) return alone ? `${figure} ${word}` : figure;
  const share = oneSideText(gauge.finding, pen.system);
  return alone ? `${share}: ${figure} ${word}` : share;
}
