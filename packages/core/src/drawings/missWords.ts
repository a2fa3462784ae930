import type { CheckId, Finding } from '../engine/findings/index.ts';
import { otherUnitsOf, printMarginSize, type UnitSystem } from './figureText.ts';
import { printQuantity } from '../units/index.ts';

const words: Partial<Readonly<Record<CheckId, readonly [low: string, high: string]>>> = {
  'front.lowerPin': ['pin too thick', 'too loose'],
  'front.bushingBore': ['bore too small', 'too loose'],
  'front.bushingLength': ['bushing too long', ''],
  'front.span': ['links too far apart', 'links too short'],
  'front.retention': ['hole covered', ''],
  'front.upperPin': ['pin too thick', 'too loose'],
  'front.clevis': ['too narrow', 'too wide'],
  'front.topLink': ['link too long', 'link too short'],
  'rear.lowerPin': ['pin too thick', 'too loose'],
  'rear.bushingBore': ['bore too small', 'too loose'],
  'rear.bushingLength': ['bushing too long', ''],
  'rear.shoulders': ['too wide', ''],
  'rear.pinSeat': ['too short', ''],
  'rear.retention': ['hole covered', ''],
  'rear.upperPin': ['pin too thick', 'too loose'],
  'rear.clevis': ['too narrow', ''],
  'rear.mast': ['too low', 'too high'],
  'rear.claw': ['ball too small', 'ball too big'],
  'rear.ballOnPin': ['bore too small', 'too loose'],
  'rear.receiverWidth': ['frame too wide', 'too loose'],
  'rear.receiverAngle': ['too pointed', 'too blunt'],
  'rear.jaw': ['bar too thick', 'too loose'],
  'rear.jawSpan': ['too far apart', ''],
};

/** What stands beside a misfit: its size in the chosen unit, in the other, and what is wrong. */
export interface MissLabel {
  readonly figure: string;
  /** The worse end alone, where there is no room for both. */
  readonly worst: string;
  readonly second: string;
  readonly word: string;
}

/** The label of a misfit: one figure, or the two ends of its tolerance. */
export function missLabel(finding: Finding, system: UnitSystem, pointsIn: boolean): MissLabel {
  const dimension = finding.unit === 'deg' ? 'angle' : 'length';
  const { low, high } = finding.margin ?? { low: null, high: null };
  const ends = [high, low].filter((end): end is number => end !== null && end < 0);
  const sizes = ends.map((end) => printMarginSize(end, dimension, system));
  const chosen = sizes.map((size) => size.replace(/ \(.*/, ''));
  return {
    figure: ranged(chosen),
    worst: chosen.at(-1) ?? '',
    second: ranged(sizes.map(otherUnitsOf)),
    word: wordOf(finding, pointsIn),
  };
}

function wordOf({ id, side }: Finding, pointsIn: boolean): string {
  if (id === 'rear.shoulders' && pointsIn) return 'too close';
  return words[id]?.[side === 'high' ? 1 : 0] ?? '';
}

/** `6 mm to 9 mm` as `6 to 9 mm`. */
function ranged(texts: readonly string[]): string {
  const [first = '', last = first] = texts;
  if (first === last) return first;
  const unit = last.slice(last.lastIndexOf(' '));
  return first.endsWith(unit) ? `${first.slice(0, -unit.length)} to ${last}` : `${first} to ${last}`;
}

/** The share of one side in a misfit of both; twice it is the total as it is printed. */
export function oneSideText({ margin }: Finding, system: UnitSystem): string {
  const half = Math.abs(margin?.low ?? 0) / 2;
  return `2 × ${printQuantity(half, 'length', { system, step: system === 'us' ? 32 : 0.5, round: 'up' }).replace('.0 ', ' ')}`;
}
