import type { Answer } from '@hitchwright/core/assess';
import type { CheckId, Finding } from '@hitchwright/core/findings';

/** What something carries at most, what it may carry, and by what [kg]. */
export interface LimitRow {
  readonly name: string;
  /** The check that governs; null where none of them could be made. */
  readonly governs: { readonly finding: Finding; readonly by: string } | null;
  /** What was not known, so that it could not be compared. */
  readonly unknown: readonly string[];
}

type Named = readonly [id: CheckId, by: string];

const limits: readonly (readonly [name: string, ...checks: Named[]])[] = [
  ['Front axle', ['limit.frontAxle', 'axle plate'], ['limit.frontTyres', 'front tyres']],
  ['Rear axle', ['limit.rearAxle', 'axle plate'], ['limit.rearTyres', 'rear tyres']],
  ['In all', ['limit.totalMass', 'plate']],
  ['Front weights', ['limit.frontBracket', 'front bracket']],
];

/** One row for each axle, for everything, and for the bracket of front weights where there are any: the least permitted governs. */
export function limitRows({ findings }: Pick<Answer, 'findings'>): LimitRow[] {
  const found = (id: CheckId): Finding | undefined => findings.find((finding) => finding.id === id);
  return limits.flatMap(([name, ...checks]): LimitRow[] => {
    const asked = checks.flatMap(([id, by]) => {
      const finding = found(id);
      return finding === undefined || finding.status === 'notNeeded' ? [] : [{ finding, by }];
    });
    if (asked.length === 0) return [];
    const known = asked.filter(({ finding }) => permittedBy(finding) !== null);
    const [governs = null] = known.sort((a, b) => least(a.finding) - least(b.finding));
    return [{ name, governs, unknown: asked.filter((one) => !known.includes(one)).map(({ by }) => by) }];
  });
}

/** What a limit permits [kg]; null where it was not compared. */
export function permittedBy({ band }: Finding): number | null {
  return band?.high ?? null;
}

function least(finding: Finding): number {
  return permittedBy(finding) ?? Infinity;
}
