import { dimensionParts } from '../dimensionParts.ts';
import { hatchLines } from '../hatchLines.ts';
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

/** Radius of a balloon [paper mm]. */
const balloonRadius = 2.9;

function balloon({ at, number, leaderTo, filled }: Balloon, scale: number): string {
  const radius = balloonRadius * scale;
  const role = filled ? 'misfit' : 'thin';
  const size = 3.7 * scale;
  const leader = leaderTo === null ? '' : leaderOf(at, leaderTo, role, scale);
  return (
    leader +
    `<circle class="l ${filled ? 'misfit solid' : 'thin on-sheet'}" cx="${coordinate(at[0])}" cy="${coordinate(-at[1])}" r="${coordinate(radius)}"/>` +
    `<text class="${filled ? 'on-accent' : 'ink'}" x="${coordinate(at[0])}" y="${coordinate(-at[1] + size * 0.35)}" font-size="${coordinate(size)}" font-weight="600" text-anchor="middle">${number}</text>`
  );
}

/** From the rim of a balloon to a dot on what it is about. */
function leaderOf(at: Point, to: Point, role: string, scale: number): string {
  const distance = Math.max(Math.hypot(to[0] - at[0], to[1] - at[1]), balloonRadius * scale);
  const part = (balloonRadius * scale) / distance;
  const rim: Point = [at[0] + (to[0] - at[0]) * part, at[1] + (to[1] - at[1]) * part];
  const dot = `<circle class="l ${role} solid" cx="${coordinate(to[0])}" cy="${coordinate(-to[1])}" r="${coordinate(0.55 * scale)}"/>`;
  return `<path class="l ${role} thinner" d="${path([rim, to], false)}"/>${dot}`;
}

function scaleBar({ at, division, divisions }: ScaleBar, scale: number): string {
  const height = 1.1 * scale;
  const boxes = Array.from({ length: divisions }, (_, i) => {
    const x = coordinate(at[0] + i * division);
    const fill = i % 2 === 0 ? 'thin solid' : 'thin on-sheet';
    return `<rect class="l ${fill}" x="${x}" y="${coordinate(-at[1] - height)}" width="${coordinate(division)}" height="${coordinate(height)}"/>`;
  });
  const frame = `<rect class="l thin" x="${coordinate(at[0])}" y="${coordinate(-at[1] - height)}" width="${coordinate(division * divisions)}" height="${coordinate(height)}"/>`;
  return boxes.join('') + frame;
}
