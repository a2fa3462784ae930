import type { SharedFigure } from './driveRules.ts';
import type { Figure, FigureExtra } from './figure.ts';
import type { Cite } from './citations.ts';
import {
  austrianArticle,
  ballastFormula,
  compactReaction,
  germanSheet,
  italianArticles,
  italianTiller,
  loaderBallast,
  loaderStandard,
  mowerStandard,
  polishMower,
  rowCropBallast,
} from './loadCitations.ts';

/** The rules for the front axle, by their base; the first is the default and the only one that fails. */
export const steeringRuleNames = ['ofTractor', 'ofTotal', 'halfOfFront'] as const;

/** One rule for the front axle by its name. */
export type SteeringRuleName = (typeof steeringRuleNames)[number];

/** The rules for the rear axle, by their base. */
export const rearRuleNames = ['rearOfTotal', 'rearOfTractor'] as const;

/** One rule for the rear axle by its name. */
export type RearRuleName = (typeof rearRuleNames)[number];

/** What stands on the wheels, part by part. */
export const standingParts = [
  'tractor',
  'loader',
  'tyreLiquid',
  'wheelWeights',
  'driver',
  'frontWeights',
  'coupler',
  'implement',
  'implementLoad',
  'loaderLoad',
  'hungWeights',
] as const;

/** One part of what stands on the wheels. */
export type StandingPart = (typeof standingParts)[number];

/** One rule for the share of an axle, with its source. */
export interface AxleRule<Name extends string> {
  readonly name: Name;
  /** the axle that must carry the share */
  readonly axle: 'front' | 'rear';
  /**
   * the share is taken of: the tractor as weighed for the job · everything that stands on the wheels · what the front
   * axle carries with the implement on the ground
   */
  readonly base: 'tractor' | 'total' | 'frontUnladen';
  /** what the axle must carry at least, as a share of the base; the other sources of the rule beside it */
  readonly share: SharedFigure;
  /** the parts that count in the base. No source lists them all; what one says of them stands in `countedNote` */
  readonly counted: readonly StandingPart[];
  readonly countedNote: string;
}

const percent = (source: Cite, of: string, extra: FigureExtra = {}, printed = 20): Figure =>
  source(printed / 100, String(printed), `% of ${of}`, { bound: 'least', ...extra });

const asWeighed: readonly StandingPart[] = ['tractor', 'loader', 'tyreLiquid', 'wheelWeights'];
const asWeighedNote =
  'Implement manuals count the liquid in the tyres and optional equipment; the tiller manuals add 75 kg for the driver. Driver, front weights and all that hangs behind are left out: our own reading.';

const rows = {
  ofTractor: [
    mowerRow('unladen tractor mass', 20),
    percent(germanSheet, 'unladen vehicle mass', { note: 'steered axle with a mounted implement' }),
    percent(austrianArticle, 'own mass in the registration'),
    percent(ballastFormula, 'unladen tractor mass', { note: 'the 0.2·T_L of the least front ballast' }),
    percent(compactReaction, 'tractor weight', { note: 'wheel reaction with the rear implement raised' }),
    percent(italianTiller, 'tractor mass', { note: 'tractor with 75 kg of driver; Italian articles say of the total' }),
  ],
  ofTotal: [
    percent(italianArticles, 'total static mass', { disputed: true, note: 'the tiller manuals say of the tractor' }),
    percent(loaderBallast, 'total', { note: 'loader raised without implement' }),
    percent(polishMower, 'tractor’s overall weight', {
      disputed: true,
      note: 'does not say which: taken as the total',
    }),
  ],
  halfOfFront: [percent(rowCropBallast, 'front load with the implement on the ground', {}, 50)],
  rearOfTotal: [
    percent(loaderStandard, 'gross', { note: 'tractor, loader, implement, its load and counterweight' }),
    percent(loaderBallast, 'total'),
  ],
  rearOfTractor: [
    mowerRow('unladen tractor mass', 45),
    percent(
      ballastFormula,
      'unladen tractor mass',
      { disputed: true, note: 'the 0.45·T_L of the least rear ballast; one manual prints x and wants it weighed' },
      45,
    ),
  ],
} as const satisfies Readonly<Record<SteeringRuleName | RearRuleName, readonly Figure[]>>;

