import type { Station } from '../../engine/lift/index.ts';
import type { ShaftStation } from '../../engine/shaft/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Bounds, Circle, Dimension, Item, Point, Scene } from '../scene.ts';
import type { Sheet } from '../sheet.ts';
import { line } from '../strokes.ts';
import { barHeight, heading, headingHeight, scaleBar } from '../view/heading.ts';
import { lettering } from '../view/part.ts';
import { extentOf } from '../side/extent.ts';
import { heightText, shortText } from '../side/readings.ts';
import { stationOf } from '../side/heights.ts';
import { sideSheet, type ViewPlan } from '../side/plan.ts';
import type { SideLayout } from '../side/sideLayout.ts';
import { stationAt, type SideStage } from '../side/sideStage.ts';
import { heightSentence, machinesOf, scaleSaid } from '../side/words.ts';
import { wrappedFigures } from '../side/wrapping.ts';
import type { Driven } from './driven.ts';
import { sizes } from './parts.ts';
import { lengthText, shaftAlways, shaftSentencesAt } from './shaftWords.ts';
import {
  halfsOf,
  implementAbove,
  linksAbove,
  postsAbove,
  shaftAbove,
  topShaftOf,
  tractorAbove,
  type Halfs,
  type TopShaft,
} from './topParts.ts';

const note = 'Tractor to the left, its right side up. Hatched: where shift and sway take the shaft.';

const seenSentence = `${note} Bodies for place only. Dashed parts were not measured, or pass over the shaft.`;

/** Where the side view stands: the top view has its scale, and its left and right edge. */
export type UnderView = Pick<SideLayout, 'scale' | 'box' | 'bounds'>;

/** What a top view is drawn with. */
interface Setting {
  readonly stage: SideStage;
  readonly driven: Driven;
  readonly pen: Pen;
  readonly halfs: Halfs;
  readonly box: Bounds;
  readonly bounds: Bounds;
  readonly reach: number;
}

/** Opens the top view of a drive, so wide and at such a scale that it stands under the side view. */
export function openTop(
  stage: SideStage,
  driven: Driven,
  plan: ViewPlan,
  under: UnderView,
): (station: number) => Scene {
  const { system } = plan;
  const sheet = narrowed(sideSheet(plan.format), under);
  const pen: Pen = { sheet, system, perPaper: under.scale };
  const rows = wrappedFigures(note, sheet.letters.note, sheet.width - 2 * sheet.margin);
  const halfs = halfsOf(stage);
  const box = boxOf(stage, driven, pen, under);
  const readings = Math.max(...driven.shaft.stations.map((_, i) => readingLines(stage, driven, pen, i).length));
  const above = headingHeight(sheet, rows.length) + readings * sheet.letters.dimension * 1.25 + 3;
  const bounds = {
    left: under.bounds.left,
    right: under.bounds.right,
    top: box.top + onPaper(pen, above),
    bottom: box.bottom - onPaper(pen, barHeight(sheet) + 2),
  };
  const setting: Setting = { stage, driven, pen, halfs, box, bounds, reach: extentOf(stage).reach };
  const bar = scaleBar(pen, bounds, 1);
  const still = [
    ...heading(pen, bounds, 'Top view', rows),
    ...bar.items,
    line('centre', [box.left, 0], [box.right, 0]),
    ...tractorAbove(stage, halfs, box),
  ];
  const title = `Top view: ${machinesOf(stage)}`;
  const always = [...alwaysSaid(setting), ...scaleSaid(pen, bar.label), seenSentence];
  return (asked) => {
    const index = stationOf(stage.sweep, asked);
    const [here, at] = [stationAt(stage, index), driven.shaft.stations[index] as ShaftStation];
    return {
      title,
      subtitle: heightSentence(stage, index, system),
      bounds,
      scale: under.scale,
      items: [...still, ...movingItems(setting, here, at), ...readingItems(setting, index, rows.length)],
      description: [
        `${title}.`,
        heightSentence(stage, index, system),
        ...asideSentences(driven, system),
        ...shaftSentencesAt(driven, at, system),
        ...always,
      ].join(' '),
    };
  };
}

/** The sheet as wide as the side view stands on it. */
function narrowed(sheet: Sheet, { bounds, scale }: UnderView): Sheet {
  return { ...sheet, width: (bounds.right - bounds.left) / scale };
}

/** How far a tyre is drawn outward [mm]. */
const tyre = 110;

function boxOf(stage: SideStage, { shaft }: Driven, pen: Pen, { box }: UnderView): Bounds {
  const halfs = halfsOf(stage);
  const swing = shaft.stations.flatMap(({ leftmost, rightmost }) => [
    shaft.stubAside + leftmost,
    shaft.stubAside + rightmost,
  ]);
  const half = Math.max(
    halfs.pins + 110,
    halfs.balls + 60,
    (halfs.tyres?.value ?? 0) / 2 + tyre,
    ...swing.map((aside) => Math.abs(aside) + onPaper(pen, 10)),
  );
  return { left: box.left, right: box.right, top: half, bottom: -half };
}

function movingItems(setting: Setting, here: Station, at: ShaftStation): Item[] {
  const { stage, driven, pen, halfs, reach } = setting;
  const top = topShaftOf(stage, driven.shaft, at);
  const posts = postsAbove(stage, here, at);
  return [
    ...implementAbove(halfs, here, top, reach),
    ...linksAbove(stage, halfs, here),
    ...(posts === null ? [] : posts.items),
    ...shaftAbove(driven, at, top).map((item) => named(item, top)),
    ...(posts === null ? [] : openingSpan(pen, posts)),
    ...asideSpans(pen, driven, top),
    ...tyreSpan(setting),
  ];
}

