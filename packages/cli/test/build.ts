import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Builds the command line once before its tests: they run what people run. */
export default function build(): void {
  const cwd = fileURLToPath(new URL('../../..', import.meta.url));
  execFileSync('npm', ['run', 'build', '--workspace', 'hitchwright'], { cwd, stdio: 'ignore', shell: true });
}
