import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder that the packages lie in [path]. */
export const root = fileURLToPath(new URL('../../../', import.meta.url));

/** Where a yard is kept on this machine. */
export interface Place {
  /** Data folder; it is there [path]. */
  readonly folder: string;
  /** Address of the database, as `openStore` takes it. */
  readonly url: string;
}

/** Where HITCHWRIGHT_DATA and HITCHWRIGHT_DB say that the yard is kept: `data` beside the packages and yard.db in it where they are left out. */
export function placeOfYard(env: NodeJS.ProcessEnv): Place {
  const folder = env['HITCHWRIGHT_DATA'] ?? join(root, 'data');
  mkdirSync(folder, { recursive: true });
  return { folder, url: env['HITCHWRIGHT_DB'] ?? `sqlite:${join(folder, 'yard.db')}` };
}

/** The time now [ISO 8601, UTC]. */
export function now(): string {
  return new Date().toISOString();
}
