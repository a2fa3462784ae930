import {
  compact,
  dealerPage,
  encyclopedia,
  examBanks,
  forums,
  laterUtility,
  memory,
  olderUtility,
  own,
  plough,
  practice,
  s217Derived,
  seedDrill,
  shopSummary,
  utility,
  widthPages,
} from './citations.ts';
import type { Figure } from './figure.ts';
import type { FigureTable } from './figureTable.ts';

/** What a published table says of the implement. Spans are between shoulders; heights are centre to centre. */
export type ImplementField =
  | 'upperPinDiameter'
  | 'lowerPinDiameter'
  | 'shoulderSpan'
  | 'mastHeight'
  | 'clevisGap'
  | 'clevisOuterWidth'
  | 'shoulderToHole'
  | 'retainingHoleDiameter'
  | 'mastHoleDiameter'
  | 'mastSetback';

const high = memory('high');
const medium = memory('medium');
const low = memory('low');

const truncated = { rounded: true, disputed: true, note: 'a shoulder span cut to whole inches' } as const;
const unsaid = { disputed: true, note: 'print does not say shoulder or centre' } as const;
const bare = { note: 'the tolerance is from memory, set here on a printed size' } as const;
const sameInBoth = { note: 'the older edition prints the same for category 4' } as const;

const setback: readonly Figure[] = [
  own(0, '0–75', 'mm', { high: 75, note: 'our estimate for any category, upper pin behind the lower pins' }),
];
const printedSetback = { high: 80, note: 'one maker’s guidance, not the standard' } as const;

