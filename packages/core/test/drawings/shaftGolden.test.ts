import { describe, it } from 'vitest';
import {
  openLiftPictures,
  sceneToSvg,
  shaftDrawing,
  shaftPlots,
  sideView,
  topView,
  type LiftOptions,
  type Scene,
} from '../../src/drawings/index.ts';
import { expectGolden } from './expectGolden.ts';
import { drives, type Drive } from './shaftSetups.ts';

const cases: Readonly<Record<string, { drive: string; options: LiftOptions; station: number; cut: number }>> = {
  'shaft-too-little-overlap-desk': {
    drive: 'a coupler moves it back, too little overlap',
    options: { system: 'us' },
    station: 30,
    cut: 0,
  },
  'shaft-bottoms-phone': {
    drive: 'bottoms at the bottom',
    options: { system: 'us', format: 'phone' },
    station: 4,
    cut: 31.75,
  },
  'shaft-shifts-print': {
    drive: 'shifts aside, input turned',
    options: { system: 'metric', format: 'print' },
    station: 50,
    cut: 0,
  },
};

describe('golden pictures of a drive', () => {
  for (const [name, { drive, options, station, cut }] of Object.entries(cases)) {
    it(`${name}: side, top, plots and the shaft by itself look as they did`, () => {
      const { setup, answer } = (drives[drive] as () => Drive)();
      const at = { ...options, station };
      const scenes = {
        side: sideView(setup, answer, at),
        top: topView(setup, answer, at),
        plots: shaftPlots(setup, answer, at),
        itself: shaftDrawing(setup, answer, { ...options, cut }),
      };
      for (const [view, scene] of Object.entries(scenes))
        expectGolden(`${name}-${view}`, sceneToSvg(scene as Scene, { idPrefix: view }));
    });
  }

  it('plots beside the side view look as they did', () => {
    const { setup, answer } = (drives['comes apart on the way'] as () => Drive)();
    const pictures = openLiftPictures(setup, answer, { system: 'metric' });
    expectGolden('shaft-apart-desk-beside', sceneToSvg(pictures?.shaftPlots?.(60) as Scene, { idPrefix: 'plots' }));
  });
});
