import { targetFigures } from '../../words/index.ts';
import type { PinTarget } from '../../engine/pinplan/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Dimension, Item, Point } from '../scene.ts';
import { arc, body, hatch, line, mirrored, outline, rectangle } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { fitted } from '../view/spans.ts';
import { freeAt, halfWidthOf, moves, type PinPicture } from './picture.ts';
import { otherFigures } from './figures.ts';

/** The pins from behind, midway between the lower pins at (0, 0). */
export function rearPins(picture: PinPicture): Item[] {
  const { now, wanted } = picture;
  const isLowerMoved = now.span !== wanted.span || now.tip !== wanted.tip || now.hole !== wanted.hole;
  return [
    ...frame(picture),
    ...zones(picture),
    ...(isLowerMoved ? lowerPins(picture, now, outlined) : []),
    ...(now.height === wanted.height ? [] : upperPin(picture, now.height, outlined)),
    ...lowerPins(picture, wanted, filled),
    ...upperPin(picture, wanted.height, filled),
  ];
}

type Draw = (points: readonly Point[]) => Item;
const outlined: Draw = (points) => outline('hidden', points);
const filled: Draw = (points) => body('heavy', points);

function lowerPins({ sign, lowerDiameter }: PinPicture, seats: PinPicture['now'], draw: Draw): Item[] {
  const { span, tip, hole } = seats;
  const half = lowerDiameter / 2;
  const right = rectangle([span / 2, -half], [span / 2 + sign * tip, half]);
  const step = rectangle([span / 2 - sign * stepLength, -half * 1.5], [span / 2, half * 1.5]);
  const holes = hole === null ? [] : retainingHole([span / 2 + sign * (hole + holeRadius), 0]);
  return [right, mirrored(right), step, mirrored(step), ...holes, ...holes.map(mirrored)].map(draw);
}

/** A retaining hole, its size for place only [mm]. */
const holeRadius = 5;

function retainingHole(centre: Point): Point[][] {
  return [arc(centre, holeRadius, 0, 360)];
}

/** Length of the thicker foot of a pin, drawn for place only [mm]. */
const stepLength = 10;

function upperPin({ mastWidth, upperDiameter }: PinPicture, height: number | null, draw: Draw): Item[] {
  if (height === null) return [];
  const half = upperDiameter / 2;
  return [draw(rectangle([-mastWidth / 2 - stepLength, height - half], [mastWidth / 2 + stepLength, height + half]))];
}

/** The A-frame that carries the pins, for place only. */
function frame({ wanted, mastWidth, sign }: PinPicture): Item[] {
  if (wanted.height === null) return [];
  const foot: Point = [wanted.span / 2 - sign * stepLength, 0];
  const head: Point = [mastWidth / 2, wanted.height];
  return [line('ghost', foot, head), line('ghost', ...(mirrored([foot, head]) as [Point, Point]))];
}

/** What hooks and latches need, where the hooks close. */
function zones(picture: PinPicture): Item[] {
  const { hooks, topHookWidth, wanted } = picture;
  const [lower, upper] = [freeAt(picture, 'lower'), freeAt(picture, 'upper')];
  const right =
    hooks === null || lower === 0
      ? []
      : [rectangle([(hooks.span - hooks.width) / 2, -lower], [(hooks.span + hooks.width) / 2, lower])];
  const top =
    upper === 0 || wanted.height === null
      ? []
      : [rectangle([-topHookWidth / 2, wanted.height - upper], [topHookWidth / 2, wanted.height + upper])];
  return [...right, ...right.map(mirrored), ...top].map((points) => outline('centre', points));
}

/** A row of dimensions under the view. */
type Row = (pen: Pen, z: number) => Item[];

/** Rows of dimensions under the view, from the top down. */
export function rearRows(picture: PinPicture): Row[] {
  const span = picture.targets.get('implement.shoulderSpan');
  if (span === undefined) return [];
  const hasRange = span.low !== span.now.low || span.high !== span.now.high;
  const reach = (['implement.shoulderToHole', 'implement.standOut'] as const).filter((path) => moves(picture, path));
  return [
    ...reach.map((path) => reachRow(picture, path)),
    ...(span.stays
      ? [spanRow(picture, span, 'stays')]
      : [spanRow(picture, span, 'now'), moveRow(picture, span), spanRow(picture, span, 'aim')]),
    ...(hasRange ? [rangeRow(span)] : []),
  ];
}

