import { describe, it } from 'vitest';
import { openLiftPictures, sceneToSvg, slopeSketch, type LiftOptions, type Scene } from '../../src/drawings/index.ts';
import { balanceCase } from './balanceSetups.ts';
import { expectGolden } from './expectGolden.ts';

const cases: Readonly<Record<string, { name: string; options: LiftOptions; station: number }>> = {
  'balance-too-light-desk': { name: 'front too light', options: { system: 'us' }, station: 30 },
  'balance-lifts-phone': {
    name: 'front wheels lift',
    options: { system: 'us', format: 'phone' },
    station: 30,
  },
  'balance-ballast-print': {
    name: 'ballast of every kind',
    options: { system: 'metric', format: 'print' },
    station: 50,
  },
  'balance-loader-desk': { name: 'loader over front weights', options: { system: 'metric' }, station: 10 },
};

describe('golden pictures of the axle loads', () => {
  for (const [file, { name, options, station }] of Object.entries(cases)) {
    it(`${file}: see-saw, plots and slopes look as they did`, () => {
      const { setup, answer } = balanceCase(name);
      const pictures = openLiftPictures(setup, answer, options);
      const scenes = {
        balance: pictures?.balance?.(station),
        plot: pictures?.balancePlot?.(station),
        slope: slopeSketch(answer, options.system, options.format === undefined ? {} : { format: options.format }),
      };
      for (const [view, scene] of Object.entries(scenes)) {
        expectGolden(`${file}-${view}`, sceneToSvg(scene as Scene, { idPrefix: view }));
      }
    });
  }

  it('weights and liquid on the rear wheel of the side view look as they did', () => {
    const { setup, answer } = balanceCase('ballast of every kind');
    const pictures = openLiftPictures(setup, answer, { system: 'us', format: 'phone' });
    expectGolden('balance-ballast-phone-view', sceneToSvg(pictures?.view(30) as Scene, { idPrefix: 'view' }));
  });
});
