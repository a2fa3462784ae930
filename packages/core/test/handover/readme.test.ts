import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, it } from 'vitest';

const core = new URL('../../', import.meta.url);
const readme = new URL('README.md', core);
const doors = (JSON.parse(readFileSync(new URL('package.json', core), 'utf8')) as { exports: Record<string, string> })
  .exports;

/** Names behind every door, as the TypeScript compiler sees them. */
function listing(): string {
  const files = Object.entries(doors).map(([door, source]) => [door, fileURLToPath(new URL(source, core))] as const);
  const program = ts.createProgram(
    files.map(([, file]) => file),
    {
      noEmit: true,
      allowImportingTsExtensions: true,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      target: ts.ScriptTarget.ES2022,
      types: [],
    },
  );
  const checker = program.getTypeChecker();
  const blocks = files.map(([door, file]) => {
    const source = program.getSourceFile(file);
    const symbol = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    const names = symbol === undefined ? [] : checker.getExportsOfModule(symbol).map(({ name }) => `\`${name}\``);
    return `**${door.slice(2)}**: ${[...new Set(names)].sort().join(', ')}`;
  });
  return `\n${blocks.join('\n\n')}\n`;
}

it('the README lists the public API, all of it and nothing else', () => {
  const text = readFileSync(readme, 'utf8');
  const [, before = '', listed = '', after = ''] =
    /^([\s\S]*<!-- api -->)([\s\S]*)(<!-- \/api -->[\s\S]*)$/.exec(text) ?? [];
  const wanted = listing();
  // UPDATE_README=1 writes the list anew.
  if (process.env['UPDATE_README'] === '1') writeFileSync(readme, `${before}\n${wanted}\n${after}`);
  else expect(listed.replace(/\s+/g, ' ').trim()).toBe(wanted.replace(/\s+/g, ' ').trim());
  expect(wanted).toContain('`assess`');
  expect(wanted.match(/`/g)?.length).toBeGreaterThan(300);
});
