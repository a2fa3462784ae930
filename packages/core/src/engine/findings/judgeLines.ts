import { openEnded, traced, wholeBox, type Entry, type Ledger } from '../inputs/index.ts';
import {
  judge,
  leastCertain,
  marginOf,
  nearlyZero,
  problemOf,
  rangeOf,
  reader,
  statusAlone,
  type Box,
  type Check,
  type Field,
  type Judged,
  type Measured,
  type Reading,
} from '../proof/index.ts';
import { width, type Interval } from '../geometry/index.ts';
import type { CheckId } from './checkIds.ts';
import type { Driver, Finding, OpenInterval, Reason, Standing } from './finding.ts';
import type { Line, NamedCheck } from './line.ts';
import { thresholdsOf } from './thresholds.ts';

/** How much to work out: thresholds cost more than the findings and are left out of bulk answers. */
export interface Depth {
  readonly thresholds: boolean;
}

/** Lines ready to be judged: their checks, and what can vary in them. */
export interface Question {
  readonly ledger: Ledger;
  readonly lines: readonly Line<Reason>[];
  readonly checks: readonly NamedCheck[];
  readonly field: Field;
}

/** The findings of a question, and the setting that is reported with them. */
export interface Judgement {
  readonly findings: readonly Finding[];
  /** Every entry at the setting reported for the checks that read it; unsettled ranges elsewhere. */
  readonly setting: Box;
}

/**
 * Finds what each check of some lines reads.
 *
 * @param ledger where the inputs stand [ledger]
 * @param lines what becomes of each check [lines]
 * @returns the question, ready to be judged [mm, deg, kg]
 */
export function openQuestion(ledger: Ledger, lines: readonly Line<Reason>[]): Question {
  const checks = lines.flatMap((line) => (line.kind === 'computed' ? [line.check] : []));
  const reads = new Map<Check, ReadonlySet<number>>(
    checks.map((check) => [check, traced(ledger, check.reads ?? check.measure)]),
  );
  const field: Field = {
    box: wholeBox(ledger),
    isSetting: (index) => ledger.entries[index]?.role === 'setting',
    choices: ledger.choices,
    reads: (check) => reads.get(check) ?? new Set(),
  };
  return { ledger, lines, checks, field };
}

/**
 * Judges every line by proof.
 *
 * @param question lines and what can vary in them [question]
 * @param depth how much to work out [flags]
 * @returns one finding for each line, in order [mm, deg, kg]
 */
export function judgeLines(question: Question, depth: Depth): Judgement {
  const { judged, setting } = judgedChecks(question);
  return { findings: question.lines.map((line) => findingOf(line, question, judged, depth)), setting };
}

/**
 * Judges every line by proof, as far as how it stands: no margins are worked out.
 *
 * @param question lines and what can vary in them [question]
 * @returns how each line stands, in order [status]
 */
export function standingsOf(question: Question): Standing[] {
  const { judged } = judgedChecks(question);
  return question.lines.map((line) => {
    if (line.kind !== 'computed') return settledFinding(line);
    const { status, conflictsWith } = judged.get(line.id) as Judged;
    return { id: line.id, core: isCore(line), status, conflictsWith: conflictsWith as readonly CheckId[] };
  });
}

/**
 * How one line of a question stands by itself, whatever the others ask for.
 *
 * @param question lines and what can vary in them [question]
 * @param id the check [id]
 * @returns how it stands; null where the question has no such line [status]
 */
export function standingAlone({ lines, field }: Question, id: CheckId): Standing | null {
  const line = lines.find((one) => one.id === id);
  if (line === undefined) return null;
  if (line.kind !== 'computed') return settledFinding(line);
  return { id, core: isCore(line), status: statusAlone(line.check, field), conflictsWith: [] };
}

/** Every check judged, what stands beside the verdict as the core checks have it set. */
function judgedChecks({ checks, field }: Question): { judged: ReadonlyMap<string, Judged>; setting: Box } {
  const core = judge(checks.filter(isCore), field);
  const settled = settledField(field, reportedSetting(field, core));
  const beside = judge(
    checks.filter((check) => !isCore(check)),
    settled,
  );
  const judged = new Map([...core, ...beside].map((one) => [one.check.id, one]));
  return { judged, setting: reportedSetting(settled, beside) };
}

