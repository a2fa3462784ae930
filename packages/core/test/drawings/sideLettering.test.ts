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
import { expectInsideBounds, expectLegible } from './legible.ts';
import { lifts, swept, type Swept } from './sideSetups.ts';

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
      expectLegible((format, system) => picturesOf(open(), format, system));
    });
  }
});

describe('the side pictures', () => {
  it('keep all lines inside their bounds', () => {
    for (const open of Object.values(lifts)) {
      expectInsideBounds((format, system) => picturesOf(open(), format, system), 51);
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
