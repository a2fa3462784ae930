import { catalogues } from '../catalogue/catalogue.ts';
import { kindWords, rowKinds, type RowKind } from '../kinds.ts';
import type { Companion, Target } from '../mapping/target.ts';
import { commonAliases } from './aliases.ts';
import { splitHeading, wordOfDimension, type WrittenUnit } from './headingUnit.ts';
import { candidatesFor, exactField, type Candidate } from './match.ts';
import { withoutPoints } from './points.ts';
import { folded, foldedSet, meaningOf } from './words.ts';

/** What one heading was taken for. */
export interface HeadingGuess {
  readonly target: Target;
  /** How sure that is [0–1]. */
  readonly confidence: number;
  readonly unit: WrittenUnit | null;
  /** Fields that it may stand for as well as any other, where nobody can tell. */
  readonly rivals: readonly string[];
}

/** The least agreement of words that counts, and how far the second best has to be behind. */
const enough = 0.78;
const apart = 0.06;

/** How sure a heading is that says the same in other words; only the very words of a label are surer. */
const byWords = 0.97;
/** The very words of a label; as sure as a person’s choice no heading is. */
const exactly = 0.99;

const nothing: HeadingGuess = { target: { role: 'ignore' }, confidence: 0, unit: null, rivals: [] };

/** How a column that is kept as it stands is headed in a table that was written here. */
const extraHeading = /^extra: \S/;

/** What a heading stands for in a sheet of one kind of record. */
export function guessHeading(heading: string, kind: RowKind): HeadingGuess {
  const text = heading.trim().slice(0, 120);
  if (text === '') return nothing;
  if (extraHeading.test(text)) return guessed({ role: 'extra' }, exactly);
  const split = splitHeading(text);
  return (
    commonGuess(split.text, kind) ??
    companionGuess(text, kind) ??
    fieldGuess(withoutPoints(split.text), split.unit, kind)
  );
}

const rowRoles = ['who', 'when', 'method', 'tool', 'source', 'grade', 'unit'] as const;

/** Headings that every sheet may have, by their plain words. */
const common: ReadonlyMap<string, { readonly target: Target; readonly confidence: number }> = new Map(
  [
    ...rowRoles.map((role) => ({ words: commonAliases[role], target: { role, field: null }, confidence: 0.9 })),
    { words: commonAliases.id, target: { role: 'id' }, confidence: 0.9 } as const,
    { words: commonAliases.recordKind, target: { role: 'recordKind' }, confidence: 0.9 } as const,
    { words: commonAliases.name, target: { role: 'name' }, confidence: 0.9 } as const,
    { words: ['name'], target: { role: 'name' }, confidence: exactly } as const,
  ].flatMap(({ words, target, confidence }) => words.map((word) => [folded(word), { target, confidence }] as const)),
);

const namesOfKind = new Map<RowKind, ReadonlySet<string>>(
  rowKinds.map((kind) => [kind, foldedSet([...nameWords(kind), `${kind} name`, `${kind} model`])]),
);

/** A column headed `Tractor` holds names of tractors; but one headed `Weight` holds what something weighs. */
function nameWords(kind: RowKind): readonly string[] {
  return kindWords[kind].filter((word) => meaningOf(word).size > 1 || !meaningOf(word).has('mass'));
}

/** Headings that every sheet may have are known by their very words. */
function commonGuess(text: string, kind: RowKind): HeadingGuess | null {
  const said = folded(text);
  if (namesOfKind.get(kind)?.has(said) === true) return guessed({ role: 'name' }, 0.95);
  const found = common.get(said);
  return found === undefined ? null : guessed(found.target, found.confidence);
}

function guessed(target: Target, confidence: number): HeadingGuess {
  return { ...nothing, target, confidence };
}

const companionWords: readonly (readonly [RegExp, Companion])[] = [
  [/^(?:±|\+\s*\/?\s*-|plus minus|plus or minus|tol\.?|tolerance|accuracy)$/i, 'plusMinus'],
  [/^(?:measured (?:from|between|to)|reference(?: points?)?|from|between)$/i, 'from'],
  [/^(?:measured by|by|who)$/i, 'who'],
  [/^(?:measured on|date|when)$/i, 'when'],
  [/^(?:method|how measured)$/i, 'method'],
  [/^tool$/i, 'tool'],
  [/^source$/i, 'source'],
  [/^(?:notes?|remarks?|comments?)$/i, 'note'],
  [/^grade$/i, 'grade'],
  [/^(?:units?|uom)$/i, 'unit'],
  [/^usual by$/i, 'default'],
];

/** `mast height: note`, `mast height ±`, `mast height (tol)`: what stands beside a field. */
function companionGuess(text: string, kind: RowKind): HeadingGuess | null {
  const split =
    /^(.+):\s*([^:]+)$/.exec(text) ??
    /^(.+?)\s*[([]([^()[\]]+)[)\]]$/.exec(text) ??
    /^(.+?)[\s,]+(±|\+\s*\/?\s*-|tol\.?|tolerance|units?|uom|notes?|remarks?|comments?|source)$/i.exec(text);
  const [, base = '', words = ''] = split ?? [];
  const role = companionWords.find(([known]) => known.test(words.trim()))?.[1];
  if (role === undefined) return null;
  const { target, confidence } = fieldGuess(base, null, kind);
  return target.role === 'field' ? guessed({ role, field: target.field }, confidence) : null;
}

/** The field whose words agree, perhaps one end of it. */
function fieldGuess(text: string, unit: WrittenUnit | null, kind: RowKind): HeadingGuess {
  const words = new Set(meaningOf(text));
  const dimension = unit?.dimension ?? null;
  const exact = exactField(text, dimension, kind);
  if (exact !== null) return { target: { role: 'field', field: exact }, confidence: exactly, unit, rivals: [] };
  const implied = dimension === null ? undefined : wordOfDimension[dimension];
  const whole = candidatesFor(words, dimension, kind);
  const fuller = implied === undefined ? [] : candidatesFor(new Set([...words, implied]), dimension, kind);
  const direct = settled(better(whole, fuller), 'field', unit, kind);
  if (direct.confidence === byWords || direct.rivals.length > 0) return direct;
  const end = (['min', 'max'] as const).find((word) => words.has(word));
  if (end === undefined) return direct;
  const rest = new Set([...words].filter((word) => word !== end));
  const ofEnd = settled(candidatesFor(rest, dimension, kind), end === 'min' ? 'low' : 'high', unit, kind);
  return ofEnd.confidence > direct.confidence ? ofEnd : direct;
}

function better(a: readonly Candidate[], b: readonly Candidate[]): readonly Candidate[] {
  return (b[0]?.score ?? 0) > (a[0]?.score ?? 0) ? b : a;
}

function settled(
  candidates: readonly Candidate[],
  role: 'field' | 'low' | 'high',
  unit: WrittenUnit | null,
  kind: RowKind,
): HeadingGuess {
  const [first] = candidates;
  if (first === undefined || first.score < enough) return { ...nothing, unit };
  if (role !== 'field' && catalogues[kind].get(first.field)?.form !== 'quantity') return { ...nothing, unit };
  const near = candidates.filter(({ score }) => first.score - score < (first.score > 1 - 1e-9 ? 1e-9 : apart));
  if (near.length > 1) return { ...nothing, unit, rivals: near.map(({ field }) => field) };
  return { target: { role, field: first.field }, confidence: Math.min(byWords, first.score), unit, rivals: [] };
}
