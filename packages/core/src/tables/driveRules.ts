import { clearanceFigures, jointAngleFigures, overlapFigures, type JointAngle } from './driveBands.ts';
import type { Figure } from './figure.ts';
import type { SourceId } from './sources.ts';

/** The rule sets for a drive shaft, by what they are known for. */
export const driveRuleNames = [
  'usual',
  'thirdOfTube',
  'halfOfTube',
  'oneInch',
  'mostCautious',
  'leastCautious',
] as const;

/** One rule set by its name. */
export type DriveRuleName = (typeof driveRuleNames)[number];

/** What a rule set says something about. */
export type DriveRuleField =
  'clearance' | 'overlap' | 'turningAngle' | 'stopAngle' | 'wideTurningAngle' | 'wideStopAngle';

/** A figure that other sources print too. */
export interface SharedFigure extends Figure {
  /** the other sources of the same figure; 6 in is the same as 150 and as 152 mm */
  readonly also: readonly SourceId[];
}

/** One way to judge a drive shaft, every figure with its source. */
export interface DriveRuleSet {
  readonly name: DriveRuleName;
  /** left at the shortest place before the shaft bottoms [mm] */
  readonly clearance: SharedFigure;
  /** left at the longest place while turning: [mm], or a share of the profile's free length */
  readonly overlap: { readonly kind: 'length' | 'share'; readonly figure: SharedFigure };
  /** the most for a single joint that turns without end [deg] */
  readonly turningAngle: SharedFigure;
  /** above it a drive with a single joint must be off [deg] */
  readonly stopAngle: SharedFigure;
  /** the most for a wide-angle joint that turns without end [deg] */
  readonly wideTurningAngle: SharedFigure;
  /** above it a drive with a wide-angle joint must be off [deg] */
  readonly wideStopAngle: SharedFigure;
  /** where the sources of the set say nothing and the usual figure stands in */
  readonly silentOn: readonly DriveRuleField[];
}

/** The one figure of a source, with the other sources that print the same. */
function shared(figures: readonly Figure[], source: SourceId): SharedFigure {
  const figure = figures.find((row) => row.source === source);
  if (figure === undefined) throw new Error(`no row of ${source}`);
  const same = (row: Figure): boolean => Math.abs(row.value / figure.value - 1) < 0.02;
  return { ...figure, also: figures.filter((row) => row.source !== source && same(row)).map((row) => row.source) };
}

const clearance = (source: SourceId): SharedFigure => shared(clearanceFigures(), source);

function overlap(kind: 'length' | 'share', source: SourceId): DriveRuleSet['overlap'] {
  const rows = overlapFigures().filter((rule) => rule.kind === kind);
  return {
    kind,
    figure: shared(
      rows.map(({ figure }) => figure),
      source,
    ),
  };
}

function angle(joint: JointAngle['joint'], when: JointAngle['when'], source: SourceId): SharedFigure {
  const rows = jointAngleFigures().filter((row) => row.joint === joint && row.when === when);
  return shared(
    rows.map(({ figure }) => figure),
    source,
  );
}

const usual: DriveRuleSet = {
  name: 'usual',
  clearance: clearance('shaft-length-page'),
  overlap: overlap('length', 'shaft-length-page'),
  turningAngle: angle('single', 'turning', 'manual-rotary-tiller'),
  stopAngle: angle('single', 'stopAbove', 'manual-turf-aerator'),
  wideTurningAngle: angle('wideAngle', 'turning', 'forum-shaft-angles'),
  wideStopAngle: angle('wideAngle', 'turning', 'manual-hay-tools'),
  silentOn: [],
};

const wideSilent = ['wideTurningAngle', 'wideStopAngle'] as const;

const sets: Readonly<Record<DriveRuleName, DriveRuleSet>> = {
  usual,
  thirdOfTube: {
    ...usual,
    name: 'thirdOfTube',
    clearance: clearance('manual-rotary-tiller-german'),
    overlap: overlap('share', 'manual-rotary-tiller'),
    turningAngle: angle('single', 'turning', 'manual-rotary-tiller'),
    stopAngle: angle('single', 'stopAbove', 'manual-rotary-tiller'),
    silentOn: wideSilent,
  },
  halfOfTube: {
    ...usual,
    name: 'halfOfTube',
    overlap: overlap('share', 'manual-hay-tools'),
    turningAngle: angle('single', 'turning', 'manual-hay-tools'),
    stopAngle: angle('single', 'turning', 'manual-hay-tools'),
    wideTurningAngle: angle('wideAngle', 'turning', 'manual-hay-tools'),
    wideStopAngle: angle('wideAngle', 'turning', 'manual-hay-tools'),
    silentOn: ['clearance'],
  },
  // Both figures from the same manuals; the chipper manual also leaves 25 mm but is content with 100 mm of overlap.
  oneInch: {
    ...usual,
    name: 'oneInch',
    clearance: clearance('manual-groove-to-groove'),
    overlap: overlap('length', 'manual-groove-to-groove'),
    silentOn: ['turningAngle', 'stopAngle', ...wideSilent],
  },
  mostCautious: {
    name: 'mostCautious',
    clearance: clearance('manual-rotary-mower-b'),
    overlap: overlap('length', 'manual-seed-bed'),
    turningAngle: angle('single', 'advised', 'shaft-length-page'),
    stopAngle: angle('single', 'stopAbove', 'manual-rotary-tiller'),
    wideTurningAngle: angle('wideAngle', 'turning', 'forum-shaft-angles'),
    wideStopAngle: angle('wideAngle', 'turning', 'manual-hay-tools'),
    silentOn: [],
  },
  leastCautious: {
    name: 'leastCautious',
    clearance: clearance('manual-turf-aerator'),
    overlap: overlap('length', 'manual-chipper'),
    turningAngle: angle('single', 'turning', 'manual-hay-tools'),
    stopAngle: angle('single', 'stopAbove', 'forum-shaft-angles'),
    wideTurningAngle: angle('wideAngle', 'turning', 'manual-hay-tools'),
    wideStopAngle: angle('wideAngle', 'briefly', 'forum-shaft-angles'),
    silentOn: [],
  },
};

/**
 * One rule set for a drive shaft. `usual` is the default: 50 mm, 150 mm, 25° turning, 35° drive off; a wide-angle joint
 * 25° and 70°. `thirdOfTube` and `halfOfTube` ask for a share of the profile's free length; `oneInch` leaves 25 mm.
 * `mostCautious` and `leastCautious` take each figure from the source at that end of the band: no one source prints
 * them together, and on a long profile a half is more than the 250 mm of `mostCautious`.
 *
 * @param name which set [one of driveRuleNames]
 * @returns the set [mm, deg, or a share]
 * @example driveRules('usual').clearance.value; // 50
 * @source shaft-length-page, manual-trimmer-mower, manual-groove-to-groove, manual-rotary-tiller, manual-turf-aerator
 * and the others of driveBands.ts
 */
export function driveRules(name: DriveRuleName): DriveRuleSet {
  return sets[name];
}
