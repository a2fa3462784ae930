import type { Answer } from '../../engine/assess/index.ts';
import type { BalanceStation, BalanceSweep } from '../../engine/balance/index.ts';
import type { Setup } from '../../records/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { widthOf } from '../lettering.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Item, Scene } from '../scene.ts';
import type { SheetFormat, Sheet } from '../sheet.ts';
import { shown } from '../shown.ts';
import { loadMark } from '../side/parts/loadMark.ts';
import { sideSheet } from '../side/plan.ts';
import { heightText } from '../side/readings.ts';
import { machinesOf, scaleSaid } from '../side/words.ts';
import { wrappedFigures } from '../side/wrapping.ts';
import { heading, headingHeight, scaleBar } from '../view/heading.ts';
import { lettering } from '../view/part.ts';
import { alwaysSaid, drawnNote, heightSentences, hungSentence, readingText } from './balanceWords.ts';
import { blocksOf } from './blocks.ts';
import { frontStateAt, isMissing, standingMasses } from './masses.ts';
import { seeSawLayout, tipSlope } from './seeSawLayout.ts';
import { movingItems } from './seeSawMoving.ts';
import { standingLabels } from './seeSawLabels.ts';
import { stillItems, type SeeSaw } from './seeSawStill.ts';
import { wheelBallast } from './wheelBallast.ts';

/** What a see-saw is drawn from, in what units and for what sheet. */
interface SeeSawPlan {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly system: UnitSystem;
  readonly format: SheetFormat;
}

const title = 'Axle loads as a see-saw';

/** A wheel that nobody measured is drawn of this radius [mm]. */
const tyreForPlace = 450;

/** Opens the axle loads as a beam on the rear axle; all that stays the same through the lift is made once. */
export function openSeeSaw(plan: SeeSawPlan, balance: BalanceSweep): (station: number) => Scene {
  const { setup, answer, system } = plan;
  const seeSaw = seeSawOf(plan, balance);
  const { pen, layout } = seeSaw;
  const { sheet } = pen;
  const width = sheet.width - 2 * sheet.margin;
  const note = wrappedFigures(drawnNote(balance, system), sheet.letters.note, width);
  const readings = balance.stations.map((here) =>
    wrappedFigures(readingText(balance, here, system), sheet.letters.dimension, width),
  );
  const standing = [false, ...(balance.wheelsLift ? [true] : [])].map((isTipped) =>
    standingItems(seeSaw, answer, isTipped),
  );
  const rows = Math.max(...readings.map((lines) => lines.length));
  const above = headingHeight(sheet, note.length) + rows * readingRow(sheet) + 3;
  const { left, right, bottom } = layout;
  const top = Math.max(...standing.map((one) => one.top)) + onPaper(pen, above);
  const bounds: Bounds = { left, right, bottom, top };
  const bar = scaleBar(pen, bounds, 1);
  const around = [...heading(pen, bounds, title, note), ...bar.items, ...legend(pen, bounds)];
  const says = [
    ...alwaysSaid(setup, answer, balance, system),
    drawnNote(balance, system),
    ...scaleSaid(pen, bar.label),
  ];
  const name = `${title}: ${machinesOf({ setup })}`;
  return (asked) => {
    const index = stationIn(balance, asked);
    const here = balance.stations[index] as BalanceStation;
    const tipped = here.front <= 0 ? 1 : 0;
    const subtitle = `Balls at ${heightText(here.ballHeight, system)}.`;
    return {
      title: name,
      subtitle,
      bounds,
      scale: layout.scale,
      items: [
        ...around,
        ...(standing[tipped]?.items ?? []),
        ...movingItems(seeSaw, here, answer.sweep?.stations[index]?.ball[0] ?? null),
        ...readingItems(seeSaw, bounds, note.length, {
          lines: readings[index] as string[],
          isBad: isMissing(frontStateAt(balance, here)),
        }),
      ],
      description: [
        `${name}.`,
        subtitle,
        ...heightSentences(balance, here, system),
        hungSentence(balance, here, system),
        ...says,
      ].join(' '),
    };
  };
}

/** A station that there is; half-way up where none is asked for. */
function stationIn({ stations }: BalanceSweep, asked: number): number {
  const last = stations.length - 1;
  return Number.isFinite(asked) ? Math.min(last, Math.max(0, Math.round(asked))) : Math.floor(last / 2);
}

function seeSawOf({ setup, answer, system, format }: SeeSawPlan, balance: BalanceSweep): SeeSaw {
  const sheet = sideSheet(format);
  const blocks = blocksOf(standingMasses(answer, balance), balance.ballast, balance.wheelbase);
  const tyre = shown(answer, 'tractor.tyreRadius', tyreForPlace);
  const layout = seeSawLayout(sheet, balance, blocks, tyre.value);
  const pen: Pen = { sheet, system, perPaper: layout.scale };
  const onWheel = wheelBallast(setup, answer, [0, layout.deck + tyre.value], tyre.value);
  return { pen, balance, layout, blocks, tyre, onWheel };
}

/** What stands, level or tipped, with its labels, and how high it reaches. */
function standingItems(seeSaw: SeeSaw, answer: Answer, isTipped: boolean): { items: Item[]; top: number } {
  const { layout, tyre, blocks, balance } = seeSaw;
  const labels = standingLabels(seeSaw, answer, isTipped);
  const raised = isTipped ? (balance.wheelbase + tyre.value) * tipSlope : 0;
  const tops = [2 * tyre.value, ...blocks.map(({ foot, side }) => foot + side)].map((z) => layout.deck + z + raised);
  return { items: [...stillItems(seeSaw, isTipped), ...labels.items], top: Math.max(labels.top, ...tops) };
}

function readingRow({ letters }: Sheet): number {
  return letters.dimension * 1.25;
}

function readingItems(
  { pen }: SeeSaw,
  bounds: Bounds,
  notes: number,
  { lines, isBad }: { readonly lines: readonly string[]; readonly isBad: boolean },
): Item[] {
  const { sheet } = pen;
  const size = sheet.letters.dimension;
  const top = bounds.top - onPaper(pen, headingHeight(sheet, notes));
  return lines.map((text, i) =>
    lettering(
      [bounds.left + onPaper(pen, sheet.margin), top - onPaper(pen, i * readingRow(sheet) + size)],
      text,
      size,
      { weight: 600, tone: isBad ? 'accent' : 'ink' },
    ),
  );
}

/** What the sign in the beam is, at the bottom right. */
function legend(pen: Pen, bounds: Bounds): Item[] {
  const { letters, margin } = pen.sheet;
  const z = bounds.bottom + onPaper(pen, margin);
  const right = bounds.right - onPaper(pen, margin);
  const text = 'weight acts here';
  return [
    lettering([right, z], text, letters.note, { tone: 'second', anchor: 'end' }),
    ...loadMark(
      'thin',
      [right - onPaper(pen, widthOf(text, letters.note) * 0.92 + 2.4), z + onPaper(pen, letters.note * 0.33)],
      onPaper(pen, 1.5),
    ),
  ];
}
