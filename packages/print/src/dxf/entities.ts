import {
  balloonParts,
  dimensionParts,
  hatchLines,
  scaleBarParts,
  type Balloon,
  type Dimension,
  type Hatch,
  type Item,
  type Lettering,
  type Point,
  type ScaleBar,
} from '@hitchwright/core/drawings';
import type { DxfSheet } from './dxfSheet.ts';
import { layerOf } from './layers.ts';
import { slantedLabel } from './slantedLabel.ts';

/** Draws an item on the layer of its kind. */
export function drawItem(sheet: DxfSheet, item: Item): void {
  const layer = layerOf(item);
  switch (item.kind) {
    case 'stroke':
      return sheet.run(layer, item.points, item.closed);
    case 'circle':
      return sheet.circle(layer, item.centre, item.radius);
    case 'hatch':
      return hatch(sheet, layer, item);
    case 'text':
      return lettering(sheet, layer, item);
    case 'dimension':
      return dimension(sheet, layer, item);
    case 'balloon':
      return balloon(sheet, layer, item);
    case 'scaleBar':
      return scaleBar(sheet, layer, item);
  }
}

function hatch(sheet: DxfSheet, layer: string, { outline, spacing, falling }: Hatch): void {
  for (const line of hatchLines(outline, spacing * sheet.scale, falling)) sheet.line(layer, line);
}

function lettering(sheet: DxfSheet, layer: string, item: Lettering): void {
  const { at, size, anchor, upward } = item;
  sheet.text(layer, wordsOf(item), at, { size, anchor, rotation: upward === true ? 90 : 0 });
}

function wordsOf({ text, second, diameter }: Lettering): string {
  return `${diameter === true ? '\u2300' : ''}${text}${second === undefined ? '' : `  ${second.text}`}`;
}

function dimension(sheet: DxfSheet, layer: string, item: Dimension): void {
  const { ends, extensions, tails, arrowheads } = dimensionParts(item, sheet.scale);
  const { label } = item;
  const slanted = label === null ? null : slantedLabel(label, wordsOf(label), ends, sheet.scale);
  for (const line of [...(slanted?.pieces ?? [ends]), ...extensions, ...tails]) sheet.line(layer, line);
  for (const head of arrowheads) sheet.arrowhead(layer, head);
  if (label === null) return;
  if (slanted === null) return lettering(sheet, layer, label);
  const { centre, rotation } = slanted;
  sheet.text(layer, wordsOf(label), centre, { size: label.size, anchor: 'middle', rotation, centred: true });
}

function balloon(sheet: DxfSheet, layer: string, item: Balloon): void {
  const { radius, size, leader } = balloonParts(item, sheet.scale);
  if (leader !== null) {
    sheet.line(layer, leader.line);
    sheet.circle(layer, leader.line[1], leader.dot);
  }
  sheet.circle(layer, item.at, radius);
  const look = { size: size / sheet.scale, anchor: 'middle', centred: true } as const;
  sheet.text(layer, String(item.number), item.at, look);
}

function scaleBar(sheet: DxfSheet, layer: string, item: ScaleBar): void {
  for (const { at, width, height } of scaleBarParts(item, sheet.scale).slice(0, -1))
    sheet.run(layer, corners(at, width, height), true);
}

function corners([x, y]: Point, width: number, height: number): Point[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}
