import fc from 'fast-check';
import type { SetupDocument } from '../../src/records/index.ts';
import { documentOf, type Spoken } from './generateLift.ts';
import type { DrawbarCase, ShaftCase, Told } from './generateShaft.ts';

const exactly: Spoken = (_, value) => value;

/** How far ahead of the groove the point lies that a reading at a splined shaft was taken to. */
function aheadOfGroove(point: Told['stub'], grooveToEnd: number, endToCross: number): number {
  if (point === 'groove') return 0;
  return point === 'shaftEnd' ? grooveToEnd : grooveToEnd + endToCross;
}

/** The setup document of a case: every length as a reading to the point that it was taken to. */
export function shaftDocument(one: ShaftCase, spoken: Spoken = exactly): SetupDocument {
  const document = documentOf(one.lift, spoken);
  const machine = (name: string): Record<string, unknown> => (document[name] ?? {}) as Record<string, unknown>;
  const { windowWidth, windowTop, windowBottom, windowBehind } = one.beside;
  const window = sayer('coupler', spoken).said({ windowWidth, windowTop, windowBottom, windowBehind });
  return {
    ...document,
    tractor: { ...machine('tractor'), ...tractorFields(one, spoken) },
    implement: { ...machine('implement'), ...implementFields(one, spoken) },
    ...(document['coupler'] === undefined ? {} : { coupler: { ...machine('coupler'), ...window } }),
    shaft: shaftFields(one, spoken),
  };
}

type Fields = Record<string, unknown>;

/** Figures of one machine as they are said, and readings with the point they were taken to. */
function sayer(machine: string, spoken: Spoken) {
  return {
    said: (figures: Readonly<Record<string, number | null>>): Fields =>
      Object.fromEntries(
        Object.entries(figures).flatMap(([key, value]) =>
          value === null ? [] : [[key, spoken(`${machine}.${key}`, value)]],
        ),
      ),
    read: (key: string, value: number, from: string): Fields => {
      const said = spoken(`${machine}.${key}`, value);
      return { [key]: typeof said === 'number' ? { value: said, from } : { ...(said as object), from } };
    },
  };
}

function tractorFields({ drive, beside, told }: ShaftCase, spoken: Spoken): Fields {
  const { said, read } = sayer('tractor', spoken);
  const { stubHeight, stubAside, stubGrooveToEnd } = drive;
  const ahead = aheadOfGroove(told.stub, stubGrooveToEnd, drive.endToCrossFront);
  return {
    ...said({ stubHeight, stubAside, stubGrooveToEnd }),
    ...read('stubBehindAxle', drive.stubBehind + ahead, told.stub),
    ...(beside.drawbar === null ? {} : { outlines: [drawbarOutline(beside.drawbar)] }),
  };
}

/** The point read lies along the input shaft, which leans and turns. */
function implementFields({ drive, told }: ShaftCase, spoken: Spoken): Fields {
  const { said, read } = sayer('implement', spoken);
  const [lean, yaw] = [drive.inputAngle, drive.inputYaw ?? 0].map((angle) => (angle * Math.PI) / 180) as [
    number,
    number,
  ];
  const ahead = aheadOfGroove(told.input, drive.inputGrooveToEnd, drive.endToCrossRear);
  const { inputAngle, inputYaw, inputGrooveToEnd, shiftLeft, shiftRight } = drive;
  return {
    driven: true,
    ...read('inputBehind', drive.inputBehind - ahead * Math.cos(yaw) * Math.cos(lean), told.input),
    ...said({
      inputAbove: drive.inputAbove - ahead * Math.cos(yaw) * Math.sin(lean),
      inputAside: drive.inputAside + ahead * Math.sin(yaw),
      ...{ inputAngle, inputYaw, inputGrooveToEnd, shiftLeft, shiftRight },
    }),
  };
}

