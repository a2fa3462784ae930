import type { BalanceStation } from '../../engine/balance/index.ts';
import { widthOf } from '../lettering.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Item, Point, Tone } from '../scene.ts';
import { level } from '../shaft/drawingRows.ts';
import { loadMark } from '../side/parts/loadMark.ts';
import { solidPin } from '../side/parts/bars.ts';
import { shortText } from '../side/readings.ts';
import { body, hatch, line, outline, rectangle } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { massOf, spareOf, stateWords, type MassText } from './balanceWords.ts';
import { armOf, blockSide, frontStateAt, isMissing, rearLoad } from './masses.ts';
import { paper } from './seeSawLayout.ts';
import { carried, columnOf, onBeam, type SeeSaw } from './seeSawStill.ts';

/** What of a see-saw moves with the lift: what hangs behind, what the front axle carries, and the figures. */
export function movingItems(seeSaw: SeeSaw, here: BalanceStation, ballBehind: number | null): Item[] {
  const isTipped = here.front <= 0;
  const onTop = [...ballMark(seeSaw, ballBehind), ...centreMark(seeSaw, here)].map((item) => carried(item, isTipped));
  return [
    ...gauge(seeSaw, here),
    ...hung(seeSaw, here, isTipped),
    ...onTop,
    ...lengths(seeSaw, here),
    ...figures(seeSaw, here),
  ];
}

/** What hangs behind, as a block on a rod under the beam. */
function hung({ pen, balance, layout: { under } }: SeeSaw, here: BalanceStation, isTipped: boolean): Item[] {
  const x = armOf(balance, here);
  const side = blockSide(balance.behind);
  const [, hook] = onBeam([x, under], isTipped);
  const top = hook - onPaper(pen, paper.rod);
  return [
    line('thin', [x, hook], [x, top]),
    body('heavy', rectangle([x - side / 2, top - side], [x + side / 2, top])),
    ...loadMark('thin', [x, top - side / 2], onPaper(pen, 1.5)),
  ];
}

/** The balls on the beam. */
function ballMark({ pen, layout: { deck } }: SeeSaw, behind: number | null): Item[] {
  if (behind === null) return [];
  const { note } = pen.sheet.letters;
  const z = deck + onPaper(pen, 1);
  return [
    solidPin('thin', [behind, z], onPaper(pen, 1)),
    lettering([behind, z + onPaper(pen, 2)], 'balls', note, { tone: 'second', anchor: 'middle' }),
  ];
}

/** The centre of everything, in the beam. */
function centreMark({ pen, layout: { under, deck } }: SeeSaw, { ahead }: BalanceStation): Item[] {
  return loadMark('thin', [-ahead, (under + deck) / 2], onPaper(pen, 1.5));
}

/** The most that the column shows [kg]. */
function gaugeMost({ balance: { stations, frontFree } }: SeeSaw): number {
  return Math.max(frontFree, ...stations.flatMap(({ front, wanted }) => [front, wanted])) * 1.06;
}

/** The load of the front axle as the height of a column, the level that is wanted, and what is missing up to it hatched. */
function gauge(seeSaw: SeeSaw, here: BalanceStation): Item[] {
  const { pen, balance, layout } = seeSaw;
  const column = columnOf(seeSaw);
  const [[left], [right]] = [column[0] as Point, column[1] as Point];
  const heightOf = (kg: number): number => (Math.max(0, kg) / gaugeMost(seeSaw)) * layout.under;
  const [carries, wanted] = [heightOf(here.front), heightOf(here.wanted)];
  const state = frontStateAt(balance, here);
  const isShort = isMissing(state);
  const mark = isShort ? 'misfit' : 'thin';
  const missing = rectangle([left, carries], [right, wanted]);
  return [
    ...(carries > 0 ? [{ ...body('thin', rectangle([left, 0], [right, carries])), fill: 'line' as const }] : []),
    ...(isShort ? [hatch('misfit', missing), outline('misfit', missing)] : []),
    line(mark, [left - onPaper(pen, 1.6), wanted], [right, wanted]),
    ...beside(seeSaw, wanted, left - onPaper(pen, 2.2), {
      figure: massOf(here.wanted, pen.system, 'up').text,
      words: 'wanted',
      tone: 'ink',
    }),
    ...beside(seeSaw, isShort ? (carries + wanted) / 2 : carries, right + onPaper(pen, 1.6), {
      figure: spareOf(here, pen.system),
      words: stateWords[state],
      tone: isShort ? 'accent' : 'ink',
    }),
  ];
}

interface Told {
  readonly figure: string;
  readonly words: string;
  readonly tone: Tone;
}

/** A figure with a word under it at a level beside the column, but between ground and beam. */
function beside({ pen, balance, layout }: SeeSaw, wanted: number, x: number, { figure, words, tone }: Told): Item[] {
  const { note } = pen.sheet.letters;
  const row = onPaper(pen, note * 1.05);
  const low = onPaper(pen, 1.5);
  const high = layout.under - onPaper(pen, note * 0.75 + 1) - row;
  const z = Math.max(low, Math.min(high, wanted - onPaper(pen, note * 0.35) - row / 2));
  const anchor = x < -balance.wheelbase ? 'end' : 'start';
  return [
    lettering([x, z + row], figure, note, { tone, weight: 600, anchor }),
    lettering([x, z], words, note, { tone: tone === 'accent' ? tone : 'second', anchor }),
  ];
}

