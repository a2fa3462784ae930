import { shownText, type Mapping, type Table } from '@hitchwright/core/exchange';

/** Texts that show what a column holds, rows that are looked through for them, and the longest of them. */
const most = 3;
const rowsLookedAt = 300;
const longest = 60;

/** The first few different texts of each column, by its letter: enough to see what it holds. */
export function samplesOf(table: Table, mapping: Mapping | null): Record<string, string[]> {
  if (mapping === null) return {};
  const rows = table.slice(mapping.firstRow, mapping.firstRow + rowsLookedAt);
  return Object.fromEntries(mapping.columns.map(({ letter }, index) => [letter, firstTexts(rows, index)]));
}

function firstTexts(rows: Table, index: number): string[] {
  const texts = new Set<string>();
  for (const row of rows) {
    const text = shownText(row[index] ?? '').trim();
    if (text !== '') texts.add(text.length > longest ? `${text.slice(0, longest - 1)}…` : text);
    if (texts.size === most) break;
  }
  return [...texts];
}
