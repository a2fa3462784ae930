import { fullCategory, type Category } from './category.ts';
import { hookLinks, memory, ownerBlog, own, practice } from './citations.ts';
import type { Figure } from './figure.ts';
import { implementFigures } from './implementSide.ts';

/** What is known in figures of quick couplers. */
export type CouplerField =
  | 'clawBallDiameter'
  | 'hookHeight'
  | 'adjustableHookHeight'
  | 'socketSpread'
  | 'rearwardOffset'
  | 'hookEndOffset'
  | 'extraShaftLength'
  | 'lowerHookRoom'
  | 'gaugeBlock';

const medium = memory('medium');
const low = memory('low');

const usHook = { note: 'American U-frames' } as const;
const disputed = { disputed: true } as const;

const perCategory: Readonly<Partial<Record<CouplerField, Readonly<Partial<Record<Category, readonly Figure[]>>>>>> = {
  clawBallDiameter: {
    '1': [medium(44, '44', 'mm')],
    '2': [hookLinks(56, '56', 'mm', { note: 'also printed as 2.2 in' })],
    '3': [medium(64, '64', 'mm')],
    '4': [medium(85, '85', 'mm')],
  },
  hookHeight: {
    '1': [low(381, '15', 'in', usHook)],
    '2': [low(381, '15', 'in', usHook)],
    '3': [low(457.2, '18–19', 'in', { high: 482.6, ...usHook })],
    '4': [low(685.8, '27', 'in', usHook)],
  },
  rearwardOffset: { '1': [medium(100, 'about 100', 'mm', disputed)] },
};

const forAny: Readonly<Partial<Record<CouplerField, readonly Figure[]>>> = {
  adjustableHookHeight: [low(381, '15–19', 'in', { high: 482.6, note: 'three holes, American U-frames' })],
  rearwardOffset: [
    medium(75, '75–150', 'mm', { high: 150, ...disputed }),
    low(100, '100–200', 'mm', { high: 200, ...disputed, note: 'said as 4–6 in for light couplers, 5–8 in for heavy' }),
    practice(114.3, 'about 4-1/2', 'in', disputed),
  ],
  hookEndOffset: [ownerBlog(101.6, '4', 'in', { note: 'one owner’s set of link-end connectors' })],
  extraShaftLength: [practice(114.3, '4-1/2 to 5', 'in', { high: 127 })],
  lowerHookRoom: [low(75, '75–80', 'mm', { high: 80, note: 'sideways, at each lower hook' })],
  gaugeBlock: [own(100, '100', 'mm', { note: 'square block held round each pin where a hook must pass' })],
};

/**
 * Figures of quick couplers for implements of one category. [mm] Hook heights are from the lower seats up to the upper
 * hook; offsets are how far the hook-up points move rearward; `socketSpread` is the category's shoulder span, to which
 * the seats' clearance is added. Most rows are from memory or trade practice: measure the coupler at hand instead.
 *
 * @param category size class [name]
 * @param field the dimension [name]
 * @returns the category's own rows, then those that hold for any category; empty where nothing is known [rows]
 * @example couplerFigures('2', 'clawBallDiameter')[0]?.value; // 56
 * @source manual-hook-links, owner-blog, common-practice, memory, own
 */
export function couplerFigures(category: Category, field: CouplerField): readonly Figure[] {
  if (field === 'socketSpread') return implementFigures(category, 'shoulderSpan').map(asSocketSpread);
  return [...(perCategory[field]?.[fullCategory(category)] ?? []), ...(forAny[field] ?? [])];
}

function asSocketSpread(span: Figure): Figure {
  return {
    ...span,
    status: 'memory',
    confidence: 'medium',
    note: 'the implement’s shoulder span taken as the seats’ nominal spread; seat clearance comes on top',
  };
}
