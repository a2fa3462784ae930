import { memory } from './citations.ts';
import type { Figure } from './figure.ts';
import {
  ballastArticle,
  gardenWeights,
  italianArticles,
  slabPage,
  weightsPage,
  wheelWeightsManual,
} from './loadCitations.ts';
import { kgPerPound } from '../units/index.ts';

const remembered = memory('medium');
const pounds = (count: number): number => count * kgPerPound;

const suitcases: readonly Figure[] = [
  italianArticles(15, '15–40', 'kg', { high: 40, note: 'each' }),
  slabPage(25, '25', 'kg', { note: 'older cast slab' }),
  slabPage(50, '50', 'kg', { note: 'older cast slab' }),
  gardenWeights(pounds(50), '50', 'lb', { note: 'garden and sub-compact tractors' }),
  ballastArticle(pounds(50), 'about 50', 'lb', { rounded: true, note: 'compact tractors; six to eight fit' }),
  weightsPage(pounds(100), 'about 100', 'lb', { rounded: true, note: 'some of them' }),
  remembered(pounds(42), '42', 'lb', { note: 'common size' }),
  remembered(pounds(70), '70', 'lb', { note: 'common size' }),
  remembered(pounds(100), '100', 'lb', { note: 'common size' }),
];

/**
 * What one suitcase weight weighs, by source. Weigh one where the count is close: the mass is often cast into it.
 *
 * @returns rows [kg]
 * @source italian-ballast-articles, cast-slab-page, manual-garden-weights, shop-ballast-article, parts-page-weights
 */
export function suitcaseFigures(): readonly Figure[] {
  return suitcases;
}

/** One size of wheel weight, and how many a rear wheel takes. */
export interface WheelWeight {
  /** [kg] each */
  readonly mass: Figure;
  /** on one rear wheel; rows of different tractors */
  readonly most: readonly Figure[];
}

/** Wheel weights of utility tractors. @source manual-wheel-weights */
export const wheelWeights: readonly WheelWeight[] = [
  {
    mass: wheelWeightsManual(43, '43', 'kg', { note: '95 lb' }),
    most: [
      wheelWeightsManual(4, '4', 'per side', { bound: 'most', disputed: true, note: 'one utility tractor' }),
      wheelWeightsManual(3, '3', 'per rear wheel', { bound: 'most', disputed: true, note: 'another utility tractor' }),
    ],
  },
];
