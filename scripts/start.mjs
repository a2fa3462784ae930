// The main job at once: one worked verdict in the terminal, then the pages on this machine only.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

const example = 'examples/setups/box-blade-on-coupler.json';
console.log(`A worked example: hitchwright check ${example}\n`);
const verdict = spawnSync(process.execPath, ['packages/cli/bin/hitchwright.js', 'check', example], {
  stdio: 'inherit',
});
if (verdict.status === null || verdict.status < 3) process.exit(verdict.status ?? 1);

const root = 'packages/web';
const vite = await import(
  pathToFileURL(createRequire(new URL('../packages/web/package.json', import.meta.url)).resolve('vite')).href
);
await vite.build({ root, logLevel: 'warn' });
const server = await vite.preview({ root, preview: { host: '127.0.0.1', port: Number(process.env.PORT ?? 4173) } });
console.log(`\nThe pages are at ${server.resolvedUrls.local[0]} (this machine only; Ctrl+C stops them)`);