/** The crosses stand on computed points. */
function named(item: Item, { tractor, middle }: TopShaft): Item {
  if (item.kind !== 'circle' || item.point !== undefined) return item;
  const isAt = ([x, y]: Point): boolean => item.centre[0] === x && item.centre[1] === y;
  const point: Circle['point'] = isAt(tractor) ? 'tractorCross' : isAt(middle) ? 'implementCross' : undefined;
  return point === undefined ? item : { ...item, point };
}

function across(from: Point, to: Point, at: number): Dimension {
  return { kind: 'dimension', role: 'dimension', from, to, along: [0, 1], at, label: null, sides: 1, mmPerUnit: 1 };
}

/** A length beside its dimension line, at a height of its own. */
function beside(pen: Pen, at: Point, mm: number, anchor: 'start' | 'end' = 'start'): Item {
  const { note: size } = pen.sheet.letters;
  const off = onPaper(pen, anchor === 'start' ? 1.4 : -1.4);
  return lettering([at[0] + off, at[1] - onPaper(pen, size * 0.34)], shortText(Math.abs(mm), pen.system).text, size, {
    anchor,
  });
}

function tyreSpan({ pen, halfs, box }: Setting): Item[] {
  if (halfs.tyres === null) return [];
  const half = halfs.tyres.value / 2;
  const x = box.left + onPaper(pen, 3);
  return [across([0, -half], [0, half], x), beside(pen, [x, halfs.pivots + (half - halfs.pivots) * 0.62], 2 * half)];
}

function openingSpan(pen: Pen, { x, half }: { x: number; half: number }): Item[] {
  const at = x + onPaper(pen, 5);
  return [across([x, -half], [x, half], at), beside(pen, [at, -half * 0.6], 2 * half)];
}

/** Below this two joints are in line [mm]. */
const inLine = 0.5;

/** How far aside the joint at the implement stands from that at the tractor, and over what shift and sway take it. */
function asideSpans(pen: Pen, { shaft }: Driven, top: TopShaft): Item[] {
  const { tractor, middle, leftmost, rightmost } = top;
  const offset = middle[1] - tractor[1];
  const swing = rightmost[1] - leftmost[1];
  const x = middle[0] + sizes.stub + onPaper(pen, 4);
  const far = x + onPaper(pen, 15);
  const foot: Point = [middle[0], tractor[1]];
  const end = Math.max(rightmost[1], middle[1]) + onPaper(pen, 7);
  return [
    ...(Math.abs(offset) < inLine
      ? []
      : [across(foot, middle, x), beside(pen, [x, (foot[1] + middle[1]) / 2], offset)]),
    ...(swing < inLine ? [] : [across(leftmost, rightmost, far), beside(pen, [far, end], swing, 'end')]),
    ...(shaft.stubAside === 0 ? [] : [line('centre', tractor, foot)]),
  ];
}

function asideSentences({ shaft }: Driven, system: UnitSystem): string[] {
  const [first] = shaft.stations;
  if (first === undefined) return [];
  const spread = `It goes from ${sided(first.leftmost, system)} to ${sided(first.rightmost, system)} with shift and sway.`;
  return [
    `The joint at the implement stands ${sided(shaft.inputAside - shaft.stubAside, system)} of that at the tractor.`.replace(
      'in line of',
      'in line with',
    ),
    ...(first.rightmost - first.leftmost < inLine ? [] : [spread]),
  ];
}

/** So far to one side, seen as one sits on the tractor. */
function sided(mm: number, system: UnitSystem): string {
  if (Math.abs(mm) < inLine) return 'in line';
  return `${lengthText(Math.abs(mm), system)} to the ${mm > 0 ? 'right' : 'left'}`;
}

function readingLines(stage: SideStage, { shaft }: Driven, { sheet, system }: Pen, index: number): string[] {
  const [first] = shaft.stations;
  const offset = sided(shaft.inputAside - shaft.stubAside, system);
  const swing =
    first === undefined || first.rightmost - first.leftmost < inLine
      ? ''
      : `, swings ${lengthText(first.rightmost - first.leftmost, system)}`;
  const text = `${heightText(stationAt(stage, index).ballHeight, system)}: rear joint ${offset}${swing}`;
  return wrappedFigures(text, sheet.letters.dimension, sheet.width - 2 * sheet.margin);
}

function readingItems({ stage, driven, pen, bounds }: Setting, index: number, notes: number): Item[] {
  const { sheet } = pen;
  const size = sheet.letters.dimension;
  const top = bounds.top - onPaper(pen, headingHeight(sheet, notes));
  return readingLines(stage, driven, pen, index).map((text, i) =>
    lettering([bounds.left + onPaper(pen, sheet.margin), top - onPaper(pen, i * size * 1.25 + size)], text, size, {
      weight: 600,
    }),
  );
}

function alwaysSaid({ stage, driven, halfs, pen }: Setting): string[] {
  const { window } = driven.shaft;
  const { system } = pen;
  return [
    ...(halfs.tyres === null ? [] : [`Between the tyres: ${lengthText(halfs.tyres.value, system)}.`]),
    ...(window === null ? [] : [`Opening of the coupler: ${lengthText(window.width, system)} wide.`]),
    ...shaftAlways(stage.setup, driven, system),
  ];
}
