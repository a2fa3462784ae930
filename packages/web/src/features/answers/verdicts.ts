import type { Outcome } from '@hitchwright/core/assess';

/** Verdicts that a saved answer may have, in words. */
export const verdicts = [
  ['works', 'Works'],
  ['withParts', 'Works with parts'],
  ['willNot', 'Will not work'],
  ['measureFirst', 'Measure first'],
  ['notChecked', 'Not checked yet'],
  ['notReadable', 'Can’t be asked any more'],
] as const;

/** What a verdict is called. */
export function verdictName(verdict: string): string {
  return verdicts.find(([one]) => one === verdict)?.[1] ?? verdict;
}

/** What is drawn beside a verdict; nothing is checked of an answer that can’t be asked any more. */
export function outcomeOf(verdict: string): Outcome {
  const known = ['works', 'withParts', 'willNot', 'measureFirst'] as const;
  return known.find((one) => one === verdict) ?? 'notChecked';
}
