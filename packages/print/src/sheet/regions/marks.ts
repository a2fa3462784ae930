import type { Outcome } from '@hitchwright/core/assess';
import { verdictMark } from '@hitchwright/core/drawings';
import { inks, type Ink, type Look, type Spot } from '../../pdf/ink.ts';

/** Lines of the marks, in parts of their ground. */
const looks: Readonly<Record<ReturnType<typeof verdictMark>['pins'][number]['look'] | 'hook' | 'openHook', Look>> = {
  hook: { stroke: inks.black, width: 2.2, closed: true },
  openHook: { stroke: inks.black, width: 2.2, closed: true, dash: [3.4, 2.6] },
  solid: { fill: inks.black },
  ring: { stroke: inks.black, width: 2 },
  dashed: { stroke: inks.black, width: 2, dash: [3, 2.6] },
};

/** Draws the mark of an outcome in a square; a word always stands beside it. */
export function paintMark(ink: Ink, outcome: Outcome, [x, y]: Spot, side: number): void {
  const { width: ground, hook, isOpen, pins } = verdictMark(outcome);
  const part = side / ground;
  const on = ([right, down]: Spot): Spot => [x + right * part, y + down * part];
  const sized = ({ width, dash, ...look }: Look): Look => ({
    ...look,
    ...(width === undefined ? {} : { width: width * part }),
    ...(dash === undefined ? {} : { dash: dash.map((length) => length * part) }),
  });
  ink.path([hook.map(on)], sized(looks[isOpen ? 'openHook' : 'hook']));
  for (const { at, radius, look } of pins) ink.circle(on(at), radius * part, sized(looks[look]));
}
