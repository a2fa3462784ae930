// Holds what the engine tells of generated setups against sampled truths; any truth outside fails the run. docs/method/soundness.md
import { fork, type ChildProcess } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import type { SetupResult } from '../packages/core/test/soundness/held.ts';
import { setupOf, usualSeed } from '../packages/core/test/soundness/setups.ts';
import { soundnessOf } from '../packages/core/test/soundness/soundness.ts';
import { rowsOf, tableOf, talliesOf, told, totalsOf } from '../packages/core/test/soundness/table.ts';
import { usualPlaces } from '../packages/core/test/properties/plainRun.ts';

const { values: options } = parseArgs({
  options: {
    setups: { type: 'string', default: '200' },
    samples: { type: 'string', default: '10000' },
    seed: { type: 'string', default: String(usualSeed) },
    setup: { type: 'string' },
    worker: { type: 'boolean', default: false },
  },
});

function whole(name: 'setups' | 'samples' | 'seed' | 'setup', least: number): number {
  const value = Number(options[name]);
  if (Number.isInteger(value) && value >= least) return value;
  console.error(`--${name} takes a whole number from ${least}, not ${String(options[name])}`);
  process.exit(2);
}

const seed = whole('seed', 0);
const samples = whole('samples', 1);
const numbers = options.setup === undefined ? [...Array(whole('setups', 1)).keys()] : [whole('setup', 0)];

const hold = (number: number): SetupResult =>
  soundnessOf(setupOf(seed, number), { samples, elsewhere: samples, places: usualPlaces });

if (!options.worker) runAll();
else {
  // A worker: one setup after the other, as they are asked for; the first process says when to stop.
  process.on('SIGINT', () => undefined);
  process.on('message', (number: number) => process.send?.(hold(number)));
}

function runAll(): void {
  const started = Date.now();
  const results: SetupResult[] = [];
  const left = [...numbers];
  const workers = Array.from({ length: Math.min(availableParallelism(), left.length) }, () =>
    fork(new URL(import.meta.url), ['--worker', ...process.argv.slice(2)]),
  );
  const finish = (): void => {
    for (const worker of workers) worker.kill('SIGKILL');
    report(results, (Date.now() - started) / 1000);
    process.exit(results.length < numbers.length || results.some(({ violations }) => violations > 0) ? 1 : 0);
  };
  const next = (worker: ChildProcess): void => {
    const number = left.shift();
    if (number !== undefined) worker.send(number);
  };
  process.on('SIGINT', finish);
  for (const worker of workers) {
    worker.on('message', (result: SetupResult) => {
      results.push(result);
      progress(result, results.length);
      next(worker);
      if (results.length === numbers.length) finish();
    });
    worker.on('exit', (code) => {
      if (code === null) return;
      console.error(`A worker ended early, with ${code}.`);
      finish();
    });
    next(worker);
  }
}

function progress(result: SetupResult, done: number): void {
  const { number, kind, known, twists, violations, judging, sampling } = result;
  const seconds = `${(judging / 1000).toFixed(1)} s + ${(sampling / 1000).toFixed(1)} s`;
  console.log(
    `${done} of ${numbers.length}: setup ${number}, ${kind}, ${known} (${twists.join('; ')}): ${violations} violations, ${seconds}`,
  );
  for (const one of result.first) console.error(told(one, seed));
}

function report(results: readonly SetupResult[], seconds: number): void {
  const sorted = [...results].sort((a, b) => a.number - b.number);
  if (options.setup !== undefined) console.log(`\n${JSON.stringify(setupOf(seed, whole('setup', 0)).document)}`);
  console.log(`\n${tableOf(rowsOf(sorted))}\n\n${talliesOf(sorted)}\n\n${totalsOf(sorted)}`);
  console.log(`${results.length} of ${numbers.length} setups, seed ${seed}, ${seconds.toFixed(0)} s`);
  for (const one of sorted.flatMap(({ first }) => first)) {
    console.error(told(one, seed));
    if (options.setup !== undefined) console.error(JSON.stringify(one.truth));
  }
}
