import { guardOverlap, ptoType, seriesPower, type PtoTypeNumber, type SeriesNumber } from '../../tables/index.ts';
import { exactly, lesser, scale } from '../geometry/index.ts';
import type { CheckId, Line, Mismatch, Need, Reason } from '../findings/index.ts';
import { torqueOf } from './joints.ts';
import type { ShaftQuestion } from './question.ts';

const settled = (id: CheckId, reason: Mismatch | null): Line<Reason> =>
  reason === null ? { id, kind: 'settled', status: 'pass', reason } : { id, kind: 'settled', status: 'fail', reason };
const ask = (id: CheckId, path: string): Line<Reason> => ({ id, kind: 'ask', ask: path });
const notChecked = (id: CheckId, needs: Need): Line<Reason> => ({ id, kind: 'notChecked', needs });

/** Splines at both ends go onto each other; without a shaft, those of stub and input shaft need one shaft between them. */
export function splinesLine({ lift, shaft }: ShaftQuestion): Line<Reason> {
  const id = 'shaft.splines';
  const { tractor, implement, shaft: fitted } = lift.joint.setup;
  if (fitted === undefined) return withoutShaft(tractor.ptoType, implement.inputType);
  const front = apart(tractor.ptoType, shaft.tractorType);
  const rear = apart(implement.inputType, shaft.implementType);
  if (front === 'apart') return settled(id, 'tractorSplines');
  if (rear === 'apart') return settled(id, 'implementSplines');
  if (front === 'open') return ask(id, tractor.ptoType === undefined ? 'tractor.ptoType' : 'shaft.tractorType');
  if (rear === 'open')
    return ask(id, implement.inputType === undefined ? 'implement.inputType' : 'shaft.implementType');
  return settled(id, null);
}

/** Before a shaft is chosen, stub and input shaft themselves have to be of one type. */
function withoutShaft(stub: PtoTypeNumber | undefined, input: PtoTypeNumber | undefined): Line<Reason> {
  const id = 'shaft.splines';
  if (stub === undefined) return ask(id, 'tractor.ptoType');
  if (input === undefined) return ask(id, 'implement.inputType');
  return settled(id, stub === input ? null : 'stubAndInput');
}

function apart(end: PtoTypeNumber | undefined, yoke: PtoTypeNumber | undefined): 'same' | 'apart' | 'open' {
  if (end === undefined || yoke === undefined) return 'open';
  return end === yoke ? 'same' : 'apart';
}

/** The speeds the tractor offers: said, or else that of its stub's type. */
function speedsOf({ lift }: ShaftQuestion): readonly number[] | null {
  const { ptoSpeeds, ptoType: type } = lift.joint.setup.tractor;
  return ptoSpeeds ?? (type === undefined ? null : [ptoType(type).speed.value]);
}

/** A speed within this share of the one wanted is the same speed: 540 and 540, never 540 and 1000. */
const sameSpeed = 0.03;

/** The tractor must offer the speed that the implement is made for. Nothing that changes the speed is ever offered. */
export function speedLine(question: ShaftQuestion): Line<Reason> {
  const id = 'shaft.speed';
  const wanted = question.lift.joint.setup.implement.inputSpeed;
  const offered = speedsOf(question);
  if (wanted === undefined) return ask(id, 'implement.inputSpeed');
  if (offered === null) return ask(id, 'tractor.ptoSpeeds');
  const isOffered = offered.some((speed) => Math.abs(speed - wanted) <= sameSpeed * wanted);
  return settled(id, isOffered ? null : 'speed');
}

/** Standard PTOs turn clockwise seen from behind (ISO 500-1); who says nothing of either end means that. */
export function directionLine({ lift }: ShaftQuestion): Line<Reason> {
  const { tractor, implement } = lift.joint.setup;
  const isSame = (tractor.ptoTurns ?? 'clockwise') === (implement.inputTurns ?? 'clockwise');
  return settled('shaft.direction', isSame ? null : 'direction');
}

/** The PTO must give what the implement wants; where that was not read, what machines of its kind and width want. */
export function powerLine({ lift: { joint } }: ShaftQuestion): Line<Reason> {
  const id = 'shaft.power';
  const wantedPath = 'implement.powerWanted';
  if (!joint.ledger.given(wantedPath) && !joint.ledger.told(wantedPath)) return notChecked(id, 'powerWanted');
  if (!joint.ledger.given('tractor.ptoPower')) return ask(id, 'tractor.ptoPower');
  const [given, wanted] = [joint.tractor('ptoPower'), joint.implement('powerWanted')];
  return {
    id,
    kind: 'computed',
    check: { id, unit: 'kW', scale: 1, measure: (at) => ({ quantity: given(at), low: wanted(at), high: null }) },
  };
}

/** The size of the joints must carry what the implement takes, by the lower of the published figures at its speed. */
export function seriesLine({ lift: { joint }, shaft }: ShaftQuestion): Line<Reason> {
  const id = 'shaft.series';
  if (shaft.series === undefined) return notChecked(id, 'series');
  if (!joint.ledger.given('implement.powerWanted')) return notChecked(id, 'powerWanted');
  const speed = joint.setup.implement.inputSpeed;
  if (speed !== 540 && speed !== 1000) return notChecked(id, 'seriesSpeed');
  const rows = seriesPower(shaft.series as SeriesNumber, speed);
  const most = exactly(Math.min(...rows.map(({ value }) => value)));
  const wanted = joint.implement('powerWanted');
  return {
    id,
    kind: 'computed',
    check: { id, unit: 'kW', scale: 1, measure: (at) => ({ quantity: wanted(at), low: null, high: most }) },
  };
}

/** Shields reach over the guard at both ends. */
export function shieldsLine({ lift: { joint } }: ShaftQuestion): Line<Reason> {
  const id = 'limit.shields';
  const paths = ['shaft.shieldOverlapFront', 'shaft.shieldOverlapRear'] as const;
  if (!paths.every((path) => joint.ledger.given(path))) return notChecked(id, 'shields');
  const [front, rear] = [joint.ledger.later(paths[0]), joint.ledger.later(paths[1])];
  const least = exactly(guardOverlap.value);
  return {
    id,
    kind: 'computed',
    check: {
      id,
      unit: 'mm',
      scale: 10,
      measure: (at) => ({ quantity: lesser(front(at), rear(at)), low: least, high: null }),
    },
  };
}

/** A limiter must let through the torque that the implement takes at its speed. */
export function limiterLine({ lift: { joint }, shaft }: ShaftQuestion): Line<Reason> {
  const id = 'limit.limiter';
  if (shaft.limiter === 'none' || shaft.limiter === 'overrunning')
    return { id, kind: 'notNeeded', reason: 'noLimiter' };
  const speed = joint.setup.implement.inputSpeed;
  if (!joint.ledger.given('shaft.limiterTorque')) return notChecked(id, 'limiterTorque');
  if (!joint.ledger.given('implement.powerWanted') || speed === undefined) return notChecked(id, 'powerWanted');
  const [limit, wanted] = [joint.ledger.later('shaft.limiterTorque'), joint.implement('powerWanted')];
  const perKilowatt = torqueOf(1, speed);
  return {
    id,
    kind: 'computed',
    check: {
      id,
      unit: 'N·m',
      scale: 20,
      measure: (at) => ({ quantity: limit(at), low: scale(wanted(at), perKilowatt), high: null }),
    },
  };
}
