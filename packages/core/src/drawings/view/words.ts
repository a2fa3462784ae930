import type { Hold } from '../../engine/joint/index.ts';
import type { Stage } from '../stage.ts';
import { isSetBack } from '../upper.ts';

/** Longest name of a machine that a title carries. */
const longest = 60;

/** A machine's name on one line and not too long, or what it is called without one. */
export function named(name: string | undefined, otherwise: string): string {
  const text = (name ?? '').replace(/[\p{C}\s]+/gu, ' ').trim();
  if (text === '') return otherwise;
  const letters = [...text];
  return letters.length > longest ? `${letters.slice(0, longest - 1).join('')}…` : text;
}

/** The drawing's name, with the machines on it. */
export function titleOf({ setup, meeting }: Stage): string {
  const tractor = named(setup.tractor.name, 'the tractor');
  const coupler = setup.coupler === undefined ? null : named(setup.coupler.name, 'the coupler');
  const implement = named(setup.implement.name, 'the implement');
  if (coupler === null) return `Rear view: ${implement} on the links of ${tractor}`;
  return meeting === 'front'
    ? `Rear view: ${coupler} on the links of ${tractor}`
    : `Rear view: ${implement} on ${coupler}, ${tractor} behind it`;
}

/** What stands over the view on the sheet. */
export function viewTitle({ meeting }: Stage): string {
  return meeting === 'front' ? 'Rear view, tractor to coupler' : 'Rear view, looking forward';
}

const seated: Readonly<Record<Hold, string>> = {
  bareBalls: 'Link balls against the shoulders, implement level.',
  uFrame: 'Lower pins in the hooks, implement level.',
  triangle: 'Feet of frame and receiver at one height.',
  clawEnds: 'Balls against the shoulders, implement level.',
  bar: 'Bar in the jaws, implement level.',
  hookEnds: 'Lower pins in the hooks, implement level.',
};

/** In what state it is drawn, and what is only there for place. */
export function noteOf(stage: Stage): string {
  return `${subtitleOf(stage)} Bodies for place only.`;
}

/** In what state it is drawn. */
export function subtitleOf({ hold, meeting, upper }: Stage): string {
  if (meeting === 'front') return 'Link balls against the shoulders of the coupler; the implement is left out.';
  const slanted = upper.hook !== null && (isSetBack(upper) || isSetBack(upper.hook));
  return slanted ? 'Lower pins in the hooks, seen square to the line from lower to upper pin.' : seated[hold];
}

/** The drawing in words. */
export function describe(title: string, stage: Stage, says: readonly string[]): string {
  const dashed = 'Dashed parts and figures marked ≈ or ? were not measured.';
  return [
    `${title}.`,
    subtitleOf(stage),
    'Drawn to scale in millimetres.',
    ...says,
    dashed,
    'Tractor and bodies are drawn for place only.',
  ].join(' ');
}