/** All distances [mm]. */
export const implementRows: FigureTable<ImplementField> = {
  upperPinDiameter: {
    '0': [encyclopedia(15.875, '5/8', 'in')],
    '1': [
      shopSummary(19, '19', 'mm'),
      encyclopedia(19.05, '3/4', 'in'),
      medium(19, '19 0/−0.08', 'mm', { plus: 0, minus: 0.08, ...bare }),
    ],
    '2': [
      shopSummary(25.5, '25.5', 'mm', { disputed: true }),
      examBanks(25.4, '25.4', 'mm'),
      encyclopedia(25.4, '1', 'in'),
      medium(25.5, '25.5 0/−0.13', 'mm', { plus: 0, minus: 0.13, ...bare }),
    ],
    '3': [
      shopSummary(31.75, '31.75', 'mm'),
      encyclopedia(31.75, '1-1/4', 'in'),
      medium(31.75, '31.75 0/−0.20', 'mm', { plus: 0, minus: 0.2, ...bare }),
    ],
    '4': [
      widthPages(45, '45', 'mm', { disputed: true }),
      encyclopedia(44.45, '1-3/4', 'in', { disputed: true }),
      medium(45, '45 0/−0.80', 'mm', { plus: 0, minus: 0.8, ...bare }),
    ],
  },
  lowerPinDiameter: {
    '0': [encyclopedia(15.875, '5/8', 'in')],
    '1': [
      compact(22.2, '22.2', 'mm'),
      examBanks(22, '22', 'mm'),
      practice(22.225, '7/8', 'in'),
      medium(22, '22 0/−0.20', 'mm', { plus: 0, minus: 0.2, ...bare }),
    ],
    '2': [
      seedDrill(28, '28', 'mm'),
      examBanks(28.4, '28.4', 'mm', { disputed: true, note: 'given as nominal' }),
      practice(28.575, '1-1/8', 'in', { note: 'said as "about"' }),
      medium(28, '28 0/−0.20', 'mm', { plus: 0, minus: 0.2, ...bare }),
    ],
    '3': [
      seedDrill(36.6, '36.6', 'mm'),
      plough(36.6, '36.6', 'mm'),
      examBanks(36.6, '36.6', 'mm'),
      dealerPage(36.5125, '1-7/16', 'in'),
      medium(36.6, '36.6 0/−0.20', 'mm', { plus: 0, minus: 0.2, ...bare }),
    ],
    '3N': [seedDrill(36.6, '36.6', 'mm'), plough(36.6, '36.6', 'mm')],
    '4N': [seedDrill(50.8, '50.8', 'mm'), plough(50.8, '50.8', 'mm')],
    '4': [
      seedDrill(50.8, '50.8', 'mm'),
      plough(50.8, '50.8', 'mm'),
      medium(50.8, '50.8 0/−1.1', 'mm', { plus: 0, minus: 1.1, ...bare }),
    ],
  },
  shoulderSpan: {
    '0': [
      shopSummary(500, '500', 'mm', unsaid),
      encyclopedia(508, '20', 'in', unsaid),
      widthPages(660.4, '26', 'in', { disputed: true, note: 'modified small hitches with category 0 pins' }),
    ],
    '1N': [low(400, '400', 'mm')],
    '1': [
      compact(682.625, '26-7/8', 'in', { note: 'also printed as 682.6 mm' }),
      high(683, '683 ±1.5', 'mm', { plus: 1.5, minus: 1.5 }),
      widthPages(660.4, '26', 'in', truncated),
    ],
    '2': [
      seedDrill(825, '825', 'mm'),
      widthPages(825, '825', 'mm'),
      laterUtility(825, '825 ±1.5', 'mm', { plus: 1.5, minus: 1.5 }),
      utility(825, '825 +1.5', 'mm', { plus: 1.5, minus: 0, disputed: true, note: 'one-sided in this print' }),
      widthPages(812.8, '32', 'in', truncated),
      forums(825.5, '32-1/2', 'in', { disputed: true, note: 'called centre to centre, yet it is the shoulder span' }),
    ],
    '3N': [seedDrill(825, '825', 'mm'), plough(825, '825', 'mm')],
    '3': [
      seedDrill(965, '965', 'mm'),
      widthPages(965, '965', 'mm'),
      plough(960, '960', 'mm', { rounded: true, disputed: true, note: 'a rounding of 965' }),
      high(965, '965 ±1.5', 'mm', { plus: 1.5, minus: 1.5 }),
      widthPages(965.2, '38', 'in', truncated),
    ],
    '4N': [
      seedDrill(965, '965', 'mm'),
      plough(960, '960', 'mm', { rounded: true, disputed: true, note: 'a rounding of 965' }),
    ],
    '4': [
      seedDrill(1166, '1166', 'mm'),
      high(1166.5, '1166.5 ±1.5', 'mm', { plus: 1.5, minus: 1.5 }),
      widthPages(1168.4, '46', 'in', truncated),
    ],
  },
  mastHeight: {
    '0': [widthPages(304.8, '12', 'in', { note: 'called typical' })],
    '1N': [low(360, '360', 'mm')],
    '1': [high(460, '460', 'mm', { generation: 'iso' }), olderUtility(457.2, '18', 'in', { generation: 'older' })],
    '2': [
      widthPages(610, '610', 'mm', { generation: 'iso', disputed: true, note: 'also printed as 610.11' }),
      olderUtility(482.6, '19', 'in', { generation: 'older', disputed: true }),
      s217Derived(485, '610 less about 125', 'mm', { generation: 'older', note: '610 − 125' }),
      laterUtility(460, '460', 'mm', {
        generation: 'older',
        disputed: true,
        note: 'one maker’s category 2 mast; family not stated, nearer the older',
      }),
      utility(500, '500–600', 'mm', { high: 600, disputed: true, note: 'one maker’s range; family not stated' }),
    ],
    '3': [
      widthPages(685, '685', 'mm', { generation: 'iso', disputed: true, note: 'also printed as 685.04' }),
      s217Derived(560, '685 less about 125', 'mm', { generation: 'older', note: '685 − 125, about 22 in' }),
    ],
    '4': [low(685, '685', 'mm', sameInBoth), low(1100, '1100', 'mm', { note: 'the taller size; ' + sameInBoth.note })],
  },
  clevisGap: {
    '1': [compact(44.5, '44.5', 'mm')],
    '2': [medium(52, '52', 'mm')],
    '3': [medium(52, '52', 'mm')],
    '4': [medium(65, '65', 'mm')],
  },
  clevisOuterWidth: {
    '1': [medium(69, '69', 'mm', { bound: 'most' })],
    '2': [medium(86, '86', 'mm', { bound: 'most' })],
    '3': [medium(95, '95', 'mm', { bound: 'most' })],
    '4': [medium(132, '132', 'mm', { bound: 'most' })],
  },
  shoulderToHole: {
    '1': [
      olderUtility(38.862, '1.53', 'in', { bound: 'least', note: 'the row is headed by two words only' }),
      high(39, '39', 'mm', { bound: 'least' }),
    ],
    '2': [high(49, '49', 'mm', { bound: 'least' })],
    '3': [medium(52, '52', 'mm', { bound: 'least' })],
    '4': [medium(68, '68', 'mm', { bound: 'least' })],
  },
  retainingHoleDiameter: {
    '1': [low(12, '12', 'mm', { bound: 'least' })],
    '2': [low(12, '12', 'mm', { bound: 'least' })],
    '3': [
      low(12, '12', 'mm', { bound: 'least', disputed: true }),
      low(17, '17', 'mm', { bound: 'least', disputed: true, note: 'some editions' }),
    ],
    '4': [low(17.5, '17.5', 'mm', { bound: 'least' })],
  },
  mastHoleDiameter: { '1': [compact(19.1, '19.1', 'mm')] },
  mastSetback: {
    '0': setback,
    '1': setback,
    '2': [utility(0, '0-80', 'mm', printedSetback), laterUtility(0, '0-80', 'mm', printedSetback), ...setback],
    '3': setback,
    '4': setback,
  },
};
