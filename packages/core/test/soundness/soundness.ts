import type { CheckId, Finding } from '../../src/engine/findings/index.ts';
import { openCase, type Case } from './case.ts';
import { Held, Violations, type SetupResult } from './held.ts';
import { answersOf, failsElsewhere, openJudge } from './judged.ts';
import { openSampler, readerOf, type Point, type Sampler } from './samples.ts';
import type { SoundSetup } from './setups.ts';

/** How a setup is held against truths. */
export interface How {
  readonly samples: number;
  /** Truths that are drawn together with settings, where something fails. */
  readonly elsewhere: number;
  /** Places of the lift that every truth is looked at. */
  readonly places: number;
  /** Puts a fault in what the engine tells, to see it caught. */
  readonly told?: (finding: Finding) => Finding;
}

/** Holds everything that is told of a setup against truths of it: margins, checks, answers and verdict. */
export function soundnessOf(setup: SoundSetup, how: How): SetupResult {
  const started = performance.now();
  const one = openCase(setup, { places: how.places, told: how.told ?? ((finding) => finding) });
  const judged = performance.now();
  const violations = new Violations(setup.number, one.named);
  const reported = atReportedSetting(one, violations, how.samples);
  const elsewhere = failsElsewhere(one, violations, how.elsewhere);
  const { seed, number, kind, known, twists } = setup;
  return {
    ...{ seed, number, kind, known, twists, samples: how.samples, elsewhere },
    ...reported,
    answers: answersOf(one.findings),
    unresolved: one.findings.filter(({ unresolved }) => unresolved).length,
    violations: violations.count,
    first: violations.first,
    judging: judged - started,
    sampling: performance.now() - judged,
  };
}

function atReportedSetting(one: Case, violations: Violations, samples: number) {
  const sampled = one.findings.filter(({ id }) => one.truths.ids.includes(id));
  const held = new Map(sampled.map((finding) => [finding.id, new Held(finding, one.roundingOf(finding.id))]));
  const draw = openDraws(one, held);
  const judge = openJudge(one, violations);
  let closing = 0;
  for (let sample = 0; sample < samples; sample += 1) {
    const point = draw(sample);
    const seen = one.truths.look(readerOf(point, one.space.entries));
    if (seen.closes > 0) closing += 1;
    for (const [id, check] of held) {
      const margin = seen.margins.get(id) ?? NaN;
      if (check.take(margin, point)) continue;
      const { low, high } = check.finding.margin ?? { low: null, high: null };
      violations.note({ id, what: 'outside its bound', sample, elsewhere: false, margin, low, high }, point);
    }
    judge.look(point, seen, sample);
  }
  return { checks: [...held.values()].map((check) => check.result()), closing, resettled: judge.resettled() };
}

/**
 * Truths one after the other: the middle of everything first, then a quarter anywhere, a quarter at corners, and half from
 * the outermost truth that was found of some check, a few of its inputs drawn anew.
 */
function openDraws(one: Case, held: ReadonlyMap<CheckId, Held>): (sample: number) => Point {
  const sampler = openSampler(one.space, one.setup.seed ^ Math.imul(one.setup.number + 1, 0x9e3779b1));
  const targets = [...held.values()].map((check) => ({ check, only: one.readBy(check.finding.id) }));
  const open = targets.filter(({ only }) => only.length > 0);
  return (sample) => {
    if (sample === 0) return sampler.middle();
    if (sample % 4 === 0 || open.length === 0) return sampler.anywhere();
    return sample % 4 === 1 ? sampler.corner() : outward(sampler, open);
  };
}

function outward(sampler: Sampler, open: readonly { readonly check: Held; readonly only: readonly number[] }[]): Point {
  const { check, only } = open[sampler.pick(open.length)] as (typeof open)[number];
  const from = sampler.pick(2) === 0 ? check.lowest : check.highest;
  return from === null ? sampler.corner() : sampler.near(from, only);
}
