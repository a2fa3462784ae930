// Runs the layer rules, and fails when the reader saw too little: a rule over nothing always passes.
import { cruise } from 'dependency-cruiser';
import config from '../.dependency-cruiser.cjs';

const leastModules = 110;
const { output } = await cruise(['packages/core/src', 'packages/cli/src', 'packages/web/src'], {
  ...config.options,
  ruleSet: { forbidden: config.forbidden },
  validate: true,
});
const { totalCruised, violations } = output.summary;
for (const { rule, from, to } of violations) console.error(`${rule.name}: ${from} → ${to}`);
if (totalCruised < leastModules) console.error(`Only ${totalCruised} modules were read, expected at least ${leastModules}.`);
console.log(`${totalCruised} modules, ${violations.length} breaches`);
process.exitCode = violations.length > 0 || totalCruised < leastModules ? 1 : 0;
