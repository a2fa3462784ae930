// The main job at once: one worked verdict in the terminal, then the yard on this machine only: its records and the pages.
import { spawn, spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

const example = 'examples/setups/box-blade-on-coupler.json';
const port = process.env.PORT ?? process.env.HITCHWRIGHT_PORT ?? '4173';
const root = 'packages/web';

console.log(`A worked example: hitchwright check ${example}\n`);
const verdict = spawnSync(process.execPath, ['packages/cli/bin/hitchwright.js', 'check', example], {
  stdio: 'inherit',
});
if (verdict.status === null || verdict.status < 3) process.exit(verdict.status ?? 1);

const requireOfPages = createRequire(new URL('../packages/web/package.json', import.meta.url));
const vite = await import(pathToFileURL(requireOfPages.resolve('vite')).href);
await vite.build({ root, logLevel: 'warn' });
console.log('');
if (hasDatabase()) serveYard();
else await servePages();

/** SQLite comes with a part that npm compiles where no ready one fits; PostgreSQL needs no such part. */
function hasDatabase() {
  if (process.env.HITCHWRIGHT_DB?.startsWith('postgres') === true) return true;
  try {
    const Database = createRequire(new URL('../packages/store/package.json', import.meta.url))('better-sqlite3');
    new Database(':memory:').close();
    return true;
  } catch {
    return false;
  }
}

function serveYard() {
  const server = spawn(process.execPath, ['--import', 'tsx', 'packages/server/src/start.ts'], {
    stdio: 'inherit',
    env: { ...process.env, HITCHWRIGHT_PORT: port },
  });
  // A terminal sends Ctrl+C to both; whoever ends this program by its number means the server too.
  process.on('SIGINT', () => undefined);
  process.on('SIGTERM', () => server.kill('SIGTERM'));
  server.on('exit', (code) => process.exit(code ?? 1));
}

async function servePages() {
  console.log(
    'The part that keeps records in a file (better-sqlite3) is not there: npm found no ready one and no compiler.',
  );
  console.log(
    'docs/guide/install.md says what to install. Checks and measuring work without it; here are the pages alone:',
  );
  const server = await vite.preview({ root, preview: { host: '127.0.0.1', port: Number(port) } });
  console.log(`\nThe pages are at ${server.resolvedUrls.local[0]} (this machine only; Ctrl+C stops them)`);
}
