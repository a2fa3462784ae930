import { bold, settings, span } from '../block.ts';
import type { ReadingRow } from '../content/readings.ts';
import type { Press } from '../press.ts';
import { Table, textCell } from './table.ts';

const columns = [
  { heading: 'Measured, and between which points', width: 83.5 },
  { heading: 'Value', width: 35 },
  { heading: 'Give or take', width: 23.5 },
  { heading: 'How, by whom, when', width: 44 },
] as const;

/** The readings that say how they were taken; a row that was taken like the one over it says so. */
export function readingTable(press: Press, readings: readonly ReadingRow[]): Table {
  const { small } = settings;
  const rows = readings.map(({ label, points, value, giveOrTake, how }, i) => {
    const taken = how === readings[i - 1]?.how ? 'as above' : how;
    const [first, ...others] = columns;
    return [
      textCell(press, [bold(`${label}. `, small), span(points, small)], first.width),
      ...[value, giveOrTake, taken].map((text, j) => textCell(press, [span(text, small)], others[j]?.width ?? 0)),
    ];
  });
  return new Table(press, columns, rows);
}
