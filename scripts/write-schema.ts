// Writes the published JSON Schema of a setup; `--check` fails where the file is not what the code gives.
import { readFileSync, writeFileSync } from 'node:fs';
import { setupJsonSchema } from '@hitchwright/core/contract';

const file = 'docs/setup.schema.json';
const text = `${JSON.stringify(setupJsonSchema(), null, 2)}\n`;
if (!process.argv.includes('--check')) writeFileSync(file, text);
else if (readFileSync(file, 'utf8') !== text) {
  console.error(`${file} is out of date: npm run schema`);
  process.exitCode = 1;
}
