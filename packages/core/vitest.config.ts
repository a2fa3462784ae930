import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    setupFiles: ['test/seed.ts'],
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    testTimeout: 120_000,
  },
});
