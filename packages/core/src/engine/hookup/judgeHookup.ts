import type { Setup } from '../../records/index.ts';
import { openEnded, openLedger, traced, wholeBox, type Entry, type Ledger } from '../inputs/index.ts';
import { judge, marginOf, problemOf, reader, type Box, type Check, type Field, type Judged } from '../proof/index.ts';
import type { Interval } from '../geometry/index.ts';
import { allLines, type Line } from './applicable.ts';
import type { Driver, Finding, OpenInterval } from './finding.ts';
import { openJoint, type HookupCheck, type Joint } from './joint.ts';
import type { CheckId } from './kinds.ts';
import { thresholdsOf } from './thresholds.ts';

/** The hook-up judged: its findings, and what a drawing or a report needs to read the same numbers again. */
export interface HookupJudgement {
  readonly findings: readonly Finding[];
  readonly joint: Joint;
  readonly ledger: Ledger;
  /** Every entry at the setting reported for the checks that read it; unsettled ranges elsewhere. */
  readonly setting: Box;
}

/** How much to work out: thresholds cost more than the findings and are left out of bulk answers. */
export interface Depth {
  readonly thresholds: boolean;
}

/**
 * Judges every check of the hook-up by proof.
 *
 * @param setup a setup that was read [record]
 * @param depth how much to work out [flags]
 * @returns one finding for each id of `checkIds`, in that order [mm, deg]
 * @source our own definitions, docs/method/hookup.md; figures: docs/sources.md
 */
export function judgeHookup(setup: Setup, depth: Depth): HookupJudgement {
  const { ledger, joint, lines, checks, field } = prepareHookup(setup);
  const judged = new Map(judge(checks, field).map((one) => [one.check.id, one]));
  const findings = lines.map((line) => findingOf(line, ledger, field, judged, depth));
  return { findings, joint, ledger, setting: reportedSetting(field, [...judged.values()]) };
}

/** A hook-up ready to be judged: its inputs, its checks, and what can vary in them. */
export interface HookupQuestion {
  readonly ledger: Ledger;
  readonly joint: Joint;
  readonly lines: readonly Line[];
  readonly checks: readonly HookupCheck[];
  readonly field: Field;
}

/**
 * Opens the ledger of a setup and finds what each check reads.
 *
 * @param setup a setup that was read [record]
 * @returns inputs, checks and what can vary [mm, deg]
 */
export function prepareHookup(setup: Setup): HookupQuestion {
  const ledger = openLedger(setup);
  const joint = openJoint(setup, ledger);
  const lines = allLines(joint);
  const checks = lines.flatMap((line) => (line.kind === 'computed' ? [line.check] : []));
  const reads = new Map<Check, ReadonlySet<number>>(checks.map((check) => [check, traced(ledger, check.measure)]));
  return { ledger, joint, lines, checks, field: fieldOf(ledger, reads) };
}

function fieldOf(ledger: Ledger, reads: ReadonlyMap<Check, ReadonlySet<number>>): Field {
  return {
    box: wholeBox(ledger),
    isSetting: (index) => ledger.entries[index]?.role === 'setting',
    choices: ledger.choices,
    reads: (check) => reads.get(check) ?? new Set(),
  };
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

function findingOf(
  line: Line,
  ledger: Ledger,
  field: Field,
  judged: ReadonlyMap<string, Judged>,
  depth: Depth,
): Finding {
  const { id } = line;
  const core = !id.startsWith('limit.');
  if (line.kind === 'notNeeded') return { ...blank, id, core, status: 'notNeeded', reason: line.reason };
  if (line.kind === 'notChecked') return { ...blank, id, core, status: 'notChecked', reason: line.needs };
  if (line.kind === 'settled') return { ...blank, id, core, status: line.status, reason: line.reason };
  if (line.kind === 'ask')
    return { ...blank, id, core, status: 'undecided', asks: [{ path: line.ask, passes: [], fails: [] }] };
  return computedFinding(line.check, ledger, field, judged.get(id) as Judged, depth);
}

function computedFinding(check: HookupCheck, ledger: Ledger, field: Field, judged: Judged, depth: Depth): Finding {
  const drivers = [...field.reads(check)]
    .map((index) => ledger.entries[index] as Entry)
    .filter((entry) => entry.role === 'uncertain');
  const at = reader(
    judged.setting.map((range, i) => (ledger.entries[i]?.origin === 'unknown' ? openEnded(ledger.entries[i]) : range)),
  );
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
    side: sideOf(check, judged),
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
function sideOf(check: HookupCheck, judged: Judged): 'low' | 'high' | null {
  const { quantity, low, high } = check.measure(reader(judged.setting));
  if (low === null || high === null) return low === null ? 'high' : 'low';
  const under = low.high - quantity.low;
  const over = quantity.high - high.low;
  return over > under ? 'high' : 'low';
}

function finite({ low, high }: Interval): OpenInterval {
  return { low: endOf(low), high: endOf(high) };
}

function endOf(value: number | undefined): number | null {
  return value !== undefined && Number.isFinite(value) ? value : null;
}
