import { frontChecks } from './front.ts';
import type { CheckId, Line, NamedCheck, NotNeeded, Reason } from '../findings/index.ts';
import { hasUpperPin, judgeMounting, knowsShaftWay, type Joint } from '../joint/index.ts';
import { checksByHold, hookupIds } from './kinds.ts';
import { rearChecks } from './rear.ts';
import type { Turns } from './room.ts';

/**
 * Every check at the two joints with what becomes of it; always the same ids in the same order.
 *
 * @param joint all that the checks are written from [joint]
 * @param turns how the implement turns against the hooks through the lift; null where it never does [rad]
 * @returns one line for each check [lines]
 * @source our own definitions, docs/method/hookup.md; figures: docs/sources.md
 */
export function hookupLines(joint: Joint, turns: Turns | null): Line<Reason>[] {
  const checks = new Map([...frontChecks(joint), ...rearChecks(joint, turns)].map((check) => [check.id, check]));
  return hookupIds.map((id) => lineOf(joint, id, checks.get(id)));
}

function lineOf(joint: Joint, id: CheckId, check: NamedCheck | undefined): Line<Reason> {
  const reason = whyNotNeeded(joint, id);
  if (reason !== null) return { id, kind: 'notNeeded', reason };
  if (id === 'mounting') return mountingLine(joint);
  if (id === 'rear.receiver') return receiverLine(joint);
  if (check === undefined) throw new Error(`invariant: no check ${id}`);
  return { id, kind: 'computed', check };
}

function whyNotNeeded(joint: Joint, id: CheckId): NotNeeded | null {
  if (!checksByHold[joint.hold].includes(id)) return joint.hold === 'bareBalls' ? 'noCoupler' : 'otherKind';
  if (lacksBushing(joint, id)) return 'noBushing';
  if (holdsUpperPin(joint, id) && !hasUpperPin(joint.setup.implement)) return 'noUpperPin';
  if (id === 'rear.retention') return retentionNotNeeded(joint);
  const wanted = counterparts[id];
  const { receiver } = joint.setup.implement;
  return wanted === undefined || receiver === undefined || receiver === wanted ? null : 'noReceiver';
}

/** A check of a bushing where none is fitted. */
function lacksBushing(joint: Joint, id: CheckId): boolean {
  const isFront = id.startsWith('front');
  if (id.endsWith('.upperBushing')) return !(isFront ? joint.frontUpper : joint.rear).hasUpperBushing;
  return id.includes('.bushing') && !(isFront ? joint.frontLower : joint.rear).hasBushing;
}

/** Checks that only make sense where the implement carries the counterpart. */
const counterparts: Readonly<Partial<Record<CheckId, 'triangle' | 'jaws'>>> = {
  'rear.receiverAngle': 'triangle',
  'rear.receiverWidth': 'triangle',
  'rear.jaw': 'jaws',
  'rear.jawSpan': 'jaws',
};

function holdsUpperPin(joint: Joint, id: CheckId): boolean {
  const onImplement = joint.frontUpper.path === 'implement';
  return (
    ['rear.upperPin', 'rear.upperBushing', 'rear.clevis', 'rear.mast'].includes(id) ||
    (onImplement && ['front.upperPin', 'front.upperBushing', 'front.clevis'].includes(id))
  );
}

function retentionNotNeeded(joint: Joint): NotNeeded | null {
  if (joint.setup.implement.lowerPinPlates === 'double') return 'platesHoldPin';
  return joint.setup.coupler?.retainingPin === 'notNeeded' ? 'hookHoldsPin' : null;
}

function mountingLine(joint: Joint): Line<Reason> {
  const result = judgeMounting(joint.setup.implement, joint.hold, knowsShaftWay(joint.ledger));
  if (result.status === 'undecided') return { id: 'mounting', kind: 'ask', ask: `implement.${result.ask}` };
  return {
    id: 'mounting',
    kind: 'settled',
    status: result.status,
    reason: result.status === 'fail' ? result.reason : null,
  };
}

/** A triangular frame and a bar each need their counterpart on the implement. */
function receiverLine(joint: Joint): Line<Reason> {
  const { receiver } = joint.setup.implement;
  if (receiver === undefined) return { id: 'rear.receiver', kind: 'ask', ask: 'implement.receiver' };
  const wanted = joint.hold === 'bar' ? 'jaws' : 'triangle';
  return { id: 'rear.receiver', kind: 'settled', status: receiver === wanted ? 'pass' : 'fail', reason: null };
}
