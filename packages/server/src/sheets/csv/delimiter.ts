/** Signs that set columns apart, the commonest first. */
const delimiters = [',', ';', '\t', '|'] as const;

/** One of `delimiters`. */
export type Delimiter = (typeof delimiters)[number];

/** Lines to look at. */
const sampleLines = 60;
const sampleSize = 100_000;

/** What a sign is called in a sentence. */
export const delimiterNames: Readonly<Record<Delimiter, string>> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  '|': 'upright lines',
};

/** A first line `sep=;`, as some programs write it. */
export const separatorLine = /^sep=([,;\t|])\r?\n/i;

/** The sign that sets the columns of a text apart: the one that most lines have, and as often. */
export function delimiterOf(text: string): Delimiter {
  const said = separatorLine.exec(text)?.[1] as Delimiter | undefined;
  if (said !== undefined) return said;
  const start = text.slice(0, sampleSize);
  const scores = delimiters.map((delimiter) => evenness(countsIn(start, delimiter)));
  const best = Math.max(...scores);
  return best === 0 ? ',' : (delimiters[scores.indexOf(best)] ?? ',');
}

/** How often a sign stands in each line, but for those inside quotes that a field starts with. */
function countsIn(text: string, delimiter: string): number[] {
  const counts: number[] = [];
  let count = 0;
  let isFieldStart = true;
  let isQuoted = false;
  for (let at = 0; at < text.length && counts.length < sampleLines; at += 1) {
    const sign = text[at];
    if (isQuoted) isQuoted = sign !== '"';
    else if (sign === '"' && isFieldStart) isQuoted = true;
    else if (sign === '\n') {
      counts.push(count);
      count = 0;
    } else if (sign === delimiter) count += 1;
    isFieldStart = sign === delimiter || sign === '\n';
  }
  if (count > 0) counts.push(count);
  return counts;
}

/** The share of lines that have a sign equally often, weighed by how often: 0 where none has it. */
function evenness(counts: readonly number[]): number {
  const having = counts.filter((count) => count > 0);
  const tally = new Map<number, number>();
  for (const count of having) tally.set(count, (tally.get(count) ?? 0) + 1);
  const [usual = 0, lines = 0] =
    [...tally].sort((a, b) => b[1] * Math.log(1 + b[0]) - a[1] * Math.log(1 + a[0]))[0] ?? [];
  return (lines / Math.max(1, counts.length)) * Math.log(1 + usual) + having.length / Math.max(1, counts.length) / 100;
}
