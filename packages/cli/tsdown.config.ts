import { defineConfig } from 'tsdown';

export default defineConfig({
  entry: 'src/main.ts',
  format: 'esm',
  platform: 'node',
  target: 'node20',
  deps: { alwaysBundle: [/^@hitchwright\//, 'zod', 'fflate'] },
  outExtensions: () => ({ js: '.js' }),
});
