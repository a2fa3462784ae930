/** Exit codes, published in `hitchwright --help`: hook-up and lift stand behind them, drive and balance not yet. */
export const exitCodes = {
  works: 0,
  internalFault: 1,
  badInput: 2,
  withParts: 3,
  measureFirst: 4,
  willNot: 5,
} as const;

/** Thrown where the command itself was given wrongly; the message says what to type. */
export class UsageError extends Error {}
