import { judgeSetup, prepareSetup, type Answer } from '../../src/engine/assess/index.ts';
import type { Finding } from '../../src/engine/findings/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import type { Entry } from '../../src/engine/inputs/index.ts';
import type { Sweep } from '../../src/engine/lift/index.ts';
import { shaftSweepOf, type ShaftStation, type ShaftSweep } from '../../src/engine/shaft/index.ts';
import { readSetup, type Setup, type SetupDocument } from '../../src/records/index.ts';
import { documentOf, judgedFully, type Changes, type Machines } from './sideSetups.ts';

/** A setup with its lift judged in full and its drive shaft swept. */
export interface Drive {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly sweep: Sweep;
  readonly shaft: ShaftSweep;
}

type Fields = Readonly<Record<string, unknown>>;

const end = (value: number): Fields => ({ value, from: 'shaftEnd' });

/** The tractor’s stub, the implement’s input shaft and a shaft for both, all measured. */
const stub = { stubBehindAxle: end(310), stubHeight: 560, stubAside: 0 };
const input = {
  driven: true,
  turnsWhileRaised: true,
  inputBehind: end(140),
  inputAbove: 200,
  inputAside: 0,
  inputAngle: 0,
};
const shaftOf = (closedLength: number, closedOverlap: number): Fields => ({
  closedLength: { value: closedLength, from: 'crossCentre' },
  closedOverlap,
  yokeReachFront: end(57),
  yokeReachRear: end(57),
  bindAngle: 45,
});
const guard = { guardTubeDiameter: 66, guardConeDiameter: 150, guardConeLength: 130 };
const window = { windowWidth: 520, windowTop: 400, windowBottom: -20, windowBehind: 60 };

/** A question with a drive, before it is swept. */
export interface Driven extends Changes {
  readonly machines: Machines;
  readonly shaft?: Fields;
}

const known = new Map<string, Drive>();

/**
 * A drive swept at the setting that the lift was judged at, and the middle of every figure else; its own findings follow
 * from its sweep.
 */
export function driven({ machines, shaft, ...changes }: Driven): Drive {
  const document = { ...documentOf(machines, changes), ...(shaft === undefined ? {} : { shaft }) };
  const key = JSON.stringify(document);
  const before = known.get(key);
  if (before !== undefined) return before;
  const setup = read(document);
  const plain = documentOf(machines);
  const { answer } = judgedFully(plain);
  const sweep = sweptWith(setup, settingsOf(read(plain)));
  if (sweep === null || answer.sweep === null) throw new Error('the drive is not placed');
  const made = { setup, sweep: answer.sweep, shaft: sweep, answer: withShaft(answer, sweep) };
  known.set(key, made);
  return made;
}

