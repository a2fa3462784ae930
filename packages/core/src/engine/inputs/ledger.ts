import type { Category } from '../../tables/index.ts';
import type { Bound, Setup, Value } from '../../records/index.ts';
import { exactly, type Interval } from '../geometry/index.ts';
import type { Box, ChoiceRange, Reading, Term } from '../proof/index.ts';
import { openRegister, type Entry, type Origin, type Register } from './register.ts';
import { linkageStandIns, liquidStandIn, standInFor, standInsForEnds, workStandIns, type StandIn } from './standIn.ts';

/** A setting that can be made anywhere in a range, with its limits. */
export interface Adjuster {
  readonly setting: Term;
  readonly lowest: Term;
  readonly highest: Term;
}

/**
 * All inputs of a setup, each turned once into numbers that carry their path. Terms read them from any box; which inputs
 * a term depends on is found by tracing it.
 */
export interface Ledger {
  readonly entries: readonly Entry[];
  readonly choices: readonly ChoiceRange[];
  /** The number at a path, whichever option is taken; an adjustable path reads as its setting. */
  readonly term: (path: string) => Term;
  /** The same, opened only when it is first read: an input that no check reads is never asked for. */
  readonly later: (path: string) => Term;
  /** Setting and limits of an adjustable path. */
  readonly adjuster: (path: string) => Adjuster;
  /** Something that can be set anywhere in a fixed range. */
  readonly set: (path: string, range: Bound) => Term;
  /** The number of the option taken of a named choice. */
  readonly choice: (name: string, count: number) => Term;
  /** Was anything given for the path? */
  readonly given: (path: string) => boolean;
  /** Does what was said of other things stand in for the path, if nothing was given for it? */
  readonly told: (path: string) => boolean;
  readonly value: (path: string) => Value | undefined;
}

/** Paths whose stops belong to the same holes. */
const holes: Readonly<Record<string, string>> = {
  'implement.mastHeight': 'implement.mastHole',
  'implement.mastSetback': 'implement.mastHole',
  'coupler.topHookHeight': 'coupler.topHookHole',
  'coupler.topHookBehind': 'coupler.topHookHole',
  'tractor.topLinkPivotHeight': 'tractor.topLinkHole',
  'tractor.topLinkPivotBehindAxle': 'tractor.topLinkHole',
};

/** Opens the ledger of a setup. */
export function openLedger(setup: Setup): Ledger {
  const register = openRegister();
  const value = (path: string): Value | undefined => lookUp(setup, path);
  const known = new Map([...linkageStandIns(setup.tractor), ...liquidStandIn(setup.tractor), ...workStandIns(setup)]);
  const standIn = (path: string): StandIn => known.get(path) ?? standInFor(path, categoryAt(setup, path));
  const adjuster = remembered((path) => makeAdjuster(register, path, value(path), categoryAt(setup, path)));
  const term = remembered((path) => openTerm(register, path, value(path), standIn, adjuster));
  return {
    entries: register.entries,
    choices: register.choices,
    choice: register.choice,
    term,
    later: (path) => {
      let opened: Term | null = null;
      return (at) => (opened ??= term(path))(at);
    },
    adjuster,
    set: (path, range) => {
      let opened: Term | null = null;
      return (at) => (opened ??= register.setting(path, range))(at);
    },
    given: (path) => !isMissing(value(path)),
    told: (path) => known.has(path),
    value,
  };
}

function openTerm(
  register: Register,
  path: string,
  value: Value | undefined,
  standIn: (path: string) => StandIn,
  adjuster: (path: string) => Adjuster,
): Term {
  if (isMissing(value)) {
    const { origin, basis, ...range } = standIn(path);
    return register.uncertain(path, range, origin, basis);
  }
  if (value.kind === 'stated') return register.uncertain(path, value.bound, 'stated');
  if (value.kind === 'uncertain') return register.uncertain(path, value.bound, 'range');
  if (value.kind === 'default') return register.uncertain(path, value.bound, 'default', value.basis);
  return value.kind === 'stops' ? openStops(register, path, value.at) : adjuster(path).setting;
}

function openStops(register: Register, path: string, at: readonly Bound[]): Term {
  const options = at.map((bound, i) => register.uncertain(`${path}.adjustable.at.${i}`, bound, 'stated'));
  const taken = register.choice(holes[path] ?? path, at.length);
  return (box) => (options[taken(box).low] as Term)(box);
}

function makeAdjuster(
  register: Register,
  path: string,
  value: Value | undefined,
  category: Category | undefined,
): Adjuster {
  const limits =
    value?.kind === 'adjustable' ? [limit(value.lowest), limit(value.highest)] : standInsForEnds(path, category);
  const [lowest, highest] = limits as readonly [Limit, Limit];
  return {
    setting: register.setting(path, { low: lowest.low, high: highest.high }),
    lowest: register.uncertain(`${path}.adjustable.between.0`, lowest, lowest.origin, lowest.basis),
    highest: register.uncertain(`${path}.adjustable.between.1`, highest, highest.origin, highest.basis),
  };
}

interface Limit extends Bound {
  readonly origin: Origin;
  readonly basis?: string;
}

function limit({ low, high }: Bound): Limit {
  return { low, high, origin: 'limit' };
}

function isMissing(value: Value | undefined): value is undefined | (Value & { kind: 'unknown' }) {
  return value === undefined || value.kind === 'unknown';
}

function remembered<T>(make: (path: string) => T): (path: string) => T {
  const made = new Map<string, T>();
  return (path) => {
    const known = made.get(path);
    if (known !== undefined) return known;
    const fresh = make(path);
    made.set(path, fresh);
    return fresh;
  };
}

function categoryAt(setup: Setup, path: string): Category | undefined {
  return setup[path.split('.')[0] as 'tractor' | 'coupler' | 'implement']?.category;
}

function lookUp(setup: Setup, path: string): Value | undefined {
  return path.split('.').reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], setup) as
    Value | undefined;
}

/** The box in which every entry has its whole range. */
export function wholeBox(ledger: Ledger): Box {
  return ledger.entries.map((entry) => entry.range);
}

/** The range of an entry with open ends where it is unknown, for margins that must not pretend to have an end. */
export function openEnded(entry: Entry): Interval {
  if (entry.origin !== 'unknown') return entry.range;
  return { low: entry.range.low >= 0 ? 0 : -Infinity, high: Infinity };
}

/** The indices that a term reads, over every option of every choice. */
export function traced(ledger: Ledger, read: (at: Reading) => unknown): ReadonlySet<number> {
  const seen = new Set<number>();
  traceInto(ledger, read, new Map(), seen);
  return seen;
}

function traceInto(
  ledger: Ledger,
  read: (at: Reading) => unknown,
  taken: ReadonlyMap<number, number>,
  seen: Set<number>,
): void {
  let open: ChoiceRange | null = null;
  read((index) => {
    seen.add(index);
    const entry = ledger.entries[index] as Entry;
    if (entry.role !== 'choice') return entry.range;
    const option = taken.get(index);
    if (option === undefined) open ??= ledger.choices.find((choice) => choice.index === index) ?? null;
    return exactly(option ?? 0);
  });
  const next = open as ChoiceRange | null;
  for (let option = 0; option < (next?.count ?? 0); option += 1) {
    traceInto(ledger, read, new Map([...taken, [(next as ChoiceRange).index, option]]), seen);
  }
}
