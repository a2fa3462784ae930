import type { Finding } from '../engine/findings/index.ts';
import { sentenceCase } from './sentenceCase.ts';

/**
 * Nobody said whether a shaft drives the implement: every check of the drive waits for that one word.
 *
 * @param finding a finding [record]
 * @returns whether it waits for it [flag]
 */
export function waitsForDriven({ status, reason }: Finding): boolean {
  return status === 'notChecked' && reason === 'driven';
}

/**
 * `3 limits not checked`, `Drive and 1 limit not checked`.
 *
 * @param findings the findings of an answer [list]
 * @returns a few words; null where everything was checked [text]
 */
export function uncheckedText(findings: readonly Finding[]): string | null {
  const limits = findings.filter((finding) => finding.status === 'notChecked' && !waitsForDriven(finding)).length;
  const what = [
    ...(findings.some(waitsForDriven) ? ['drive'] : []),
    ...(limits === 0 ? [] : [`${limits} ${limits === 1 ? 'limit' : 'limits'}`]),
  ];
  return what.length === 0 ? null : sentenceCase(`${what.join(' and ')} not checked`);
}
