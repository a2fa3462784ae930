import { describe, expect, test } from 'vitest';
import { readSetup, type InputErrorCode } from '../../src/records/index.ts';

const fine = { hitchwright: 1, tractor: {}, implement: {} };
const tractor = (fields: object) => ({ ...fine, tractor: fields });
const part = (fields: object) => ({ ...fine, parts: [{ name: 'part', ...fields }] });
const rules = (fields: object) => ({ ...fine, rules: fields });

const cases: readonly (readonly [string, object, InputErrorCode, string])[] = [
  ['a tractor of 20 kg', tractor({ mass: 20 }), 'out-of-range', 'tractor.mass'],
  ['a mass in inches', tractor({ mass: '1680 in' }), 'wrong-unit', 'tractor.mass'],
  ['a wheelbase in metres without a unit', tractor({ wheelbase: 1.72 }), 'out-of-range', 'tractor.wheelbase'],
  ['a share in per cent for a mass', tractor({ frontAxleMass: '40 %' }), 'wrong-unit', 'tractor.frontAxleMass'],
  ['weights of less than nothing', tractor({ frontWeightMass: -20 }), 'out-of-range', 'tractor.frontWeightMass'],
  ['a loader that is somewhere', tractor({ loader: 'on' }), 'not-a-choice', 'tractor.loader'],
  ['weighed with a loader, in words', tractor({ weighedWithLoader: 'yes' }), 'wrong-type', 'tractor.weighedWithLoader'],
  ['a load index of 12', tractor({ frontTyreIndex: 12 }), 'out-of-range', 'tractor.frontTyreIndex'],
  ['a load index and a half', tractor({ rearTyreIndex: 116.5 }), 'wrong-type', 'tractor.rearTyreIndex'],
  [
    'a tyre nobody charted',
    tractor({ tyreLiquid: { size: '1-1', fluid: 'water' } }),
    'not-a-choice',
    'tractor.tyreLiquid.size',
  ],
  [
    'beer in the tyres',
    tractor({ tyreLiquid: { size: '12.4-24', fluid: 'beer' } }),
    'not-a-choice',
    'tractor.tyreLiquid.fluid',
  ],
  [
    'a tyre filled twice over',
    tractor({ tyreLiquid: { size: '12.4-24', fluid: 'water', fill: 200 } }),
    'out-of-range',
    'tractor.tyreLiquid.fill',
  ],
  ['liquid without its size', tractor({ tyreLiquid: { fluid: 'water' } }), 'missing', 'tractor.tyreLiquid.size'],
  [
    'a front axle heavier than the tractor',
    tractor({ mass: 1000, frontAxleMass: 1200 }),
    'contradiction',
    'tractor.frontAxleMass',
  ],
  [
    'a rod thicker than its cylinder',
    { ...fine, implement: { cylinderBore: 40, cylinderRod: 60 } },
    'contradiction',
    'implement.cylinderRod',
  ],
  ['a steering rule nobody printed', rules({ steeringShare: 'aTenth' }), 'not-a-choice', 'rules.steeringShare'],
  ['front weights without a mass', part({ kind: 'frontWeights', count: 4 }), 'wrong-type', 'parts.0.mass'],
  ['front weights without a count', part({ kind: 'frontWeights', mass: 20 }), 'missing', 'parts.0.count'],
  ['half a front weight', part({ kind: 'frontWeights', mass: 20, count: 0.5 }), 'out-of-range', 'parts.0.count'],
  ['wheel weights of a gram', part({ kind: 'wheelWeights', mass: 0.001 }), 'out-of-range', 'parts.0.mass'],
  [
    'a price in a currency by its sign',
    part({ kind: 'wheelWeights', mass: 80, price: { amount: 10, currency: '$' } }),
    'wrong-type',
    'parts.0.price.currency',
  ],
  [
    'a price below nothing',
    part({ kind: 'wheelWeights', mass: 80, price: { amount: -1, currency: 'EUR' } }),
    'out-of-range',
    'parts.0.price.amount',
  ],
];

describe('malformed weights and axles', () => {
  test.each(cases)('%s', (_, document, code, path) => {
    const reading = readSetup(document);
    const errors = reading.ok ? [] : reading.errors.map((error) => `${error.code} ${error.path}`);
    expect(errors).toContain(`${code} ${path}`);
  });
  test('what is fine is read', () => {
    const reading = readSetup({
      ...tractor({ mass: 1680, frontAxleMass: 672, tyreLiquid: { size: '12.4-24', fluid: 'water', fill: 40 } }),
      parts: [{ name: 'a', kind: 'frontWeights', mass: '42 lb', count: 10, price: { amount: 0, currency: 'GBP' } }],
    });
    expect(reading.ok).toBe(true);
  });
});