function shaftFields({ drive, beside, told }: ShaftCase, spoken: Spoken): Fields {
  const { said, read } = sayer('shaft', spoken);
  const { stubGrooveToEnd, endToCrossFront, inputGrooveToEnd, endToCrossRear, yokeOverCross } = drive;
  const pinToPin = stubGrooveToEnd + endToCrossFront + inputGrooveToEnd + endToCrossRear;
  const over = { crossCentre: 0, pinToPin, yokeEnds: 2 * yokeOverCross };
  const front = told.reachFront === 'groove' ? stubGrooveToEnd : 0;
  const rear = told.reachRear === 'groove' ? inputGrooveToEnd : 0;
  const { closedOverlap, profileLength } = drive;
  const { guardTubeDiameter, guardConeDiameter, guardConeLength } = beside;
  return {
    ...read('closedLength', drive.closedLength + over[told.closed], told.closed),
    ...said({ closedOverlap, profileLength, yokeOverCross, bindAngle: 70 }),
    ...said({ guardTubeDiameter, guardConeDiameter, guardConeLength }),
    ...read('yokeReachFront', endToCrossFront + front, told.reachFront),
    ...read('yokeReachRear', endToCrossRear + rear, told.reachRear),
  };
}

function drawbarOutline(of: DrawbarCase): Fields {
  const rear = cornersOf({ ...of, from: of.left, to: of.right });
  return { name: 'drawbar', part: 'drawbar', side: cornersOf(of), ...(of.fromBehind ? { rear } : {}) };
}

/** A drawbar that is not drawn from behind reaches to both sides, farther than anything here. */
const farAside = 5000;

/** A drawbar as the passage reads it, by the name of each leaf [mm]. */
export function drawbarLeaves(drawbar: DrawbarCase | null): [string, number][] {
  if (drawbar === null) return [];
  const { left, right, fromBehind } = drawbar;
  return [
    ['drawbar0.left', fromBehind ? left : -farAside],
    ['drawbar0.right', fromBehind ? right : farAside],
    ...cornersOf(drawbar).flatMap(([x, z], i): [string, number][] => [
      [`drawbar0.${i}.x`, x],
      [`drawbar0.${i}.z`, z],
    ]),
  ];
}

function cornersOf({ from, to, bottom, top }: DrawbarCase): readonly (readonly [number, number])[] {
  return [
    [from, bottom],
    [to, bottom],
    [to, top],
    [from, top],
  ];
}

/** What a tape or a protractor leaves open, either way, by field [mm, deg]; reaches of small parts less. */
const tolerances: Readonly<Record<string, number>> = {
  'tractor.stubBehindAxle': 4,
  'tractor.stubHeight': 3,
  'tractor.stubAside': 4,
  'tractor.stubGrooveToEnd': 1,
  'implement.inputBehind': 4,
  'implement.inputAbove': 3,
  'implement.inputAside': 4,
  'implement.inputAngle': 0.5,
  'implement.inputYaw': 0.7,
  'implement.inputGrooveToEnd': 1,
  'implement.shiftLeft': 5,
  'implement.shiftRight': 5,
  'coupler.windowWidth': 4,
  'coupler.windowTop': 4,
  'coupler.windowBottom': 4,
  'coupler.windowBehind': 4,
  'shaft.closedLength': 3,
  'shaft.closedOverlap': 4,
  'shaft.profileLength': 3,
  'shaft.yokeReachFront': 2,
  'shaft.yokeReachRear': 2,
  'shaft.yokeOverCross': 2,
  'shaft.guardTubeDiameter': 2,
  'shaft.guardConeDiameter': 3,
  'shaft.guardConeLength': 5,
  'tractor.sidePlay': 4,
};

/** Seven figures of the drive that were taken with a tape. */
export const shaftTapePaths: fc.Arbitrary<readonly string[]> = fc.shuffledSubarray(Object.keys(tolerances), {
  minLength: 7,
  maxLength: 7,
});

/**
 * Says the taped figures with their tolerance, or some times as much: angles by no more than 6°, lengths by no more than a
 * fifth; what is nothing at all is left exact. The lift is taped besides.
 */
export function shaftTapes(paths: readonly string[], lift: Spoken, times = 1): Spoken {
  return (path, value) => {
    const tolerance = tolerances[path];
    if (tolerance === undefined || !paths.includes(path)) return lift(path, value);
    if (value === 0) return value;
    const isAngle = path.endsWith('Angle') || path.endsWith('Yaw');
    return { value, plusMinus: Math.min(tolerance * times, isAngle ? 6 : Math.abs(value) / 5) };
  };
}
