import { classFields, classRange, type Category } from '../../tables/index.ts';
import { fieldRules, type Bound, type FieldRule, type Setup, type Value } from '../../records/index.ts';
import { exactly, type Interval } from '../geometry/index.ts';
import type { Box, ChoiceRange, Term } from '../proof/index.ts';
import { habit } from './habits.ts';

/** Where the range of an input came from. */
export type Origin = 'stated' | 'range' | 'default' | 'class' | 'habit' | 'unknown' | 'limit' | 'setting';

/** One line of the ledger: an uncertain number or a setting, with the path of the input behind it. */
export interface Entry {
  readonly index: number;
  readonly path: string;
  readonly range: Interval;
  readonly origin: Origin;
  readonly role: 'uncertain' | 'setting' | 'choice';
  /** Basis of a default, class range or habit. */
  readonly basis?: string;
  readonly from?: string;
}

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
  /** Setting and limits of an adjustable path; a path that is one fixed number has equal limits. */
  readonly adjuster: (path: string) => Adjuster;
  /** The number of the option taken of a named choice; adds the choice if it is new. */
  readonly choice: (name: string, count: number) => Term;
  /** Was anything given for the path? */
  readonly given: (path: string) => boolean;
  readonly value: (path: string) => Value | undefined;
  readonly category: (path: string) => Category | undefined;
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
  const entries: Entry[] = [];
  const choices: ChoiceRange[] = [];
  const choiceIndex = new Map<string, number>();
  const terms = new Map<string, Term>();
  const adjusters = new Map<string, Adjuster>();

  const value = (path: string): Value | undefined => lookUp(setup, path);
  const category = (path: string): Category | undefined =>
    setup[path.split('.')[0] as 'tractor' | 'coupler' | 'implement']?.category;

  function enter(path: string, bound: Bound, origin: Origin, extra: { basis?: string; from?: string } = {}): Term {
    const role = origin === 'setting' ? 'setting' : 'uncertain';
    const index = entries.length;
    entries.push({ index, path, range: { low: bound.low, high: bound.high }, origin, role, ...extra });
    return (at) => at(index);
  }

  function choice(name: string, count: number): Term {
    const known = choiceIndex.get(name);
    const index = known ?? entries.length;
    if (known === undefined) {
      entries.push({ index, path: name, range: { low: 0, high: count - 1 }, origin: 'setting', role: 'choice' });
      choices.push({ index, count });
      choiceIndex.set(name, index);
    }
    return (at) => at(index);
  }

  function stops(path: string, at: readonly Bound[]): Term {
    const options = at.map((bound, i) => enter(`${path}.adjustable.at.${i}`, bound, 'stated'));
    const taken = choice(holes[path] ?? path, at.length);
    return (box) => (options[taken(box).low] as Term)(box);
  }

  function open(path: string): Term {
    const given = value(path);
    if (given === undefined || given.kind === 'unknown') return missing(path);
    const from = given.provenance.from === undefined ? {} : { from: given.provenance.from };
    if (given.kind === 'stated') return enter(path, given.bound, 'stated', from);
    if (given.kind === 'uncertain') return enter(path, given.bound, 'range', from);
    if (given.kind === 'default') return enter(path, given.bound, 'default', { ...from, basis: given.basis });
    if (given.kind === 'stops') return stops(path, given.at);
    return adjuster(path).setting;
  }

  function missing(path: string): Term {
    const wide = classBound(path, category(path)) ?? habit(path);
    if (wide !== null) return enter(path, wide, wide.origin, { basis: wide.basis });
    const rule = ruleOf(path);
    return enter(path, { low: rule.min, high: rule.max }, 'unknown');
  }

  function makeAdjuster(path: string): Adjuster {
    const given = value(path);
    if (given?.kind === 'adjustable') {
      const range = { low: given.lowest.low, high: given.highest.high };
      return {
        setting: enter(path, range, 'setting'),
        lowest: enter(`${path}.adjustable.between.0`, given.lowest, 'limit'),
        highest: enter(`${path}.adjustable.between.1`, given.highest, 'limit'),
      };
    }
    const [lowest, highest] = classLimits(path, category(path));
    return {
      setting: enter(path, { low: lowest.low, high: highest.high }, 'setting'),
      lowest: enter(`${path}.adjustable.between.0`, lowest, lowest.origin, { basis: lowest.basis }),
      highest: enter(`${path}.adjustable.between.1`, highest, highest.origin, { basis: highest.basis }),
    };
  }

  function term(path: string): Term {
    const known = terms.get(path);
    if (known !== undefined) return known;
    const opened = open(path);
    terms.set(path, opened);
    return opened;
  }

  function later(path: string): Term {
    let opened: Term | null = null;
    return (at) => (opened ??= term(path))(at);
  }

  function adjuster(path: string): Adjuster {
    const known = adjusters.get(path);
    if (known !== undefined) return known;
    const made = makeAdjuster(path);
    adjusters.set(path, made);
    return made;
  }

  const given = (path: string): boolean => {
    const known = value(path);
    return known !== undefined && known.kind !== 'unknown';
  };
  return { entries, choices, term, later, adjuster, choice, given, value, category };
}

