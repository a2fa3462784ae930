/** A range that stands in where a figure is left out and the trade has a habit: common practice, no source. */
export interface Habit {
  readonly low: number;
  readonly high: number;
  readonly origin: 'habit';
  readonly basis: string;
}

const washer: Habit = { low: 0, high: 3, origin: 'habit', basis: 'at most 3 mm thick, common practice, no source' };
const besideTheEnds: Habit = {
  low: -50,
  high: 50,
  origin: 'habit',
  basis: 'within 50 mm of the link ends, our own wide default',
};
const nearlyAbove: Habit = {
  low: -10,
  high: 25,
  origin: 'habit',
  basis: 'nearly straight above, our own wide default',
};
const sweep: Habit = { low: 75, high: 100, origin: 'habit', basis: 'a block of 75 to 100 mm, from memory and weak' };

/** Stand-ins by path; a path that is not here has none. Each is listed under what was assumed. */
const habits: Readonly<Record<string, Habit>> = {
  'implement.washer': washer,
  'implement.secondRow.washer': washer,
  'coupler.front.washer': washer,
  'coupler.hookRise': besideTheEnds,
  'coupler.topHookBehind': nearlyAbove,
  'coupler.front.mastSetback': nearlyAbove,
  'implement.secondRow.behind': nearlyAbove,
  'coupler.roomNeededLower': sweep,
  'coupler.roomNeededUpper': sweep,
};

/** The stand-in for a path, or null where it must be asked. */
export function habit(path: string): Habit | null {
  return habits[path] ?? null;
}