/**
 * Whether every check of a question holds at one setting, over everything uncertain.
 *
 * @param question lines and what can vary in them [question]
 * @param setting every adjuster at one place [ranges by index]
 * @returns true where all are shown to hold there [flag]
 */
export function allHoldAt({ checks, field }: Question, setting: Box): boolean {
  // What was not asked about before has no setting yet, and an option that is not taken can't be read.
  const box = field.box.map((range, index) => setting[index] ?? range);
  const isTaken = field.choices.every(({ index }) => width(box[index] as Interval) === 0);
  return isTaken && leastCertain(checks, box) >= -nearlyZero;
}

function isCore({ id }: { readonly id: CheckId | string }): boolean {
  return !id.startsWith('limit.');
}

/** What stands beside the verdict is judged as the core checks have it set: it never asks for another setting. */
function settledField(field: Field, box: Box): Field {
  return { ...field, box, choices: field.choices.filter(({ index }) => width(box[index] as Interval) > 0) };
}

function reportedSetting(field: Field, judged: readonly Judged[]): Box {
  const box = field.box.slice();
  for (const { check, setting } of judged) {
    for (const index of field.reads(check)) box[index] = setting[index] as Interval;
  }
  return box;
}

const blank = {
  margin: null,
  unit: null,
  quantity: null,
  band: null,
  side: null,
  drivers: [],
  reason: null,
  asks: [],
  conflictsWith: [],
  unresolved: false,
} as const;

function findingOf(line: Line<Reason>, question: Question, judged: ReadonlyMap<string, Judged>, depth: Depth): Finding {
  if (line.kind !== 'computed') return settledFinding(line);
  return { ...computedFinding(line.check, question, judged.get(line.id) as Judged, depth), core: isCore(line) };
}

/** The finding of a line that the records settle. */
function settledFinding(line: Exclude<Line<Reason>, { kind: 'computed' }>): Finding {
  const { id } = line;
  const core = isCore(line) && line.kind !== 'notChecked';
  if (line.kind === 'notNeeded') return { ...blank, id, core, status: 'notNeeded', reason: line.reason };
  if (line.kind === 'notChecked') return { ...blank, id, core, status: 'notChecked', reason: line.needs };
  if (line.kind === 'settled') return { ...blank, id, core, status: line.status, reason: line.reason };
  return { ...blank, id, core, status: 'undecided', asks: [{ path: line.ask, passes: [], fails: [] }] };
}

function computedFinding(check: NamedCheck, { ledger, field }: Question, judged: Judged, depth: Depth): Finding {
  const drivers = [...field.reads(check)]
    .map((index) => ledger.entries[index] as Entry)
    .filter((entry) => entry.role === 'uncertain');
  const at: Reading = (index) => {
    const entry = ledger.entries[index];
    return entry?.origin === 'unknown' ? openEnded(entry) : rangeOf(judged.setting, index);
  };
  const measured = check.measure(at);
  const asks = judged.status === 'undecided' && depth.thresholds ? thresholdsOf(problemOf([check], field), ledger) : [];
  return {
    ...blank,
    id: check.id,
    core: true,
    status: judged.status,
    margin: finite(marginOf(measured)),
    unit: check.unit,
    quantity: finite(measured.quantity),
    band: { low: endOf(measured.low?.low), high: endOf(measured.high?.high) },
    side: sideOf(measured, () => check.measure(reader(judged.setting))),
    drivers: drivers.map(driverOf),
    asks,
    conflictsWith: judged.conflictsWith as readonly CheckId[],
    unresolved: judged.unresolved,
  };
}

function driverOf({ path, range, origin, basis }: Entry): Driver {
  return { path, range, origin, basis: basis ?? null };
}

/** The end of the band that is missed at the failing truth, or nearest at the reported setting. */
function sideOf(measured: Measured, atSetting: () => Measured): 'low' | 'high' {
  const hasTwoEnds = measured.low !== null && measured.high !== null;
  const { quantity, low, high } = hasTwoEnds ? atSetting() : measured;
  if (low === null || high === null) return low === null ? 'high' : 'low';
  const under = low.high - quantity.low;
  const over = quantity.high - high.low;
  return over > under ? 'high' : 'low';
}

function finite({ low, high }: Interval): OpenInterval {
  return { low: endOf(low), high: endOf(high) };
}

/** More than anything measured here can be: an end that far out is no end. */
const unbounded = 1e6;

function endOf(value: number | undefined): number | null {
  return value !== undefined && Math.abs(value) < unbounded ? value : null;
}
