// Writes the published description of the server’s API; `--check` fails where the file is not what the code gives.
import { readFileSync, writeFileSync } from 'node:fs';
import { apiDescription } from '@hitchwright/server';

const file = 'docs/openapi.json';
const text = `${JSON.stringify(apiDescription(), null, 2)}\n`;
if (!process.argv.includes('--check')) writeFileSync(file, text);
else if (readFileSync(file, 'utf8') !== text) {
  console.error(`${file} is out of date: npx tsx scripts/write-openapi.ts`);
  process.exitCode = 1;
}
