import type { Answer } from '../engine/assess/index.ts';
import type { Setup } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
import { detailOf } from './details/detailOf.ts';
import type { DetailPlan } from './details/plan.ts';
import { placedDetail } from './details/placedDetail.ts';
import { ghostTractor } from './parts/ghost.ts';
import type { Pen } from './pen.ts';
import { onPaper } from './pen.ts';
import type { Bounds, Item, Scene } from './scene.ts';
import { sheets, type SheetFormat, type Sheet } from './sheet.ts';
import { stageOf, type Stage } from './stage.ts';
import { line } from './strokes.ts';
import { angles } from './view/angles.ts';
import { extentOf, type Extent } from './view/extent.ts';
import { barHeight, heading, headingHeight, noteLines, scaleBar } from './view/heading.ts';
import { heightsOf } from './view/figures.ts';
import { layoutOf, type Layout, type Surround } from './view/layout.ts';
import { holder, implement } from './view/machines.ts';
import { misfitsOf, type Misfit } from './misfit.ts';
import { misfitAreas, misfitDimensions } from './view/misfits.ts';
import { numbers } from './view/numbers.ts';
import { columnWidth, heightColumns, heightLevels, rowHeight, rowsOf, spanRows } from './view/ordinary.ts';
import { sectionMarks } from './view/sectionMarks.ts';
import { together, type Part } from './view/part.ts';
import { describe, noteOf, subtitleOf, titleOf, viewTitle } from './view/words.ts';

/** How a view is drawn. */
export interface ViewOptions {
  readonly system: UnitSystem;
  /** `desk` (820 px) unless given; `phone` is 390 px wide, `print` the width between the margins of Letter or A4, `printLow` the same in little height, `printHalf` half as wide. */
  readonly format?: SheetFormat;
}

/**
 * Draws where implement, coupler and tractor meet, seen from behind, to scale.
 *
 * Parts stand where the figures of the answer put them, at the middle of each range: y to the right as the driver faces
 * forward, z up, origin midway between the lower pins. Where a rigid frame holds the upper pin, upper points stand at
 * their true distance √(e² + h²) from the lower pins (see the engine's mast check), so that the misfit is a true length.
 * What nobody measured is dashed and marked. A finding that misses and has a place in the view is shown by its margin; one
 * that has none is not drawn.
 *
 * @param setup the setup that was judged [record]
 * @param answer its answer [record]
 * @param options units and format [names]
 * @returns the drawing [mm]
 * @example sceneToSvg(rearView(setup, answer, { system: 'us' }))
 */
export function rearView(setup: Setup, answer: Answer, options: ViewOptions): Scene {
  const sheet = sheets[options.format ?? 'desk'];
  const stage = stageOf(setup, answer);
  const misfits = misfitsOf(stage);
  const extent = extentOf(stage);
  const first = laidOut(sheet, stage, extent, misfits, true);
  const detail = detailOf(stage, misfits, first.scale);
  const layout = detail === null ? laidOut(sheet, stage, extent, misfits, false) : first;
  const pen: Pen = { sheet, system: options.system, perPaper: layout.scale };
  const main = mainView(stage, pen, layout, extent, { misfits, detail });
  const enlarged = detail === null || layout.detail === null ? null : placedDetail(detail, pen, layout.detail);
  const parts = enlarged === null ? main : together(main, enlarged, { items: [separator(sheet, layout)], says: [] });
  const title = titleOf(stage);
  return {
    title,
    subtitle: subtitleOf(stage),
    bounds: layout.bounds,
    scale: layout.scale,
    items: parts.items,
    description: describe(title, stage, parts.says),
  };
}

function laidOut(sheet: Sheet, stage: Stage, extent: Extent, misfits: readonly Misfit[], hasDetail: boolean): Layout {
  return layoutOf(sheet, extent, surroundOf(sheet, stage, misfits, hasDetail), hasDetail);
}

