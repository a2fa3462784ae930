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
  | 'noCarryHeight'
  | 'notDriven'
  | 'noLimiter'
  | 'noLoader'
  | 'noFrontWeights'
  | 'notDrawn'
  | 'anyWidth'
  | 'noRemotes';

/** What a check that was not made would need. */
export type Need =
  | 'ratedLoad'
  | 'pinLoad'
  | 'tyres'
  | 'outlines'
  | 'lowestPart'
  | 'linkage'
  | 'heights'
  | 'load'
  | 'driven'
  | 'powerWanted'
  | 'series'
  | 'seriesSpeed'
  | 'guard'
  | 'window'
  | 'shields'
  | 'limiterTorque'
  | 'axleMasses'
  | 'plate'
  | 'tyreRating'
  | 'bracketLimit'
  | 'work'
  | 'workWidth'
  | 'workDepth'
  | 'workSpeed'
  | 'tools'
  | 'ptoPower'
  | 'powerMost'
  | 'outerWidth'
  | 'remotesTaken'
  | 'remotes'
  | 'remoteFlow'
  | 'remotePressure'
  | 'flowWanted'
  | 'pressureWanted';

/** What becomes of one check of the list: it is computed, or settled by what the records say. */
export type Line<Reason extends string = string> =
  | { readonly id: CheckId; readonly kind: 'computed'; readonly check: NamedCheck }
  | { readonly id: CheckId; readonly kind: 'notNeeded'; readonly reason: NotNeeded }
  | { readonly id: CheckId; readonly kind: 'notChecked'; readonly needs: Need }
  | { readonly id: CheckId; readonly kind: 'settled'; readonly status: 'pass' | 'fail'; readonly reason: Reason | null }
  | { readonly id: CheckId; readonly kind: 'ask'; readonly ask: string };

/**
 * A quantity that must not fall below zero.
 *
 * @param id the check [id]
 * @param scale one step when margins are weighed against each other [mm]
 * @param quantity what must not fall below zero [mm]
 * @returns the check [mm]
 */
export function atLeastZero(id: CheckId, scale: number, quantity: Term): NamedCheck {
  return { id, unit: 'mm', scale, measure: (at) => ({ quantity: quantity(at), low: exactly(0), high: null }) };
}

/**
 * A play that must lie between zero and a limit.
 *
 * @param id the check [id]
 * @param most the limit [mm]
 * @param hole what the pin goes into [mm]
 * @param pin what goes into it [mm]
 * @returns the check [mm]
 */
export function playWithin(id: CheckId, most: number, hole: Term, pin: Term): NamedCheck {
  return {
    id,
    unit: 'mm',
    scale: 1,
    measure: (at) => ({ quantity: subtract(hole(at), pin(at)), low: exactly(0), high: exactly(most) }),
  };
}
