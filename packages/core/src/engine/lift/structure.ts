import { hasUpperPin, type Joint } from '../joint/index.ts';
import { knowledgeOf, type Knowledge } from './knowledge.ts';

/**
 * What decides how the computation through the lift is written, apart from any figure: setups of the same structure share
 * their formulas.
 */
export interface Structure extends Knowledge {
  /** Where the body that the top link holds sits: on the balls, on the balls with the implement hung behind, or on the link ends. */
  readonly held: 'onBalls' | 'byFrame' | 'onLinkEnds';
  readonly parkedGiven: boolean;
  readonly workGiven: boolean;
  readonly stopGiven: boolean;
  /** The top link may take another length for carrying than for work. */
  readonly carriesApart: boolean;
  readonly testTopLinkGiven: boolean;
  /** The implement carries something with a place of its own. */
  readonly carries: boolean;
  /** Nothing is lifted but the implement itself. */
  readonly alone: boolean;
  /** A top hook holds the implement's upper pin, so that it can stand turned in the coupler. */
  readonly hooked: boolean;
}

const heldBy: Readonly<Record<Joint['hold'], Structure['held']>> = {
  bareBalls: 'onBalls',
  clawEnds: 'onBalls',
  uFrame: 'byFrame',
  triangle: 'byFrame',
  hookEnds: 'onLinkEnds',
  bar: 'onLinkEnds',
};

/** The structure of a setup. */
export function structureOf(joint: Joint): Structure {
  const { ledger, hold } = joint;
  const topLink = ledger.value('tractor.topLinkLength');
  return {
    ...knowledgeOf(joint),
    held: heldBy[hold],
    parkedGiven: ledger.given('implement.parkedPinHeight'),
    workGiven: ledger.given('implement.workPinHeight'),
    stopGiven: ledger.given('tractor.liftStopHeight'),
    carriesApart: topLink?.kind === 'adjustable' && topLink.setting === 'perPosition',
    testTopLinkGiven: ledger.given('tractor.liftTestTopLink'),
    carries: ledger.given('implement.carriedMass'),
    alone: hold === 'bareBalls' && !ledger.given('implement.carriedMass'),
    hooked: hold === 'uFrame' && hasUpperPin(joint.setup.implement),
  };
}

const keys = new WeakMap<Structure, string>();

/** A structure in writing, by which its formulas are known: asked for often, written once. */
export function keyOf(structure: Structure): string {
  const known = keys.get(structure) ?? JSON.stringify(structure);
  keys.set(structure, known);
  return known;
}
