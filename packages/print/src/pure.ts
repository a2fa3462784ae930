export { chartPdf, type ChartPdfOptions } from './chart/chartPdf.ts';
export { drawingPdf, type DrawingPdfOptions } from './drawing/drawingPdf.ts';
export { drawingDxf } from './dxf/drawingDxf.ts';
export type { FontFamily, FontFile, Fonts, Weight } from './fonts/fonts.ts';
export type { PaperName } from './pdf/paper.ts';
export { fileReference } from './sheet/content/reference.ts';
export type { Judged, SheetOptions } from './sheet/options.ts';
export { sheetPdf, type SheetPdf } from './sheet/sheetPdf.ts';
export { handOver, type DrawingFormat, type HandedOver, type HandOverAsked, type Wanted } from './handing/handOver.ts';
