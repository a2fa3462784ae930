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
  const { text, at, size, anchor, second, diameter, upward } = item;
  const words = `${diameter === true ? '\u2300' : ''}${text}${second === undefined ? '' : `  ${second.text}`}`;
  sheet.text(layer, words, at, { size, anchor, upward: upward === true });
}

function dimension(sheet: DxfSheet, layer: string, item: Dimension): void {
  const { ends, extensions, tails, arrowheads } = dimensionParts(item, sheet.scale);
  for (const line of [ends, ...extensions, ...tails]) sheet.line(layer, line);
  for (const head of arrowheads) sheet.arrowhead(layer, head);
  if (item.label !== null) lettering(sheet, layer, item.label);
}

function balloon(sheet: DxfSheet, layer: string, item: Balloon): void {
  const { radius, size, leader } = balloonParts(item, sheet.scale);
  if (leader !== null) {
    sheet.line(layer, leader.line);
    sheet.circle(layer, leader.line[1], leader.dot);
  }
  sheet.circle(layer, item.at, radius);
  const look = { size: size / sheet.scale, anchor: 'middle', upward: false, centred: true } as const;
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
