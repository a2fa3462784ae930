import { describe, expect, it } from 'vitest';
import {
  liftStrip,
  openLiftPictures,
  shaftDrawing,
  shaftPlots,
  sideView,
  topView,
  type Format,
  type Scene,
} from '../../src/drawings/index.ts';
import { faultsOf, letteringIn } from './letteringFaults.ts';
import { drives, type Drive } from './shaftSetups.ts';

const formats: readonly Format[] = ['desk', 'phone', 'print'];
const systems = ['us', 'metric'] as const;

/** Every picture of a drive at some stations. */
function picturesOf({ setup, answer }: Drive, format: Format, system: 'us' | 'metric'): Scene[] {
  const options = { system, format };
  const pictures = openLiftPictures(setup, answer, options);
  const at = [0, 12, pictures?.resting ?? 0, 37, 60];
  return [
    ...at.flatMap((station) => [pictures?.view(station), pictures?.shaftPlots?.(station), pictures?.top?.(station)]),
    sideView(setup, answer, { ...options, station: 45 }),
    topView(setup, answer, { ...options, station: 45 }),
    shaftPlots(setup, answer, { ...options, station: 45 }),
    liftStrip(setup, answer, options),
    shaftDrawing(setup, answer, options),
    shaftDrawing(setup, answer, { ...options, cut: 20 }),
    shaftDrawing(setup, answer, { ...options, cut: 76 }),
  ].filter((scene) => scene != null);
}

describe('the lettering of the pictures of a drive', () => {
  for (const [name, open] of Object.entries(drives)) {
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

  it('leaves no line outside the sheet', () => {
    for (const open of Object.values(drives)) {
      for (const format of formats) {
        for (const { items, bounds, scale, title } of picturesOf(open(), format, 'us')) {
          const points = items.flatMap((item) => (item.kind === 'stroke' ? item.points : []));
          const outside = points.filter(
            ([x, z]) => Math.max(bounds.left - x, x - bounds.right, bounds.bottom - z, z - bounds.top) > 0.5 * scale,
          );
          expect(outside, `${format} ${title}`).toEqual([]);
        }
      }
    }
  });
});
