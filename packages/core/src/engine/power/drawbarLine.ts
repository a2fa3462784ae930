import { multiply, type Interval } from '../geometry/index.ts';
import type { Line, Need, Reason } from '../findings/index.ts';
import type { Joint } from '../joint/index.ts';
import type { Reading, Term } from '../proof/index.ts';
import type { DraftRow } from '../../tables/index.ts';
import { drawbarPower } from './drawbar.ts';
import { draftRange } from './drawn.ts';
import { draftRows } from './works.ts';

/**
 * The power that is left at the drawbar against what the work takes there: pull times speed, for kinds of work that a draft is
 * known for. The soil and how far the table is off are one uncertain share of the range of pulls.
 */
export function drawbarLine(joint: Joint): Line<Reason> {
  const id = 'limit.draft';
  const { work } = joint.setup.implement;
  if (work === undefined) return { id, kind: 'notChecked', needs: 'work' };
  const rows = draftRows(work);
  if (rows.length === 0) return { id, kind: 'notNeeded', reason: 'notDrawn' };
  const needs = missing(joint, rows);
  if (needs !== null) return { id, kind: 'notChecked', needs };
  const [given, share] = [joint.tractor('ptoPower'), joint.tractor('drawbarShare')];
  const wanted = wantedPower(joint, rows);
  return {
    id,
    kind: 'computed',
    check: {
      id,
      unit: 'kW',
      scale: 1,
      measure: (at) => ({ quantity: multiply(given(at), share(at)), low: wanted(at), high: null }),
    },
  };
}

const countsWidth = (rows: readonly DraftRow[]): boolean => rows.some(({ per }) => per === 'metre');
const countsDepth = (rows: readonly DraftRow[]): boolean => rows.some(({ byDepth }) => byDepth);

function missing({ ledger, setup }: Joint, rows: readonly DraftRow[]): Need | null {
  if (countsWidth(rows) && !ledger.given('implement.workWidth')) return 'workWidth';
  if (!countsWidth(rows) && setup.implement.tools === undefined) return 'tools';
  if (countsDepth(rows) && !ledger.given('implement.workDepth')) return 'workDepth';
  if (!ledger.given('implement.workSpeed') && !ledger.told('implement.workSpeed')) return 'workSpeed';
  return ledger.given('tractor.ptoPower') ? null : 'ptoPower';
}

/** Rises with speed, width, depth and soil alike, so its ends are at theirs [kW]. */
function wantedPower({ implement, setup }: Joint, rows: readonly DraftRow[]): Term {
  const none: Term = () => ({ low: 0, high: 0 });
  const [speed, share] = [implement('workSpeed'), implement('draftShare')];
  const width = countsWidth(rows) ? implement('workWidth') : none;
  const depth = countsDepth(rows) ? implement('workDepth') : none;
  const tools = setup.implement.tools ?? 0;
  const at = (read: Reading, end: keyof Interval): number => {
    const counted = countsWidth(rows) ? width(read)[end] / 1000 : tools;
    const { low, high } = draftRange(rows, speed(read)[end], counted, depth(read)[end] / 10);
    return drawbarPower(low + share(read)[end] * (high - low), speed(read)[end]);
  };
  return (read) => ({ low: at(read, 'low'), high: at(read, 'high') });
}
