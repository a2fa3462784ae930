import { describe, expect, it } from 'vitest';
import {
  axleBalance,
  axlePlots,
  openLiftPictures,
  sceneToSvg,
  sideView,
  slopeSketch,
  type Format,
  type Scene,
} from '../../src/drawings/index.ts';
import { balanceCase, balances, type Weighed } from './balanceSetups.ts';
import { expectInsideBounds, expectLegible } from './legible.ts';

/** Every picture of the axle loads at some stations. */
function picturesOf({ setup, answer }: Weighed, format: Format, system: 'us' | 'metric'): Scene[] {
  const pictures = openLiftPictures(setup, answer, { system, format });
  return [
    ...[0, 12, pictures?.resting ?? 0, 45, 60].flatMap((station) => [
      pictures?.balance?.(station),
      pictures?.balancePlot?.(station),
    ]),
    pictures?.view(30),
    axleBalance(setup, answer, { system, format, station: 20 }),
    axlePlots(setup, answer, { system, format, station: 20 }),
    slopeSketch(answer, system, { format }),
    slopeSketch(answer, system, { format, station: 0 }),
  ].filter((scene) => scene != null);
}

describe('the lettering of the pictures of the axle loads', () => {
  for (const [name, open] of Object.entries(balances)) {
    it(`stays on the sheet, clear of other lettering and big enough to read: ${name}`, () => {
      expectLegible((format, system) => picturesOf(open(), format, system));
      expect(picturesOf(open(), 'desk', 'us').length).toBe(15);
    });
  }
});

describe('the pictures of the axle loads', () => {
  it('keep all lines inside their bounds', () => {
    for (const open of Object.values(balances)) {
      expectInsideBounds((format, system) => picturesOf(open(), format, system), 20);
    }
  });

  it('have one sheet for the whole lift', () => {
    for (const open of Object.values(balances)) {
      const { setup, answer } = open();
      const pictures = openLiftPictures(setup, answer, { system: 'us', format: 'phone' });
      const sheets = Array.from({ length: 61 }, (_, i) => JSON.stringify(pictures?.balance?.(i).bounds));
      expect(new Set(sheets).size).toBe(1);
    }
  });

  it('keep hostile names as text and carry no number that is none', () => {
    const { setup, answer } = balanceCase('front wheels lift');
    const hostile = '<script>alert("1")</script>';
    const named = {
      ...setup,
      tractor: { ...setup.tractor, name: hostile },
      implement: { ...setup.implement, name: hostile },
    };
    for (const draw of [axleBalance, axlePlots, sideView]) {
      const scene = draw(named, answer, { system: 'us' }) as Scene;
      expect(scene.title).toContain('<script>');
      expect(sceneToSvg(scene)).not.toMatch(/<script|NaN|Infinity|undefined|null/);
    }
    expect(sceneToSvg(slopeSketch(answer, 'us') as Scene)).not.toMatch(/NaN|Infinity|undefined|null/);
  });
});
