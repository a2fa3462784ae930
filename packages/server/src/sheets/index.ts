export { limits as sheetLimits } from './limits.ts';
export { readSheetFile } from './readSheetFile.ts';
export type { SheetFile } from './sheetFile.ts';
export { writeCsv, writeXlsx } from './writeSheets.ts';
