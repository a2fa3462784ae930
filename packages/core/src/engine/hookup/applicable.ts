import { frontChecks } from './front.ts';
import type { HookupCheck, Joint } from './joint.ts';
import { checkIds, checksByHold, type CheckId } from './kinds.ts';
import { hasUpperPin, judgeMounting, type RuledOut } from './mounting.ts';
import { rearChecks } from './rear.ts';

/** Why a check is not needed. */
export type NotNeeded =
  'noCoupler' | 'otherKind' | 'noBushing' | 'noUpperPin' | 'hookHoldsPin' | 'platesHoldPin' | 'noReceiver';

/** What becomes of one check of the list: it is computed, or settled by what the records say. */
export type Line =
  | { readonly id: CheckId; readonly kind: 'computed'; readonly check: HookupCheck }
  | { readonly id: CheckId; readonly kind: 'notNeeded'; readonly reason: NotNeeded }
  | { readonly id: CheckId; readonly kind: 'notChecked'; readonly needs: 'ratedLoad' | 'pinLoad' }
  | {
      readonly id: CheckId;
      readonly kind: 'settled';
      readonly status: 'pass' | 'fail';
      readonly reason: RuledOut | null;
    }
  | { readonly id: CheckId; readonly kind: 'ask'; readonly ask: string };

/** Every check of the hook-up with what becomes of it; always the same ids in the same order. */
export function allLines(joint: Joint): Line[] {
  const checks = new Map([...frontChecks(joint), ...rearChecks(joint)].map((check) => [check.id, check]));
  return checkIds.map((id) => lineOf(joint, id, checks.get(id)));
}

function lineOf(joint: Joint, id: CheckId, check: HookupCheck | undefined): Line {
  if (id === 'limit.pinLoad') return { id, kind: 'notChecked', needs: 'pinLoad' };
  const reason = whyNotNeeded(joint, id);
  if (reason !== null) return { id, kind: 'notNeeded', reason };
  if (id === 'mounting') return mountingLine(joint);
  if (id === 'limit.couplerLoad') return { id, kind: 'notChecked', needs: 'ratedLoad' };
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
    (onImplement && ['front.upperPin', 'front.upperBushing', 'front.clevis', 'front.topLink'].includes(id))
  );
}

function retentionNotNeeded(joint: Joint): NotNeeded | null {
  if (joint.setup.implement.lowerPinPlates === 'double') return 'platesHoldPin';
  return joint.setup.coupler?.retainingPin === 'notNeeded' ? 'hookHoldsPin' : null;
}

function mountingLine(joint: Joint): Line {
  const result = judgeMounting(joint.setup.implement, joint.hold);
  if (result.status === 'undecided') return { id: 'mounting', kind: 'ask', ask: `implement.${result.ask}` };
  return {
    id: 'mounting',
    kind: 'settled',
    status: result.status,
    reason: result.status === 'fail' ? result.reason : null,
  };
}

/** A triangular frame and a bar each need their counterpart on the implement. */
function receiverLine(joint: Joint): Line {
  const { receiver } = joint.setup.implement;
  if (receiver === undefined) return { id: 'rear.receiver', kind: 'ask', ask: 'implement.receiver' };
  const wanted = joint.hold === 'bar' ? 'jaws' : 'triangle';
  return { id: 'rear.receiver', kind: 'settled', status: receiver === wanted ? 'pass' : 'fail', reason: null };
}
