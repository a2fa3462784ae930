import type { PinTarget } from '../../engine/pinplan/index.ts';
import { targetFigures } from '../../words/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Circle, Dimension, Item, Point } from '../scene.ts';
import { circle, hatch, line, outline, rectangle } from '../strokes.ts';
import { lettering } from '../view/part.ts';
import { fitted } from '../view/spans.ts';
import { otherFigures } from './figures.ts';
import { freeAt, moves, type PinPicture } from './picture.ts';

/** The pins from the left, forward to the left, with the lower pins at (0, 0). */
export function sidePins(picture: PinPicture): Item[] {
  const { now, wanted, lowerDiameter, upperDiameter } = picture;
  const isMoved = now.height !== wanted.height || now.setback !== wanted.setback;
  return [
    ...(wanted.height === null ? [] : [line('ghost', [0, 0], [wanted.setback, wanted.height])]),
    ...block(0, 0, freeAt(picture, 'lower')),
    ...(wanted.height === null ? [] : block(wanted.setback, wanted.height, freeAt(picture, 'upper'))),
    ...cross([0, 0], lowerDiameter),
    pin([0, 0], lowerDiameter),
    ...(isMoved && now.height !== null ? [circle('hidden', [now.setback, now.height], upperDiameter / 2)] : []),
    ...(wanted.height === null
      ? []
      : [
          ...cross([wanted.setback, wanted.height], upperDiameter),
          pin([wanted.setback, wanted.height], upperDiameter),
        ]),
  ];
}

function pin(centre: Point, diameter: number): Circle {
  return { ...circle('heavy', centre, diameter / 2), fill: 'sheet' };
}

function cross([x, z]: Point, diameter: number): Item[] {
  const reach = diameter * 0.9;
  return [line('centre', [x - reach, z], [x + reach, z]), line('centre', [x, z - reach], [x, z + reach])];
}

function block(x: number, z: number, half: number): Item[] {
  return half === 0 ? [] : [outline('centre', rectangle([x - half, z - half], [x + half, z + half]))];
}

/** How far the view reaches to the left and to the right of the lower pins [mm]. */
export function sideExtent(picture: PinPicture): readonly [left: number, right: number] {
  const xs = [0, picture.now.setback, picture.wanted.setback];
  const around = Math.max(freeAt(picture, 'lower'), freeAt(picture, 'upper'), picture.upperDiameter) + 6;
  return [around - Math.min(...xs), around + Math.max(...xs)];
}

/** A column of dimensions beside the view, or a row over it. */
type Placed = (pen: Pen, at: number) => Item[];

/** Columns of heights beside the view, from the left on. */
export function sideColumns(picture: PinPicture): Placed[] {
  const target = picture.targets.get('implement.mastHeight');
  if (target === undefined) return [];
  const hasRange = target.low !== target.now.low || target.high !== target.now.high;
  return [
    ...(target.stays
      ? [heightColumn(picture, target, 'stays')]
      : [heightColumn(picture, target, 'now'), moveColumn(picture, target), heightColumn(picture, target, 'aim')]),
    ...(hasRange ? [rangeColumn(target)] : []),
  ];
}

const heightWords = { now: 'now', aim: 'to be', stays: 'as it is' } as const;

function heightColumn({ now, wanted }: PinPicture, target: PinTarget, which: keyof typeof heightWords): Placed {
  return (pen, x) => {
    const seats = which === 'now' ? now : wanted;
    const height = seats.height ?? 0;
    const figures = which === 'aim' ? 'aim' : 'now';
    const words = `${targetFigures(target, pen.system)[figures]} ${heightWords[which]}`;
    const fit = fitted(pen, words, otherFigures(target, pen.system)[figures], height / pen.perPaper - 7);
    const label = lettering([x - onPaper(pen, 1), height / 2], words, fit.size, {
      ...fit.second,
      anchor: 'middle',
      upward: true,
      ...(which === 'aim' ? { weight: 600 } : {}),
    });
    return [upward([0, 0], [seats.setback, height], x, 'dimension', label)];
  };
}

function upward(from: Point, to: Point, x: number, role: Dimension['role'], label: Dimension['label']): Dimension {
  return { kind: 'dimension', role, from, to, along: [0, 1], at: x, label, sides: 1, mmPerUnit: 1 };
}

function moveColumn({ now, wanted }: PinPicture, target: PinTarget): Placed {
  const [a, b] = [now.height ?? 0, wanted.height ?? 0];
  return (pen, x) => {
    const words = `${targetFigures(target, pen.system).move} ${b < a ? 'lower' : 'higher'}`;
    const fit = fitted(pen, words, null, Math.min(a, b) / pen.perPaper - 8);
    const at: Point = [x + onPaper(pen, fit.size * 0.34), Math.min(a, b) - onPaper(pen, 6.6)];
    const label = lettering(at, words, fit.size, { tone: 'accent', anchor: 'end', weight: 600, upward: true });
    return [upward([now.setback, a], [wanted.setback, b], x, 'misfit', label)];
  };
}

function rangeColumn(target: PinTarget): Placed {
  const [low, high] = [target.low ?? target.now.low, target.high ?? target.now.high];
  return (pen, x) => {
    const wide = onPaper(pen, 2.4);
    const ends = [low, high].map((z) => line('thin', [x - onPaper(pen, 0.7), z], [x + wide + onPaper(pen, 0.7), z]));
    const words = `anywhere ${targetFigures(target, pen.system).range}`;
    const fit = fitted(pen, words, otherFigures(target, pen.system).range, low / pen.perPaper - 4);
    const at: Point = [x + onPaper(pen, 1.2 + fit.size * 0.34), low - onPaper(pen, 2)];
    const label = lettering(at, words, fit.size, { ...fit.second, anchor: 'end', upward: true });
    return [hatch('thin', rectangle([x, low], [x + wide, high])), ...ends, label];
  };
}

/** A setback smaller than this is not worth a dimension of its own [mm]. */
const noticeable = 1;

/** Rows of setbacks over the view, the lowest first: how far the upper pin stands behind the lower ones. */
export function setbackRows(picture: PinPicture): Placed[] {
  const target = picture.targets.get('implement.mastSetback');
  if (target === undefined) return [];
  if (moves(picture, 'implement.mastSetback'))
    return [setbackRow(picture, target, 'now'), setbackRow(picture, target, 'aim')];
  return Math.abs(picture.wanted.setback) < noticeable ? [] : [setbackRow(picture, target, 'stays')];
}

function setbackRow(picture: PinPicture, target: PinTarget, which: keyof typeof heightWords): Placed {
  const { setback, height } = which === 'now' ? picture.now : picture.wanted;
  const right = Math.max(0, picture.now.setback, picture.wanted.setback);
  return (pen, z) => {
    const words = `back ${targetFigures(target, pen.system)[which === 'aim' ? 'aim' : 'now']} ${heightWords[which]}`;
    const { dimension: size } = pen.sheet.letters;
    const label = lettering([right + onPaper(pen, 6.6), z - onPaper(pen, size * 0.34)], words, size);
    const ends = { from: [0, height ?? 0], to: [setback, height ?? 0], along: [1, 0], at: -z } as const;
    return [
      { kind: 'dimension', role: which === 'aim' ? 'misfit' : 'dimension', ...ends, label, sides: 1, mmPerUnit: 1 },
    ];
  };
}
