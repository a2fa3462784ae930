import type { Answer } from '@hitchwright/core/assess';
import type { CheckId } from '@hitchwright/core/findings';
import type { Bound, Setup, Value } from '@hitchwright/core/records';

/** The lower right pin of one implement, from the centre line [mm]. */
export interface DrawnLowerPin {
  readonly shoulder: number;
  readonly tip: number;
  readonly diameter: number;
  readonly plate: number;
  readonly isMisfit: boolean;
}

/** The upper pin of one implement, above the lower ones [mm]. */
export interface DrawnUpperPin {
  readonly heights: readonly number[];
  readonly diameter: number;
  readonly isMisfit: boolean;
}

/** Where the lower right pin lies. */
export function lowerPin({ implement }: Setup, answer: Answer): DrawnLowerPin | 'not measured' {
  const span = middle(implement.shoulderSpan);
  const standOut = middle(implement.standOut);
  if (span === null || standOut === null) return 'not measured';
  const way = implement.pinsPoint === 'in' ? -1 : 1;
  return {
    shoulder: span / 2,
    tip: span / 2 + way * standOut,
    diameter: middle(implement.lowerPinDiameter) ?? 22,
    plate: middle(implement.plateThickness) ?? 10,
    isMisfit: fails(answer, [
      'front.span',
      'rear.shoulders',
      'rear.pinSeat',
      'rear.retention',
      'rear.lowerPin',
      'front.lowerPin',
    ]),
  };
}

/** Where the upper pin lies, in each of its holes. */
export function upperPin({ implement }: Setup, answer: Answer): DrawnUpperPin | 'not measured' | 'none' {
  const { mounting, mastHeight } = implement;
  if (mounting === 'boomOnTopLinkBracket' || mounting === 'subframe' || mounting === 'twoPointsAndWheels')
    return 'none';
  const heights =
    mastHeight?.kind === 'stops' ? mastHeight.at.map(centre) : [middle(mastHeight)].filter((height) => height !== null);
  if (heights.length === 0) return 'not measured';
  return { heights, diameter: middle(implement.upperPinDiameter) ?? 19, isMisfit: fails(answer, ['rear.mast']) };
}

function fails(answer: Answer, ids: readonly CheckId[]): boolean {
  return answer.findings.some(({ id, status }) => ids.includes(id) && (status === 'fail' || status === 'cured'));
}

/** Where the right lower hook lies, or the ball of a bare link can. */
export function lowerHooks({ coupler, tractor }: Setup): Bound[] {
  if (coupler === undefined) {
    const { ballSpan } = tractor;
    return ballSpan?.kind === 'adjustable' ? [{ low: ballSpan.lowest.low / 2, high: ballSpan.highest.high / 2 }] : [];
  }
  const span = middle(coupler.hookSpan);
  const width = middle(coupler.hookWidth);
  return span === null || width === null ? [] : [{ low: (span - width) / 2, high: (span + width) / 2 }];
}

/** Each hole of the top hook, as wide as a seated pin can move; or the whole range that it can be set to. */
export function upperHooks({ coupler }: Setup): Bound[] {
  const height = coupler?.topHookHeight;
  const half = Math.max((middle(coupler?.topHookPlay) ?? 0) / 2, 3);
  if (height?.kind === 'stops') return height.at.map((stop) => ({ low: stop.low - half, high: stop.high + half }));
  if (height?.kind === 'adjustable') return [{ low: height.lowest.low, high: height.highest.high }];
  const fixed = middle(height);
  return fixed === null ? [] : [{ low: fixed - half, high: fixed + half }];
}

function middle(value: Value | undefined): number | null {
  if (value === undefined || value.kind === 'unknown') return null;
  if (value.kind === 'stated') return value.value;
  if (value.kind === 'adjustable') return (value.lowest.low + value.highest.high) / 2;
  return value.kind === 'stops' ? null : centre(value.bound);
}

function centre({ low, high }: Bound): number {
  return (low + high) / 2;
}
