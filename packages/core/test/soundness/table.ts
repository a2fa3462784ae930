import type { Outcome } from '../../src/engine/assess/index.ts';
import { checkIds, type CheckId } from '../../src/engine/findings/index.ts';
import type { Answer, CheckResult, SetupResult, Violation } from './held.ts';

/** One check over all setups. */
export interface Row {
  readonly id: CheckId;
  readonly unit: string | null;
  readonly setups: number;
  readonly samples: number;
  readonly violations: number;
  /** The nearest that any sample came to an end of its bound [check's unit], and as a share of that bound's width. */
  readonly slack: number | null;
  readonly share: number | null;
  /** How much of its bound the samples of a setup reach, for the median setup; null where no bound has two ends and a width. */
  readonly reached: number | null;
}

/** Narrower than this a bound has no width to take a share of [check's unit]. */
const narrowest = 1e-6;

/** One row for every check that was sampled, the tightest first. */
export function rowsOf(results: readonly SetupResult[]): Row[] {
  const all = results.flatMap(({ checks }) => checks);
  const rows = checkIds
    .map((id) => all.filter((one) => one.id === id && one.samples > 0))
    .flatMap((checks) => (checks[0] === undefined ? [] : [rowOf(checks[0], checks)]));
  return rows.sort((a, b) => (a.slack ?? Infinity) - (b.slack ?? Infinity) || (a.share ?? 1) - (b.share ?? 1));
}

function rowOf({ id, unit }: CheckResult, checks: readonly CheckResult[]): Row {
  const slacks = checks.flatMap(({ slack }) => (slack === null ? [] : [slack]));
  const wide = checks.filter(({ width }) => width !== null && width > narrowest);
  const shares = wide.flatMap(({ slack, width }) => (slack === null ? [] : [slack / (width as number)]));
  const reached = wide.map(({ spread, width }) => spread / (width as number)).sort((a, b) => a - b);
  return {
    ...{ id, unit },
    setups: checks.length,
    samples: checks.reduce((sum, { samples }) => sum + samples, 0),
    violations: checks.reduce((sum, { violations }) => sum + violations, 0),
    slack: slacks.length === 0 ? null : Math.min(...slacks),
    share: shares.length === 0 ? null : Math.min(...shares),
    reached: reached[reached.length >> 1] ?? null,
  };
}

/** The rows as a table that can stand in a page. */
export function tableOf(rows: readonly Row[]): string {
  const head = ['check', 'unit', 'setups', 'samples', 'violations', 'worst slack', 'of its width', 'reached'];
  const lines = rows.map(({ id, unit, setups, samples, violations, slack, share, reached }) => [
    ...[`\`${id}\``, unit ?? '–', String(setups), grouped(samples), String(violations)],
    ...[slack === null ? '–' : small(slack), share === null ? '–' : percent(share)],
    reached === null ? '–' : percent(reached),
  ]);
  const widths = head.map((title, i) =>
    Math.max(...[title, ...lines.map((line) => line[i] ?? '')].map((s) => s.length)),
  );
  const row = (cells: readonly string[]): string =>
    `| ${cells.map((cell, i) => (i < 2 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0))).join(' | ')} |`;
  const rule = `| ${widths.map((width, i) => (i < 2 ? '-'.repeat(width) : `${'-'.repeat(width - 1)}:`)).join(' | ')} |`;
  return [row(head), rule, ...lines.map(row)].join('\n');
}

/** What rounding leaves is nothing. */
const nothing = 1e-9;

function small(value: number): string {
  if (Math.abs(value) < nothing) return '0';
  return Math.abs(value) < 0.001 ? value.toExponential(1) : value.toFixed(3);
}

function percent(share: number): string {
  return Math.abs(share) < nothing ? '0 %' : `${(100 * share).toFixed(Math.abs(share) < 0.001 ? 4 : 2)} %`;
}

function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ' ');
}

const answers: readonly Answer[] = ['hooksUp', 'runs', 'lifts', 'staysUpright', 'verdict'];
const outcomes: readonly Outcome[] = ['works', 'measureFirst', 'willNot', 'notNeeded', 'notChecked'];

/** How often each of the four answers, and the verdict, came out how, and in how many setups a truth spoke against it. */
export function talliesOf(results: readonly SetupResult[]): string {
  const lines = answers.map((answer) => {
    const counts = outcomes.map((outcome) => results.filter((one) => one.answers[answer] === outcome).length);
    const against = results.filter(({ first }) => first.some(({ id }) => id === answer)).length;
    return `| ${[answer, ...counts, against].join(' | ')} |`;
  });
  return [
    `| answer | ${outcomes.join(' | ')} | contradicted |`,
    `|---|${outcomes.map(() => '--:').join('|')}|--:|`,
    ...lines,
  ].join('\n');
}

/** Everything over all setups, in a few lines. */
export function totalsOf(results: readonly SetupResult[]): string {
  const sum = (of: (one: SetupResult) => number): number => results.reduce((total, one) => total + of(one), 0);
  const truths = sum(({ samples }) => samples);
  return [
    `${results.length} setups, ${grouped(truths)} truths at the reported settings (${grouped(sum(({ closing }) => closing))} of them close), ${grouped(sum(({ elsewhere }) => elsewhere))} at other settings,`,
    `${grouped(sum(({ checks }) => checks.reduce((all, { samples }) => all + samples, 0)))} margins held; ${grouped(sum(({ resettled }) => resettled))} truths served by another setting than the reported one; ${sum(({ unresolved }) => unresolved)} findings unresolved.`,
    `${sum(({ violations }) => violations)} violations.`,
  ].join('\n');
}

/** A violation, and how to see it again. */
export function told({ setup, id, what, sample, elsewhere, margin, low, high }: Violation, seed: number): string {
  const bound = what === 'outside its bound' ? ` not in [${String(low)}, ${String(high)}]` : '';
  const where = elsewhere ? ', at a setting drawn with it' : '';
  return `setup ${setup}, ${id} ${what}: ${margin}${bound} at sample ${sample}${where}; npm run soundness -- --seed ${seed} --setup ${setup}`;
}
