import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/postgres.ts', 'test/faults/build.ts'],
    setupFiles: ['test/seed.ts'],
    // Most of the time is spent waiting for the disk and for PostgreSQL.
    maxWorkers: 3,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
