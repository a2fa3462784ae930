import { evaluate, openWorkspace, stepsFor, type Formula, type Step } from '../../src/engine/formula/index.ts';
import { middle } from '../../src/engine/geometry/index.ts';
import type { Reading, Term } from '../../src/engine/proof/index.ts';

/** The ends, middles and quarters of the 24 pieces that a margin is proven over. */
export const usualPlaces = 97;

/** The ends and middles of those pieces only: where a bound picks the place that is lowest. */
export const fewestPlaces = 49;

/** Results of a formula on plain numbers: every input at a point, the lift at many places. */
export interface PlainRun {
  readonly run: (at: Reading) => void;
  /** Extremes of a result, and all of its values, as it was last run. */
  readonly least: (result: Step) => number;
  readonly greatest: (result: Step) => number;
  readonly values: (result: Step) => Float64Array;
}

/** Opens some results of a formula; only the inputs that they rest on are ever read. */
export function openPlain(
  formula: Formula,
  results: readonly Step[],
  termOf: (leaf: string) => Term | undefined,
  places = usualPlaces,
): PlainRun {
  const steps = stepsFor(formula, results);
  const space = openWorkspace(formula, formula.laned.includes(1) ? places : 1);
  const read = new Set([...steps].filter((step) => formula.ops[step] === 1).map((step) => formula.detail[step]));
  const terms = formula.leaves.map((name, leaf): Term | null => {
    if (!read.has(leaf)) return null;
    const term = termOf(name);
    if (term === undefined) throw new Error(`no leaf ${name}`);
    return term;
  });
  const given = new Float64Array(terms.length);
  const values = (result: Step): Float64Array => space.values[result] as Float64Array;
  return {
    run: (at) => {
      terms.forEach((term, leaf) => {
        if (term !== null) given[leaf] = middle(term(at));
      });
      evaluate(space, steps, { leaf: (leaf) => given[leaf] as number, lane: (place) => place / (places - 1) });
    },
    least: (result) => values(result).reduce((a, b) => Math.min(a, b), Infinity),
    greatest: (result) => values(result).reduce((a, b) => Math.max(a, b), -Infinity),
    values,
  };
}
