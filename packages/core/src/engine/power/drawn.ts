import { soils, type DraftRow } from '../../tables/index.ts';
import type { Bound } from '../../records/index.ts';
import { draft } from './drawbar.ts';

/**
 * The pull that a kind of work may ask for, from the easiest build of it in the lightest soil to the hardest in the heaviest,
 * with the spread of the table on top.
 *
 * @param rows a row for each build [rows]
 * @param speed forward speed [km/h]
 * @param width what the rows count by [m, tools or rows]
 * @param depth working depth, left alone by rows that count none [cm]
 * @returns least and most pull [N]
 * @source textbook-draft; ASABE D497 from memory
 */
export function draftRange(rows: readonly DraftRow[], speed: number, width: number, depth: number): Bound {
  const ranges = rows.map((row): Bound => {
    const factors = factorsOf(row);
    const terms = { a: row.a.value, b: row.b.value, c: row.c.value };
    const pull = (factor: number): number => draft(terms, factor, speed, width, row.byDepth ? depth : 1);
    return {
      low: pull(Math.min(...factors)) * (1 - row.spread.value),
      high: pull(Math.max(...factors)) * (1 + row.spread.value),
    };
  });
  return { low: Math.min(...ranges.map(({ low }) => low)), high: Math.max(...ranges.map(({ high }) => high)) };
}

/** Every factor that a source gives a soil. */
function factorsOf({ soil, otherSoil }: DraftRow): number[] {
  return soils.flatMap((one) => [soil[one].value, otherSoil[one]?.value ?? soil[one].value]);
}
