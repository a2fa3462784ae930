import type { Setup } from '../../records/index.ts';
import { angleOf, exactly, subtract } from '../geometry/index.ts';
import type { Ledger } from '../inputs/index.ts';
import type { Check, Term } from '../proof/index.ts';
import type { CheckId, Hold } from './kinds.ts';
import { hasUpperPin } from './mounting.ts';
import { couplerPins, implementPins, type Pins } from './pins.ts';

/** All that the checks of one setup are written from. */
export interface Joint {
  readonly setup: Setup;
  readonly ledger: Ledger;
  readonly hold: Hold;
  /** The pins that the tractor's balls take, and those that the coupler's hooks take. */
  readonly frontLower: Pins;
  /** The body that the top link holds. */
  readonly frontUpper: Pins;
  readonly rear: Pins;
  readonly tractor: (key: string) => Term;
  readonly coupler: (key: string) => Term;
  readonly implement: (key: string) => Term;
  /** How far the implement is turned in a rigid coupler against it [rad]; zero where no rear upper hook holds it. */
  readonly turn: Term;
}

/** A check of the hook-up under its id. */
export type HookupCheck = Check<CheckId>;

/** Kinds whose frame the top link holds; under the others it holds the implement itself. */
const heldByFrame: readonly Hold[] = ['uFrame', 'triangle'];

/** Gathers what the checks of a setup are written from. */
export function openJoint(setup: Setup, ledger: Ledger): Joint {
  const hold = setup.coupler?.kind ?? 'bareBalls';
  const rear = implementPins(setup, ledger);
  const front = hold === 'bareBalls' || hold === 'clawEnds' ? rear : couplerPins(setup, ledger);
  const coupler = (key: string): Term => ledger.later(`coupler.${key}`);
  return {
    setup,
    ledger,
    hold,
    frontLower: front,
    frontUpper: heldByFrame.includes(hold) ? front : rear,
    rear,
    tractor: (key) => ledger.later(`tractor.${key}`),
    coupler,
    implement: (key) => ledger.later(`implement.${key}`),
    turn:
      hold === 'uFrame' && hasUpperPin(setup.implement)
        ? turnOf(coupler('topHookBehind'), coupler('topHookHeight'), rear)
        : () => exactly(0),
  };
}

/** δ = atan2(h2, e2) − atan2(h, e) [rad], docs/method/hookup.md. */
function turnOf(behind: Term, height: Term, rear: Pins): Term {
  return (at) => subtract(angleOf(behind(at), height(at)), angleOf(rear.mastSetback(at), rear.mastHeight(at)));
}

/** A quantity that must not fall below zero. */
export function atLeastZero(id: CheckId, scale: number, quantity: Term): HookupCheck {
  return { id, unit: 'mm', scale, measure: (at) => ({ quantity: quantity(at), low: exactly(0), high: null }) };
}

/** A play that must lie between zero and a limit [mm]. */
export function playWithin(id: CheckId, most: number, hole: Term, pin: Term): HookupCheck {
  return {
    id,
    unit: 'mm',
    scale: 1,
    measure: (at) => ({ quantity: subtract(hole(at), pin(at)), low: exactly(0), high: exactly(most) }),
  };
}
