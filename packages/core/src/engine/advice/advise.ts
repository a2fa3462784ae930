import { fieldRules, readSetup, withEdits, type InputError, type SetupDocument } from '../../records/index.ts';
import { answerFrom, judgeSetup, type Answer, type Perhaps, type SetupJudgement } from '../assess/index.ts';
import type { CheckId, Depth, Finding, NamedCheck, Threshold } from '../findings/index.ts';
import { middle, width, type Interval } from '../geometry/index.ts';
import type { Entry } from '../inputs/index.ts';
import { marginOf, reader, withCare, withRange, type Box } from '../proof/index.ts';
import { readingOf, type Tool } from './tools.ts';

/** Where a figure decides a check whatever the rest turns out to be. */
export interface Deciding extends Threshold {
  readonly check: CheckId;
}

/** One figure that is worth reading next. */
export interface Suggestion {
  /** Field path; ends and holes of what can be set are read together. */
  readonly path: string;
  readonly tool: Tool;
  /** How long reading it takes [min], and how far a reading may be off either way [canonical unit]. */
  readonly minutes: number;
  readonly accuracy: number;
  /** How much of what is open it settles, on average over where it may turn out to lie [0–1]. */
  readonly settles: number;
  /** The open checks that it tells on. */
  readonly tellsOn: readonly CheckId[];
  /** Where it would decide a check alone; none where it takes others with it. */
  readonly thresholds: readonly Deciding[];
}

/** What to read next, and what there is no need to read. */
export interface Advice {
  readonly answer: Answer;
  /** Nothing that could still be read changes the verdict. */
  readonly settled: boolean;
  /** Worth reading, best first; none where the verdict is settled or only finer tools would help. */
  readonly next: readonly Suggestion[];
  /** Open checks that are closer to their limit than their tools can tell. */
  readonly tooClose: readonly CheckId[];
  /** Figures that were not read and that no open check asks for. */
  readonly needless: readonly string[];
}

/** Advice, or everything that is wrong with the input. */
export type Advised =
  { readonly ok: true; readonly advice: Advice } | { readonly ok: false; readonly errors: readonly InputError[] };

/**
 * Ranks the figures that are open by how much of the verdict reading them settles, on average, for each minute it takes.
 * What is not read is taken to lie anywhere in its range alike, and every figure by itself (docs/method/advice.md). The verdict
 * itself stays proven: advice only says in which order to read.
 *
 * @param document a setup document [JSON]
 * @param depth whether to work out where each figure would decide [flags]
 * @returns the answer and what to read next, or every error in the input [InputError codes]
 */
export function advise(document: SetupDocument, depth: Depth = { thresholds: true }): Advised {
  const reading = readSetup(document);
  if (!reading.ok) return reading;
  const judgement = judgeSetup(reading.setup, depth);
  const answer = answerFrom(document, judgement, { full: false });
  return { ok: true, advice: adviceFrom(document, judgement, answer, depth) };
}

/**
 * The same for a setup that was judged and answered.
 *
 * @param document the setup as written [JSON]
 * @param asItStands the same, judged [record]
 * @param answer the answer to it [record]
 * @param depth whether to work out where each figure would decide [flags]
 * @returns what to read next [record]
 */
export function adviceFrom(document: SetupDocument, asItStands: SetupJudgement, answer: Answer, depth: Depth): Advice {
  const settled = answer.verdict !== 'measureFirst';
  const judgement = answer.perhaps === null ? asItStands : (withCures(document, answer.perhaps, depth) ?? asItStands);
  const open = judgement.findings.filter(({ core, status }) => core && status === 'undecided');
  const next = settled ? [] : ranked(judgement, open);
  const told = new Set(next.flatMap(({ tellsOn }) => tellsOn));
  const tooClose = settled ? [] : open.map(({ id }) => id).filter((id) => !told.has(id));
  return { answer, settled, next, tooClose, needless: needlessIn(judgement, next) };
}

/** The setup with what may cure it: what is open there decides whether it does. */
function withCures(document: SetupDocument, { cures }: Perhaps, depth: Depth): SetupJudgement | null {
  const edits = cures.flatMap((cure) => cure.edits);
  const reading = readSetup(withEdits(document, edits));
  return reading.ok ? judgeSetup(reading.setup, depth) : null;
}

