import type { TestProject } from 'vitest/node';
import { startServer } from './server.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the PostgreSQL server, its owner, or what is missing. */
    postgres: { readonly url: string; readonly owner: string | null } | { readonly missing: string };
  }
}

/** One PostgreSQL server for all tests. Where none can be had, every test on it fails and says what is missing. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  try {
    const server = await startServer();
    project.provide('postgres', { url: server.url, owner: server.owner });
    return () => server.leave();
  } catch (problem) {
    project.provide('postgres', { missing: problem instanceof Error ? problem.message : String(problem) });
    return () => Promise.resolve();
  }
}
