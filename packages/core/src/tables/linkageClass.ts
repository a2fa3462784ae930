import { fullCategory, type Category } from './category.ts';

/** Places and lengths of a tractor's linkage that a category stands in for, and the heights its balls reach. */
export const linkageClassFields = [
  'tractor.lowerLinkLength',
  'tractor.lowerLinkPivotHeight',
  'tractor.lowerLinkPivotBehindAxle',
  'tractor.topLinkPivotHeight',
  'tractor.topLinkPivotBehindAxle',
  'tractor.ballHeightLow',
  'tractor.ballHeightHigh',
] as const;

/** One of `linkageClassFields`. */
export type LinkageClassField = (typeof linkageClassFields)[number];

/** Lowest and highest [mm]. */
type Ends = readonly [number, number];

const byField: Readonly<Record<LinkageClassField, Readonly<Record<'0' | '1' | '2' | '3' | '4', Ends>>>> = {
  'tractor.lowerLinkLength': {
    '0': [380, 620],
    '1': [500, 850],
    '2': [750, 1060],
    '3': [880, 1150],
    '4': [1000, 1350],
  },
  'tractor.lowerLinkPivotHeight': {
    '0': [220, 400],
    '1': [270, 500],
    '2': [360, 600],
    '3': [430, 720],
    '4': [500, 850],
  },
  'tractor.lowerLinkPivotBehindAxle': { '0': [0, 160], '1': [0, 220], '2': [40, 280], '3': [60, 340], '4': [60, 400] },
  'tractor.topLinkPivotHeight': {
    '0': [420, 680],
    '1': [560, 920],
    '2': [740, 1120],
    '3': [900, 1380],
    '4': [1050, 1600],
  },
  'tractor.topLinkPivotBehindAxle': {
    '0': [40, 260],
    '1': [80, 380],
    '2': [140, 480],
    '3': [180, 580],
    '4': [200, 680],
  },
  'tractor.ballHeightLow': { '0': [100, 230], '1': [120, 260], '2': [140, 280], '3': [160, 330], '4': [160, 350] },
  'tractor.ballHeightHigh': { '0': [430, 720], '1': [580, 950], '2': [780, 1150], '3': [900, 1300], '4': [950, 1450] },
};

/**
 * The range [mm] that stands in for a place or length of the linkage when only the category is known. All of them are our
 * own wide choice around the few lengths remembered or derived for the category; none has a source.
 *
 * @param category size class [name]
 * @param field the dimension [name]
 * @returns lowest and highest [mm]
 * @example linkageClassRange('1', 'tractor.ballHeightLow'); // { low: 120, high: 260 }
 * @source own wide choice; common practice, no source
 */
export function linkageClassRange(category: Category, field: LinkageClassField): { low: number; high: number } {
  const [low, high] = byField[field][fullCategory(category) as '0' | '1' | '2' | '3' | '4'];
  return { low, high };
}
