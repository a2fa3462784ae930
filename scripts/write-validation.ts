// Prints the tests against published figures as docs/validation.md; `--check` fails where the page is out of date.
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';

const file = 'docs/validation.md';

interface Row {
  readonly kind: string;
  readonly source: string;
  readonly locator: string;
  readonly title: string;
}

function rows(): Row[] {
  const listed = execFileSync('npx', ['vitest', 'list', '--root', 'packages/core', 'test/published', '--json'], {
    encoding: 'utf8',
  });
  const names = (JSON.parse(listed.slice(listed.indexOf('['))) as { name: string }[]).map(({ name }) => name);
  return names.flatMap((name) => {
    const found = /\[(computes|reads)\] (.+?) · (.+?) · (.+)$/.exec(name);
    if (found === null) return [];
    const [, kind = '', source = '', locator = '', title = ''] = found;
    return [{ kind, source, locator, title }];
  });
}

function page(all: readonly Row[]): string {
  const table = (kind: string): string =>
    all
      .filter((row) => row.kind === kind)
      .sort((a, b) => a.source.localeCompare(b.source) || a.title.localeCompare(b.title))
      .map((row) => `| ${row.source} | ${row.locator} | ${row.title} |`)
      .join('\n');
  const count = (kind: string): number => all.filter((row) => row.kind === kind).length;
  const head = '| source | where | what |\n|---|---|---|\n';
  return [
    '# Checks against published figures',
    'Printed from `packages/core/test/published` by `npm run validation`. Sources: [sources.md](sources.md).',
    `## ${count('computes')} that go through a computing function`,
    head + table('computes'),
    `## ${count('reads')} that read a table row back`,
    head + table('reads'),
    '',
  ].join('\n\n');
}

const text = page(rows());
if (!process.argv.includes('--check')) writeFileSync(file, text);
else if (readFileSync(file, 'utf8') !== text) {
  console.error(`${file} is out of date: npm run validation`);
  process.exitCode = 1;
}
