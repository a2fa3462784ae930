import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { CheckId } from '../../src/engine/findings/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import type { Reading, Term } from '../../src/engine/proof/index.ts';

/** A number of a truth: a reading in which every input, and all that is uncertain beside them, is a point. */
export type TrueFigure = (truth: Reading) => number;

/** How far a check is kept at a truth, below zero where it is not [check's unit]. */
export type Margin = TrueFigure;

/** Margins of some checks at a truth, and what is left there before a loop of the linkage can’t be (infinite where none is). */
export interface Looked {
  readonly margins: readonly (readonly [CheckId, number])[];
  readonly closes: number;
}

/** Checks whose margins are worked out together. */
export interface Margins {
  readonly ids: readonly CheckId[];
  readonly look: (truth: Reading) => Looked;
}

/** Checks whose margins are worked out each by itself, on plain numbers that no linkage is behind. */
export function eachByItself(made: Readonly<Partial<Record<CheckId, () => Margin>>>, ids: readonly CheckId[]): Margins {
  const opened = ids.flatMap((id) => {
    const open = made[id];
    return open === undefined ? [] : [[id, open()] as const];
  });
  return {
    ids: opened.map(([id]) => id),
    look: (truth) => ({ margins: opened.map(([id, margin]) => [id, margin(truth)] as const), closes: Infinity }),
  };
}

/** What truths are drawn from beside the entries of the ledger. */
export interface Unknowns {
  /** Something uncertain that is no input of its own, such as how an outline lies within its drawn tolerance. */
  readonly beside: (range: Interval) => Term;
  readonly besides: readonly Interval[];
}

/** Indices past every entry of a ledger: what is uncertain beside it is read there. */
export const besidesFrom = 1_000_000;

/** An empty list of what is uncertain beside the ledger. */
export function openUnknowns(): Unknowns {
  const besides: Interval[] = [];
  return {
    besides,
    beside: (range) => {
      const index = besidesFrom + besides.push(range) - 1;
      return (at) => at(index);
    },
  };
}

/** Reads a term of a truth as the number that it is there. */
export function pointOf(term: Term): TrueFigure {
  return (truth) => term(truth).low;
}

/** A number that is looked up when it is first read: what no check needs is not there to be looked up. */
export function lazily(open: () => TrueFigure): TrueFigure {
  let opened: TrueFigure | null = null;
  return (truth) => (opened ??= open())(truth);
}

/** Distance to the nearer end of a band. */
export function within(low: TrueFigure | number, high: TrueFigure | number, quantity: TrueFigure): Margin {
  const [from, to] = [numberOf(low), numberOf(high)];
  return (truth) => {
    const value = quantity(truth);
    return Math.min(value - from(truth), to(truth) - value);
  };
}

/** How far a quantity is above what it must not fall below. */
export function atLeast(low: TrueFigure | number, quantity: TrueFigure): Margin {
  const from = numberOf(low);
  return (truth) => quantity(truth) - from(truth);
}

/** How far a quantity is below what it must not exceed. */
export function atMost(high: TrueFigure | number, quantity: TrueFigure): Margin {
  return atLeast(quantity, numberOf(high));
}

/** a − b − … */
export function less(from: TrueFigure, ...others: readonly TrueFigure[]): TrueFigure {
  return (truth) => others.reduce((sum, other) => sum - other(truth), from(truth));
}

function numberOf(of: TrueFigure | number): TrueFigure {
  return typeof of === 'number' ? () => of : of;
}

/** Paths whose stops belong to the same holes, by the name of the choice among them. */
const holes: Readonly<Record<string, readonly string[]>> = {
  'implement.mastHole': ['implement.mastHeight', 'implement.mastSetback'],
  'coupler.topHookHole': ['coupler.topHookHeight', 'coupler.topHookBehind'],
  'tractor.topLinkHole': ['tractor.topLinkPivotHeight', 'tractor.topLinkPivotBehindAxle'],
};

/** Reads figures of a truth by their path, of several holes the one in use; a figure that no check of the engine reads is an error. */
export interface Figures {
  readonly of: (path: string) => TrueFigure;
  /** The number of the option that is taken. */
  readonly option: (choice: string) => TrueFigure;
}

/** Opens the figures of a question by their paths. */
export function openFigures({ ledger }: SetupQuestion): Figures {
  const entry = (path: string): TrueFigure => {
    const found = ledger.entries.find((one) => one.path === path);
    if (found === undefined) throw new Error(`no check reads ${path}`);
    return (truth) => truth(found.index).low;
  };
  const of = (path: string): TrueFigure => {
    const value = ledger.value(path);
    if (value?.kind !== 'stops') return entry(path);
    const [choice] = Object.entries(holes).find(([, paths]) => paths.includes(path)) ?? [path];
    const taken = entry(choice);
    const stops = value.at.map((_, i) => entry(`${path}.adjustable.at.${i}`));
    return (truth) => (stops[taken(truth)] as TrueFigure)(truth);
  };
  return { of, option: entry };
}
