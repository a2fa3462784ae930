import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { inflateSync } from 'node:zlib';
import type { Fonts } from './fonts.ts';
import { unwrapped } from './woff.ts';

const require = createRequire(import.meta.url);
const read = new Map<string, Uint8Array>();

/** The bundled fonts, read from their packages where Node runs; each file is read and unwrapped once. */
export const bundledFonts: Fonts = ({ family, subset, weight }) => {
  const file = `@fontsource/${family}/files/${family}-${subset}-${weight}-normal.woff`;
  const known = read.get(file);
  if (known !== undefined) return known;
  const bytes = unwrapped(readFileSync(require.resolve(file)), inflateSync);
  read.set(file, bytes);
  return bytes;
};
