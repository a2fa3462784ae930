import { expect } from 'vitest';
import { equivalentAngle, residualAcceleration } from '../../src/engine/shaft/joints.ts';
import { published } from './register.ts';
import { rises, sum } from './rows.ts';

const source = 'engineering-two-joints';
const locator = 'table of two joints';

/** Greatest angle of the second joint [deg] where the first stands at 0, 1, 2 … degrees. */
const printed = [
  [1500, [7.3, 7.4, 7.6, 7.9, 8.3, 8.9, 9.5, 10.1, 10.8, 11.6]],
  [1600, [6.9, 6.9, 7.1, 7.5, 7.9, 8.5, 9.1, 9.8, 10.5]],
  [1700, [6.5, 6.5, 6.8, 7.1, 7.6, 8.2, 8.8]],
] as const;

/** What the table holds to without saying so, ω²·(β2² − β1²) [rad/s²]; five entries are more than half a digit off it. */
const limit = 400;
const tolerance = 0.065;
const rad = (degrees: number): number => (degrees * Math.PI) / 180;

for (const [speed, seconds] of printed) {
  published(
    {
      source,
      locator,
      kind: 'computes',
      title: `${speed} rpm: all ${seconds.length} angles leave ${limit} rad/s², within ${tolerance}°`,
    },
    () => {
      const allowed = Math.sqrt(limit) / ((speed * 2 * Math.PI) / 60);
      seconds.forEach((second, first) => {
        const joint = (degrees: number): number => equivalentAngle(rad(first), rad(degrees), 0);
        expect(joint(second - tolerance)).toBeLessThan(allowed);
        expect(joint(second + tolerance)).toBeGreaterThan(allowed);
        expect(Math.abs(residualAcceleration(joint(second), speed) / limit - 1)).toBeLessThan(0.03);
      });
    },
  );
}

published({ source, locator, kind: 'reads', title: '26 entries that add up to 215.1°' }, () => {
  const all = printed.flatMap(([, seconds]) => [...seconds]);
  expect(all).toHaveLength(26);
  expect(sum(all)).toBeCloseTo(215.1, 9);
  expect(rises(printed[0][1])).toBe(true);
});
