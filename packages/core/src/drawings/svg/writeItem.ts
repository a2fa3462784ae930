import { balloonParts, type BalloonParts } from '../balloonParts.ts';
import { dimensionParts } from '../dimensionParts.ts';
import { hatchLines } from '../hatchLines.ts';
import { scaleBarParts, type BarBox } from '../scaleBarParts.ts';
import type { Balloon, Circle, Dimension, Hatch, Item, Point, ScaleBar, Stroke } from '../scene.ts';
import { coordinate } from './escape.ts';
import { writeText } from './writeText.ts';

interface Written {
  readonly scale: number;
  readonly svg: string;
}

/** What stands still from one picture of a lift to the next is the same item, and is written once. */
const written = new WeakMap<Item, Written>();

/** One item as SVG at a scale [scene mm per paper mm]; the scene's upward z becomes the paper's downward y. */
export function writeItem(item: Item, scale: number): string {
  const before = written.get(item);
  if (before?.scale === scale) return before.svg;
  const svg = freshItem(item, scale);
  written.set(item, { scale, svg });
  return svg;
}

function freshItem(item: Item, scale: number): string {
  const shape = shapeOf(item, scale);
  if (item.finding === undefined || item.kind === 'dimension') return shape;
  return `<g data-finding="${item.finding}">${shape}</g>`;
}

function shapeOf(item: Item, scale: number): string {
  switch (item.kind) {
    case 'stroke':
      return stroke(item);
    case 'circle':
      return circle(item);
    case 'hatch':
      return hatch(item, scale);
    case 'text':
      return writeText(item, scale);
    case 'dimension':
      return dimension(item, scale);
    case 'balloon':
      return balloon(item, scale);
    case 'scaleBar':
      return scaleBar(item, scale);
  }
}

function xy([y, z]: Point): string {
  return `${coordinate(y)} ${coordinate(-z)}`;
}

function path(points: readonly Point[], closed: boolean): string {
  return `M${points.map(xy).join('L')}${closed ? 'Z' : ''}`;
}

function fillOf(fill: 'sheet' | 'line' | undefined): string {
  if (fill === undefined) return '';
  return fill === 'sheet' ? ' on-sheet' : ' solid';
}

function stroke({ role, points, closed, fill }: Stroke): string {
  return `<path class="l ${role}${fillOf(fill)}" d="${path(points, closed)}"/>`;
}

function circle({ role, centre, radius, fill, point }: Circle): string {
  const name = point === undefined ? '' : ` data-point="${point}"`;
  return `<circle class="l ${role}${fillOf(fill)}"${name} cx="${coordinate(centre[0])}" cy="${coordinate(-centre[1])}" r="${coordinate(radius)}"/>`;
}

function hatch({ role, outline, spacing, falling }: Hatch, scale: number): string {
  const lines = hatchLines(outline, spacing * scale, falling);
  if (lines.length === 0) return '';
  return `<path class="l h ${role}" d="${lines.map((line) => path(line, false)).join('')}"/>`;
}

function dimension(item: Dimension, scale: number): string {
  const { ends, extensions, tails, arrowheads } = dimensionParts(item, scale);
  const others = [...extensions, ...tails].map((line) => path(line, false)).join('');
  const [a, b] = ends;
  const line = `<line class="l ${item.role}" data-ends="" x1="${coordinate(a[0])}" y1="${coordinate(-a[1])}" x2="${coordinate(b[0])}" y2="${coordinate(-b[1])}"/>`;
  const heads = `<path class="l ${item.role} solid" d="${arrowheads.map((head) => path(head, true)).join('')}"/>`;
  const rest = others === '' ? '' : `<path class="l ${item.role} thinner" d="${others}"/>`;
  const label = item.label === null ? '' : writeText(item.label, scale);
  return `<g${dataOf(item)}>${rest}${line}${heads}${label}</g>`;
}

function dataOf({ finding, sides, mmPerUnit, role }: Dimension): string {
  const unit = ` data-mm-per-unit="${Math.round(mmPerUnit * 1e9) / 1e9}"`;
  return role === 'misfit' && finding !== undefined ? ` data-finding="${finding}" data-sides="${sides}"${unit}` : unit;
}

function balloon(item: Balloon, scale: number): string {
  const { at, number, filled } = item;
  const { radius, size, drop, leader } = balloonParts(item, scale);
  const role = filled ? 'misfit' : 'thin';
  return (
    (leader === null ? '' : leaderOf(leader, role)) +
    `<circle class="l ${filled ? 'misfit solid' : 'thin on-sheet'}" cx="${coordinate(at[0])}" cy="${coordinate(-at[1])}" r="${coordinate(radius)}"/>` +
    `<text class="${filled ? 'on-accent' : 'ink'}" x="${coordinate(at[0])}" y="${coordinate(-at[1] + drop)}" font-size="${coordinate(size)}" font-weight="600" text-anchor="middle">${number}</text>`
  );
}

/** From the rim of a balloon to a dot on what it is about. */
function leaderOf({ line, dot }: NonNullable<BalloonParts['leader']>, role: string): string {
  const [, to] = line;
  const end = `<circle class="l ${role} solid" cx="${coordinate(to[0])}" cy="${coordinate(-to[1])}" r="${coordinate(dot)}"/>`;
  return `<path class="l ${role} thinner" d="${path(line, false)}"/>${end}`;
}

function scaleBar(item: ScaleBar, scale: number): string {
  const parts = scaleBarParts(item, scale);
  return parts.map((box, i) => barBox(box, i === parts.length - 1)).join('');
}

function barBox({ at, width, height, filled }: BarBox, isFrame: boolean): string {
  const fill = filled ? ' solid' : ' on-sheet';
  return `<rect class="l thin${isFrame ? '' : fill}" x="${coordinate(at[0])}" y="${coordinate(-at[1] - height)}" width="${coordinate(width)}" height="${coordinate(height)}"/>`;
}
