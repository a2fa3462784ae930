import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../../..', import.meta.url));

function measure(example: string, ...words: readonly string[]) {
  const file = join(root, 'examples/setups', example);
  return spawnSync(process.execPath, [join(root, 'packages/cli/bin/hitchwright.js'), 'measure', file, ...words], {
    encoding: 'utf8',
  });
}

describe('hitchwright measure', () => {
  test('ranks what is open, says where it decides and what there is no need to measure', () => {
    const { status, stdout } = measure('flail-measure-first.json');
    expect(status).toBe(4);
    expect(stdout).toContain('MEASURE FIRST');
    expect(stdout).toMatch(/\d\. Shoulder span of the implement: tape, about 2 min, within 1\/16 in \(2 mm\)\./);
    expect(stdout).toContain('27 in (687 mm) or less and it fits.');
    expect(stdout.replace(/\s+/g, ' ')).toMatch(/No need to measure: .*centre of gravity behind the pins/);
    expect(stdout).toContain('Engine off, key out');
  });
  test('as JSON it gives the same ranking', () => {
    const { stdout } = measure('flail-measure-first.json', '--json', '--units', 'metric');
    const advice = JSON.parse(stdout) as {
      readonly settled: boolean;
      readonly saysSafeToRun: boolean;
      readonly next: readonly { readonly path: string; readonly settles: number; readonly minutes: number }[];
    };
    expect([advice.settled, advice.saysSafeToRun]).toEqual([false, false]);
    const worth = advice.next.map(({ settles, minutes }) => settles / minutes);
    expect(worth).toEqual([...worth].sort((a, b) => b - a));
    expect(advice.next.map(({ path }) => path)).toContain('implement.mastHeight');
  });
  test('stops where nothing can change the verdict', () => {
    const { status, stdout } = measure('box-blade-direct.json');
    expect(status).toBe(0);
    expect(stdout).toContain('Nothing that could still be measured changes the verdict.');
    expect(stdout).not.toContain('To measure');
  });
  test('refuses what it can’t read', () => {
    expect(measure('no-such-file.json').status).toBe(2);
  });
});
