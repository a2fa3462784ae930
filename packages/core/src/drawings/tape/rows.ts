import { fieldRules } from '../../records/index.ts';
import { fieldOf } from '../../words/index.ts';
import type { TapeRow, TapeRows } from './row.ts';
import { counterpartRows, frameRows } from './rows/couplings.ts';
import { implementRows, secondRowRows } from './rows/implement.ts';
import { couplerRows } from './rows/coupler.ts';
import { shaftRows } from './rows/shaft.ts';
import { weighings } from './rows/weighing.ts';
import { carryRow, linkageRows } from './rows/linkage.ts';
import { tractorRows } from './rows/tractor.ts';
import { implementPinRows } from './rows/onePin.ts';
import { pinRows } from './rows/pins.ts';

/** Every figure that has a drawing, by its path. */
export const tapeRows: ReadonlyMap<string, TapeRows> = new Map([
  ...under('implement', {
    ...pinRows('implement'),
    ...implementPinRows,
    ...implementRows,
    ...counterpartRows,
    carryHeight: carryRow,
  }),
  ...under('tractor', { ...linkageRows, ...tractorRows }),
  ...under('implement.secondRow', { ...pinRows('secondRow'), ...secondRowRows }),
  ...under('coupler', { ...couplerRows, ...frameRows }),
  ...under('coupler.front', pinRows('coupler')),
  ...under('shaft', shaftRows),
  ...Object.entries(weighings),
]);

function under(prefix: string, fields: Readonly<Record<string, TapeRows>>): [string, TapeRows][] {
  return Object.entries(fields).map(([key, row]) => [`${prefix}.${key}`, row]);
}

/** How a figure is measured, between the reference points given or the usual ones; null for what nobody measures. */
export function rowOf(path: string, from?: string): TapeRow | null {
  const field = fieldOf(path);
  const found = tapeRows.get(field);
  if (found === undefined) return null;
  if (isRow(found)) return found;
  const usual = fieldRules.get(field)?.from?.[0] ?? '';
  return found[from ?? usual] ?? found[usual] ?? null;
}

function isRow(rows: TapeRows): rows is TapeRow {
  return 'sketch' in rows;
}
