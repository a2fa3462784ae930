import {
  chipper,
  designText,
  farmForum,
  forumAngles,
  grooveToGroove,
  hayTools,
  lengthPage,
  rotaryCutter,
  rotaryMowerA,
  rotaryMowerB,
  rotaryTiller,
  rotaryTillerB,
  rotaryTillerGerman,
  seedBed,
  shaftSafety,
  shaftSeriesA,
  tractorShaft,
  trimmerMower,
  turfAerator,
} from './driveCitations.ts';
import type { Cite } from './citations.ts';
import type { Figure } from './figure.ts';

const disputed = { disputed: true } as const;
const least = { ...disputed, bound: 'least' } as const;

const clearances: readonly Figure[] = [
  turfAerator(12, '12', 'mm', { ...least, note: '1/2 in, added to the cut' }),
  grooveToGroove(25, '25', 'mm', { ...least, note: '1 in' }),
  chipper(25, '25', 'mm', { ...least, note: '1 in' }),
  rotaryMowerA(40, '40', 'mm', { ...least, note: '1-9/16 in' }),
  rotaryTillerGerman(40, '4', 'cm', least),
  tractorShaft(40, '40', 'mm', { ...least, note: 'sketch of the compact tractor' }),
  lengthPage(50, '50', 'mm', { ...least, note: '2 in' }),
  trimmerMower(50, '50', 'mm', { ...least, note: '2 in, added to the shortest gap' }),
  rotaryMowerB(76, '76', 'mm', { ...least, note: '3 in, each half short of the other half’s joint shield' }),
];

/**
 * What sources want left between the bottomed shaft and the shortest place, least first.
 *
 * @returns rows, all of them minimums [mm]
 * @source manual-turf-aerator, manual-groove-to-groove, manual-chipper, manual-rotary-mower-a, manual-rotary-mower-b,
 * manual-rotary-tiller-german, manual-tractor-shaft, shaft-length-page, manual-trimmer-mower
 */
export function clearanceFigures(): readonly Figure[] {
  return clearances;
}

/** How much of the inner profile must stay in the outer one: a length [mm], or a share of the profile's free length. */
export interface OverlapRule {
  readonly kind: 'length' | 'share';
  readonly figure: Figure;
}

const length = (figure: Figure): OverlapRule => ({ kind: 'length', figure });
const share = (figure: Figure): OverlapRule => ({ kind: 'share', figure });
const ofFreeLength = 'of the free length of the profile';

const overlaps: readonly OverlapRule[] = [
  length(chipper(100, '100', 'mm', { ...least, note: '4 in' })),
  length(tractorShaft(110, '110–120', 'mm', { ...least, high: 120 })),
  length(lengthPage(150, '6 (150 mm)', 'in', { ...least, note: 'printed as approximate' })),
  length(grooveToGroove(152, '6 (152 mm)', 'in', { ...least, note: 'under load' })),
  length(seedBed(250, '250', 'mm', { ...least, note: 'at any time' })),
  share(
    rotaryTiller(1 / 3, '1/3', ofFreeLength, {
      ...least,
      note: 'in any condition, tubes of equal length; its own step 2 sets the longest length with 1/2',
    }),
  ),
  share(rotaryTillerGerman(1 / 3, '1/3', ofFreeLength, least)),
  share(hayTools(1 / 2, '1/2', ofFreeLength, { ...least, note: 'two manuals' })),
  share(shaftSeriesA(1 / 2, '1/2', ofFreeLength, { ...least, note: 'at all speeds' })),
];

/**
 * The overlap that sources want at the longest place while turning: lengths first, then shares of the profile's free
 * length. A share never applies to the whole shaft: yokes and joints take a fixed part of it.
 *
 * @returns rules, all of them minimums [mm, or a share]
 * @source manual-chipper, manual-tractor-shaft, shaft-length-page, manual-groove-to-groove, manual-seed-bed,
 * manual-rotary-tiller, manual-rotary-tiller-german, manual-hay-tools, shop-shaft-series-a
 */
export function overlapFigures(): readonly OverlapRule[] {
  return overlaps;
}

/** One source's limit of a joint's angle [deg], and what the drive does at it. */
export interface JointAngle {
  readonly joint: 'single' | 'wideAngle';
  /** `advised` · `turning` without end · `briefly` while turning · `stopAbove` it the drive is off · `standstill`, where it binds */
  readonly when: 'advised' | 'turning' | 'briefly' | 'stopAbove' | 'standstill';
  readonly figure: Figure;
}

/** A row in printed degrees that its sources agree on. */
function agreed(source: Cite, degrees: number, note?: string): Figure {
  return source(degrees, String(degrees), '°', { bound: 'most', ...(note === undefined ? {} : { note }) });
}

function upTo(source: Cite, degrees: number, note?: string): Figure {
  return { ...agreed(source, degrees, note), ...disputed };
}

const single = (when: JointAngle['when'], figure: Figure): JointAngle => ({ joint: 'single', when, figure });
const wide = (when: JointAngle['when'], figure: Figure): JointAngle => ({ joint: 'wideAngle', when, figure });

const jointAngles: readonly JointAngle[] = [
  single('advised', farmForum(3, '3–4', '°', { ...disputed, high: 4, note: 'ideal; 540 rpm forgives much more' })),
  single('advised', upTo(lengthPage, 15)),
  single('turning', upTo(rotaryTiller, 25, 'up or down')),
  single('turning', upTo(rotaryCutter, 25, 'pull-type')),
  single('turning', upTo(forumAngles, 25)),
  single('turning', upTo(designText, 25, 'good practice; parts often touch at about 37.5°')),
  single('turning', upTo(hayTools, 35, 'in operation')),
  single('briefly', upTo(rotaryCutter, 35, 'in turns, now and then')),
  single('briefly', upTo(forumAngles, 45, 'at reduced output')),
  single('stopAbove', upTo(rotaryTiller, 25, 'hitch pins no higher than 72 cm (28-1/2 in)')),
  single('stopAbove', upTo(turfAerator, 35)),
  single('stopAbove', upTo(rotaryTillerB, 35)),
  single('stopAbove', upTo(shaftSafety, 35)),
  single('stopAbove', upTo(forumAngles, 45, 'or when the angles are unequal')),
  single('standstill', agreed(forumAngles, 90)),
  single('standstill', agreed(hayTools, 90)),
  wide('turning', upTo(forumAngles, 25)),
  wide('turning', upTo(hayTools, 70, 'in operation')),
  wide('briefly', agreed(forumAngles, 80, 'at reduced output')),
  wide('briefly', agreed(rotaryCutter, 80, 'in turns, now and then')),
  wide('standstill', upTo(forumAngles, 80)),
  wide('standstill', upTo(hayTools, 70)),
];

/**
 * The angles that sources allow a single and a wide-angle joint. They disagree: 15, 25, 35 and 45° for a single joint,
 * 25, 70 and 80° for a wide-angle one. The shaft's own manual goes before all of them.
 *
 * @returns rows, all of them maximums [deg]
 * @source shaft-length-page, manual-rotary-tiller, manual-rotary-tiller-b, manual-rotary-cutter, manual-hay-tools,
 * manual-turf-aerator, shop-shaft-safety, forum-shaft-angles, design-text-joints, farm-forum-angles
 */
export function jointAngleFigures(): readonly JointAngle[] {
  return jointAngles;
}