function surroundOf(sheet: Sheet, stage: Stage, misfits: readonly Misfit[], hasDetail: boolean): Surround {
  const width = sheet.width - (hasDetail && sheet.beside > 0 ? sheet.beside + 5 : 0);
  const columns = sheet.stacked ? heightsOf(stage).length : 0;
  const lines = noteLines(sheet, noteOf(stage), width).length;
  return {
    left: sheet.margin + (columns === 0 ? 0 : 6 + (columns - 1) * columnWidth + sheet.letters.dimension + 1),
    right: sheet.margin + 3,
    above: headingHeight(sheet, lines) + 11,
    below: misfitRow(misfits) + rowsOf(stage) * rowHeight + barHeight(sheet) + 4,
  };
}

function misfitRow(misfits: readonly Misfit[]): number {
  return misfits.some(({ gauge }) => gauge.place === 'lower') ? 9.5 : 0;
}

/** The balloon keeps out of the way of a dimension that rises above the pin. */
function isTooLow(misfits: readonly Misfit[]): boolean {
  return misfits.some(({ gauge }) => gauge.place === 'upper' && gauge.finding.side === 'low');
}

interface Shown {
  readonly misfits: readonly Misfit[];
  readonly detail: DetailPlan | null;
}

function mainView(stage: Stage, pen: Pen, layout: Layout, extent: Extent, { misfits, detail }: Shown): Part {
  const { panel } = layout;
  const has = (...places: string[]): boolean => misfits.some(({ gauge }) => places.includes(gauge.place));
  const faults = { upper: has('upper', 'clevis', 'topSeat', 'topBore'), lower: has('lower', 'seat', 'bore') };
  const note = noteLines(pen.sheet, noteOf(stage), (panel.right - panel.left) / pen.perPaper);
  const row = extent.bottom - onPaper(pen, 6);
  const firstRow = extent.bottom - onPaper(pen, 8 + misfitRow(misfits));
  const bar = scaleBar(pen, panel, 1);
  const heights = pen.sheet.stacked ? heightColumns(stage, pen, extent.half) : heightLevels(stage, pen, layout);
  return together(
    drawn(ghostTractor(extent.half + onPaper(pen, 3.6), ghostBox(pen, layout, note.length, extent))),
    drawn(holder(stage)),
    drawn(misfitAreas(stage, pen, misfits)),
    drawn([...implement(stage, extent.half - 8, faults), centreLine(pen, extent)]),
    drawn(detail?.isSection === true ? sectionMarks(stage, pen) : []),
    heights,
    angles(stage, pen),
    spanRows(stage, pen, firstRow),
    misfitDimensions(stage, pen, misfits, { half: layout.panel.right - onPaper(pen, 2), row, alone: detail === null }),
    drawn(numbers(stage, pen, extent.half, has('clevis') || isTooLow(misfits))),
    drawn(heading(pen, panel, viewTitle(stage), note)),
    { items: bar.items, says: [`The scale bar is ${bar.label} long.`, ...scaleSaid(pen)] },
  );
}

/** A printed sheet has a scale of its own. */
function scaleSaid({ sheet, perPaper }: Pen): string[] {
  return sheet.scales === null ? [] : [`Printed ${sheet.width} mm wide the scale is 1:${perPaper}.`];
}

function drawn(items: readonly Item[]): Part {
  return { items, says: [] };
}

/** The tractor keeps clear of the heading and of the rows of dimensions. */
function ghostBox({ sheet, perPaper }: Pen, { panel }: Layout, lines: number, extent: Extent): Bounds {
  const margin = sheet.margin * perPaper;
  return {
    left: panel.left + margin,
    right: panel.right - margin,
    top: panel.top - (headingHeight(sheet, lines) + 1) * perPaper,
    bottom: Math.max(extent.bottom, -130),
  };
}

function centreLine(pen: Pen, extent: Extent): Item {
  return line('centre', [0, extent.bottom - onPaper(pen, 4)], [0, extent.top + onPaper(pen, 8)]);
}

function separator(sheet: Sheet, { detail, panel, scale }: Layout): Item {
  const margin = sheet.margin * scale;
  if (detail === null || sheet.beside === 0)
    return line('ghost', [panel.left, panel.bottom], [panel.right, panel.bottom]);
  const y = panel.right + 2 * scale;
  return line('ghost', [y, panel.bottom + margin], [y, panel.top - margin]);
}
