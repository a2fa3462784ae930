// Packs core as others install it: compiled to plain JavaScript with its types, in a folder of its own, so that nothing of the
// workspace changes. `npm pack` in packages/core would pack the sources, which Node can't run.
//   node scripts/pack-core.mjs OUT      writes the package to the folder OUT
//   node scripts/pack-core.mjs --check  installs it into an empty project and runs the example of its README there
import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const core = join(root, 'packages/core');

/** Runs a program and gives back what it prints; what it prints on fault is shown. */
function run(program, words, cwd) {
  return execFileSync(program, words, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });
}

/** Compiles core and writes the package of it; gives back the path of the tarball. */
function pack(folder, out) {
  const stage = join(folder, 'stage');
  mkdirSync(stage, { recursive: true });
  const emit = [
    '--noEmit',
    'false',
    '--declaration',
    '--rewriteRelativeImportExtensions',
    '--rootDir',
    join(core, 'src'),
  ];
  run(join(root, 'node_modules/.bin/tsc'), ['-p', core, ...emit, '--outDir', join(stage, 'dist')], root);
  writeFileSync(join(stage, 'package.json'), `${JSON.stringify(manifest(), null, 2)}\n`);
  cpSync(join(core, 'README.md'), join(stage, 'README.md'));
  cpSync(join(root, 'LICENSE'), join(stage, 'LICENSE'));
  const [{ filename }] = JSON.parse(
    run('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', out], stage),
  );
  return join(out, filename);
}

/** The manifest of the package: every door leads to compiled code and its types. */
function manifest() {
  const own = JSON.parse(readFileSync(join(core, 'package.json'), 'utf8'));
  const { exports: doors, ...kept } = Object.fromEntries(
    Object.entries(own).filter(([key]) => key !== 'devDependencies'),
  );
  const compiled = (source) => source.replace(/^\.\/src\//, './dist/').replace(/\.ts$/, '');
  const exports = Object.fromEntries(
    Object.entries(doors).map(([door, source]) => [
      door,
      { types: `${compiled(source)}.d.ts`, default: `${compiled(source)}.js` },
    ]),
  );
  return { ...kept, engines: { node: '>=20.19' }, files: ['dist'], exports };
}

/** The example of the README and what it says that it prints. */
function example() {
  const readme = readFileSync(join(core, 'README.md'), 'utf8');
  const [, code] = /```js\n([\s\S]*?)```/.exec(readme) ?? [];
  const [, printed] = /```text\n([\s\S]*?)```/.exec(readme) ?? [];
  if (code === undefined || printed === undefined) throw new Error('The README has no example, or not what it prints.');
  return { code, printed };
}

/** Installs the package into an empty project without any network, and runs the example there. */
function check(folder) {
  const tarball = pack(folder, folder);
  const project = join(folder, 'project');
  mkdirSync(project);
  writeFileSync(join(project, 'package.json'), '{"name":"empty","private":true,"type":"module"}\n');
  const needed = Object.keys(manifest().dependencies).map((name) => packed(join(root, 'node_modules', name), folder));
  run('npm', ['install', '--offline', '--no-audit', '--no-fund', '--ignore-scripts', tarball, ...needed], project);
  const { code, printed } = example();
  writeFileSync(join(project, 'example.mjs'), code);
  const got = run(process.execPath, ['example.mjs'], project);
  if (got !== printed) throw new Error(`The example prints something else:\n${got}`);
  writeFileSync(join(project, 'example.mts'), code);
  // Types of others are checked with it: a door without types, or with a wrong path in them, would show.
  const compilerOptions = { strict: true, noEmit: true, module: 'nodenext', target: 'es2022', types: [] };
  writeFileSync(join(project, 'tsconfig.json'), JSON.stringify({ compilerOptions, include: ['example.mts'] }));
  run(join(root, 'node_modules/.bin/tsc'), ['-p', project], project);
  console.log('core packs, installs into an empty project, and its example runs and type-checks there');
}

function packed(folder, out) {
  const [{ filename }] = JSON.parse(
    run('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', out], folder),
  );
  return join(out, filename);
}

const folder = mkdtempSync(join(tmpdir(), 'hitchwright-pack-'));
try {
  const [word] = process.argv.slice(2);
  if (word === '--check') check(folder);
  else if (word === undefined || word.startsWith('-')) throw new Error('Name the folder to write to, or --check.');
  else console.log(pack(folder, resolve(word)));
} finally {
  rmSync(folder, { recursive: true, force: true });
}
