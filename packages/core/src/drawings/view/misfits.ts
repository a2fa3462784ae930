import { tailLength, isShort } from '../dimensionParts.ts';
import { edgeAt, gaugeOf, type Gauge } from '../gauge.ts';
import { widthOf } from '../lettering.ts';
import { missOfFinding, type Miss } from '../miss.ts';
import { missLabel, oneSideText } from '../missWords.ts';
import { onPaper, type Pen } from '../pen.ts';
import { plateReach } from '../parts/pins.ts';
import type { Dimension, Item, Point } from '../scene.ts';
import { isOnStage, type Stage } from '../stage.ts';
import { hatch, mirrored, rectangle } from '../strokes.ts';
import { lettering, nothing, showing, together, type Part } from './part.ts';

/** A misfit that has its place in the view. */
export interface Misfit {
  readonly gauge: Gauge;
  readonly miss: Miss;
}

/** Misfits of the meeting that is drawn, the lead finding first; only those that agree with what is drawn. */
export function misfitsOf(stage: Stage): Misfit[] {
  const { findings, lead } = stage.answer;
  const ordered = lead === null ? findings : [lead, ...findings.filter(({ id }) => id !== lead.id)];
  return ordered.flatMap((finding) => {
    const miss = isOnStage(stage, finding) ? missOfFinding(finding) : null;
    const gauge = miss === null ? null : gaugeOf(stage, finding);
    return miss === null || gauge === null ? [] : [{ gauge, miss }];
  });
}

/** Areas between where an edge may be at most and where it is: the gap to close, then the tolerance of what was measured. */
function gapAndTolerance({ gauge, miss }: Misfit, band: (from: number, to: number) => Point[]): Item[] {
  const [limit, best, worst] = [miss.limit, miss.best, miss.worst].map((quantity) => edgeAt(gauge, quantity)) as [
    number,
    number,
    number,
  ];
  const gap = best === limit ? [] : [hatch('misfit', band(limit, best))];
  const tolerance = worst === best ? [] : [hatch('thin', band(best, worst), true)];
  return [...gap, ...tolerance].flatMap((area) =>
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

/** The misfits with their dimensions: one at the upper pin, one across the clevis, one across the lower pins. */
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
    clevis === undefined ? nothing : clevisMisfit(stage, pen, clevis),
    lower === undefined ? nothing : lowerMisfit(stage, pen, lower, room),
    { items: [], says: misfits.map((misfit) => missSaid(stage, pen, misfit)) },
  );
}

function missSaid({ pins }: Stage, pen: Pen, { gauge }: Misfit): string {
  const { figure, second, word } = missLabel(gauge.finding, pen.system, pins.sign === -1);
  return `Misfit: ${figure} (${second}), ${word}${gauge.sides === 2 ? ', both sides together' : ''}.`;
}

function misfitDimension({ gauge, miss }: Misfit, from: Point, to: Point, along: Point, at: number): Dimension {
  void miss;
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
  const size = Math.min(letters.misfit, (half - left) / pen.perPaper / widthOf(label.figure, 1));
  const block = size * 0.75 + letters.word * 1.25;
  const top = (limit + worst) / 2 + onPaper(pen, block / 2);
  const items = [
    dimension,
    lettering([left, top - onPaper(pen, size * 0.75)], label.figure, size, { tone: 'accent', weight: 700 }),
    lettering([left, top - onPaper(pen, block)], label.word, letters.word, { tone: 'accent', weight: 500 }),
  ];
  return { items: showing(gauge.finding.id, items), says: [] };
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
