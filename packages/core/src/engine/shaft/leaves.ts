import { add, exactly, scale, subtract } from '../geometry/index.ts';
import type { Joint } from '../joint/index.ts';
import type { LeafTerms, Leaves } from '../lift/index.ts';
import type { Term } from '../proof/index.ts';

const nothing: Term = () => exactly(0);

/**
 * The terms of a drive beside those of the lift [mm, deg].
 *
 * @param joint what the checks are written from [record]
 * @param lift the terms of the lift [terms]
 * @returns both [mm, deg, kg, bar]
 */
export function shaftLeaves(joint: Joint, lift: Leaves): Leaves {
  const own = ownLeaves(joint);
  return { exact: new Map([...lift.exact, ...own]), quick: new Map([...lift.quick, ...own]) };
}

function ownLeaves(joint: Joint): LeafTerms {
  const { ledger, tractor, implement } = joint;
  const optional = (key: string): Term => (ledger.given(`implement.${key}`) ? implement(key) : nothing);
  return new Map<string, Term>([
    ['stubBehindAxle', tractor('stubBehindAxle')],
    ['stubHeight', tractor('stubHeight')],
    ['stubAside', tractor('stubAside')],
    ['stubReach', reachFrom(joint, tractorEnd)],
    ['inputBehind', implement('inputBehind')],
    ['inputAbove', implement('inputAbove')],
    ['inputAside', implement('inputAside')],
    ['inputAngle', implement('inputAngle')],
    ['inputYaw', optional('inputYaw')],
    ['inputReach', reachFrom(joint, implementEnd)],
    ['shiftLeft', optional('shiftLeft')],
    ['shiftRight', optional('shiftRight')],
    ['closedLength', closedLength(joint)],
    ['closedOverlap', ledger.later('shaft.closedOverlap')],
  ]);
}

/** One end of a drive: where its shaft was read, the yoke on it, and how far its groove is from its end. */
interface End {
  readonly place: string;
  readonly yoke: string;
  readonly grooveToEnd: string;
}

const tractorEnd: End = {
  place: 'tractor.stubBehindAxle',
  yoke: 'shaft.yokeReachFront',
  grooveToEnd: 'tractor.stubGrooveToEnd',
};
const implementEnd: End = {
  place: 'implement.inputBehind',
  yoke: 'shaft.yokeReachRear',
  grooveToEnd: 'implement.inputGrooveToEnd',
};

/** From the point that a splined shaft was read at to the cross centre: groove, end and cross lie in this order. */
function reachFrom({ ledger }: Joint, end: End): Term {
  const place = ledger.value(end.place)?.provenance.from ?? 'groove';
  if (place === 'crossCentre') return nothing;
  const reach = ledger.later(end.yoke);
  const between = ledger.later(end.grooveToEnd);
  const reachedFrom = ledger.value(end.yoke)?.provenance.from ?? 'shaftEnd';
  if (place === reachedFrom) return reach;
  return place === 'groove' ? (at) => add(reach(at), between(at)) : (at) => subtract(reach(at), between(at));
}

/** Groove to cross centre, for a length that was read from pin to pin. */
function reachFromGroove({ ledger }: Joint, end: End): Term {
  const reach = ledger.later(end.yoke);
  if (ledger.value(end.yoke)?.provenance.from === 'groove') return reach;
  const between = ledger.later(end.grooveToEnd);
  return (at) => add(reach(at), between(at));
}

/** Lc from cross to cross, whichever way it was read. */
function closedLength(joint: Joint): Term {
  const read = joint.ledger.later('shaft.closedLength');
  const from = joint.ledger.value('shaft.closedLength')?.provenance.from ?? 'crossCentre';
  if (from === 'crossCentre') return read;
  if (from === 'yokeEnds') {
    const beyond = joint.ledger.later('shaft.yokeOverCross');
    return (at) => subtract(read(at), scale(beyond(at), 2));
  }
  const ends = [reachFromGroove(joint, tractorEnd), reachFromGroove(joint, implementEnd)] as const;
  return (at) => subtract(read(at), add(ends[0](at), ends[1](at)));
}
