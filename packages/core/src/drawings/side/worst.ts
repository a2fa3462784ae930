import type { Answer } from '../../engine/assess/index.ts';
import type { Station, Sweep } from '../../engine/lift/index.ts';
import { printMarginSize, type UnitSystem } from '../../units/index.ts';
import { heightText } from './readings.ts';

/** What is read of an answer. */
type Judged = Pick<Answer, 'findings' | 'figures'>;

/** The worst that is to be said of one height, and whether it is in the way. */
interface Worst {
  readonly words: string;
  readonly isBad: boolean;
}

/** What the lift has to spare at a height once the allowance is off, proven and estimated; null where it is not known [kg]. */
export function spareAt({ load }: Sweep, station: Station): { proven: number; estimated: number | null } | null {
  if (load === null || station.proven === null) return null;
  return { proven: station.proven - load, estimated: station.estimated === null ? null : station.estimated - load };
}

/** Whether the lift is not proven to manage the load at a height. */
export function isShortAt(sweep: Sweep, station: Station): boolean {
  return (spareAt(sweep, station)?.proven ?? 0) < 0;
}

interface Question {
  readonly answer: Judged;
  readonly sweep: Sweep;
  readonly station: Station;
  readonly system: UnitSystem;
}

/** In the order in which they matter; the first that has something to say is the worst. */
const judges: readonly ((question: Question) => Worst | null)[] = [binding, short, unhooking, unproven, low, spare];

/**
 * The worst at one height: the linkage binds, the lift is short, pins may unhook, the lift is not proven, its lowest part
 * is too near the ground where it is carried; else what the lift has to spare.
 */
export function worstAt(answer: Judged, sweep: Sweep, station: Station, system: UnitSystem): Worst {
  const question = { answer, sweep, station, system };
  for (const judge of judges) {
    const worst = judge(question);
    if (worst !== null) return worst;
  }
  return { words: 'lift not known', isBad: false };
}

function binding({ station }: Question): Worst | null {
  return station.closes ? null : { words: 'the linkage binds', isBad: true };
}

function short({ sweep, station, system }: Question): Worst | null {
  const estimated = spareAt(sweep, station)?.estimated ?? 0;
  return estimated < 0 ? { words: `lift ${printMarginSize(estimated, 'mass', system)} short`, isBad: true } : null;
}

/** Hooks that hold by weight alone let go of what rises out of them. */
function unhooking({ answer, sweep, station }: Question): Worst | null {
  const hooks = answer.findings.find(({ id }) => id === 'limit.hooks');
  const isHeldByWeight = sweep.load !== null && hooks !== undefined && hooks.margin !== null;
  if (!isHeldByWeight || station.lowerForceUp >= 0) return null;
  return { words: 'the lower pins may lift out of their hooks', isBad: true };
}

function unproven({ sweep, station, system }: Question): Worst | null {
  const proven = spareAt(sweep, station)?.proven ?? 0;
  if (proven >= 0) return null;
  return { words: `lift not proven, ${printMarginSize(proven, 'mass', system)} short of it`, isBad: true };
}

/** Asked for only where it is carried: at work an implement may dig in. */
function low({ answer, sweep, station, system }: Question): Worst | null {
  const wanted = answer.figures['implement.clearanceWanted'];
  const isCarried = sweep.carry !== null && station.ballHeight >= sweep.carry;
  if (!isCarried || station.clearance === null || wanted === undefined) return null;
  if (station.clearance >= wanted.low) return null;
  const where = station.clearance > 0 ? `${heightText(station.clearance, system)} off` : 'on';
  return { words: `lowest part ${where} the ground, ${heightText(wanted.low, system)} wanted`, isBad: true };
}

function spare({ sweep, station, system }: Question): Worst | null {
  const proven = spareAt(sweep, station)?.proven;
  if (proven === undefined) return null;
  return { words: `lift ${printMarginSize(proven, 'mass', system)} to spare`, isBad: false };
}
