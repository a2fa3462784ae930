// Packs core as others install it: compiled to plain JavaScript with its types. `npm pack` in packages/core runs the first two before and after it:
//   node scripts/pack-core.mjs compile  compiles to dist and lets every door of package.json lead there
//   node scripts/pack-core.mjs restore  puts package.json back as it was
//   node scripts/pack-core.mjs check    packs a copy, installs it into an empty project and runs the example of its README there
import { execFileSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const core = join(root, 'packages/core');
const manifest = join(core, 'package.json');
const kept = join(core, 'dist/package.json.kept');
const license = join(core, 'LICENSE');

/** Runs a program and gives back what it prints; what it prints on fault is shown. */
function run(program, words, cwd) {
  return execFileSync(program, words, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] });
}

/** Compiles core, and writes the manifest of a package that Node can run. */
function compile() {
  if (existsSync(kept)) restore();
  rmSync(join(core, 'dist'), { recursive: true, force: true });
  const emit = ['--noEmit', 'false', '--declaration', '--rewriteRelativeImportExtensions'];
  const folders = ['--rootDir', join(core, 'src'), '--outDir', join(core, 'dist')];
  run(join(root, 'node_modules/.bin/tsc'), ['-p', core, ...emit, ...folders], root);
  cpSync(join(root, 'LICENSE'), license);
  cpSync(manifest, kept);
  writeFileSync(manifest, `${JSON.stringify(compiled(JSON.parse(readFileSync(kept, 'utf8'))), null, 2)}\n`);
}

/** Every door leads to compiled code and its types. */
function compiled(own) {
  const forOthers = Object.entries(own).filter(([key]) => !['devDependencies', 'scripts'].includes(key));
  const { exports: doors, ...rest } = Object.fromEntries(forOthers);
  const target = (source) => source.replace(/^\.\/src\//, './dist/').replace(/\.ts$/, '');
  const exports = Object.fromEntries(
    Object.entries(doors).map(([door, source]) => [
      door,
      { types: `${target(source)}.d.ts`, default: `${target(source)}.js` },
    ]),
  );
  return { ...rest, engines: { node: '>=20.19' }, files: ['dist', '!dist/package.json.kept'], exports };
}

function restore() {
  renameSync(kept, manifest);
  for (const made of [join(core, 'dist'), license]) rmSync(made, { recursive: true, force: true });
}

/** Installs the package into an empty project without any network, and runs the example there. */
function check(folder) {
  const tarball = packed(copyOfCore(folder), folder);
  const project = join(folder, 'project');
  mkdirSync(project);
  writeFileSync(join(project, 'package.json'), '{"name":"empty","private":true,"type":"module"}\n');
  const { dependencies } = JSON.parse(readFileSync(manifest, 'utf8'));
  const needed = Object.keys(dependencies).map((name) => packed(join(root, 'node_modules', name), folder, true));
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

/** What packing takes, in a folder of its own: packing changes the manifest for a moment, and others may be at work. */
function copyOfCore(folder) {
  const copy = join(folder, 'copy');
  for (const part of ['scripts', 'packages/core', 'tsconfig.base.json', 'LICENSE'])
    cpSync(join(root, part), join(copy, part), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
  return join(copy, 'packages/core');
}

/** Packs what is in a folder; gives back the path of the tarball. */
function packed(folder, out, asItIs = false) {
  const words = ['pack', '--json', '--pack-destination', out, ...(asItIs ? ['--ignore-scripts'] : [])];
  const [{ filename }] = JSON.parse(run('npm', words, folder));
  return join(out, filename);
}

/** The example of the README and what it says that it prints. */
function example() {
  const readme = readFileSync(join(core, 'README.md'), 'utf8');
  const [, code] = /```js\n([\s\S]*?)```/.exec(readme) ?? [];
  const [, printed] = /```text\n([\s\S]*?)```/.exec(readme) ?? [];
  if (code === undefined || printed === undefined) throw new Error('The README has no example, or not what it prints.');
  return { code, printed };
}

function checkAside() {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-pack-'));
  try {
    check(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const work = { compile, restore, check: checkAside }[process.argv[2] ?? ''];
if (work === undefined) throw new Error('Say compile, restore or check.');
work();
