import type { Answer } from '../../engine/assess/index.ts';
import type { Hold } from '../../engine/joint/index.ts';
import type { Station, Sweep } from '../../engine/lift/index.ts';
import type { ShaftSweep } from '../../engine/shaft/index.ts';
import type { Setup } from '../../records/index.ts';
import type { Point } from '../scene.ts';
import { shown, type Shown } from '../shown.ts';
import { stationOf } from './heights.ts';

/** All that the pictures of one lift are drawn from [mm, deg, kg]. */
export interface SideStage {
  readonly setup: Setup;
  readonly answer: Answer;
  readonly sweep: Sweep;
  readonly hold: Hold;
  readonly tyre: Shown;
  /** Lower pin in the ball, and the implement's own pins. */
  readonly frontPin: Shown;
  readonly pin: Shown;
  readonly upperPin: Shown;
  /** The implement's own centre of gravity, from its lower pins. */
  readonly centre: { readonly behind: Shown; readonly above: Shown };
  /** Whether anybody knows where the centre of what is lifted is. */
  readonly isCentreKnown: boolean;
  /** Its lowest part, from its lower pins; null where it was not given. */
  readonly lowest: Point | null;
  /** The drive shaft at the same heights; null where nothing is driven or its ends are not placed. */
  readonly shaft: ShaftSweep | null;
}

/** Gathers what is drawn; null where the lift is not known. */
export function sideStageOf(setup: Setup, answer: Answer): SideStage | null {
  const { sweep, hold } = answer;
  if (sweep === null || sweep.stations.length === 0) return null;
  const read = (path: string, forPlace: number): Shown => shown(answer, path, forPlace);
  const isHeldByCoupler = setup.coupler !== undefined && hold !== 'clawEnds';
  return {
    setup,
    answer,
    sweep,
    hold,
    tyre: read('tractor.tyreRadius', sweep.lowerPivot[1] * 1.25),
    frontPin: read(isHeldByCoupler ? 'coupler.front.lowerPinDiameter' : 'implement.lowerPinDiameter', 22),
    pin: read('implement.lowerPinDiameter', 22),
    upperPin: read('implement.upperPinDiameter', 19),
    centre: { behind: read('implement.centreBehind', 450), above: read('implement.centreAbove', 80) },
    isCentreKnown: sweep.load !== null && read('implement.centreBehind', 0).standing !== 'unknown',
    lowest: lowestOf(answer),
    shaft: answer.shaft,
  };
}

function lowestOf({ figures }: Answer): Point | null {
  const [behind, below] = [figures['implement.lowestBehind'], figures['implement.lowestBelow']];
  if (behind === undefined || below === undefined) return null;
  if (behind.origin === 'unknown' || below.origin === 'unknown') return null;
  return [(behind.low + behind.high) / 2, -(below.low + below.high) / 2];
}

/** A station of the lift. */
export function stationAt({ sweep }: Pick<SideStage, 'sweep'>, station: number): Station {
  return sweep.stations[stationOf(sweep, station)] as Station;
}
