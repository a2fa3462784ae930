import { excerpt } from '../../../records/index.ts';
import { shownText } from '../marks.ts';
import { isTotalRow } from '../table.ts';
import type { Told } from '../cells/told.ts';
import { cellAt } from './desk.ts';
import type { Plan } from './plan.ts';

/** Why a row is none of the records: a total, the headings once more, a heading of its own, or a line beside the table. Null where it is one. */
export function strayReason(cells: readonly string[], plan: Plan): Told | null {
  const filled = cells.map((cell) => shownText(cell).trim()).filter((text) => text !== '');
  const [first = ''] = filled;
  const shown = excerpt(first);
  if (isTotalRow(filled))
    return { about: 'total', taken: 'left out', sentence: `“${shown}” is a line of totals: left out.` };
  if (isHeadings(cells, plan))
    return { about: 'heading', taken: 'left out', sentence: 'The headings once more: left out.' };
  if (hasName(cells, plan)) return onlyName(plan, filled.length, shown);
  const figures = plan.known.filter(
    ({ target }) => 'field' in target && target.field !== null && target.field !== 'note',
  );
  if (figures.some((column) => cellAt(cells, column).text !== '')) return null;
  const sentence = `“${shown}” stands in no column that is known: taken for a line beside the table and left out.`;
  return { about: 'stray', taken: 'left out', sentence };
}

function hasName(cells: readonly string[], { name, id }: Plan): boolean {
  return cellAt(cells, name).text !== '' || cellAt(cells, id).text !== '';
}

/** A text alone in a table of figures heads the rows under it, or is a remark. */
function onlyName(plan: Plan, filled: number, shown: string): Told | null {
  const others = plan.known.filter(({ target }) => target.role !== 'name' && target.role !== 'id');
  if (filled > 1 || others.length < 2 || plan.mapping.kind === 'customer') return null;
  const sentence = `“${shown}” stands alone in its row: taken for a heading and left out. Fill in any other column where it is a record.`;
  return { about: 'stray', taken: 'left out', sentence };
}

/** Rows of headings are repeated letter for letter, where a list was printed page by page or put together from several. */
function isHeadings(cells: readonly string[], { mapping }: Plan): boolean {
  let [filled, same] = [0, 0];
  mapping.columns.forEach(({ heading }, i) => {
    const text = (cells[i] ?? '').trim();
    if (heading === '' || text === '') return;
    filled += 1;
    if (heading === text || heading.endsWith(` ${text}`)) same += 1;
  });
  return filled > 1 && same >= filled * 0.6;
}
