import { catalogues } from '../catalogue/catalogue.ts';
import type { FieldSpec } from '../catalogue/fieldSpec.ts';
import { kindWords, rowKinds, type RowKind } from '../kinds.ts';
import { aliases } from './aliases.ts';
import type { Measured } from './headingUnit.ts';
import { folded, meaningOf, plainWords } from './words.ts';

/** A field that a heading may stand for, and how well the words agree [0–1]. */
export interface Candidate {
  readonly field: string;
  readonly score: number;
}

interface Entry {
  readonly field: string;
  readonly words: ReadonlySet<string>;
  readonly spec: FieldSpec;
  /** The word that tells a record below the row’s own, without which none of its fields is meant. */
  readonly mustSay: string | null;
  readonly weight: number;
}

interface Lexicon {
  /** Fields by the very words of their label, or of a key that nobody writes by chance. */
  readonly exact: ReadonlyMap<string, string>;
  /** Entries by each of their words. */
  readonly holding: ReadonlyMap<string, readonly Entry[]>;
  /** How much a word tells: the rarer, the more. */
  readonly weightOf: (word: string) => number;
}

const lexicons = new Map<RowKind, Lexicon>();

/** The field whose label or key a heading is, word for word. */
export function exactField(heading: string, dimension: Measured | null, kind: RowKind): string | null {
  const field = lexiconOf(kind).exact.get(folded(heading));
  const spec = field === undefined ? undefined : catalogues[kind].get(field);
  return spec === undefined || (dimension !== null && !measures(spec, dimension)) ? null : (field ?? null);
}

/** Fields of a kind that the words of a heading may stand for, the likeliest first. */
export function candidatesFor(words: ReadonlySet<string>, dimension: Measured | null, kind: RowKind): Candidate[] {
  const lexicon = lexiconOf(kind);
  const best = new Map<string, number>();
  const without = withoutKind(words, kind);
  for (const said of without.size === words.size ? [words] : [words, without]) {
    for (const [entry, score] of agreements(said, lexicon)) {
      if (dimension !== null && !measures(entry.spec, dimension)) continue;
      if (entry.mustSay !== null && !said.has(entry.mustSay)) continue;
      if (score > (best.get(entry.field) ?? 0)) best.set(entry.field, score);
    }
  }
  return [...best].map(([field, score]) => ({ field, score })).sort((a, b) => b.score - a.score);
}

function measures(spec: FieldSpec, dimension: Measured): boolean {
  if (spec.form === 'quantity') return spec.rule.dimension === dimension;
  if (dimension === 'money') return spec.form === 'price';
  return dimension === 'rotation' && (spec.form === 'speed' || spec.form === 'speeds');
}

/** Shared words over all words, weighted, for every entry that shares one: 1 where both say the same. */
function agreements(said: ReadonlySet<string>, { holding, weightOf }: Lexicon): Map<Entry, number> {
  const shared = new Map<Entry, number>();
  let total = 0;
  for (const word of said) {
    const weight = weightOf(word);
    total += weight;
    for (const entry of holding.get(word) ?? []) shared.set(entry, (shared.get(entry) ?? 0) + weight);
  }
  for (const [entry, weight] of shared) shared.set(entry, (2 * weight) / (total + entry.weight));
  return shared;
}

function lexiconOf(kind: RowKind): Lexicon {
  const known = lexicons.get(kind);
  if (known !== undefined) return known;
  const texts = [...catalogues[kind]].flatMap(([field, spec]) =>
    [spec.label, field, ...(aliases[kind][field] ?? [])]
      .map((text) => ({ field, spec, words: meaningOf(text), mustSay: wordBelow(field) }))
      .filter(({ words }) => words.size > 0),
  );
  const weightOf = rarity(texts);
  const holding = new Map<string, Entry[]>();
  for (const text of texts) {
    const entry = { ...text, weight: [...text.words].reduce((sum, word) => sum + weightOf(word), 0) };
    for (const word of text.words) holding.set(word, [...(holding.get(word) ?? []), entry]);
  }
  const lexicon = { exact: exactTexts(kind), holding, weightOf };
  lexicons.set(kind, lexicon);
  return lexicon;
}

function exactTexts(kind: RowKind): ReadonlyMap<string, string> {
  const texts = [...catalogues[kind]].flatMap(([field, { label }]) =>
    [label, ...(/[A-Z.]/.test(field) ? [field] : [])].map((text) => [folded(text), field] as const),
  );
  return new Map(texts.reverse());
}

const wordsBelow: Readonly<Record<string, string>> = { secondRow: 'secondrow', front: 'front' };

function wordBelow(field: string): string | null {
  return wordsBelow[field.slice(0, Math.max(0, field.indexOf('.')))] ?? null;
}

/** A word that is in every field tells little; one that nobody knows tells that something else is meant. */
function rarity(entries: readonly Pick<Entry, 'field' | 'words'>[]): (word: string) => number {
  const fieldsOf = new Map<string, Set<string>>();
  for (const { field, words } of entries) {
    for (const word of words) fieldsOf.set(word, (fieldsOf.get(word) ?? new Set()).add(field));
  }
  const all = new Set(entries.map(({ field }) => field)).size;
  return (word) => Math.log(1 + all / (fieldsOf.get(word)?.size ?? 2));
}

const wordsOfKind = new Map<RowKind, ReadonlySet<string>>(
  rowKinds.map((kind) => [kind, new Set(kindWords[kind].flatMap((word) => [...meaningOf(word), ...plainWords(word)]))]),
);

/** A heading may name the kind of its sheet, or leave it out. */
function withoutKind(words: ReadonlySet<string>, kind: RowKind): ReadonlySet<string> {
  const rest = new Set([...words].filter((word) => wordsOfKind.get(kind)?.has(word) !== true));
  return rest.size === 0 ? words : rest;
}
