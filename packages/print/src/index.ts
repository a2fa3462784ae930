export { bundledFonts } from './fonts/readFonts.ts';
export * from './pure.ts';