const spanWords = { now: 'now', aim: 'to be', stays: 'as it is' } as const;

function spanRow({ now, wanted }: PinPicture, target: PinTarget, which: keyof typeof spanWords): Row {
  return (pen, z) => {
    const at = which === 'now' ? now.span : wanted.span;
    const figures = which === 'aim' ? 'aim' : 'now';
    const words = `${targetFigures(target, pen.system)[figures]} ${spanWords[which]}`;
    const fit = fitted(pen, words, otherFigures(target, pen.system)[figures], at / pen.perPaper - 7);
    const label = lettering([0, z + onPaper(pen, 1)], words, fit.size, {
      ...fit.second,
      anchor: 'middle',
      ...(which === 'aim' ? { weight: 600 } : {}),
    });
    return [across([-at / 2, 0], [at / 2, 0], z, 'dimension', label)];
  };
}

function across(from: Point, to: Point, z: number, role: Dimension['role'], label: Dimension['label']): Dimension {
  return { kind: 'dimension', role, from, to, along: [1, 0], at: -z, label, sides: 1, mmPerUnit: 1 };
}

/** How far a lower pin goes, on the right one; the left one goes as far. */
function moveRow(picture: PinPicture, target: PinTarget): Row {
  const { now, wanted, lowerDiameter } = picture;
  const half = halfWidthOf(picture);
  const by = (target.aim - (target.now.low + target.now.high) / 2) / 2;
  const each = { ...target, aim: by, now: { low: 0, high: 0 } };
  const [a, b] = [now.span / 2, wanted.span / 2];
  const foot = -lowerDiameter / 2;
  return (pen, z) => {
    const words = `each pin ${targetFigures(each, pen.system).move} ${b < a ? 'in' : 'out'}ward`;
    return [across([a, foot], [b, foot], z, 'misfit', besideIt(pen, [Math.min(a, b), z], words, half))];
  };
}

/** Lettering at the left of a short dimension, clear of its arrowhead. */
function besideIt(pen: Pen, [left, z]: Point, words: string, half: number) {
  const { dimension: size } = pen.sheet.letters;
  const fit = fitted(pen, words, null, (left + half) / pen.perPaper - 7);
  return lettering([left - onPaper(pen, 6.6), z - onPaper(pen, size * 0.34)], words, fit.size, {
    tone: 'accent',
    anchor: 'end',
    weight: 600,
  });
}

/** From the step of the right pin to its hole or tip: at least so far. */
function reachRow(picture: PinPicture, path: 'implement.standOut' | 'implement.shoulderToHole'): Row {
  const { targets, wanted, sign } = picture;
  const half = halfWidthOf(picture);
  const target = targets.get(path) as PinTarget;
  const [from, to] = [wanted.span / 2, wanted.span / 2 + sign * target.aim];
  const end = path === 'implement.standOut' ? 'tip' : 'hole';
  return (pen, z) => {
    const words = `${end} at ${targetFigures(target, pen.system).range}`;
    return [across([from, 0], [to, 0], z, 'misfit', besideIt(pen, [Math.min(from, to), z], words, half))];
  };
}

/** Where the shoulders may be, hatched on both sides. */
function rangeRow(target: PinTarget): Row {
  const [a, b] = [(target.low ?? target.now.low) / 2, (target.high ?? target.now.high) / 2];
  return (pen, z) => {
    const right = rectangle([a, z], [b, z + onPaper(pen, 2.4)]);
    const ends = [a, b].flatMap((y): Item[] => [tick(pen, y, z), tick(pen, -y, z)]);
    const words = `anywhere ${targetFigures(target, pen.system).range}`;
    const fit = fitted(pen, words, otherFigures(target, pen.system).range, (2 * a) / pen.perPaper - 6);
    const label = lettering([0, z], words, fit.size, { ...fit.second, anchor: 'middle' });
    return [hatch('thin', right), hatch('thin', mirrored(right), true), ...ends, label];
  };
}

function tick(pen: Pen, y: number, z: number): Item {
  return line('thin', [y, z - onPaper(pen, 0.7)], [y, z + onPaper(pen, 3.1)]);
}
