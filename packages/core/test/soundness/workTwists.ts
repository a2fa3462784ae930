import fc from 'fast-check';
import { atPath, type SetupDocument } from '../../src/records/index.ts';
import { driveRuleNames, drivenMachines, tyreFluids, tyreSizes } from '../../src/tables/index.ts';
import { works } from '../../src/records/choices.ts';
import { near } from '../properties/generate.ts';
import { always, edits, none, type Twist } from './twist.ts';

/** What the work takes, and what the tractor gives. */
export const workTwists: Readonly<Record<string, Twist>> = {
  'a kind of work': () =>
    edits({
      'implement.work': fc.constantFrom(...works),
      'implement.workWidth': near(1500, 300),
      'implement.workDepth': near(120, 80),
      'implement.workSpeed': near(6, 3, true),
      'implement.tools': fc.integer({ min: 1, max: 8 }),
      'tractor.outerWidth': near(1450, 150),
      'tractor.ptoPower': near(25, 14),
      'tractor.wheelsDriven': fc.constantFrom(undefined, 'rear', 'all'),
    }),
  'remotes and oil': () =>
    edits({
      'implement.remotes': fc.constantFrom(undefined, 1, 1, 2),
      'implement.flowWanted': near(28, 8),
      'implement.pressureWanted': near(160, 25),
      'tractor.remotes': fc.integer({ min: 0, max: 3 }),
      'tractor.remoteFlow': near(30, 8),
      'tractor.remotePressure': near(170, 25),
    }),
};

const isDriven = (document: SetupDocument): boolean => atPath(document, 'shaft') !== undefined;

/** What makes a drive less plain. */
export const driveTwists: Readonly<Record<string, Twist>> = {
  'power, size and limiter': () =>
    edits({
      'tractor.ptoPower': near(22, 7),
      'implement.powerWanted': near(16, 6),
      'implement.powerMost': near(26, 6),
      'implement.inputSpeed': fc.constantFrom(540, 540, 1000),
      'shaft.series': fc.integer({ min: 1, max: 6 }),
      'shaft.limiter': fc.constantFrom('shearBolt', 'slipClutch'),
      'shaft.limiterTorque': near(320, 120),
      'shaft.shieldOverlapFront': near(52, 8),
      'shaft.shieldOverlapRear': near(54, 8),
    }),
  'power by its width': () =>
    edits({
      'implement.work': fc.constantFrom(...drivenMachines),
      'implement.workWidth': near(1400, 300),
      'tractor.ptoPower': near(22, 8),
    }),
  'wide-angle joints': () => edits({ 'shaft.jointFront': fc.constant('wideAngle') }),
  'other rules for the shaft': () => edits({ 'rules.driveShaft': fc.constantFrom(...driveRuleNames) }),
  'off while it is raised': () => always({ 'implement.turnsWhileRaised': false }),
  'small parts of the shaft left out': () =>
    fc
      .subarray(
        [
          'shaft.yokeReachFront',
          'shaft.yokeReachRear',
          'shaft.yokeOverCross',
          'shaft.bindAngle',
          'shaft.guardConeLength',
          'tractor.stubGrooveToEnd',
          'tractor.stubAside',
          'implement.inputGrooveToEnd',
          'implement.inputAngle',
          'implement.inputAside',
          'coupler.windowBehind',
        ],
        { minLength: 1, maxLength: 4 },
      )
      .map((paths) => paths.map((path) => ({ path, value: undefined }))),
  'a drawbar drawn to some millimetres': (document) => {
    const outlines = atPath(document, 'tractor.outlines');
    if (!isDriven(document) || !Array.isArray(outlines)) return none;
    return always({ 'tractor.outlines': outlines.map((one: object) => ({ ...one, plusMinusMm: 6 })) });
  },
};

/** What makes axle loads less plain. */
export const balanceTwists: Readonly<Record<string, Twist>> = {
  'tyres by their load index': () =>
    edits({
      'tractor.frontTyreLimit': fc.constant(undefined),
      'tractor.rearTyreLimit': fc.constant(undefined),
      'tractor.frontTyreIndex': fc.integer({ min: 75, max: 125 }),
      'tractor.rearTyreIndex': fc.integer({ min: 90, max: 145 }),
    }),
  'tyre liquid by the size of the tyre': () =>
    edits({
      'tractor.tyreLiquidMass': fc.constant(undefined),
      'tractor.tyreLiquid': fc.record(
        { size: fc.constantFrom(...tyreSizes), fluid: fc.constantFrom(...tyreFluids), fill: fc.constantFrom(40, 75) },
        { requiredKeys: ['size', 'fluid'] },
      ),
    }),
  'places on the tractor left out': () =>
    fc
      .subarray(['tractor.driverAhead', 'tractor.frontWeightAhead', 'tractor.loaderMass', 'tractor.loaderAhead'], {
        minLength: 1,
      })
      .map((paths) => paths.map((path) => ({ path, value: undefined }))),
};
