import { visible } from './visible.ts';

const lineLength = 78;

/** Words set to the width of a terminal, indented. */
export function wrapped(text: string, indent: number): string[] {
  const lines: string[] = [''];
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1] as string;
    if (last !== '' && last.length + word.length + 1 > lineLength - indent) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines.map((line) => ' '.repeat(indent) + line);
}

/** Entries of a list, each with its dash. */
export function entries(texts: readonly string[]): string[] {
  return texts.flatMap((text) =>
    wrapped(visible(text), 4).map((line, i) => (i === 0 ? `  - ${line.trimStart()}` : line)),
  );
}
