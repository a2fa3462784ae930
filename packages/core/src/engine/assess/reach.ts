import type { CheckId } from '../findings/index.ts';
import type { Candidate } from './candidate.ts';

/** Parts of a setup that can be judged by themselves, the quickest first. What fails in a part fails in the whole. */
export const parts = ['joints', 'balance', 'lift', 'drive'] as const;

/** One of `parts`. */
export type Part = (typeof parts)[number];

/** What a change reaches beyond the joints themselves, by the field that it changes; anything else may reach all of it. */
const reaches: readonly (readonly [RegExp, readonly Part[]])[] = [
  [/^shaft(\.|$)|^tractor\.stubBehindAxle$/, ['drive']],
  [/^tractor\.(frontWeightMass|wheelWeightMass|loader)$/, ['balance']],
  [/(Bushing(Inside|Outside|Length)|\.clevisGap)$/, ['joints']],
];

/** Can a candidate change anything in a part? */
export function canReach({ edits }: Candidate, part: Part): boolean {
  return edits.some(({ path }) => reaches.find(([pattern]) => pattern.test(path))?.[1].includes(part) ?? true);
}

/** The part that a check is judged in. */
export function partOf(id: CheckId): Part {
  const group = id.slice(0, id.indexOf('.'));
  if (group === 'shaft') return 'drive';
  if (group === 'balance') return 'balance';
  return ['pickUp', 'work', 'contact', 'lift'].includes(group) || id === 'front.topLink' ? 'lift' : 'joints';
}
