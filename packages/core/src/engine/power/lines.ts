import { drawbarLine } from './drawbarLine.ts';
import type { CheckId, Line, Need, NotNeeded, Reason } from '../findings/index.ts';
import type { Joint } from '../joint/index.ts';
import { hydraulicLines } from './hydraulicLines.ts';
import { coversTracks } from './works.ts';

/**
 * Every check of power, width and hydraulics with what becomes of it; always the same ids in the same order. They all stand
 * beside the verdict.
 *
 * @param joint what the checks of a setup are written from [record]
 * @returns one line for each check [lines]
 * @source our own definitions, docs/method/power.md
 */
export function workLines(joint: Joint): Line<Reason>[] {
  return [powerMostLine(joint), drawbarLine(joint), widthLine(joint), ...hydraulicLines(joint)];
}

const notNeeded = (id: CheckId, reason: NotNeeded): Line<Reason> => ({ id, kind: 'notNeeded', reason });
const notChecked = (id: CheckId, needs: Need): Line<Reason> => ({ id, kind: 'notChecked', needs });

/** Too strong a tractor breaks what is made for a smaller one. */
function powerMostLine({ ledger, tractor, implement }: Joint): Line<Reason> {
  const id = 'limit.powerMost';
  if (!ledger.given('implement.powerMost')) return notChecked(id, 'powerMost');
  if (!ledger.given('tractor.ptoPower')) return notChecked(id, 'ptoPower');
  const [given, most] = [tractor('ptoPower'), implement('powerMost')];
  return {
    id,
    kind: 'computed',
    check: { id, unit: 'kW', scale: 1, measure: (at) => ({ quantity: given(at), low: null, high: most(at) }) },
  };
}

/** What spoils its work under wheels has to be as wide as the tractor over its rear tyres; it is taken to hang in the middle. */
function widthLine({ ledger, setup, tractor, implement }: Joint): Line<Reason> {
  const id = 'limit.width';
  const { work } = setup.implement;
  if (work === undefined) return notChecked(id, 'work');
  if (!coversTracks(work)) return notNeeded(id, 'anyWidth');
  if (!ledger.given('implement.workWidth')) return notChecked(id, 'workWidth');
  if (!ledger.given('tractor.outerWidth')) return notChecked(id, 'outerWidth');
  const [worked, tyres] = [implement('workWidth'), tractor('outerWidth')];
  return {
    id,
    kind: 'computed',
    check: { id, unit: 'mm', scale: 25, measure: (at) => ({ quantity: worked(at), low: tyres(at), high: null }) },
  };
}
