import {
  dealerPage,
  draftLinks,
  encyclopedia,
  linkagePages,
  mastThread,
  memory,
  plough,
  seedDrill,
  shopSummary,
  specialist,
  widthPages,
} from './citations.ts';
import type { Figure } from './figure.ts';
import type { FigureTable } from './figureTable.ts';

/** What a published table says of the tractor's linkage. */
export type TractorField =
  | 'lowerBallBore'
  | 'upperBallBore'
  | 'lowerBallWidth'
  | 'upperBallWidth'
  | 'ballSpan'
  | 'lateralMovement'
  | 'lowestHitchHeight'
  | 'mastAdjustmentUpperHeight'
  | 'mastAdjustmentAngle'
  | 'transportHeight'
  | 'powerRange'
  | 'levellingAdjustment'
  | 'tyreClearance'
  | 'hitchPointClearance'
  | 'ptoToHitch'
  | 'convergenceHorizontal'
  | 'linkFrontSpacing'
  | 'torsionalFreeFloat'
  | 'transportPitch'
  | 'verticalConvergencePerWheelbase';

const high = memory('high');
const medium = memory('medium');
const low = memory('low');

const fiveDegrees = (5 * Math.PI) / 180;
const tenDegrees = (10 * Math.PI) / 180;
const limits = { plus: fiveDegrees, minus: fiveDegrees, note: 'about upright, at both ends of the zone' } as const;
const least = { bound: 'least' } as const;
const most = { bound: 'most' } as const;
const coarse = { rounded: true } as const;
const unsaid = { disputed: true, note: 'print does not say shoulder or centre' } as const;
const boreOrPin = { disputed: true, note: 'no end named; taken for a bore since it exceeds the 5/8 in pin' } as const;
const aReading = { note: 'a forum’s reading of the standard' } as const;
const fromMemoryTerms = { note: 'worked out from convergence and link length, both from memory' } as const;

const everyCategory = (...figures: readonly Figure[]): Readonly<Record<'1' | '2' | '3' | '4', readonly Figure[]>> => ({
  '1': figures,
  '2': figures,
  '3': figures,
  '4': figures,
});

