import { expect } from 'vitest';
import { bearingLife, torqueOf, wrapSpeed } from '../../src/engine/shaft/joints.ts';
import { published } from './register.ts';

const kilowattsPerHorsepower = 0.7456998715822702;
const newtonMetresPerPoundFoot = 1.3558179483314004;
const inch = 25.4;
const feet = 0.3048;

published(
  {
    source: 'joint-sizing-page',
    locator: 'life formula',
    kind: 'computes',
    title: '5000 h at 3°, 100 rpm and the rated torque',
  },
  () => {
    expect(bearingLife(3, 100, 1)).toBe(5000);
  },
);

published(
  {
    source: 'joint-sizing-page',
    locator: 'life formula',
    kind: 'computes',
    title: 'life goes with the power 10/3 of the torque: an eighth of the torque lasts 1024 times as long',
  },
  () => {
    expect((bearingLife(3, 100, 1 / 8) ?? NaN) / 5000).toBeCloseTo(1024, 6);
  },
);

published(
  {
    source: 'joint-sizing-page',
    locator: 'torque formula',
    kind: 'computes',
    title: 'torque in lb·in is 63025 times hp over rpm',
  },
  () => {
    expect((torqueOf(kilowattsPerHorsepower, 1) / newtonMetresPerPoundFoot) * 12).toBeCloseTo(63025, 0);
  },
);

published(
  {
    source: 'pto-power-text',
    locator: 'power formula',
    kind: 'computes',
    title: 'hp is torque in lb·ft times rpm over 5252',
  },
  () => {
    expect(torqueOf(kilowattsPerHorsepower, 5252) / newtonMetresPerPoundFoot).toBeCloseTo(1, 4);
  },
);

published(
  {
    source: 'study-notes-torque',
    locator: 'torque formula',
    kind: 'computes',
    title: 'torque in N·m is 9550 times kW over rpm, a rounding of 9549.3',
  },
  () => {
    expect(Math.abs(torqueOf(1, 1) / 9550 - 1)).toBeLessThan(1e-4);
  },
);

published(
  {
    source: 'manual-chipper',
    locator: 'p. 12',
    kind: 'computes',
    title: 'a shaft for 67 kW at 540 rpm that is to stand 1300 N·m: what 67 kW put on it stays below',
  },
  () => {
    const nominal = torqueOf(67, 540);
    expect(nominal).toBeLessThan(1300);
    expect(1300 / nominal).toBeLessThan(1.15);
  },
);

for (const [speed, feetPerSecond, feetPerMinute] of [
  [540, '7.1', '424'],
  [1000, '13.1', '785'],
] as const) {
  const metresPerSecond = wrapSpeed(3 * inch, speed);
  published(
    {
      source: 'extension-pto-safety-a',
      locator: 'the paragraph on entanglement',
      kind: 'computes',
      title: `${speed} rpm wind in ${feetPerSecond} ft/s, as on 3 in`,
    },
    () => {
      expect((metresPerSecond / feet).toFixed(1)).toBe(feetPerSecond);
    },
  );
  published(
    {
      source: 'extension-pto-safety-b',
      locator: 'the paragraph on wrapping',
      kind: 'computes',
      title: `${speed} rpm wind in ${feetPerMinute} ft/min, as on 3 in`,
    },
    () => {
      expect(((metresPerSecond / feet) * 60).toFixed(0)).toBe(feetPerMinute);
    },
  );
}
