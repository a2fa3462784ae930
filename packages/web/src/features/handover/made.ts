import type { ViewName } from '@hitchwright/core/drawings';
import type { ChartWanted, DrawingFormat, HandedOver, HandOverAsked } from '@hitchwright/print/pure';

/** Views that are offered, and what each is called. */
export const views = [
  ['rear', 'Rear'],
  ['side', 'Side, at work'],
  ['lift', 'Three heights of the lift'],
  ['top', 'From above'],
  ['shaft', 'Drive shaft'],
] as const satisfies readonly (readonly [ViewName, string])[];

/** Formats of a drawing, and what each is called. */
export const formats = [
  ['pdf', 'PDF'],
  ['svg', 'SVG'],
  ['dxf', 'DXF, in millimetres'],
] as const satisfies readonly (readonly [DrawingFormat, string])[];

/** What the worker is asked: something of a setup, or a file of a wall chart. */
export type Asked = HandOverAsked | ChartWanted;

/** What it made, or why it did not. */
export type Made = HandedOver | { readonly kind: 'fault'; readonly message: string };

/** What was not made. */
export type Problem = Extract<Made, { kind: 'refused' | 'errors' | 'fault' }>;
