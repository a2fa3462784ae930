import { setupJsonSchema } from '@hitchwright/core/contract';

/** Prints the JSON Schema of a setup. */
export function schemaCommand(): number {
  process.stdout.write(`${JSON.stringify(setupJsonSchema(), null, 2)}\n`);
  return 0;
}