function read(document: SetupDocument): Setup {
  const reading = readSetup(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return reading.setup;
}

/** What each input stands at where the lift alone is judged, by its path. */
function settingsOf(setup: Setup): ReadonlyMap<string, Interval> {
  const { question, setting } = judgeSetup(setup, { thresholds: false });
  return new Map(question.ledger.entries.map(({ path, range, index }) => [path, setting[index] ?? range]));
}

function sweptWith(setup: Setup, settings: ReadonlyMap<string, Interval>): ShaftSweep | null {
  const question = prepareSetup(setup);
  return shaftSweepOf(question.shaft, (index) => {
    const { path, range } = question.ledger.entries[index] as Entry;
    return settings.get(path) ?? range;
  });
}

/** The answer with another sweep of the shaft, and the findings that follow from it. */
export function withShaft(answer: Answer, shaft: ShaftSweep): Answer {
  const own = findingsOf(shaft);
  return {
    ...answer,
    shaft,
    findings: answer.findings.map((finding) => ({ ...finding, ...own[finding.id] })),
  };
}

function findingsOf(shaft: ShaftSweep): Readonly<Record<string, Partial<Finding>>> {
  const { stations, limits, turnsFrom, turnsTo } = shaft;
  const turning = stations.filter(({ ballHeight }) => ballHeight >= turnsFrom - 6 && ballHeight <= turnsTo + 6);
  const least = (of: (station: ShaftStation) => number, list = stations) => Math.min(...list.map(of));
  const most = (of: (station: ShaftStation) => number, list = stations) => Math.max(...list.map(of));
  const overlap = (station: ShaftStation) => station.overlap ?? NaN;
  return {
    'shaft.bottoming': atLeast(
      least((station) => station.toBottom ?? NaN),
      limits.clearance,
    ),
    'shaft.overlap': atLeast(least(overlap, turning), limits.overlap ?? NaN),
    'shaft.apart': atLeast(least(overlap), 0),
    'shaft.tractorJoint': atMost(
      most((station) => station.tractorAngle, turning),
      limits.turning.tractor,
    ),
    'shaft.implementJoint': atMost(
      most((station) => station.implementAngle, turning),
      limits.turning.implement,
    ),
    'shaft.tractorJointRaised': atMost(
      most((station) => station.tractorAngle),
      limits.stop.tractor,
    ),
    'shaft.implementJointRaised': atMost(
      most((station) => station.implementAngle),
      limits.stop.implement,
    ),
  };
}

const plain = { reason: null, conflictsWith: [], drivers: [], core: true } as const;
const exactly = (value: number) => ({ low: value, high: value });

function atLeast(value: number, low: number): Partial<Finding> {
  if (Number.isNaN(value - low)) return { ...plain, status: 'undecided' };
  const found = { ...plain, unit: 'mm', quantity: exactly(value), band: { low, high: null }, side: 'low' } as const;
  return { ...found, margin: exactly(value - low), status: value < low ? 'fail' : 'pass' };
}

function atMost(value: number, high: number): Partial<Finding> {
  const found = { ...plain, unit: 'deg', quantity: exactly(value), band: { low: null, high }, side: 'high' } as const;
  return { ...found, margin: exactly(high - value), status: value > high ? 'fail' : 'pass' };
}

const shifting: Driven = {
  machines: ['Ostrey 35', null, 'tiller'],
  tractor: { ...stub, stubAside: 20 },
  implement: { ...input, inputAside: -60, inputYaw: 6, shiftLeft: 150, shiftRight: 250, inputAngle: 8 },
  shaft: { ...shaftOf(430, 300), ...guard, jointFront: 'wideAngle' },
};

/** The drive that shifts aside, with left and right changed over. */
export function mirroredDrive(): Drive {
  const aside = { inputAside: 60, inputYaw: -6, shiftLeft: 250, shiftRight: 150 };
  return driven({
    ...shifting,
    tractor: { ...shifting.tractor, stubAside: -20 },
    implement: { ...shifting.implement, ...aside },
  });
}

/** Drives that hold, fail in each way, or are known in part. */
export const drives: Readonly<Record<string, () => Drive>> = {
  'on the links, long enough': () =>
    driven({
      machines: ['Ostrey 35', null, 'tiller'],
      tractor: stub,
      implement: input,
      shaft: { ...shaftOf(470, 330), ...guard },
    }),
  'a coupler moves it back, too little overlap': () =>
    driven({
      machines: ['Ostrey 35', 'U-28', 'tiller'],
      tractor: stub,
      implement: input,
      coupler: window,
      shaft: { ...shaftOf(470, 300), ...guard },
    }),
  'comes apart on the way': () =>
    driven({ machines: ['Ostrey 35', 'U-28', 'tiller'], tractor: stub, implement: input, shaft: shaftOf(470, 245) }),
  'bottoms at the bottom': () =>
    driven({
      machines: ['Ostrey 35', null, 'tiller'],
      tractor: stub,
      implement: input,
      shaft: { ...shaftOf(590, 420), ...guard },
    }),
  'too near to bottoming': () =>
    driven({ machines: ['Ostrey 35', null, 'tiller'], tractor: stub, implement: input, shaft: shaftOf(550, 400) }),
  'length not known': () =>
    driven({ machines: ['Ostrey 35', 'A-2', 'tiller'], tractor: stub, implement: input, shaft: {} }),
  'shifts aside, input turned': () => driven(shifting),
  'a long implement, a joint far behind': () =>
    driven({
      machines: ['Ostrey 24', null, 'rotary cutter'],
      tractor: { ...stub, stubBehindAxle: end(250), stubHeight: 430 },
      implement: { ...input, inputBehind: end(700), inputAbove: 120 },
      shaft: { ...shaftOf(1000, 560), ...guard },
    }),
  'turns at work only': () =>
    driven({
      machines: ['Ostrey 35', 'U-28', 'tiller'],
      tractor: { ...stub, stubHeight: 480 },
      implement: { ...input, turnsWhileRaised: false },
      shaft: shaftOf(620, 400),
    }),
};
