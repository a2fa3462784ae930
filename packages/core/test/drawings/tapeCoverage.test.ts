import { describe, expect, it } from 'vitest';
import { tapeDrawing, tapeWords } from '../../src/drawings/index.ts';
import { tapeRows, rowOf } from '../../src/drawings/tape/rows.ts';
import { readingOf } from '../../src/engine/advice/index.ts';
import { fieldRules } from '../../src/records/index.ts';

/** Why nothing is drawn. */
const reasons = {
  plate: 'stands on a plate, on a tyre, in the manual or in papers',
  inside: 'lies inside a closed cylinder; the manual says it',
  test: 'is of the test frame of a report, not of the tractor',
  report: 'comes from a test report; nobody finds it with a tape',
  speed: 'is a speed',
  weighed: 'is put on a scale by itself, with no edge to mistake',
} as const;

/** Every figure without a drawing. */
const undrawn: Readonly<Record<string, string>> = {
  'implement.lowerPinRatedLoad': reasons.plate,
  'implement.secondRow.lowerPinRatedLoad': reasons.plate,
  'coupler.front.lowerPinRatedLoad': reasons.plate,
  'implement.powerWanted': reasons.plate,
  'implement.powerMost': reasons.plate,
  'implement.flowWanted': reasons.plate,
  'implement.pressureWanted': reasons.plate,
  'implement.workSpeed': reasons.speed,
  'implement.cylinderBore': reasons.inside,
  'implement.carriedMass': reasons.weighed,
  'tractor.liftAtBalls': reasons.plate,
  'tractor.liftAt610': reasons.plate,
  'tractor.liftTestMastHeight': reasons.test,
  'tractor.liftTestTopLink': reasons.test,
  'tractor.cylinderBore': reasons.inside,
  'tractor.liftPressure': reasons.plate,
  'tractor.enginePower': reasons.plate,
  'tractor.ptoPower': reasons.plate,
  'tractor.driverMass': reasons.weighed,
  'tractor.frontWeightMass': reasons.weighed,
  'tractor.frontBracketLimit': reasons.plate,
  'tractor.wheelWeightMass': reasons.weighed,
  'tractor.tyreLiquidMass': reasons.weighed,
  'tractor.loaderMass': reasons.plate,
  'tractor.loaderLoad': reasons.weighed,
  'tractor.frontAxleLimit': reasons.plate,
  'tractor.rearAxleLimit': reasons.plate,
  'tractor.totalLimit': reasons.plate,
  'tractor.frontTyreLimit': reasons.plate,
  'tractor.rearTyreLimit': reasons.plate,
  'tractor.centreHeight': reasons.report,
  'tractor.remoteFlow': reasons.plate,
  'tractor.remotePressure': reasons.plate,
  'coupler.ratedLoad': reasons.plate,
  'coupler.hungMass': reasons.weighed,
  'shaft.limiterTorque': reasons.plate,
};

const options = { system: 'us', format: 'phone' } as const;

describe('what is drawn', () => {
  it('is every length and angle that is read with a tape, a caliper, a plumb line or a protractor', () => {
    const read = [...fieldRules].filter(
      ([path, { dimension }]) =>
        ['length', 'angle'].includes(dimension) &&
        ['tape', 'caliper', 'plumbLine', 'protractor'].includes(readingOf(path, 0).tool),
    );
    expect(read.length).toBeGreaterThan(140);
    expect(read.filter(([path]) => rowOf(path) === null).map(([path]) => path)).toEqual([]);
  });

  it('is everything but what has a reason not to be', () => {
    const missing = [...fieldRules.keys()].filter((path) => rowOf(path) === null);
    expect(missing.sort()).toEqual(Object.keys(undrawn).sort());
    for (const path of missing) {
      expect(tapeWords(path)).toBeNull();
      expect(tapeDrawing(path, options)).toBeNull();
    }
  });

  it('is nothing that no rule knows', () => {
    for (const path of tapeRows.keys()) expect(fieldRules.has(path), path).toBe(true);
    expect(tapeDrawing('implement.colour', options)).toBeNull();
    expect(tapeDrawing('implement.shoulderSpan.adjustable', options)).toBeNull();
  });

  it('is drawn for the ends and holes of what can be set as for the field itself', () => {
    for (const path of ['tractor.ballSpan.adjustable.between.1', 'coupler.topHookHeight.adjustable.at.2']) {
      const scene = tapeDrawing(path, options);
      const field = tapeDrawing(path.split('.adjustable')[0] as string, options);
      expect(scene?.items).toEqual(field?.items);
      expect(scene?.title).not.toBe(field?.title);
    }
  });

  it('differs between reference points, and falls back on the usual one', () => {
    const named = [...fieldRules].filter(([, { from }]) => from !== undefined);
    expect(named.length).toBeGreaterThan(6);
    for (const [path, { from = [] }] of named) {
      const ends = from
        .filter((point) => point !== 'unsaid')
        .map((point) => {
          const measured = rowOf(path, point)?.measured;
          return JSON.stringify([measured?.from.at, measured?.to.at]);
        });
      expect(new Set(ends).size, path).toBe(ends.length);
      expect(rowOf(path, 'nowhere')).toBe(rowOf(path));
      expect(rowOf(path, from[0])).toBe(rowOf(path));
    }
  });
});
