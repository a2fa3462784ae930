import { emptyWords, synonyms } from './synonyms.ts';

/** Endings that look like a plural and are none. */
const notPlural = /^(?:ins|kgs|wds|lbs|cms|mms|rops)$|(?:ss|us|is)$/;

/** The word used here for every phrase that people use. */
const wordOfPhrase: ReadonlyMap<string, string> = new Map(
  Object.entries(synonyms).flatMap(([word, phrases]) =>
    phrases.map((phrase) => [plainWords(phrase).join(' '), word] as const),
  ),
);
const longestPhrase = Math.max(...[...wordOfPhrase.keys()].map((phrase) => phrase.split(' ').length));

/** A heading or label as the plain words it is made of, small, without plurals, cut at every sign and where a small letter meets a capital. */
export function plainWords(text: string): string[] {
  return text
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[’']s\b/g, '')
    .replace(/[^\p{L}\p{N}⌀]+/gu, ' ')
    .trim()
    .split(' ')
    .filter((word) => word !== '')
    .map(withoutPlural);
}

function withoutPlural(word: string): string {
  if (word.length < 4 || !word.endsWith('s') || notPlural.test(word)) return word;
  return /(sh|ch|x)es$/.test(word) ? word.slice(0, -2) : word.slice(0, -1);
}

/** The words that a heading says, in the words used here: each once, without the empty ones. */
export function meaningOf(text: string): ReadonlySet<string> {
  const words = plainWords(text);
  const said = new Set<string>();
  for (let at = 0; at < words.length;) {
    const { word, taken } = phraseAt(words, at);
    if (!emptyWords.has(word)) said.add(word);
    at += taken;
  }
  return said;
}

/** The longest phrase known that starts at a word; the word itself where none does. */
function phraseAt(words: readonly string[], at: number): { word: string; taken: number } {
  for (let taken = Math.min(longestPhrase, words.length - at); taken > 0; taken -= 1) {
    const word = wordOfPhrase.get(words.slice(at, at + taken).join(' '));
    if (word !== undefined) return { word, taken };
  }
  return { word: words[at] as string, taken: 1 };
}

/** A text by its plain words, so that two ways to write the same are equal. */
export function folded(text: string): string {
  return plainWords(text).join(' ');
}

/** Texts by their plain words, to ask whether one is among them. */
export function foldedSet(texts: readonly string[]): ReadonlySet<string> {
  return new Set(texts.map(folded));
}
