import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The workspace’s own folder. */
export const root = fileURLToPath(new URL('../../..', import.meta.url));

/** `hitchwright` with the words, and what it is fed on standard input. */
export function run(words: readonly string[], input: string | Uint8Array = '') {
  return spawnSync(process.execPath, [join(root, 'packages/cli/bin/hitchwright.js'), ...words], {
    encoding: 'utf8',
    input,
  });
}
