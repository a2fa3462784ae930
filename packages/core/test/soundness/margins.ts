import type { SetupQuestion } from '../../src/engine/assess/index.ts';
import type { CheckId, Finding } from '../../src/engine/findings/index.ts';
import type { Interval } from '../../src/engine/geometry/index.ts';
import type { Reading } from '../../src/engine/proof/index.ts';
import { balanceMargins } from './balanceMargins.ts';
import { hookMargins } from './hookTruth.ts';
import { liftMargins } from './liftMargins.ts';
import { outlineMargins } from './outlineTruth.ts';
import { shaftMargins } from './shaftMargins.ts';
import { eachByItself, openFigures, openUnknowns, type Margins } from './truth.ts';
import { workMargins } from './workTruth.ts';

/** Checks that compare two figures as they are read: no margin is told of them, but whether they pass or fail can be sampled. */
export const withoutMargin: readonly CheckId[] = ['limit.flow', 'limit.pressure'];

/** What is settled by what the records say, with no number in it that a truth could be drawn of. */
export const notSampled: readonly CheckId[] = [
  'mounting',
  'rear.receiver',
  'shaft.splines',
  'shaft.speed',
  'shaft.direction',
  'limit.remotes',
];

/** The truths of a setup: what they are drawn from, and the margins of every check that a number stands behind. */
export interface Truths {
  readonly ids: readonly CheckId[];
  /** Margins of some checks, or of all, at a truth; `closes` is below zero where some loop of the linkage can’t be. */
  readonly look: (truth: Reading, ids?: ReadonlySet<CheckId>) => Seen;
  readonly besides: readonly Interval[];
}

/** What is seen of a truth. */
export interface Seen {
  readonly margins: ReadonlyMap<CheckId, number>;
  readonly closes: number;
}

/** Can a check be held against truths: was it computed, or compared? */
function isSampled({ id, unit, status }: Finding): boolean {
  if (withoutMargin.includes(id)) return ['pass', 'fail', 'undecided'].includes(status) && unit === null;
  return unit !== null;
}

/** Opens the truths of a judged setup; a check that is computed and that no truth stands behind is an error. */
export function openTruths(question: SetupQuestion, findings: readonly Finding[], places: number): Truths {
  const unknowns = openUnknowns();
  const sources = { question, figures: openFigures(question), unknowns, places };
  const ids = findings.filter((finding) => isSampled(finding) && isToldOf(question, finding)).map(({ id }) => id);
  const all: readonly Margins[] = [
    eachByItself({ ...hookMargins(sources), ...workMargins(sources) }, ids),
    outlineMargins(sources, ids),
    liftMargins(sources, ids),
    shaftMargins(sources, ids),
    balanceMargins(sources, ids),
  ].filter((margins) => margins.ids.length > 0);
  const missing = ids.filter((id) => !all.some((margins) => margins.ids.includes(id)));
  if (missing.length > 0) throw new Error(`no truth stands behind ${missing.join(', ')}`);
  return {
    ids,
    besides: unknowns.besides,
    look: (truth, wanted) => {
      const looked = all
        .filter((margins) => wanted === undefined || margins.ids.some((id) => wanted.has(id)))
        .map((margins) => margins.look(truth));
      return {
        margins: new Map(looked.flatMap(({ margins }) => margins)),
        closes: looked.reduce((least, { closes }) => Math.min(least, closes), Infinity),
      };
    },
  };
}

/** An undecided flow or pressure is told of only where both figures were said. */
function isToldOf({ ledger }: SetupQuestion, { id }: Finding): boolean {
  if (!withoutMargin.includes(id)) return true;
  const key = id === 'limit.flow' ? 'Flow' : 'Pressure';
  return ledger.given(`tractor.remote${key}`) && ledger.given(`implement.${key.toLowerCase()}Wanted`);
}
