import { describe, it } from 'vitest';
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
import { expectInsideBounds, expectLegible } from './legible.ts';
import { drives, type Drive } from './shaftSetups.ts';

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
      expectLegible((format, system) => picturesOf(open(), format, system));
    });
  }

  it('leaves no line outside the sheet', () => {
    for (const open of Object.values(drives)) {
      expectInsideBounds((format, system) => picturesOf(open(), format, system), 20);
    }
  });
});
