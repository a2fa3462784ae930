import type { Setup } from '../../records/index.ts';
import { angleOf, exactly, subtract } from '../geometry/index.ts';
import type { Ledger } from '../inputs/index.ts';
import type { Term } from '../proof/index.ts';
import type { Hold } from './hold.ts';
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
