import {
  draftRow,
  fieldPace,
  type DraftMachine,
  type DraftRow,
  type FieldPace,
  type FieldWork,
} from '../../tables/index.ts';
import type { Implement } from '../../records/index.ts';

/** A kind of work. */
export type Work = NonNullable<Implement['work']>;

/** What the tables have of a kind of work. */
interface WorkRows {
  /** Every build of it that a draft is known for; none where it is not drawn through the soil. */
  readonly draft: readonly DraftMachine[];
  /** The row of its pace; a row of another machine gives its field efficiency alone. */
  readonly pace: FieldWork | null;
  /** Wheels that run outside of its width spoil the work. */
  readonly coversTracks: boolean;
}

const mown = (pace: FieldWork | null, coversTracks = true): WorkRows => ({ draft: [], pace, coversTracks });
const drawn = (draft: readonly DraftMachine[], pace: FieldWork | null = null, coversTracks = false): WorkRows => ({
  draft,
  pace,
  coversTracks,
});

const rows: Readonly<Record<Work, WorkRows>> = {
  brushCutter: mown('rotaryMower'),
  finishMower: mown('rotaryMower'),
  flailMower: mown(null),
  discMower: mown('rotaryMower', false),
  cutterBarMower: mown(null, false),
  rotaryTiller: mown('rotaryTiller'),
  sideRake: mown(null),
  rotaryRake: mown(null),
  tedder: mown(null, false),
  landPlane: drawn(['landPlane'], null, true),
  plough: drawn(['mouldboardPlough'], 'plough'),
  subsoiler: drawn(['subsoilerNarrow', 'subsoilerWinged'], 'subsoiler'),
  chisel: drawn(['chiselStraightPoint', 'chiselShovel'], 'chisel'),
  cultivator: drawn(['cultivatorPrimary', 'cultivatorSecondary']),
  discHarrow: drawn(
    ['discTandemPrimary', 'discTandemSecondary', 'discOffsetPrimary', 'discOffsetSecondary'],
    'discHarrow',
  ),
  springToothHarrow: drawn(['harrowSpringTooth']),
  spikeToothHarrow: drawn(['harrowSpikeTooth']),
  tineHarrow: drawn(['harrowTine']),
  packer: drawn(['rollerPacker', 'rollerHarrow']),
  drill: drawn(['grainDrill'], 'drill'),
  rowPlanter: drawn(['rowPlanter']),
  fertiliserSpreader: mown('fertiliserSpreader', false),
};

/** The draft rows of a kind of work, one for each build of it. */
export function draftRows(work: Work): readonly DraftRow[] {
  return rows[work].draft.map(draftRow);
}

/** Do wheels that run outside of its width spoil this work? */
export function coversTracks(work: Work): boolean {
  return rows[work].coversTracks;
}

/**
 * How fast a kind of work usually goes, where a row of its own says so, and how much of it is work.
 *
 * @param work the kind of work [one of its names]
 * @returns field efficiency and perhaps a speed, or null where no row stands behind it [share, km/h]
 * @source extension-field-capacity; tiller, mower, harrow and drill from memory
 */
export function paceOf(
  work: Work,
): { readonly efficiency: FieldPace['efficiency']; readonly speed: FieldPace['speed'] | null } | null {
  const { pace } = rows[work];
  if (pace === null) return null;
  const { speed, efficiency } = fieldPace(pace);
  return { efficiency, speed: pace === work ? speed : null };
}
