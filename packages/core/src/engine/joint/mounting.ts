import type { Implement, MountingStyle } from '../../records/index.ts';
import type { Ledger } from '../inputs/index.ts';
import type { RuledOut } from '../findings/index.ts';
import type { Hold } from './hold.ts';

/** Whether a mounting style goes with a way of holding; a reason stands behind every refusal. */
export type MountingResult =
  | { readonly status: 'pass' }
  | { readonly status: 'fail'; readonly reason: RuledOut }
  | { readonly status: 'undecided'; readonly ask: 'mounting' | 'floatSits' };

const everything: readonly Hold[] = ['bareBalls', 'uFrame', 'triangle', 'clawEnds', 'bar', 'hookEnds'];
const frames: readonly Hold[] = ['uFrame', 'triangle'];

/** The ways of holding that each mounting style rules out; the mechanical reasons are worded in words/mounting.ts. */
export const ruledOut: Readonly<Record<RuledOut, readonly Hold[]>> = {
  boomOnTopLinkBracket: frames,
  subframe: everything,
  swingingDrive: frames,
  floatingTopLink: frames,
  twoPointsAndWheels: frames,
  armMower: ['uFrame', 'triangle', 'bar'],
};

/** Styles with no upper pin that a hook or a top link could hold. */
const withoutUpperPin: readonly MountingStyle[] = ['boomOnTopLinkBracket', 'subframe', 'twoPointsAndWheels'];

/**
 * Judges the mounting style. A drive that swings is ruled out by a frame only where its way through the frame can’t be
 * computed.
 *
 * @param implement the implement [record]
 * @param hold how it is held [kind]
 * @param isWayKnown guard and opening are measured, so that the shaft’s way is computed [boolean]
 * @returns pass, fail with the style as reason, or what has to be asked [status]
 */
export function judgeMounting(implement: Implement, hold: Hold, isWayKnown: boolean): MountingResult {
  const { mounting, floatSits } = implement;
  if (mounting === undefined) return { status: 'undecided', ask: 'mounting' };
  if (mounting === 'threePoint' || !ruledOut[mounting].includes(hold)) return { status: 'pass' };
  if (mounting === 'swingingDrive' && isWayKnown) return { status: 'pass' };
  if (mounting !== 'floatingTopLink') return { status: 'fail', reason: mounting };
  if (floatSits === undefined) return { status: 'undecided', ask: 'floatSits' };
  return floatSits === 'behindPin' ? { status: 'pass' } : { status: 'fail', reason: mounting };
}

/**
 * Has the implement an upper pin at all? Unknown styles are taken to have one, to be asked.
 *
 * @param implement an implement of it [JSON or record]
 * @returns false where the style has none [boolean]
 */
export function hasUpperPin(implement: Implement): boolean {
  return implement.mounting === undefined || !withoutUpperPin.includes(implement.mounting);
}

/**
 * Is all measured that the way of a drive shaft through a coupler is computed from?
 *
 * @param ledger where the inputs stand [ledger]
 * @returns true where guard and opening are [boolean]
 */
export function knowsShaftWay({ given }: Ledger): boolean {
  return ['shaft.guardTubeDiameter', 'shaft.guardConeDiameter', 'coupler.windowWidth', 'coupler.windowTop'].every(
    given,
  );
}
