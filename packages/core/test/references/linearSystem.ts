/**
 * Solves a square system of linear equations by elimination, the largest entry of a column brought up each time. Every
 * unknown is one column.
 */
export function solvedSystem(rows: readonly (readonly number[])[], right: readonly number[]): number[] {
  const size = right.length;
  const work = rows.map((row, i) => [...row, right[i] as number]);
  const at = (i: number, j: number): number => (work[i] as number[])[j] as number;
  for (let column = 0; column < size; column += 1) {
    let largest = column;
    for (let i = column + 1; i < size; i += 1) {
      if (Math.abs(at(i, column)) > Math.abs(at(largest, column))) largest = i;
    }
    if (at(largest, column) === 0) throw new Error('the equations do not settle every unknown');
    [work[column], work[largest]] = [work[largest] as number[], work[column] as number[]];
    for (let i = column + 1; i < size; i += 1) {
      const share = at(i, column) / at(column, column);
      for (let j = column; j <= size; j += 1) (work[i] as number[])[j] = at(i, j) - share * at(column, j);
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i -= 1) {
    let rest = at(i, size);
    for (let j = i + 1; j < size; j += 1) rest -= at(i, j) * (found[j] as number);
    found[i] = rest / at(i, i);
  }
  return found;
}
