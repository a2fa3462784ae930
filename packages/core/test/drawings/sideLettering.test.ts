import { describe, expect, it } from 'vitest';
import {
  liftPlots,
  liftStrip,
  openLiftPictures,
  sceneToSvg,
  sideView,
  type Format,
  type Scene,
} from '../../src/drawings/index.ts';
import { faultsOf, letteringIn } from './letteringFaults.ts';
import { lifts, swept, type Swept } from './sideSetups.ts';

const formats: readonly Format[] = ['desk', 'phone', 'print'];
const systems = ['us', 'metric'] as const;

/** Every picture of a lift at some stations, by itself and side by side. */
function picturesOf({ setup, answer }: Swept, format: Format, system: 'us' | 'metric'): Scene[] {
  const pictures = openLiftPictures(setup, answer, { system, format });
  const stations = [0, 12, pictures?.resting ?? 0, 45, 60];
  return [
    ...stations.flatMap((station) => [pictures?.view(station) ?? null, pictures?.plots(station) ?? null]),
    sideView(setup, answer, { system, format, station: 45 }),
    liftPlots(setup, answer, { system, format, station: 45 }),
    liftStrip(setup, answer, { system, format }),
  ].filter((scene) => scene !== null);
}

describe('the lettering of the side pictures', () => {
  for (const [name, open] of Object.entries(lifts)) {
    it(`stays on the sheet, clear of other lettering and big enough to read: ${name}`, () => {
      for (const format of formats) {
        for (const system of systems) {
          for (const scene of picturesOf(open(), format, system)) {
            const sizes = letteringIn(scene.items).flatMap(({ size, second }) => [size, second?.size ?? size]);
            expect(faultsOf(scene), `${format} ${system} ${scene.title}, ${scene.subtitle}`).toEqual([]);
            expect(Math.min(...sizes)).toBeGreaterThanOrEqual(format === 'print' ? 2.999 : (13 * 25.4) / 96);
          }
        }
      }
    });
  }
});

describe('the side pictures', () => {
  it('keep all lines inside their bounds', () => {
    for (const open of Object.values(lifts)) {
      for (const format of formats) {
        for (const { items, bounds, scale, title } of picturesOf(open(), format, 'us')) {
          const points = items.flatMap((item) => (item.kind === 'stroke' ? item.points : []));
          const outside = points.filter(
            ([x, z]) => Math.max(bounds.left - x, x - bounds.right, bounds.bottom - z, z - bounds.top) > 0.5 * scale,
          );
          expect(points.length).toBeGreaterThan(50);
          expect(outside, title).toEqual([]);
        }
      }
    }
  });

  it('keep hostile names as text and carry no number that is none', () => {
    const hostile = `<script>alert("1")</script>&'"]]>\u0000\ud800`;
    const { setup, answer } = swept(['Ostrey 35', null, 'tiller'], {
      tractor: { name: hostile },
      implement: { name: hostile },
    });
    const pictures = [sideView, liftPlots, liftStrip].map((draw) => draw(setup, answer, { system: 'us' }) as Scene);
    for (const scene of pictures) {
      const svg = sceneToSvg(scene);
      expect(scene.title).toContain('<script>');
      expect(svg).not.toMatch(/<script|\]\]>|NaN|Infinity|undefined|null/);
      expect([...svg].every((letter) => letter >= ' ' || letter === '\n')).toBe(true);
    }
  });
});
