import type { Outcome } from '@hitchwright/core/assess';
import { inks, type Ink, type Look, type Spot } from '../../pdf/ink.ts';

/** The mark beside a verdict on a ground of 32 by 31: a hook open to the top is an outline, a pin is solid. */
const ground = 32;

/** Half of the hook's throat round its seat, as points of an arc. */
function arc([x, y]: Spot, radius: number, from: number, to: number): Spot[] {
  return Array.from({ length: 19 }, (_, i): Spot => {
    const angle = ((from + ((to - from) * i) / 18) * Math.PI) / 180;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

const hook: readonly Spot[] = [
  [2, 5.5],
  [9.5, 5.5],
  [9.5, 15.7],
  ...arc([16.9, 15.7], 7.4, 180, 0),
  [24.3, 14.1],
  [29.6, 9],
  [29.6, 14.6],
  ...arc([16.2, 15.6], 13.4, 0, 90),
  [2, 29],
];

const pins: Readonly<Record<Outcome, readonly { readonly at: Spot; readonly radius: number; readonly look: Look }[]>> =
  {
    works: [{ at: [16.9, 16.2], radius: 5.8, look: { fill: inks.black } }],
    withParts: [
      { at: [16.9, 15.8], radius: 5.4, look: { stroke: inks.black, width: 2 } },
      { at: [16.9, 15.8], radius: 2.5, look: { fill: inks.black } },
    ],
    measureFirst: [{ at: [16.9, 15.4], radius: 4.6, look: { stroke: inks.black, width: 2, dash: [3, 2.6] } }],
    willNot: [{ at: [16.9, 5.6], radius: 5.2, look: { fill: inks.black } }],
    notChecked: [],
    notNeeded: [],
  };

/** Draws the mark of an outcome in a square; a word always stands beside it. */
export function paintMark(ink: Ink, outcome: Outcome, [x, y]: Spot, side: number): void {
  const part = side / ground;
  const on = ([right, down]: Spot): Spot => [x + right * part, y + down * part];
  const sized = ({ width, dash, ...look }: Look): Look => ({
    ...look,
    ...(width === undefined ? {} : { width: width * part }),
    ...(dash === undefined ? {} : { dash: dash.map((length) => length * part) }),
  });
  const isEmpty = outcome === 'notChecked';
  const look: Look = { stroke: inks.black, width: 2.2, closed: true, ...(isEmpty ? { dash: [3.4, 2.6] } : {}) };
  ink.path([hook.map(on)], sized(look));
  for (const pin of pins[outcome]) ink.circle(on(pin.at), pin.radius * part, sized(pin.look));
}
