import { defineConfig } from 'tsdown';

export default defineConfig({
  entry: 'src/main.ts',
  format: 'esm',
  platform: 'node',
  target: 'node20',
  // The writers of PDF and DXF stay packages of their own: they are loaded by the commands that print, and read files beside them.
  deps: { alwaysBundle: [/^@hitchwright\//, 'zod', 'fflate'], neverBundle: ['pdfkit', '@tarikjabiri/dxf'] },
  outExtensions: () => ({ js: '.js' }),
});
