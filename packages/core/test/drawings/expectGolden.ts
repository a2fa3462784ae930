import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';

/** Goldens prove sameness, never truth: look at a `-changed` twin before it takes the golden's place (UPDATE_GOLDEN=1). */
export function expectGolden(name: string, svg: string): void {
  const path = fileURLToPath(new URL(`golden/${name}.svg`, import.meta.url));
  const twin = path.replace(/\.svg$/, '-changed.svg');
  if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(path, svg);
  const same = existsSync(path) && readFileSync(path, 'utf8') === svg;
  if (same) rmSync(twin, { force: true });
  else writeFileSync(twin, svg);
  expect(same, `${name} differs: compare it with ${twin}`).toBe(true);
}
