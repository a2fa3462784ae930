import { cite } from './citations.ts';

export const rotaryTiller = cite({ source: 'manual-rotary-tiller', locator: 'pp. 19 and 21', edition: '2022' });
export const rotaryTillerB = cite({ source: 'manual-rotary-tiller-b', locator: 'p. 16' });
export const rotaryTillerGerman = cite({ source: 'manual-rotary-tiller-german', locator: 'p. 64' });
export const rotaryCutter = cite({ source: 'manual-rotary-cutter', locator: 'p. 53', edition: '2018' });
export const rotaryMowerA = cite({ source: 'manual-rotary-mower-a', locator: 'p. 14', edition: '2023' });
export const rotaryMowerB = cite({ source: 'manual-rotary-mower-b', locator: 'p. 10' });
export const grooveToGroove = cite({
  source: 'manual-groove-to-groove',
  locator: 'chipper p. 21, spreader p. 24, brush cutter p. 13',
});
export const trimmerMower = cite({ source: 'manual-trimmer-mower', locator: 'p. 9', edition: '2015' });
export const turfAerator = cite({ source: 'manual-turf-aerator', locator: 'pp. 13–14' });
export const seedBed = cite({ source: 'manual-seed-bed', locator: 'p. 12' });
export const hayTools = cite({ source: 'manual-hay-tools', locator: 'supplement B, pp. 29 and 50' });
export const chipper = cite({ source: 'manual-chipper', locator: 'p. 12' });
export const tractorShaft = cite({ source: 'manual-tractor-shaft', locator: 'tractor p. 115, compact tractor p. 65' });
export const snowBlower = cite({ source: 'manual-snow-blower', locator: 'page on measuring the drive shaft' });
export const lengthPage = cite({ source: 'shaft-length-page', locator: 'the page on length' });
export const forumAngles = cite({
  source: 'forum-shaft-angles',
  locator: 'the rules as copied',
  status: 'readSecondHand',
});
export const farmForum = cite({ source: 'farm-forum-angles', locator: 'the answer on angles' });
export const designText = cite({
  source: 'design-text-joints',
  locator: 'paragraph on joint angles, as quoted',
  status: 'readSecondHand',
});
export const shaftSafety = cite({ source: 'shop-shaft-safety', locator: 'the safety page' });
export const shaftSeriesA = cite({ source: 'shop-shaft-series-a', locator: 'series table', edition: '2014' });
export const shaftLengthsA = cite({ source: 'shop-shaft-series-a', locator: 'length table', edition: '2014' });
export const shaftSeriesB = cite({ source: 'shop-shaft-series-b', locator: 'series and cross table' });
export const shaftLengthsB = cite({ source: 'shop-shaft-series-b', locator: 'length table' });
export const drawbar2005 = cite({
  source: 'manual-drawbar-2005',
  locator: 'attaching a driven machine',
  edition: '2005',
});
export const drawbar2006 = cite({ source: 'manual-drawbar-2006', locator: 'drawbar table', edition: '2006' });
export const drawbar2008 = cite({
  source: 'manual-drawbar-2008',
  locator: 'drawbar table and change of the stub shaft',
  edition: '2008',
});
export const drawbarCompact = cite({ source: 'manual-drawbar-compact', locator: 'drawbar page' });
export const drawbarPress = cite({
  source: 'trade-press-drawbar',
  locator: 'answer on drawbar length',
  edition: '2021',
});
