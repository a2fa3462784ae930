import { exactly, subtract } from '../geometry/index.ts';
import type { Check, Term } from '../proof/index.ts';
import type { CheckId } from './checkIds.ts';

/** A check of a setup under its id. */
export type NamedCheck = Check<CheckId>;

/** Why a check is not needed. */
export type NotNeeded =
  | 'noCoupler'
  | 'otherKind'
  | 'noBushing'
  | 'noUpperPin'
  | 'hookHoldsPin'
  | 'platesHoldPin'
  | 'noReceiver'
  | 'pinned'
  | 'noWorkHeight'
  | 'noCarryHeight';

/** What a check that was not made would need. */
export type Need = 'ratedLoad' | 'pinLoad' | 'tyres' | 'outlines' | 'lowestPart' | 'linkage' | 'load';

/** What becomes of one check of the list: it is computed, or settled by what the records say. */
export type Line<Reason extends string = string> =
  | { readonly id: CheckId; readonly kind: 'computed'; readonly check: NamedCheck }
  | { readonly id: CheckId; readonly kind: 'notNeeded'; readonly reason: NotNeeded }
  | { readonly id: CheckId; readonly kind: 'notChecked'; readonly needs: Need }
  | { readonly id: CheckId; readonly kind: 'settled'; readonly status: 'pass' | 'fail'; readonly reason: Reason | null }
  | { readonly id: CheckId; readonly kind: 'ask'; readonly ask: string };

/** A quantity that must not fall below zero. */
export function atLeastZero(id: CheckId, scale: number, quantity: Term): NamedCheck {
  return { id, unit: 'mm', scale, measure: (at) => ({ quantity: quantity(at), low: exactly(0), high: null }) };
}

/** A play that must lie between zero and a limit [mm]. */
export function playWithin(id: CheckId, most: number, hole: Term, pin: Term): NamedCheck {
  return {
    id,
    unit: 'mm',
    scale: 1,
    measure: (at) => ({ quantity: subtract(hole(at), pin(at)), low: exactly(0), high: exactly(most) }),
  };
}
