// Runs everything that must be green and adds the runners up: the last line is `N passed, N failed`.
// `--quick` leaves out the browser and the slow properties.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const quick = process.argv.includes('--quick');
const folder = mkdtempSync(join(tmpdir(), 'hitchwright-test-'));
const totals = { passed: 0, failed: 0 };

/** Runs one command; a command that counts its own tests leaves its report where `report` says. */
function run(title, command, { report, env = {} } = {}) {
  console.log(`\n== ${title}`);
  const started = Date.now();
  const { status } = spawnSync(command, { shell: true, stdio: 'inherit', env: { ...process.env, ...env } });
  const counted =
    report === undefined ? { passed: status === 0 ? 1 : 0, failed: status === 0 ? 0 : 1 } : counts(report, status);
  totals.passed += counted.passed;
  totals.failed += counted.failed;
  console.log(
    `-- ${title}: ${counted.passed} passed, ${counted.failed} failed, ${((Date.now() - started) / 1000).toFixed(1)} s`,
  );
}

/** Counts of a vitest or Playwright JSON report; a runner that died without one counts as a failure. */
function counts(report, status) {
  let result;
  try {
    result = JSON.parse(readFileSync(report, 'utf8'));
  } catch (problem) {
    console.error(`No report of the run: ${problem.message}`);
    return { passed: 0, failed: 1 };
  }
  const { passed, failed } =
    result.stats === undefined
      ? {
          passed: result.numPassedTests,
          failed: result.numFailedTests + (result.numFailedTestSuites > 0 && result.numFailedTests === 0 ? 1 : 0),
        }
      : { passed: result.stats.expected, failed: result.stats.unexpected + result.stats.flaky };
  const silent = status !== 0 && failed === 0 ? 1 : 0;
  return { passed, failed: failed + silent + (passed === 0 ? 1 : 0) };
}

function vitest(name, root, more = '') {
  const report = join(folder, `${name}.json`);
  run(
    `tests of ${name}`,
    `npx vitest run --root ${root} --reporter=dot --reporter=json --outputFile=${report} ${more}`,
    { report },
  );
}

run('format', 'npx prettier --check .');
run('lint', 'npx eslint .');
for (const project of ['core', 'cli', 'web', 'store', 'server', 'print'])
  run(`types of ${project}`, `npx tsc -p packages/${project}/tsconfig.json`);
run('types of core tests', 'npx tsc -p packages/core/tsconfig.test.json');
run('types of web tests', 'npx tsc -p packages/web/tsconfig.tools.json');
run('types of scripts and benches', 'npx tsc -p tsconfig.json');
run('purity of core is a compile error', 'node scripts/purity.mjs');
run('layers', 'node scripts/layers.mjs');
run('a planted breach of each layer is caught', 'node scripts/layers.mjs --planted');
run('nothing unused', 'npx knip');
run('docs are true', 'npx tsx scripts/docs.ts');
run('description of the API is current', 'npx tsx scripts/write-openapi.ts --check');
run('build of the command line', 'npm run build --workspace hitchwright');
if (!quick) run('core packs and runs in an empty project', 'node scripts/pack-core.mjs check');
vitest('core', 'packages/core', quick ? '--exclude "test/properties/**"' : '');
vitest('cli', 'packages/cli');
vitest('print', 'packages/print');
vitest('server', 'packages/server', quick ? '--exclude "test/fuzz/**"' : '');
if (!quick) vitest('store', 'packages/store');
if (!quick) {
  run('build of the pages', 'npm run build --workspace @hitchwright/web');
  const report = join(folder, 'web.json');
  run(
    'tests of the pages in a browser',
    'npx playwright test -c packages/web/playwright.config.ts --reporter=list,json',
    {
      report,
      env: { PLAYWRIGHT_JSON_OUTPUT_NAME: report },
    },
  );
}
rmSync(folder, { recursive: true, force: true });
console.log(`\n${totals.passed} passed, ${totals.failed} failed`);
process.exitCode = totals.failed === 0 ? 0 : 1;
