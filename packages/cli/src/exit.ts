import type { Outcome } from '@hitchwright/core/assess';

/** Exit codes, published in `hitchwright --help`: all four answers stand behind them. */
export const exitCodes = {
  works: 0,
  internalFault: 1,
  badInput: 2,
  withParts: 3,
  measureFirst: 4,
  willNot: 5,
} as const;

/** The exit code of an outcome; a verdict on nothing at all is a fault of ours. */
export function exitCodeOf(outcome: Outcome): number {
  return outcome === 'notChecked' || outcome === 'notNeeded' ? exitCodes.internalFault : exitCodes[outcome];
}

/** Thrown where the command itself was given wrongly; the message says what to type. */
export class UsageError extends Error {}
