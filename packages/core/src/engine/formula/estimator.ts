import { evaluate, openWorkspace, type Given } from './evaluate.ts';
import { Op, stepsFor, type Formula, type Step } from './formula.ts';
import { stepsResting } from './resting.ts';

/** Runs results of a formula at a few places, again and again with other leaves. */
export interface Estimator {
  /** Values of a result, one for each place; only the leaves that it reads are asked for. Valid until the next call. */
  readonly estimate: (result: Step, valueOf: (leaf: number) => number) => Float64Array;
}

/**
 * Opens an estimator. Between calls only what rests on a leaf that changed is run again: checks of one setup ask for many
 * results at the same leaves, and a search changes one setting at a time.
 *
 * @param formula what is computed [formula]
 * @param places how many places along the lift, from its foot to its top [count]
 * @returns the estimator [estimator]
 */
export function openEstimator(formula: Formula, places: number): Estimator {
  const space = openWorkspace(formula, places);
  const given = new Float64Array(formula.leaves.length).fill(NaN);
  const isFresh = new Uint8Array(formula.ops.length);
  const resting = formula.leaves.map((_, leaf) => stepsResting(formula, leaf));
  const behind = new Map<Step, Behind>();
  const stale = new Int32Array(formula.ops.length);
  const ofInputs: Given = {
    leaf: (leaf) => given[leaf] as number,
    lane: (place) => (places === 1 ? 0 : place / (places - 1)),
  };
  /** How often a leaf changed, and how often one had when a result was last run. */
  let changes = 0;
  const ranAt: number[] = [];
  const take = (leaf: number, value: number): void => {
    if (given[leaf] === value) return;
    given[leaf] = value;
    changes += 1;
    for (const step of resting[leaf] as Int32Array) isFresh[step] = 0;
  };
  const behindOf = (result: Step): Behind => {
    const found = behind.get(result) ?? behindIn(formula, result);
    behind.set(result, found);
    return found;
  };
  return {
    estimate: (result, valueOf) => {
      const { steps, leaves } = behindOf(result);
      for (const leaf of leaves) take(leaf, valueOf(leaf));
      if (ranAt[result] === changes) return space.values[result] as Float64Array;
      ranAt[result] = changes;
      let count = 0;
      for (const step of steps) {
        if (isFresh[step] === 1) continue;
        isFresh[step] = 1;
        stale[count] = step;
        count += 1;
      }
      if (count > 0) evaluate(space, stale.subarray(0, count), ofInputs);
      return space.values[result] as Float64Array;
    },
  };
}

/** What a result rests on. */
interface Behind {
  readonly steps: Int32Array;
  readonly leaves: readonly number[];
}

function behindIn(formula: Formula, result: Step): Behind {
  const steps = stepsFor(formula, [result]);
  const leaves = [...steps].filter((step) => formula.ops[step] === Op.leaf);
  return { steps, leaves: leaves.map((step) => formula.detail[step] as number) };
}