function mowerRow(of: string, printed: number): Figure {
  return percent(mowerStandard, of, {}, printed);
}

function shared([lead, ...others]: readonly [Figure, ...Figure[]]): SharedFigure {
  return { ...lead, also: others.map(({ source }) => source) };
}

const steering: Readonly<Record<SteeringRuleName, AxleRule<SteeringRuleName>>> = {
  ofTractor: {
    name: 'ofTractor',
    axle: 'front',
    base: 'tractor',
    share: shared(rows.ofTractor),
    counted: asWeighed,
    countedNote: asWeighedNote,
  },
  ofTotal: {
    name: 'ofTotal',
    axle: 'front',
    base: 'total',
    share: shared(rows.ofTotal),
    counted: standingParts,
    countedNote: 'Everything that the wheels carry.',
  },
  halfOfFront: {
    name: 'halfOfFront',
    axle: 'front',
    base: 'frontUnladen',
    share: shared(rows.halfOfFront),
    counted: [...asWeighed, 'driver', 'frontWeights', 'loaderLoad'],
    countedNote:
      'Front axle load with the implement on the ground. A coupler, and weights hung on it, are left out of the base: our own reading, the cautious one.',
  },
};

const rear: Readonly<Record<RearRuleName, AxleRule<RearRuleName>>> = {
  rearOfTotal: {
    name: 'rearOfTotal',
    axle: 'rear',
    base: 'total',
    share: shared(rows.rearOfTotal),
    counted: standingParts,
    countedNote: 'Tractor, loader, implement, load and counterweight; all else that the wheels carry with them.',
  },
  rearOfTractor: {
    name: 'rearOfTractor',
    axle: 'rear',
    base: 'tractor',
    share: shared(rows.rearOfTractor),
    counted: asWeighed,
    countedNote: asWeighedNote,
  },
};

/**
 * One rule for what the front axle must carry so that the tractor steers: `ofTractor` 20 % of the tractor as weighed for
 * the job, which decides; `ofTotal` 20 % of everything; `halfOfFront` with the implement raised half of what it carries
 * with the implement on the ground. The sources disagree about the base, never about the 20 %.
 *
 * @param name which rule [one of steeringRuleNames]
 * @returns the rule [share of its base]
 * @example steeringRules('ofTractor').share.value; // 0.2
 * @source en-iso-4254-10, german-steering-sheet, austrian-road-article, manual-ballast-formula, manual-compact-reaction,
 * manual-tiller-italian, italian-ballast-articles, manual-loader-ballast, manual-mower-polish, manual-row-crop-ballast
 */
export function steeringRules(name: SteeringRuleName): AxleRule<SteeringRuleName> {
  return steering[name];
}

/**
 * One rule for what the rear axle must carry with a load in front: `rearOfTotal` 20 % of everything, from the loader
 * standard; `rearOfTractor` 45 % of the unladen tractor, from the implement manuals.
 *
 * @param name which rule [one of rearRuleNames]
 * @returns the rule [share of its base]
 * @example rearRules('rearOfTotal').share.value; // 0.2
 * @source en-12525, manual-loader-ballast, en-iso-4254-10, manual-ballast-formula
 */
export function rearRules(name: RearRuleName): AxleRule<RearRuleName> {
  return rear[name];
}

/**
 * Every source's own row for a rule, the leading one first.
 *
 * @param name which rule [one of steeringRuleNames or rearRuleNames]
 * @returns rows, all of them minimums [share of the rule's base]
 */
export function axleShareFigures(name: SteeringRuleName | RearRuleName): readonly Figure[] {
  return rows[name];
}
