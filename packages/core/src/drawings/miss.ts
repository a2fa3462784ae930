import type { Finding } from '../engine/findings/index.ts';

/** A miss on the axis of its quantity [unit of the finding]: the end of the band that is missed, and the nearest and farthest that the quantity may be from it. */
export interface Miss {
  readonly limit: number;
  readonly best: number;
  readonly worst: number;
}

/** What a failing finding misses by; |worst − limit| is its margin. Null where it fails for another reason or nothing bounds it. */
export function missOfFinding({ status, margin, quantity, side }: Finding): Miss | null {
  if (status !== 'fail' && status !== 'cured') return null;
  if (margin?.low == null || margin.low >= 0 || side === null) return null;
  const worst = side === 'high' ? quantity?.high : quantity?.low;
  if (worst == null) return null;
  const towards = side === 'high' ? 1 : -1;
  const limit = worst + towards * margin.low;
  const least = margin.high === null ? 0 : Math.max(0, -margin.high);
  return { limit, worst, best: limit + towards * least };
}
