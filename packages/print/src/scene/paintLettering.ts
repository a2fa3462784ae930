import {
  diameterSign,
  fractionRise,
  fractionSize,
  haloWidth,
  secondGap,
  type Lettering,
} from '@hitchwright/core/drawings';
import { inks, type Ink, type Spot } from '../pdf/ink.ts';
import { lineWidth, oneLine, type Line } from '../text/lines.ts';
import type { Placed } from './sceneMap.ts';

const capHeight = 0.7;
const descent = 0.22;

/** A line of lettering on its cleared ground; a reversed one stands white on black, as what is at fault does on paper. */
export function paintLettering(ink: Ink, { spot }: Placed, item: Lettering): void {
  const { at, size, weight, text, second } = item;
  const first = lineOf(ink, text, size, weight);
  const other = second === undefined ? null : lineOf(ink, second.text, second.size, 400);
  const gap = second === undefined ? 0 : second.size * secondGap;
  const sign = item.diameter === true ? diameterSign([0, 0], size) : null;
  const otherWidth = other === null ? 0 : lineWidth(ink.faces, other);
  const width = (sign?.advance ?? 0) + lineWidth(ink.faces, first) + gap + otherWidth;
  const [x, y] = spot(at);
  const start = x - shareBefore[item.anchor] * width;
  const reversed = item.tone === 'accent' && item.weight === 700;
  const draw = (): void => {
    if (item.halo !== false) ground(ink, [start, y], width, { size, reversed, isTall: /\d\/\d/.test(text) });
    const colour = reversed ? inks.paper : inks.black;
    if (sign !== null) paintSign(ink, [start, y], size, colour);
    ink.line(first, [start + (sign?.advance ?? 0), y], colour);
    if (other !== null) ink.line(other, [start + width - otherWidth, y], colour);
  };
  if (item.upward === true) ink.upward([x, y], draw);
  else draw();
}

const shareBefore = { start: 0, middle: 0.5, end: 1 } as const;

function lineOf(ink: Ink, text: string, size: number, weight: Lettering['weight']): Line {
  return oneLine(ink.faces, [{ text, style: { family: 'national-park', weight, size }, fractions: fractionSize }]);
}

interface Ground {
  readonly size: number;
  readonly reversed: boolean;
  /** A fraction stands over the capitals. */
  readonly isTall: boolean;
}

/** Clears what lies under the letters; under reversed ones it is black. */
function ground(ink: Ink, [x, y]: Spot, width: number, { size, reversed, isTall }: Ground): void {
  const pad = (size * haloWidth) / 2;
  const top = (isTall && reversed ? capHeight * fractionSize + fractionRise : capHeight) * size;
  const [above, below] = reversed ? [top + pad, descent * size] : [top + pad / 2, pad];
  ink.rect([x - pad, y - above], width + 2 * pad, above + below, { fill: reversed ? inks.black : inks.paper });
}

function paintSign(ink: Ink, [x, y]: Spot, size: number, colour: string): void {
  const { centre, radius, stroke, width } = diameterSign([0, 0], size);
  const on = ([right, up]: readonly [number, number]): Spot => [x + right, y - up];
  ink.circle(on(centre), radius, { stroke: colour, width });
  ink.path([stroke.map(on)], { stroke: colour, width });
}
