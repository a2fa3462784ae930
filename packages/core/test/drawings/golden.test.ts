import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { rearView, sceneToSvg, type Format } from '../../src/drawings/index.ts';
import { gallery, judged } from './setups.ts';

/** Goldens prove sameness, never truth: look at a `-changed` twin before it takes the golden's place (UPDATE_GOLDEN=1). */
function expectGolden(name: string, svg: string): void {
  const path = fileURLToPath(new URL(`golden/${name}.svg`, import.meta.url));
  const twin = path.replace(/\.svg$/, '-changed.svg');
  if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(path, svg);
  const same = existsSync(path) && readFileSync(path, 'utf8') === svg;
  if (same) rmSync(twin, { force: true });
  else writeFileSync(twin, svg);
  expect(same, `${name} differs: compare it with ${twin}`).toBe(true);
}

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
