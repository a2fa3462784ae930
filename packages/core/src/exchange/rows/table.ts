/** A sheet as texts, row by row as shown; rows may be ragged. */
export type Table = readonly (readonly string[])[];

/** The letters of a column, counted from nought: 0 is A, 26 is AA. */
export function columnLetter(index: number): string {
  const rest = Math.floor(index / 26);
  return (rest === 0 ? '' : columnLetter(rest - 1)) + String.fromCharCode(65 + (index % 26));
}

/** Whether nothing is written in a row. */
export function isBlankRow(row: readonly string[]): boolean {
  return row.every((cell) => cell.trim() === '');
}

/** The widest row's count of cells. */
export function widthOf(table: Table): number {
  return table.reduce((widest, row) => Math.max(widest, row.length), 0);
}

const total =
  /^(?:grand |sub ?-?)?totals?(?: (?:of|for|all|weight|count|qty|number)\b.*)?:?$|^(?:sum|average|mean|count|overall)(?: of .*)?:?$/i;

/** Whether a row adds up the others: its first text says so. */
export function isTotalRow(row: readonly string[]): boolean {
  return total.test((row.find((cell) => cell.trim() !== '') ?? '').trim());
}
