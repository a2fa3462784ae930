import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Everything is addressed from where index.html lies, so that the built site works under any path. */
export default defineConfig({
  base: './',
  plugins: [react()],
  build: { outDir: 'dist', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  worker: { format: 'es' },
});