/** The box in which every entry has its whole range. */
export function wholeBox(ledger: Ledger): Box {
  return ledger.entries.map((entry) => entry.range);
}

/** The box in which an unknown input is open-ended, for margins that must not pretend to have an end. */
export function openEnded(entry: Entry): Interval {
  if (entry.origin !== 'unknown') return entry.range;
  return { low: entry.range.low >= 0 ? 0 : -Infinity, high: Infinity };
}

/** The indices that a term reads, over every option of every choice. */
export function traced(ledger: Ledger, read: (at: (index: number) => Interval) => unknown): ReadonlySet<number> {
  const seen = new Set<number>();
  const walk = (taken: ReadonlyMap<number, number>): void => {
    const found: ChoiceRange[] = [];
    read((index) => {
      seen.add(index);
      const option = taken.get(index);
      if (option !== undefined) return exactly(option);
      const choice = ledger.choices.find((candidate) => candidate.index === index);
      if (choice === undefined) return (ledger.entries[index] as Entry).range;
      found.push(choice);
      return exactly(0);
    });
    const next = found[0];
    if (next === undefined) return;
    for (let option = 0; option < next.count; option += 1) walk(new Map([...taken, [next.index, option]]));
  };
  walk(new Map());
  return seen;
}

/** A stand-in for what was not given; the front pins of a coupler are pins like those of an implement of its category. */
interface Wide extends Bound {
  readonly origin: 'class' | 'habit' | 'unknown';
  readonly basis: string;
}

function classBound(path: string, category: Category | undefined): Wide | null {
  const field = classFields.find((candidate) => candidate === path.replace(/^coupler\.front\./, 'implement.'));
  if (category === undefined || field === undefined) return null;
  const range = classRange(category, field);
  return range === null ? null : { low: range.low, high: range.high, origin: 'class', basis: range.note };
}

/** Limits of something that can be set when nothing is known of them but the category, or not even that. */
function classLimits(path: string, category: Category | undefined): readonly [Wide, Wide] {
  const rule = ruleOf(path);
  const unknown: Wide = { low: rule.min, high: rule.max, origin: 'unknown', basis: 'not known' };
  const [narrowest, widest] = [classBound(`${path}Narrowest`, category), classBound(`${path}Widest`, category)];
  return [narrowest ?? unknown, widest ?? unknown];
}

function ruleOf(path: string): FieldRule {
  const rule = fieldRules.get(path);
  if (rule === undefined) throw new Error(`invariant: no field ${path}`);
  return rule;
}

function lookUp(setup: Setup, path: string): Value | undefined {
  return path.split('.').reduce<unknown>((node, key) => (node as Record<string, unknown> | undefined)?.[key], setup) as
    | Value
    | undefined;
}
