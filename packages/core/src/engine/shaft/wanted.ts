import type { Reading } from '../proof/index.ts';
import { isPlaced, type ShaftQuestion } from './question.ts';
import { longestWhileTurning, shortestAnywhere } from './lines.ts';

/** What a drive shaft would have to measure for this pair, whatever the open figures turn out to be [mm]. */
export interface ShaftWanted {
  /** Closed length from cross to cross, at the most. */
  readonly closedAtMost: number;
  /** Length from cross to cross with the overlap that the rules want, at the least; null where that is a share of a profile. */
  readonly reachAtLeast: number | null;
}

/**
 * What a shaft would have to measure.
 *
 * @param question the drive of a setup [question]
 * @param at reads the reported setting [reading]
 * @returns lengths, or null where nothing is driven or its ends are not placed [mm]
 */
export function shaftWantedBy(question: ShaftQuestion, at: Reading): ShaftWanted | null {
  if (!isPlaced(question)) return null;
  const { clearance, overlap } = question.rules;
  const closedAtMost = Math.floor(shortestAnywhere(question).bounds(at).low - clearance.value);
  const longest = longestWhileTurning(question).bounds(at).high;
  const reachAtLeast = overlap.kind === 'length' ? Math.ceil(longest + overlap.figure.value) : null;
  return Number.isFinite(closedAtMost) && Number.isFinite(longest) ? { closedAtMost, reachAtLeast } : null;
}
