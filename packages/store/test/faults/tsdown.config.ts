/** The server that is to be killed, in one file that starts at once. */
export default {
  entry: 'child.ts',
  outDir: '../../dist/faults',
  format: 'esm',
  platform: 'node',
  target: 'node20',
  deps: { alwaysBundle: [/^@hitchwright\//, 'zod', 'fflate', 'uqr', 'kysely', /^pg/], neverBundle: ['better-sqlite3'] },
  outExtensions: () => ({ js: '.js' }),
  logLevel: 'warn',
};
