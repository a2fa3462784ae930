// Runs the layer rules, and fails when the reader saw too little: a rule over nothing always passes.
// `--planted` writes one breach at a time and expects its rule to name it.
import { cruise } from 'dependency-cruiser';
import { rmSync, writeFileSync } from 'node:fs';
import config from '../.dependency-cruiser.cjs';

const packages = ['core', 'cli', 'web', 'store', 'server', 'print'].map((name) => `packages/${name}/src`);
const leastModules = 250;
const breaches = [
  ['packages/core/src/units/plantedBreach.ts', "export { fieldRules } from '../records/index.ts';", 'core-layer-units'],
  [
    'packages/core/src/engine/geometry/plantedBreach.ts',
    "export { decide } from '../proof/index.ts';",
    'engine-layer-geometry',
  ],
  [
    'packages/core/src/engine/hookup/plantedBreach.ts',
    "export { assess } from '../assess/index.ts';",
    'engine-layer-hookup',
  ],
  [
    'packages/core/src/engine/lift/plantedBreach.ts',
    "export { hookupLines } from '../hookup/index.ts';",
    'engine-layer-lift',
  ],
  [
    'packages/core/src/engine/assess/plantedBreach.ts',
    "export { titleOf } from '../../words/index.ts';",
    'core-layer-engine',
  ],
  ['packages/core/src/words/plantedBreach.ts', "export { withEdits } from '../records/edit.ts';", 'folder-door'],
  [
    'packages/core/src/drawings/plantedBreach.ts',
    "export * as z from 'zod/mini';",
    'schema-library-at-the-border-only',
  ],
  ['packages/core/src/tables/plantedBreach.ts', "export { join } from 'node:path';", 'core-is-pure'],
  ['packages/cli/src/plantedBreach.ts', "export { withEdits } from '../../core/src/records/edit.ts';", 'front-door'],
  [
    'packages/store/src/plantedBreach.ts',
    "export { readSheetFile } from '../../server/src/sheets/index.ts';",
    'store-below-server',
  ],
];

async function violations() {
  const { output } = await cruise(packages, {
    ...config.options,
    ruleSet: { forbidden: config.forbidden },
    validate: true,
  });
  return output.summary;
}

async function checkLayers() {
  const { totalCruised, violations: found } = await violations();
  for (const { rule, from, to } of found) console.error(`${rule.name}: ${from} → ${to}`);
  if (totalCruised < leastModules)
    console.error(`Only ${totalCruised} modules were read, expected at least ${leastModules}.`);
  console.log(`${totalCruised} modules, ${found.length} breaches`);
  return found.length === 0 && totalCruised >= leastModules;
}

async function checkPlanted() {
  let allCaught = true;
  for (const [path, source, rule] of breaches) {
    writeFileSync(path, `${source}\n`);
    try {
      const { violations: found } = await violations();
      const caught = found.some((one) => one.rule.name === rule && one.from === path);
      console.log(`${caught ? 'caught' : 'NOT CAUGHT'}: ${rule} in ${path}`);
      allCaught &&= caught;
    } finally {
      rmSync(path, { force: true });
    }
  }
  return allCaught;
}

process.exitCode = (await (process.argv.includes('--planted') ? checkPlanted() : checkLayers())) ? 0 : 1;
