import ts from 'typescript';
import { fileURLToPath } from 'node:url';

/** A file that is nowhere but in memory; its types come from the installed package, which knows nothing of us. */
const file = fileURLToPath(new URL('typedProduct.ts', import.meta.url));

const options: ts.CompilerOptions = {
  strict: true,
  noEmit: true,
  skipLibCheck: true,
  allowImportingTsExtensions: true,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  target: ts.ScriptTarget.ES2022,
  types: [],
};

/** What the TypeScript compiler says against a JSON text as a schema.org Product, by the types of schema-dts. */
export function againstProduct(json: string): string[] {
  const source = `import type { Product, WithContext } from './schemaTypes.ts';\nexport const product: WithContext<Product> = ${json};\n`;
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (name, ...rest) =>
    name === file ? ts.createSourceFile(name, source, ts.ScriptTarget.ES2022) : getSourceFile(name, ...rest);
  host.fileExists = (name) => name === file || fileExists(name);
  host.readFile = (name) => (name === file ? source : readFile(name));
  const program = ts.createProgram([file], options, host);
  const found = program.getSourceFile(file);
  if (found === undefined) throw new Error('the compiler did not see the file');
  return [...program.getSyntacticDiagnostics(found), ...program.getSemanticDiagnostics(found)].map(({ messageText }) =>
    ts.flattenDiagnosticMessageText(messageText, ' '),
  );
}
