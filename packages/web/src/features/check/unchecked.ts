import type { Finding } from '@hitchwright/core/findings';

/** Nobody said whether a shaft drives the implement: every check of the drive waits for that one word. */
export function waitsForDriven({ status, reason }: Finding): boolean {
  return status === 'notChecked' && reason === 'driven';
}

/** `3 limits not checked`, `drive and 1 limit not checked`; null where everything was checked. */
export function uncheckedText(findings: readonly Finding[]): string | null {
  const limits = findings.filter((finding) => finding.status === 'notChecked' && !waitsForDriven(finding)).length;
  const what = [
    ...(findings.some(waitsForDriven) ? ['drive'] : []),
    ...(limits === 0 ? [] : [`${limits} ${limits === 1 ? 'limit' : 'limits'}`]),
  ];
  return what.length === 0 ? null : `${what.join(' and ')} not checked`;
}
