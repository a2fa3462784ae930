import { describe, it } from 'vitest';
import { liftStrip, openLiftPictures, sceneToSvg, type LiftOptions, type Scene } from '../../src/drawings/index.ts';
import { expectGolden } from './expectGolden.ts';
import { swept, type Machines } from './sideSetups.ts';

const cases: Readonly<Record<string, { machines: Machines; options: LiftOptions; station: number }>> = {
  'side-frame-arms-desk': { machines: ['Ostrey 35', 'U-28', 'tiller'], options: { system: 'us' }, station: 45 },
  'side-bare-no-arms-phone': {
    machines: ['Ostrey 24', null, 'finish mower'],
    options: { system: 'metric', format: 'phone' },
    station: 30,
  },
  'side-hook-ends-print': {
    machines: ['Ostrey 35', 'hook ends', 'box blade'],
    options: { system: 'metric', format: 'print' },
    station: 5,
  },
};

describe('golden side pictures', () => {
  for (const [name, { machines, options, station }] of Object.entries(cases)) {
    it(`${name}: view and plots look as they did`, () => {
      const { setup, answer } = swept(machines);
      const pictures = openLiftPictures(setup, answer, options);
      expectGolden(`${name}-view`, sceneToSvg(pictures?.view(station) as Scene, { idPrefix: 'view' }));
      expectGolden(`${name}-plots`, sceneToSvg(pictures?.plots(station) as Scene, { idPrefix: 'plots' }));
    });
  }

  it('the strip for a printed sheet looks as it did', () => {
    const { setup, answer } = swept(['Ostrey 35', 'U-28', 'box blade']);
    expectGolden('side-strip-print', sceneToSvg(liftStrip(setup, answer, { system: 'us', format: 'print' }) as Scene));
  });
});
