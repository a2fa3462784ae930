// Are the docs true? Links resolve, generated pages are fresh, and what core exports is documented in full.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';

const problems = [...brokenLinks(), ...thinDocs()];
for (const script of ['write-schema', 'write-validation']) {
  const { status } = spawnSync('npx', ['tsx', `scripts/${script}.ts`, '--check'], { stdio: 'inherit' });
  if (status !== 0) problems.push(`scripts/${script}.ts found its page out of date`);
}
for (const problem of problems) console.error(problem);
console.log(`${problems.length} problems in the docs`);
process.exitCode = problems.length === 0 ? 0 : 1;

function brokenLinks(): string[] {
  return markdownFiles().flatMap((file) => {
    const links = [...readFileSync(file, 'utf8').matchAll(/\]\(([^)#\s]+)[^)]*\)/g)].map(([, target = '']) => target);
    const local = links.filter((target) => !/^[a-z]+:/.test(target));
    return local.filter((target) => !existsSync(join(dirname(file), target))).map((target) => `${file}: no ${target}`);
  });
}

function markdownFiles(): string[] {
  const found = spawnSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '*.md'], {
    encoding: 'utf8',
  });
  return found.stdout.split('\n').filter((file) => file !== '');
}

/** Every function that a front door of core exports says what its parameters and its result are, with units. */
function thinDocs(): string[] {
  const doors = Object.values(
    (JSON.parse(readFileSync('packages/core/package.json', 'utf8')) as { exports: Record<string, string> }).exports,
  );
  const files = doors.map((door) => join('packages/core', door));
  const program = ts.createProgram(files, {
    allowImportingTsExtensions: true,
    noEmit: true,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    module: ts.ModuleKind.ESNext,
  });
  const checker = program.getTypeChecker();
  return files.flatMap((file) => {
    const source = program.getSourceFile(file);
    const symbol = source && checker.getSymbolAtLocation(source);
    return symbol === undefined
      ? [`${file}: exports nothing`]
      : checker.getExportsOfModule(symbol).flatMap((one) => thinDoc(one, checker));
  });
}

function thinDoc(exported: ts.Symbol, checker: ts.TypeChecker): string[] {
  const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  const declaration = symbol.declarations?.find(ts.isFunctionDeclaration);
  if (declaration === undefined) return [];
  const tags = ts.getJSDocTags(declaration);
  const says = (name: string, about?: string): boolean =>
    tags.some(
      (tag) =>
        tag.tagName.text === name &&
        /\[[^\]]+\]/.test(commentOf(tag)) &&
        (about === undefined || (ts.isJSDocParameterTag(tag) && tag.name.getText() === about)),
    );
  const missing = declaration.parameters
    .map((parameter) => parameter.name)
    .filter(ts.isIdentifier)
    .filter((name) => !says('param', name.text))
    .map((name) => `@param ${name.text}`);
  const wanted = [...missing, ...(says('returns') ? [] : ['@returns'])];
  return wanted.length === 0
    ? []
    : [`${declaration.getSourceFile().fileName}: ${symbol.name} lacks ${wanted.join(', ')} with a unit in brackets`];
}

function commentOf(tag: ts.JSDocTag): string {
  return ts.getTextOfJSDocComment(tag.comment) ?? '';
}