/** Wheelbase, overhang and arm along the ground, each where its label has room. */
function lengths(seeSaw: SeeSaw, here: BalanceStation): Item[] {
  const { balance } = seeSaw;
  const front = -balance.wheelbase;
  const arm = armOf(balance, here);
  const aheads = seeSaw.blocks.filter(({ what }) => what === 'ballast' || what === 'frontWeights');
  const furthest = Math.min(front, ...aheads.map(({ ahead }) => -ahead));
  return [
    ...span(seeSaw, furthest, front),
    ...span(seeSaw, front, 0),
    ...(arm > 0 ? span(seeSaw, 0, arm) : span(seeSaw, arm, 0)),
  ];
}

/** A length in letters of the usual size or smaller, as there is room; with the other unit where there is room for both. */
function span({ pen, layout: { rows, scale } }: SeeSaw, from: number, to: number): Item[] {
  const { dimension, note, second: small } = pen.sheet.letters;
  const { text, second } = shortText(to - from, pen.system);
  const room = (to - from) / scale - 4;
  const size = [dimension, note].find((one) => widthOf(text, one) * 0.95 <= room);
  const item = level(pen, [from, to], rows.dimension, text);
  if (size === undefined || item.label === null) return [];
  const both = widthOf(text, size) * 0.95 + widthOf(second, small) + small / 2;
  const isBoth = both <= room && !pen.sheet.narrow;
  const other = isBoth ? { second: { text: second, size: small } } : {};
  return [{ ...item, label: { ...item.label, size, ...other } }];
}

interface Column {
  readonly at: number;
  readonly name: string;
  readonly figure: MassText;
  readonly limit: string | null;
  readonly isBad: boolean;
}

/** Names and figures under both axles and under what hangs behind. */
function figures(seeSaw: SeeSaw, here: BalanceStation): Item[] {
  const { pen, balance } = seeSaw;
  const columns = columnsAt(seeSaw, here);
  const halves = columns.map((column) => halfWidth(pen, column));
  const [front = 0, rear = 0, behind = 0] = halves;
  const gap = onPaper(pen, 2);
  const isBack = (columns[2]?.at ?? 0) >= 0;
  const edge = seeSaw.layout.right - onPaper(pen, pen.sheet.margin) - behind;
  const places = [
    Math.min(-balance.wheelbase, -rear - gap - front),
    0,
    Math.min(edge, Math.max(isBack ? (columns[2]?.at ?? 0) : 0, rear + gap + behind)),
  ];
  return columns.flatMap((column, i) => columnItems(seeSaw, column, places[i] as number));
}

function columnsAt({ pen: { system }, balance }: SeeSaw, here: BalanceStation): Column[] {
  const isLifted = here.front <= 0;
  const over = (axle: 'front' | 'rear'): string | null => {
    const limit = balance.permitted[axle];
    return limit === null || here[axle] <= limit ? null : `limit ${massOf(limit, system, 'down').text}`;
  };
  const [front, rear] = [over('front'), over('rear')];
  const off = { text: 'off the ground', second: '' };
  return [
    {
      at: -balance.wheelbase,
      name: 'front axle',
      figure: isLifted ? off : massOf(here.front, system, 'down'),
      limit: front,
      isBad: isLifted || front !== null,
    },
    {
      at: 0,
      name: 'rear axle',
      figure: massOf(rearLoad(here), system, 'up'),
      limit: rear,
      isBad: rear !== null,
    },
    {
      at: armOf(balance, here),
      name: 'hung behind',
      figure: massOf(balance.behind, system, 'nearest'),
      limit: null,
      isBad: false,
    },
  ];
}

function secondOf(pen: Pen, { figure }: Column): { text: string; size: number } | null {
  const { letters, narrow } = pen.sheet;
  return narrow || figure.second === '' ? null : { text: figure.second, size: letters.second };
}

function halfWidth(pen: Pen, column: Column): number {
  const { letters } = pen.sheet;
  const second = secondOf(pen, column);
  const figure =
    widthOf(column.figure.text, letters.dimension) +
    (second === null ? 0 : widthOf(second.text, second.size) + second.size / 2);
  const widths = [figure, widthOf(column.name, letters.note), widthOf(column.limit ?? '', letters.note)];
  return (onPaper(pen, Math.max(...widths)) * 0.95) / 2;
}

function columnItems({ pen, layout: { rows } }: SeeSaw, column: Column, x: number): Item[] {
  const { letters } = pen.sheet;
  const second = secondOf(pen, column);
  const tone: Tone = column.isBad ? 'accent' : 'ink';
  return [
    lettering([x, rows.name], column.name, letters.note, { tone: 'second', anchor: 'middle' }),
    lettering([x, rows.figure], column.figure.text, letters.dimension, {
      tone,
      weight: 600,
      anchor: 'middle',
      ...(second === null ? {} : { second }),
    }),
    ...(column.limit === null
      ? []
      : [lettering([x, rows.limit], column.limit, letters.note, { tone: 'accent', anchor: 'middle' })]),
  ];
}
