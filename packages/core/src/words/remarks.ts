import type { Answer } from '../engine/assess/index.ts';
import type { CategorySummary } from '../engine/hookup/index.ts';
import type { Setup } from '../records/index.ts';
import { printBoth, type UnitSystem } from '../units/index.ts';
import { balanceRemarks } from './balanceRemarks.ts';
import { liftRemarks } from './liftRemarks.ts';
import { shaftRemarks } from './shaftRemarks.ts';
import { workRemarks } from './workRemarks.ts';

/**
 * What is worth saying of the setup beside its findings: where the top hook is set, how the
 * implement stands in a rigid coupler, what lift, drive, work and axles come to, and what its own figures say of its category.
 *
 * @param answer the answer [record]
 * @param system unit system to write in [us | metric]
 * @param setup the setup of the answer; nothing is said of its pace without it [record]
 * @returns sentences, none where there is nothing to say [texts]
 */
export function remarksOn(answer: Answer, system: UnitSystem, setup?: Setup): string[] {
  return [...remarksBesideAxles(answer, system, setup), ...balanceRemarks(answer, system)];
}

/**
 * The same without the axle loads, where those are told in a place of their own.
 *
 * @param answer the answer [record]
 * @param system unit system to write in [us | metric]
 * @param setup the setup of the answer; nothing is said of its pace without it [record]
 * @returns sentences, none where there is nothing to say [texts]
 */
export function remarksBesideAxles(answer: Answer, system: UnitSystem, setup?: Setup): string[] {
  return [
    hookRemark(answer, system),
    turnRemark(answer),
    ...liftRemarks(answer, system),
    ...shaftRemarks(answer, system),
    ...workRemarks(answer, system, setup),
    categoryRemark(answer.category),
  ].filter((remark) => remark !== null);
}

/** Where an adjustable top hook has to be set; not told while something open may still ask for another setting. */
function hookRemark({ findings, figures, outcomes }: Answer, system: UnitSystem): string | null {
  const hook = figures['coupler.topHookHeight'];
  const meets = findings.some(({ id, status }) => id === 'rear.mast' && status === 'pass');
  const isOpen = outcomes.hooksUp === 'measureFirst';
  if (!meets || isOpen || hook?.origin !== 'setting' || hook.low !== hook.high) return null;
  return `Set the top hook ${printBoth(hook.low, 'length', { system })} above the lower hooks.`;
}

/** Turns smaller than this are not worth a word [deg]. */
const noticeable = 0.5;

function turnRemark({ turn }: Answer): string | null {
  if (turn?.low == null || turn.high === null) return null;
  const most = Math.max(Math.abs(turn.low), Math.abs(turn.high));
  if (most < noticeable) return null;
  const [low, high] = [turn.low.toFixed(1), turn.high.toFixed(1)];
  const size = (low === high ? `${low}°` : `${low}° to ${high}°`).replaceAll('-', '−');
  return `In the coupler the implement stands turned by ${size}, rear up counting positive: the top link sets it level again.`;
}

function categoryRemark({ stamped, byPins, bySpan, byMast }: CategorySummary): string | null {
  const said = [readBy('pins', byPins), readBy('span', bySpan), readBy('mast', byMast)].filter((part) => part !== null);
  if (said.length === 0) return null;
  const stamp = stamped === null ? 'No category is stated' : `Stated category ${stamped}`;
  return `${stamp}; by its ${said.join(', by its ')}. A category is a label, not a fit, and power never decides it.`;
}

function readBy(name: string, categories: readonly string[]): string | null {
  return categories.length === 0 ? null : `${name} ${categories.join(' or ')}`;
}