/** What nobody read as closely as it could be, and no open check asks for. */
function needlessIn({ question }: SetupJudgement, next: readonly Suggestion[]): string[] {
  const wanted = new Set(next.map(({ path }) => path));
  const read = new Set(question.checks.flatMap((check) => [...question.field.reads(check)]));
  const coarse = question.ledger.entries.filter(
    ({ index, role, range, path }) =>
      read.has(index) && role === 'uncertain' && width(range) > closely(readingOf(path, middle(range)).accuracy),
  );
  const fields = coarse.map(({ path }) => fieldOf(path)).filter((path) => fieldRules.has(path) && !wanted.has(path));
  return [...new Set(fields)];
}

/** A range no wider than this is as close as the tool reads it [unit of the accuracy]. */
function closely(accuracy: number): number {
  return 2.1 * accuracy;
}

function ranked(judgement: SetupJudgement, open: readonly Finding[]): Suggestion[] {
  const found = new Map<string, { settles: number; tellsOn: CheckId[]; thresholds: Deciding[]; about: number }>();
  const note = (path: string, about: number, gain: number, finding: Finding): void => {
    const so = found.get(path) ?? { settles: 0, tellsOn: [], thresholds: [], about };
    const alone = finding.asks.filter((ask) => ask.path === path && ask.passes.length + ask.fails.length > 0);
    found.set(path, {
      about,
      settles: so.settles + gain / open.length,
      tellsOn: [...so.tellsOn, finding.id],
      thresholds: [...so.thresholds, ...alone.map((ask) => ({ ...ask, check: finding.id }))],
    });
  };
  for (const finding of open) {
    const check = judgement.question.checks.find(({ id }) => id === finding.id);
    if (check === undefined) for (const { path } of finding.asks) note(path, 0, askedGain, finding);
    else for (const { path, about, gain } of gainsOn(judgement, check)) note(path, about, gain, finding);
  }
  return [...found]
    .map(([path, { about, ...rest }]): Suggestion => ({ path, ...readingOf(path, about), ...rest }))
    .sort((a, b) => b.settles / b.minutes - a.settles / a.minutes);
}

/** A figure without which a check can't be made at all: it settles nothing by itself, and nothing is settled without it. */
const askedGain = 0.5;

/** Narrowing without settling counts this much of the share by which the margin narrows. */
const narrowing = 0.5;

/** Where a figure may turn out to lie, as shares of its range. */
const strata = [1 / 6, 1 / 2, 5 / 6];

interface Gain {
  readonly path: string;
  readonly about: number;
  readonly gain: number;
}

/** What reading each figure of a check would tell on it, at the reported setting. */
function gainsOn({ question, setting }: SetupJudgement, check: NamedCheck): Gain[] {
  const box = question.field.box.map((range, index) => setting[index] ?? range);
  const marginIn = (at: Box): Interval => marginOf(check.measure(withCare(reader(at), 'rough')));
  const before = marginIn(box);
  const entries = [...question.field.reads(check)].map((index) => question.ledger.entries[index] as Entry);
  return [...groupedByField(entries)].flatMap(([path, ends]): Gain[] => {
    const about = Math.max(...ends.map(({ index }) => Math.abs(middle(box[index] as Interval))));
    const { accuracy } = readingOf(path, about);
    if (ends.every(({ index }) => width(box[index] as Interval) <= closely(accuracy))) return [];
    const gains = strata.map((share) => gainOf(before, marginIn(readAt(box, ends, share, accuracy))));
    return [{ path, about, gain: gains.reduce((sum, gain) => sum + gain, 0) / gains.length }];
  });
}

function groupedByField(entries: readonly Entry[]): ReadonlyMap<string, readonly Entry[]> {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) {
    const path = fieldOf(entry.path);
    if (entry.role === 'uncertain' && fieldRules.has(path)) groups.set(path, [...(groups.get(path) ?? []), entry]);
  }
  return groups;
}

function fieldOf(path: string): string {
  return path.split('.adjustable.')[0] ?? path;
}

/** The box once a figure was read at a share of its range. */
function readAt(box: Box, ends: readonly Entry[], share: number, accuracy: number): Box {
  return ends.reduce((read, { index }) => {
    const range = box[index] as Interval;
    const value = range.low + share * width(range);
    const low = Math.max(range.low, value - accuracy);
    return withRange(read, index, { low, high: Math.min(range.high, value + accuracy) });
  }, box);
}

/** 1 where a reading decides, else half of the share by which it narrows. */
function gainOf(before: Interval, after: Interval): number {
  if (after.low >= 0 || after.high < 0) return 1;
  if (!Number.isFinite(width(before))) return Number.isFinite(width(after)) ? narrowing : 0;
  return width(before) > 0 ? narrowing * Math.max(0, 1 - width(after) / width(before)) : 0;
}
