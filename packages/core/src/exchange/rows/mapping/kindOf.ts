import { findHeader } from '../headings/headerRow.ts';
import { folded } from '../headings/words.ts';
import { cellOf } from '../marks.ts';
import { kindWords, rowKinds, type RowKind } from '../kinds.ts';
import type { Table } from '../table.ts';
import { statedIn } from './statedUnits.ts';

/** How well a table fits a kind of record: about one for each column that is known. */
export interface KindScore {
  readonly kind: RowKind;
  readonly score: number;
}

const kindOfWord: ReadonlyMap<string, RowKind> = new Map(
  rowKinds.flatMap((kind) => kindWords[kind].map((word) => [folded(word), kind] as const)),
);

/** The kind that a text names by itself, such as `Quick hitch`; null where it names none. */
export function kindNamed(text: string): RowKind | null {
  return kindOfWord.get(folded(text)) ?? null;
}

/** What the name of the kind in a title or in the sheet’s name is worth. */
const named = 1.5;

/** How well a table fits each kind, the best first. */
export function kindScores(table: Table, sheetName: string): KindScore[] {
  return rowKinds
    .map((kind): KindScore => {
      const header = findHeader(table, [kind]);
      if (header === null) return { kind, score: 0 };
      const above = table.slice(0, header.rows[0]).filter((row, i) => statedIn(row, i).length === 0);
      const titles = above.map((row) => row.join(' '));
      const nameHeading = header.guesses.some(
        ({ target }, i) => target.role === 'name' && kindNamed(header.headings[i] ?? '') === kind,
      )
        ? 1
        : 0;
      return {
        kind,
        score: header.score + nameHeading + ([sheetName, ...titles].some((text) => tells(text, kind)) ? named : 0),
      };
    })
    .sort((a, b) => b.score - a.score);
}

/** Whether a title speaks of a kind and of no other. */
function tells(text: string, kind: RowKind): boolean {
  const said = ` ${folded(text.slice(0, 200))} `;
  const speaksOf = (each: RowKind): boolean =>
    [...kindOfWord].some(([word, of]) => of === each && said.includes(` ${word} `));
  return speaksOf(kind) && rowKinds.every((other) => other === kind || !speaksOf(other));
}

/** The kinds that a column names, where nearly all of its cells name one; none otherwise. */
export function kindsInColumn(table: Table, firstRow: number, index: number): RowKind[] {
  const texts = table
    .slice(firstRow)
    .map((row) => cellOf(row[index] ?? '').text)
    .filter((text) => text !== '');
  const kinds = texts.map(kindNamed);
  const known = kinds.filter((kind) => kind !== null);
  return known.length === 0 || known.length < texts.length * 0.7 ? [] : rowKinds.filter((kind) => known.includes(kind));
}
