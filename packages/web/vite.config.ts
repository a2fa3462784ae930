import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA, type VitePWAOptions } from 'vite-plugin-pwa';

/** Paper of the light sheet, `--ground` in src/styles/tokens.css. */
const paper = '#f3ecdd';

const manifest: VitePWAOptions['manifest'] = {
  name: 'Hitchwright',
  short_name: 'Hitchwright',
  description:
    'Decide whether an implement, a quick coupler and a tractor hook up, run, lift and stay upright, what to measure and which parts cure a misfit.',
  start_url: './',
  scope: './',
  display: 'standalone',
  theme_color: paper,
  background_color: paper,
  icons: [
    { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
    { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
    { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
    { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
};

/** The service worker is ours (src/app/offline/sw.ts); the plugin lists every built file in it. */
const offline = VitePWA({
  strategies: 'injectManifest',
  srcDir: 'src/app/offline',
  filename: 'sw.ts',
  injectRegister: false,
  includeManifestIcons: false,
  manifest,
  integration: {
    configureCustomSWViteBuild: (config) => {
      config.logLevel = 'warn';
    },
  },
  injectManifest: {
    rollupFormat: 'iife',
    injectionPoint: 'FILES_OF_THE_SITE',
    globPatterns: ['**/*'],
    globIgnores: ['manifest.webmanifest'],
    maximumFileSizeToCacheInBytes: 16 * 1024 * 1024,
  },
});

/** Everything is addressed from where index.html lies, so that the built site works under any path. */
export default defineConfig({
  base: './',
  plugins: [react(), offline],
  build: { outDir: 'dist', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  worker: { format: 'es' },
});
