import type { Cite } from './citations.ts';
import type { Figure } from './figure.ts';
import { clayLoamPaper, d497, draftTextbook } from './powerCitations.ts';

/** Machines that a draft is known for, tillage first. */
export const draftMachines = [
  'chiselStraightPoint',
  'chiselShovel',
  'mouldboardPlough',
  'subsoilerNarrow',
  'subsoilerWinged',
  'discTandemPrimary',
  'discTandemSecondary',
  'discOffsetPrimary',
  'discOffsetSecondary',
  'cultivatorPrimary',
  'cultivatorSecondary',
  'harrowSpringTooth',
  'harrowSpikeTooth',
  'harrowTine',
  'rollerPacker',
  'rollerHarrow',
  'landPlane',
  'grainDrill',
  'rowPlanter',
] as const;

/** One machine by its name. */
export type DraftMachine = (typeof draftMachines)[number];

/** Soil textures, heaviest first. */
export const soils = ['fine', 'medium', 'coarse'] as const;

/** One soil texture. */
export type Soil = (typeof soils)[number];

/** Draft [N] = soil factor · (a + b·speed + c·speed²) · width · depth: speed [km/h], width [m, tools or rows], depth [cm]. */
export interface DraftRow {
  readonly a: Figure;
  readonly b: Figure;
  readonly c: Figure;
  readonly soil: Readonly<Record<Soil, Figure>>;
  /** factors that another source prints */
  readonly otherSoil: Readonly<Partial<Record<Soil, Figure>>>;
  /** what the width counts */
  readonly per: 'metre' | 'tool' | 'row';
  /** false: the depth is left out, as 1 */
  readonly byDepth: boolean;
  /** how far real drafts stand from it, either way [share] */
  readonly spread: Figure;
}

interface Bare {
  readonly terms: readonly [number, number, number];
  readonly soil?: readonly [number, number, number];
  readonly per: DraftRow['per'];
  readonly spread: number;
  readonly source?: Cite;
}

const plain = (source: Cite, value: number, unit: string): Figure => source(value, String(value), unit);

/** A machine with factors for three soils works by depth; one without them is drawn over the ground. */
function row({ terms: [a, b, c], soil, per, spread, source = d497 }: Bare): DraftRow {
  const [fine, medium, coarse] = soil ?? [1, 1, 1];
  return {
    a: plain(source, a, 'A'),
    b: plain(source, b, 'B'),
    c: plain(d497, c, 'C'),
    soil: { fine: plain(d497, fine, 'F1'), medium: plain(d497, medium, 'F2'), coarse: plain(d497, coarse, 'F3') },
    otherSoil: {},
    per,
    byDepth: soil !== undefined,
    spread: d497(spread / 100, String(spread), '± %'),
  };
}

const deep = [1, 0.7, 0.45] as const;
const disc = [1, 0.88, 0.78] as const;
const tine = [1, 0.85, 0.65] as const;

const rows: Readonly<Record<DraftMachine, DraftRow>> = {
  chiselStraightPoint: {
    ...row({ terms: [91, 5.4, 0], soil: tine, per: 'tool', spread: 50, source: draftTextbook }),
    otherSoil: {
      medium: draftTextbook(0.7, '0.7', 'F', { disputed: true, note: 'ASABE D497 has 0.85, from memory' }),
    },
  },
  chiselShovel: row({ terms: [107, 6.3, 0], soil: tine, per: 'tool', spread: 50 }),
  mouldboardPlough: row({ terms: [652, 0, 5.1], soil: deep, per: 'metre', spread: 40 }),
  subsoilerNarrow: row({ terms: [226, 0, 1.8], soil: deep, per: 'tool', spread: 50 }),
  subsoilerWinged: row({ terms: [294, 0, 2.4], soil: deep, per: 'tool', spread: 50 }),
  discTandemPrimary: row({ terms: [309, 16, 0], soil: disc, per: 'metre', spread: 50 }),
  discTandemSecondary: row({ terms: [216, 11.2, 0], soil: disc, per: 'metre', spread: 30 }),
  discOffsetPrimary: row({ terms: [364, 18.8, 0], soil: disc, per: 'metre', spread: 50 }),
  discOffsetSecondary: row({ terms: [254, 13.2, 0], soil: disc, per: 'metre', spread: 30 }),
  cultivatorPrimary: row({ terms: [46, 2.8, 0], soil: tine, per: 'tool', spread: 30 }),
  cultivatorSecondary: row({ terms: [32, 1.9, 0], soil: tine, per: 'tool', spread: 25 }),
  harrowSpringTooth: row({ terms: [2000, 0, 0], per: 'metre', spread: 20 }),
  harrowSpikeTooth: row({ terms: [600, 0, 0], per: 'metre', spread: 20 }),
  harrowTine: row({ terms: [250, 0, 0], per: 'metre', spread: 20 }),
  rollerPacker: row({ terms: [600, 0, 0], per: 'metre', spread: 50 }),
  rollerHarrow: row({ terms: [2600, 0, 0], per: 'metre', spread: 50 }),
  landPlane: row({ terms: [8000, 0, 0], per: 'metre', spread: 45 }),
  grainDrill: row({ terms: [400, 0, 0], per: 'row', spread: 25 }),
  rowPlanter: row({ terms: [500, 0, 0], per: 'row', spread: 25 }),
};

/**
 * The draft parameters of a machine. Only A and B of the chisel with straight points were read; all else is remembered.
 * Nothing here is a box blade: a land plane comes nearest.
 *
 * @param machine which machine [one of draftMachines]
 * @returns the parameters with their spread [N, by km/h, m or tools, cm]
 * @source textbook-draft; ASABE D497 from memory
 */
export function draftRow(machine: DraftMachine): DraftRow {
  return rows[machine];
}

/** What one soil elsewhere gave for three single bodies: up to 60 % from the rows above. @source paper-draft-clay-loam */
export const clayLoamDrafts: Readonly<Partial<Record<DraftMachine, readonly [Figure, Figure, Figure]>>> = {
  mouldboardPlough: [
    plain(clayLoamPaper, 256.26, 'A'),
    plain(clayLoamPaper, 2.28, 'B'),
    plain(clayLoamPaper, 12.11, 'C'),
  ],
  chiselStraightPoint: [
    plain(clayLoamPaper, 26.9, 'A'),
    plain(clayLoamPaper, 12.18, 'B'),
    plain(clayLoamPaper, 0.13, 'C'),
  ],
};
