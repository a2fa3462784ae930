import type { Outcome } from '../../src/engine/assess/index.ts';
import type { CheckId, Finding, Topic } from '../../src/engine/findings/index.ts';
import type { Point } from './samples.ts';
import type { Kind, Known } from './setups.ts';

/** One of the four answers, or the verdict on all of them. */
export type Answer = Topic | 'verdict';

/** A truth that speaks against what was told, with all that it takes to see it again. */
export interface Violation {
  readonly setup: number;
  readonly id: CheckId | Answer;
  readonly what:
    'outside its bound' | 'passes, yet missed' | 'fails, yet kept' | 'works, yet missed' | 'will not, yet kept';
  /** Number of the sample, and what the margin was there [check's unit]. */
  readonly sample: number;
  /** Drawn together with a setting, and not at the reported one. */
  readonly elsewhere: boolean;
  readonly margin: number;
  readonly low: number | null;
  readonly high: number | null;
  /** The truth itself: everything that was drawn, by its path. */
  readonly truth: Readonly<Record<string, number>>;
}

/** What became of one check of one setup. */
export interface CheckResult {
  readonly id: CheckId;
  readonly unit: string | null;
  readonly samples: number;
  readonly violations: number;
  /** The nearest that a sample came to an end of the told margin, below zero outside of it [check's unit]. */
  readonly slack: number | null;
  /** Width of the told margin, and how far apart its samples lie. */
  readonly width: number | null;
  readonly spread: number;
}

/** The four answers and the verdict. */
export type Answers = Readonly<Record<Answer, Outcome>>;

/** What became of one setup. */
export interface SetupResult {
  readonly seed: number;
  readonly number: number;
  readonly kind: Kind;
  readonly known: Known;
  readonly twists: readonly string[];
  readonly checks: readonly CheckResult[];
  readonly answers: Answers;
  /** Truths drawn at the reported setting, and at settings drawn with them where something fails. */
  readonly samples: number;
  readonly elsewhere: number;
  /** Truths of these whose linkage can be. */
  readonly closing: number;
  /** Truths that took another setting than the reported one. */
  readonly resettled: number;
  readonly unresolved: number;
  readonly violations: number;
  /** The first of them. */
  readonly first: readonly Violation[];
  /** Time that it took to judge it, and to hold it against truths [ms]. */
  readonly judging: number;
  readonly sampling: number;
}

/** Collects violations, and keeps the first few of each check. */
export class Violations {
  count = 0;
  readonly first: Violation[] = [];
  private readonly kept = new Map<string, number>();

  constructor(
    private readonly setup: number,
    private readonly named: (point: Point) => Violation['truth'],
  ) {}

  note(violation: Omit<Violation, 'setup' | 'truth'>, point: Point): void {
    this.count += 1;
    const key = `${violation.id} ${violation.what}`;
    const kept = this.kept.get(key) ?? 0;
    this.kept.set(key, kept + 1);
    if (kept < 3) this.first.push({ setup: this.setup, ...violation, truth: this.named(point) });
  }
}

/** Margins of one check as they are sampled, against the margin that was told of it. */
export class Held {
  samples = 0;
  violations = 0;
  slack = Infinity;
  least = Infinity;
  greatest = -Infinity;
  /** The truths at which the margin was least and greatest. */
  lowest: Point | null = null;
  highest: Point | null = null;

  constructor(
    readonly finding: Finding,
    private readonly rounding: number,
  ) {}

  /** Takes a margin in; false where it lies outside of what was told. */
  take(margin: number, point: Point): boolean {
    this.samples += 1;
    if (margin < this.least) [this.least, this.lowest] = [margin, point];
    if (margin > this.greatest) [this.greatest, this.highest] = [margin, point];
    const { low, high } = this.finding.margin ?? { low: null, high: null };
    const inside = Math.min(low === null ? Infinity : margin - low, high === null ? Infinity : high - margin);
    if (inside < this.slack || Number.isNaN(inside)) this.slack = inside;
    const isInside = inside >= -this.rounding;
    if (!isInside) this.violations += 1;
    return isInside;
  }

  result(): CheckResult {
    const { id, unit, margin } = this.finding;
    const [low, high] = [margin?.low ?? null, margin?.high ?? null];
    return {
      id,
      unit,
      samples: this.samples,
      violations: this.violations,
      slack: Number.isFinite(this.slack) ? this.slack : null,
      width: low === null || high === null ? null : high - low,
      spread: this.greatest - this.least,
    };
  }
}
