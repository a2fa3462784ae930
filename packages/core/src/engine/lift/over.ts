import type { Formula, Step } from '../formula/index.ts';
import { greater, lesser } from '../geometry/index.ts';
import type { Reading } from '../proof/index.ts';
import type { Leaves } from './leaves.ts';
import { openRun, type Bounds } from './run.ts';

/** A result over several courses of the lift: its least or its greatest. */
export interface Over {
  readonly bounds: Bounds;
  /** The same at the middle of a box, at a few places only. */
  readonly estimate: (at: Reading) => number;
  readonly reads: (at: Reading) => unknown;
}

/** A step of a formula along one course. */
export interface Along {
  readonly formula: Formula;
  readonly result: Step;
}

/** Opens a result over every course that it has to hold on. */
export function overCourses(leaves: Leaves, courses: readonly Along[], sense: 'least' | 'greatest'): Over {
  const isLeast = sense === 'least';
  const opened = courses.map(({ formula, result }) => {
    const run = openRun(formula, leaves, [result]);
    return {
      bounds: isLeast ? run.least(result) : run.greatest(result),
      estimate: isLeast ? run.leastEstimate(result) : run.greatestEstimate(result),
      reads: run.reads(result),
    };
  });
  return {
    bounds: (at, goal) => opened.map(({ bounds }) => bounds(at, goal)).reduce(isLeast ? lesser : greater),
    estimate: (at) => Math[isLeast ? 'min' : 'max'](...opened.map(({ estimate }) => estimate(at))),
    reads: (at) => opened.map(({ reads }) => reads(at)),
  };
}
