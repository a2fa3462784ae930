import type { Bound } from '../../records/index.ts';
import type { Interval } from '../geometry/index.ts';
import type { ChoiceRange, Term } from '../proof/index.ts';

/** Where the range of an input came from. */
export type Origin = 'stated' | 'range' | 'default' | 'class' | 'habit' | 'unknown' | 'limit' | 'setting';

/** One line of the ledger: an uncertain number, a setting or a choice, with the path of the input behind it. */
export interface Entry {
  readonly index: number;
  readonly path: string;
  readonly range: Interval;
  readonly origin: Origin;
  readonly role: 'uncertain' | 'setting' | 'choice';
  /** Basis of a default, class range or habit. */
  readonly basis?: string;
}

/** The growing list of entries: every variable gets its index here, and only here. */
export interface Register {
  readonly entries: readonly Entry[];
  readonly choices: readonly ChoiceRange[];
  readonly uncertain: (path: string, range: Bound, origin: Origin, basis?: string) => Term;
  readonly setting: (path: string, range: Bound) => Term;
  /** The number of the option taken of a named choice; the same name is the same choice. */
  readonly choice: (name: string, count: number) => Term;
}

/** An empty register. */
export function openRegister(): Register {
  const entries: Entry[] = [];
  const choices: ChoiceRange[] = [];
  const enter = (entry: Omit<Entry, 'index'>): Term => {
    const index = entries.length;
    entries.push({ ...entry, index });
    return (at) => at(index);
  };
  const choice = (name: string, count: number): Term => {
    const known = entries.find((entry) => entry.role === 'choice' && entry.path === name);
    if (known !== undefined) return (at) => at(known.index);
    choices.push({ index: entries.length, count });
    return enter({ path: name, range: { low: 0, high: count - 1 }, origin: 'setting', role: 'choice' });
  };
  return {
    entries,
    choices,
    uncertain: (path, { low, high }, origin, basis) =>
      enter({ path, range: { low, high }, origin, role: 'uncertain', ...(basis === undefined ? {} : { basis }) }),
    setting: (path, { low, high }) => enter({ path, range: { low, high }, origin: 'setting', role: 'setting' }),
    choice,
  };
}
