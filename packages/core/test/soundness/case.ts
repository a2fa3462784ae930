import { judgeSetup, type SetupJudgement, type SetupQuestion } from '../../src/engine/assess/index.ts';
import type { CheckId, Finding } from '../../src/engine/findings/index.ts';
import { middle, type Interval } from '../../src/engine/geometry/index.ts';
import { reader, type Check, type Reading } from '../../src/engine/proof/index.ts';
import { readSetup } from '../../src/records/index.ts';
import { openTruths, type Truths } from './margins.ts';
import type { Point, Space } from './samples.ts';
import type { SoundSetup } from './setups.ts';
import { besidesFrom } from './truth.ts';

/** A judged setup with the truths that it is held against. */
export interface Case {
  readonly setup: SoundSetup;
  readonly question: SetupQuestion;
  readonly findings: readonly Finding[];
  readonly truths: Truths;
  /** Everything uncertain, every adjuster at the setting that is reported. */
  readonly space: Space;
  /** Inputs that a check reads and that are drawn, and all that is uncertain beside the inputs. */
  readonly readBy: (id: CheckId) => readonly number[];
  /** How much of its unit counts as one step of a check. */
  readonly scaleOf: (id: CheckId) => number;
  /** What rounding may make of a margin of a check [check's unit]. */
  readonly roundingOf: (id: CheckId) => number;
  /** Everything that was drawn of a point, and every setting, by its path. */
  readonly named: (point: Point) => Readonly<Record<string, number>>;
}

/** How truths of a setup are opened: at so many places of the lift; `told` can put a fault in what the engine tells. */
export interface Opening {
  readonly places: number;
  readonly told: (finding: Finding) => Finding;
}

/** Judges a setup and opens its truths. */
export function openCase(setup: SoundSetup, { places, told }: Opening): Case {
  const reading = readSetup(setup.document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  const judgement = judgeSetup(reading.setup, { thresholds: false });
  const { question } = judgement;
  const findings = judgement.findings.map(told);
  const truths = openTruths(question, findings, places);
  openEverything(question, truths);
  const space = spaceOf(judgement, truths);
  const drawn = new Set(space.free);
  const beside = space.free.filter((index) => index >= space.entries);
  const roundings = new Map(question.checks.map((check) => [check.id, roundingIn(check, space)] as const));
  return {
    ...{ setup, question, findings, truths, space },
    readBy: (id) => {
      const check = question.checks.find((one) => one.id === id);
      const reads = check === undefined ? [] : [...question.field.reads(check)];
      return [...reads.filter((index) => drawn.has(index)), ...beside];
    },
    scaleOf: (id) => question.checks.find((one) => one.id === id)?.scale ?? 1,
    roundingOf: (id) => roundings.get(id) ?? rounding,
    named: (point) => {
      const inputs = question.ledger.entries.filter(({ role, index }) => role !== 'uncertain' || drawn.has(index));
      const besides = beside.map((index) => [`beside.${index - space.entries}`, point[index] ?? NaN]);
      return Object.fromEntries([...inputs.map(({ path, index }) => [path, point[index] ?? NaN]), ...besides]);
    },
  };
}

/** Rounding in sums of thousands of millimetres or kilograms. */
const rounding = 1e-7;
/** Ulps that a bound may be off by where it is far larger than that: a supply that nothing bounds goes to 2·10⁹ kg. */
const ulps = 8;

function roundingIn(check: Check, { ranges, entries }: Space): number {
  const { low, high } = check.measure(reader(ranges.slice(0, entries))).quantity;
  const sizes = [low, high].filter(Number.isFinite).map(Math.abs);
  return Math.max(rounding, ulps * Number.EPSILON * Math.max(...sizes));
}

/** Looks once with the first and once with the last of every choice: inputs that are opened late are there from then on. */
function openEverything({ ledger }: SetupQuestion, truths: Truths): void {
  for (const end of ['low', 'high'] as const) {
    const at: Reading = (index) => {
      const entry = index >= besidesFrom ? null : (ledger.entries[index] ?? null);
      const range = entry?.range ?? (truths.besides[index - besidesFrom] as Interval);
      const value = entry?.role === 'choice' ? range[end] : middle(range);
      return { low: value, high: value };
    };
    truths.look(at);
  }
}

function spaceOf({ question, setting }: SetupJudgement, { besides }: Truths): Space {
  const { entries } = question.ledger;
  const ranges = entries.map(({ role, range, index }): Interval => {
    if (role === 'uncertain') return range;
    const at = setting[index] ?? range;
    const value = role === 'choice' ? at.low : middle(at);
    return { low: value, high: value };
  });
  return spaceIn([...ranges, ...besides], entries.length, question);
}

/** The space of some ranges. */
export function spaceIn(ranges: readonly Interval[], entries: number, { ledger }: SetupQuestion): Space {
  return {
    ranges,
    entries,
    free: ranges.flatMap(({ low, high }, index) => (high > low ? [index] : [])),
    whole: new Set(ledger.entries.filter(({ role }) => role === 'choice').map(({ index }) => index)),
  };
}
