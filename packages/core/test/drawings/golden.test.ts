import { describe, it } from 'vitest';
import { rearView, sceneToSvg, type Format } from '../../src/drawings/index.ts';
import { expectGolden } from './expectGolden.ts';
import { gallery, judged } from './setups.ts';

function svgOf(name: string, format: Format): string {
  const { setup, answer } = judged(gallery[name] ?? {});
  return sceneToSvg(rearView(setup, answer, { system: 'us', format }));
}

describe('golden drawings', () => {
  for (const name of Object.keys(gallery)) {
    it(`${name} looks as it did`, () => {
      expectGolden(name, svgOf(name, 'desk'));
    });
  }

  it('the first of them looks as it did on a phone', () => {
    expectGolden('u-frame-mast-too-high-phone', svgOf('u-frame-mast-too-high', 'phone'));
  });
});
