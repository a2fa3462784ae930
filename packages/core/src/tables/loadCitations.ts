import { cite } from './citations.ts';

export const germanSheet = cite({
  source: 'german-steering-sheet',
  locator: 'sheet 4.12 on § 38, reprinted in a mower manual, p. 37',
  status: 'readSecondHand',
});
export const austrianArticle = cite({ source: 'austrian-road-article', locator: 'paragraph on the steered axle' });
export const mowerStandard = cite({
  source: 'en-iso-4254-10',
  locator: 'annex B, as quoted in mower manuals, pp. 153 and 182',
  status: 'readSecondHand',
});
export const loaderStandard = cite({
  source: 'en-12525',
  locator: 'as quoted in three loader manuals, pp. 10, 12 and 14',
  edition: 'EN 12525 + A2:2010',
  status: 'readSecondHand',
});
export const italianArticles = cite({
  source: 'italian-ballast-articles',
  locator: 'paragraphs on the front axle and on weights',
});
export const ballastFormula = cite({
  source: 'manual-ballast-formula',
  locator: 'least front and rear ballast, tillage manual p. 26',
});
export const italianTiller = cite({ source: 'manual-tiller-italian', locator: 'manuals pp. 19 and 24' });
export const compactReaction = cite({
  source: 'manual-compact-reaction',
  locator: 'ballast pages, pp. 125 and 105',
});
export const polishMower = cite({ source: 'manual-mower-polish', locator: 'p. 68' });
export const rowCropBallast = cite({
  source: 'manual-row-crop-ballast',
  locator: 'ballasting for mounted implements',
});
export const loaderBallast = cite({ source: 'manual-loader-ballast', locator: 'p. 45' });

export const openTables = cite({ source: 'load-index-open-tables', locator: 'load index and speed tables' });
export const generalIndexPage = cite({ source: 'load-index-page', locator: 'load index table, 0 to 119' });
export const trailerPage = cite({ source: 'load-index-trailer-page', locator: 'load index table' });
export const tyrePage = cite({ source: 'load-index-tyre-page', locator: 'load index table, 75 to 150' });
export const tyreArticle = cite({ source: 'tyre-article', locator: 'paragraph on the marking of a tyre' });
export const tyreLimits = cite({ source: 'manual-tyre-limits', locator: 'tyre tables, pp. 174 and 222' });
export const indexFromMemory = cite({
  source: 'memory',
  locator: 'load index and speed tables, from memory',
  status: 'memory',
});

export const fluidPages = cite({ source: 'fluid-pages', locator: 'comparison of fluids' });
export const fluidForum = cite({ source: 'forum-tyre-liquid', locator: 'table of fluids' });
export const fluidDealer = cite({ source: 'tyre-dealer-liquid', locator: 'paragraph on liquid ballast' });
export const beetPage = cite({ source: 'beet-juice-page', locator: 'properties' });
export const liquidManual = cite({ source: 'manual-tyre-liquid', locator: 'liquid ballast tables, pp. 74 and 72' });
export const liquidDerived = cite({
  source: 'manual-tyre-liquid',
  locator: 'liquid ballast tables, pp. 74 and 72',
  status: 'derived',
});
export const coolant = cite({ source: 'engine-manual-coolant', locator: 'coolant table, p. 48' });
export const brines = cite({ source: 'handbook-brines', locator: 'brine tables, pp. 458 and 459' });
export const methanol = cite({ source: 'handbook-methanol', locator: 'antifreeze table, p. 7' });
export const fillChart = cite({ source: 'fill-chart', locator: 'the chart' });

export const seatStandard = cite({
  source: 'paes-119-2001',
  locator: 'clause 5.2.5, as quoted',
  edition: 'PAES 119:2001',
  status: 'readSecondHand',
});
export const gardenWeights = cite({ source: 'manual-garden-weights', locator: 'attachment mass pages, pp. 20 and 22' });
export const ballastArticle = cite({ source: 'shop-ballast-article', locator: 'paragraph on front weights' });
export const weightsPage = cite({ source: 'parts-page-weights', locator: 'paragraph on front weights' });
export const slabPage = cite({ source: 'cast-slab-page', locator: 'cast slabs' });
export const wheelWeightsManual = cite({ source: 'manual-wheel-weights', locator: 'wheel weights' });