/** All distances [mm], angles [rad]. */
export const tractorRows: FigureTable<TractorField> = {
  lowerBallBore: {
    '0': [shopSummary(17, '17', 'mm', boreOrPin)],
    '1': [shopSummary(22.4, '22.4', 'mm'), specialist(22.4, '22.4', 'mm')],
    '2': [shopSummary(28.7, '28.7', 'mm'), specialist(28.7, '28.7', 'mm'), widthPages(28.7, '28.70', 'mm')],
    '3': [
      shopSummary(37.4, '37.4', 'mm'),
      specialist(37.4, '37.4', 'mm'),
      widthPages(37.34, '37.34', 'mm', { disputed: true }),
    ],
    '4': [widthPages(51, '51', 'mm')],
  },
  upperBallBore: {
    '0': [shopSummary(17, '17', 'mm', boreOrPin)],
    '1': [specialist(19, '19', 'mm'), medium(19.3, '19.3', 'mm', { disputed: true })],
    '2': [specialist(25.5, '25.5', 'mm'), medium(25.7, '25.7', 'mm', { disputed: true })],
    '3': [specialist(31.7, '31.7', 'mm'), medium(32, '32', 'mm', { disputed: true })],
    '4': [widthPages(45, '45', 'mm', { disputed: true, note: 'the same page gives 45 for the pin' })],
  },
  lowerBallWidth: {
    '1': [high(35, '35', 'mm')],
    '2': [widthPages(44.96, '44.96', 'mm')],
    '3': [widthPages(44.96, '44.96', 'mm')],
    '4': [medium(57.5, '57.5', 'mm')],
  },
  upperBallWidth: {
    '1': [medium(44, '44', 'mm', most)],
    '2': [medium(51, '51', 'mm', most)],
    '3': [medium(51, '51', 'mm', most)],
    '4': [medium(64, '64', 'mm', most)],
  },
  ballSpan: {
    '0': [shopSummary(500, '500', 'mm', unsaid), encyclopedia(508, '20', 'in', unsaid)],
    '1': [
      shopSummary(718, '718', 'mm'),
      encyclopedia(711.2, '28', 'in', coarse),
      dealerPage(710, '710', 'mm', { rounded: true, disputed: true }),
    ],
    '2': [
      shopSummary(870, '870', 'mm'),
      draftLinks(870, '870', 'mm'),
      encyclopedia(863.6, '34', 'in', coarse),
      dealerPage(860, '860', 'mm', { rounded: true, disputed: true }),
    ],
    '3': [shopSummary(1010, '1010', 'mm'), draftLinks(1010, '1010', 'mm'), encyclopedia(1016, '40', 'in', coarse)],
    '4': [
      medium(1224, '1224', 'mm', { note: '1166.5 + 57.5, both terms from memory' }),
      encyclopedia(1219.2, '48', 'in', coarse),
    ],
  },
  lateralMovement: {
    '1': [medium(100, '100', 'mm', least)],
    '2': [
      medium(125, '125', 'mm', least),
      linkagePages(125, '125', 'mm', { bound: 'most', disputed: true, note: 'a setting for ploughing, not a minimum' }),
    ],
    '3': [medium(125, '125', 'mm', least)],
    '4': [medium(130, '130', 'mm', least)],
  },
  lowestHitchHeight: {
    '1': [mastThread(200, '200', 'mm', { ...most, ...aReading })],
    '2': [medium(200, '200', 'mm', most)],
    '3': [medium(230, '230', 'mm', most)],
    '4': [medium(230, '230', 'mm', most)],
  },
  mastAdjustmentUpperHeight: {
    '1': [mastThread(508, '508', 'mm', { ...least, ...aReading })],
    '2': [medium(610, '610', 'mm', least)],
    '3': [medium(660, '660', 'mm', least)],
    '4': [medium(760, '760', 'mm', least)],
  },
  mastAdjustmentAngle: {
    '1': [mastThread(0, '±5', '°', { ...limits, note: `${limits.note}; ${aReading.note}` })],
    '2': [medium(0, '±5', '°', limits)],
    '3': [medium(0, '±5', '°', limits)],
    '4': [medium(0, '±5', '°', limits)],
  },
  transportHeight: {
    '1': [medium(820, '820', 'mm', least)],
    '2': [medium(950, '950', 'mm', least)],
    '3': [medium(1065, '1065', 'mm', least)],
    '4': [medium(1200, '1200', 'mm', least)],
  },
  powerRange: {
    '1': [
      low(610, '610', 'mm', { ...least, disputed: true }),
      low(560, '560', 'mm', { ...least, disputed: true, note: 'other editions' }),
    ],
    '2': [low(650, '650', 'mm', least)],
    '3': [low(735, '735', 'mm', least)],
    '4': [low(760, '760', 'mm', least)],
  },
  levellingAdjustment: {
    '1': [medium(100, '100', 'mm', least)],
    '2': [medium(100, '100', 'mm', least)],
    '3': [medium(125, '125', 'mm', least)],
    '4': [medium(150, '150', 'mm', least)],
  },
  tyreClearance: everyCategory(medium(100, '100', 'mm', least)),
  hitchPointClearance: everyCategory(medium(100, '100', 'mm', least)),
  ptoToHitch: {
    '1': [medium(500, '500–575', 'mm', { high: 575 })],
    '2': [medium(550, '550–625', 'mm', { high: 625 })],
    '3': [medium(575, '575–675', 'mm', { high: 675 })],
    '4': [
      medium(575, '575–675', 'mm', { high: 675 }),
      medium(610, '610–670', 'mm', { high: 670, note: 'the taller size' }),
    ],
  },
  convergenceHorizontal: {
    '1': [medium(1700, '1700–2400', 'mm', { high: 2400 })],
    '2': [seedDrill(1800, '1800–2400', 'mm', { high: 2400 }), plough(1800, '1800–2400', 'mm', { high: 2400 })],
    '3N': [seedDrill(1800, '1800–2400', 'mm', { high: 2400 }), plough(1800, '1800–2400', 'mm', { high: 2400 })],
    '3': [seedDrill(1900, '1900–2700', 'mm', { high: 2700 }), plough(1900, '1900–2700', 'mm', { high: 2700 })],
    '4N': [seedDrill(1900, '1900–2700', 'mm', { high: 2700 }), plough(1900, '1900–2700', 'mm', { high: 2700 })],
    '4': [seedDrill(1900, '1900–2800', 'mm', { high: 2800 })],
  },
  linkFrontSpacing: {
    '1': [low(380, '380–540', 'mm', { high: 540, ...fromMemoryTerms })],
    '2': [seedDrill(390, '390–505', 'mm', { high: 505 }), plough(390, '390–505', 'mm', { high: 505 })],
    '3N': [seedDrill(390, '390–505', 'mm', { high: 505 }), plough(390, '390–505', 'mm', { high: 505 })],
    '3': [seedDrill(480, '480–635', 'mm', { high: 635 }), plough(480, '480–635', 'mm', { high: 635 })],
    '4N': [seedDrill(480, '480–635', 'mm', { high: 635 }), plough(480, '480–635', 'mm', { high: 635 })],
    '4': [seedDrill(480, '480–660', 'mm', { high: 660 })],
  },
  torsionalFreeFloat: everyCategory(low(75, '75', 'mm', least)),
  transportPitch: everyCategory(low(tenDegrees, '10', '°', least)),
  verticalConvergencePerWheelbase: everyCategory(low(0.9, '0.9', '× wheelbase', least)),
};
