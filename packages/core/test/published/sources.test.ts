import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { sourceIds } from '../../src/tables/index.ts';

const page = readFileSync(new URL('../../../../docs/sources.md', import.meta.url), 'utf8');

test.each(sourceIds)('%s is described in docs/sources.md', (id) => {
  expect(page).toContain(`\`${id}\``);
});
