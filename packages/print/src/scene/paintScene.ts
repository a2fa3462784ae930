import {
  balloonParts,
  dimensionParts,
  hatchLines,
  lineDashes,
  lineWidths,
  scaleBarParts,
  type Balloon,
  type Circle,
  type Dimension,
  type Hatch,
  type Item,
  type LineRole,
  type ScaleBar,
  type Scene,
  type Stroke,
} from '@hitchwright/core/drawings';
import { inks, type Ink, type Look, type Spot } from '../pdf/ink.ts';
import { lineWidth, oneLine } from '../text/lines.ts';
import { paintLettering } from './paintLettering.ts';
import { placedAt, type Placed } from './sceneMap.ts';

/** Draws a scene as vectors with its upper left corner at a spot of the page, at its own scale, in black alone. */
export function paintScene(ink: Ink, scene: Scene, at: Spot): void {
  const placed = placedAt(scene, at);
  for (const item of scene.items) paintItem(ink, placed, item);
}

function paintItem(ink: Ink, placed: Placed, item: Item): void {
  switch (item.kind) {
    case 'stroke':
      return stroke(ink, placed, item);
    case 'circle':
      return circle(ink, placed, item);
    case 'hatch':
      return hatch(ink, placed, item);
    case 'text':
      return paintLettering(ink, placed, item);
    case 'dimension':
      return dimension(ink, placed, item);
    case 'balloon':
      return balloon(ink, placed, item);
    case 'scaleBar':
      return scaleBar(ink, placed, item);
  }
}

function lookOf(role: LineRole): Look {
  const look: Look = { stroke: role === 'ghost' ? inks.ghost : inks.black, width: lineWidths[role] };
  return role === 'hidden' || role === 'centre' ? { ...look, dash: lineDashes[role] } : look;
}

function filled(role: LineRole, fill: 'sheet' | 'line' | undefined): Look {
  const look = lookOf(role);
  if (fill === undefined) return look;
  return fill === 'sheet' ? { ...look, fill: inks.paper } : { fill: look.stroke ?? inks.black };
}

function stroke(ink: Ink, { spot }: Placed, { role, points, closed, fill }: Stroke): void {
  ink.path([points.map(spot)], { ...filled(role, fill), closed });
}

function circle(ink: Ink, { spot, scale }: Placed, { role, centre, radius, fill }: Circle): void {
  ink.circle(spot(centre), radius / scale, filled(role, fill));
}

/** On paper every hatch is as wide as a thin line: narrower ones drop out of a copy. */
function hatch(ink: Ink, { spot, scale }: Placed, { outline, spacing, falling }: Hatch): void {
  const lines = hatchLines(outline, spacing * scale, falling);
  ink.path(
    lines.map((line) => line.map(spot)),
    lookOf('thin'),
  );
}

function dimension(ink: Ink, placed: Placed, item: Dimension): void {
  const { ends, extensions, tails, arrowheads } = dimensionParts(item, placed.scale);
  const on = (points: readonly (readonly [number, number])[]): Spot[] => points.map(placed.spot);
  ink.path([...extensions, ...tails].map(on), lookOf('thin'));
  ink.path([on(ends)], lookOf(item.role));
  ink.path(arrowheads.map(on), { fill: inks.black, closed: true });
  if (item.label !== null) paintLettering(ink, placed, item.label);
}

function balloon(ink: Ink, { spot, scale }: Placed, item: Balloon): void {
  const { radius, size, drop, leader } = balloonParts(item, scale);
  if (leader !== null) {
    ink.path([leader.line.map(spot)], lookOf('thin'));
    ink.circle(spot(leader.line[1]), leader.dot / scale, { fill: inks.black });
  }
  const [x, y] = spot(item.at);
  ink.circle([x, y], radius / scale, { ...lookOf('thin'), fill: item.filled ? inks.black : inks.paper });
  paintNumber(ink, item.number, [x, y + drop / scale], size / scale, item.filled);
}

/** The number in a balloon, its middle over a point. */
export function paintNumber(ink: Ink, number: number, [x, y]: Spot, size: number, filled: boolean): void {
  const style = { family: 'national-park', weight: 600, size } as const;
  const line = oneLine(ink.faces, [{ text: String(number), style, fractions: 1 }]);
  ink.line(line, [x - lineWidth(ink.faces, line) / 2, y], filled ? inks.paper : inks.black);
}

function scaleBar(ink: Ink, { spot, scale }: Placed, item: ScaleBar): void {
  for (const { at, width, height, filled: isFilled } of scaleBarParts(item, scale).slice(0, -1)) {
    const [x, y] = spot([at[0], at[1] + height]);
    ink.rect([x, y], width / scale, height / scale, { ...lookOf('thin'), fill: isFilled ? inks.black : inks.paper });
  }
}
