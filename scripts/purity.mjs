// Plants a use of the DOM, of Node and of the clock's timers in core and expects the compiler to refuse each one.
import { spawnSync } from 'node:child_process';
import { rmSync, writeFileSync } from 'node:fs';

const planted = 'packages/core/src/units/plantedImpurity.ts';
const impurities = [
  'export const title = document.title;',
  "import { readFileSync } from 'node:fs';\nexport const text = readFileSync('x', 'utf8');",
  'export const home = process.env;',
  'export const later = setTimeout(() => 0, 1);',
];
let missed = 0;
try {
  for (const source of impurities) {
    writeFileSync(planted, `${source}\n`);
    const { status, stdout } = spawnSync('npx tsc -p packages/core/tsconfig.json', { shell: true, encoding: 'utf8' });
    const caught = status !== 0 && stdout.includes('plantedImpurity');
    console.log(`${caught ? 'refused' : 'NOT REFUSED'}: ${source.split('\n').at(-1)}`);
    if (!caught) missed += 1;
  }
} finally {
  rmSync(planted, { force: true });
}
process.exitCode = missed === 0 ? 0 : 1;
