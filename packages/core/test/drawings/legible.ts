import { expect } from 'vitest';
import type { Format, Scene } from '../../src/drawings/index.ts';
import { faultsOf, letteringIn } from './letteringFaults.ts';

const formats: readonly Format[] = ['desk', 'phone', 'print'];
const systems = ['us', 'metric'] as const;

/** Pictures of one setup in a format, lettered in a unit system. */
type Pictures = (format: Format, system: 'us' | 'metric') => readonly Scene[];

/** Every picture's lettering stays on the sheet, clear of other lettering and big enough to read, in every format and both systems. */
export function expectLegible(pictures: Pictures): void {
  for (const format of formats) {
    for (const system of systems) {
      const scenes = pictures(format, system);
      expect(scenes.length).toBeGreaterThan(0);
      for (const scene of scenes) {
        const sizes = letteringIn(scene.items).flatMap(({ size, second }) => [size, second?.size ?? size]);
        expect(faultsOf(scene), `${format} ${system} ${scene.title}, ${scene.subtitle}`).toEqual([]);
        expect(Math.min(...sizes)).toBeGreaterThanOrEqual(format === 'print' ? 2.999 : (13 * 25.4) / 96);
      }
    }
  }
}

/** Every line of every picture stays inside its bounds, in every format; each has at least so many points. */
export function expectInsideBounds(pictures: Pictures, fewest: number): void {
  for (const format of formats) {
    for (const { items, bounds, scale, title } of pictures(format, 'us')) {
      const points = items.flatMap((item) => (item.kind === 'stroke' ? item.points : []));
      const outside = points.filter(
        ([x, z]) => Math.max(bounds.left - x, x - bounds.right, bounds.bottom - z, z - bounds.top) > 0.5 * scale,
      );
      expect(points.length, title).toBeGreaterThanOrEqual(fewest);
      expect(outside, `${format} ${title}`).toEqual([]);
    }
  }
}
