import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Puts the server that is to be killed into one file that starts at once. */
export default function build(): void {
  const cwd = fileURLToPath(new URL('../..', import.meta.url));
  const program = fileURLToPath(new URL('../../../../node_modules/.bin/tsdown', import.meta.url));
  execFileSync(program, ['-c', 'test/faults/tsdown.config.ts'], { cwd, stdio: 'pipe' });
}
