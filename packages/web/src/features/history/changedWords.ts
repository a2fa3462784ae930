import type { Line, Named } from './historyTypes.ts';
import { fieldName } from './valueWords.ts';

/** Names of fields that a heading says; of more, how many. */
const namedAtMost = 3;

/**
 * What a group did to a record, in a heading: `Harl rake was made`, `Harl rake was changed: mast height, note`.
 *
 * @param named the first record that it changed
 * @param lines what changed, in that record and in others
 * @param others how many other records the group changed
 */
export function changedWords({ name, kind }: Named, lines: readonly Line[], others: number): string {
  const records = [...new Set(lines.map(({ recordId }) => recordId))];
  const turns = new Set(records.map((id) => turnOf(lines.filter(({ recordId }) => recordId === id))));
  const [first = 'changed'] = turns;
  const turn = turns.size === 1 ? first : 'changed';
  if (others > 0) return `${name} and ${others === 1 ? 'another' : `${others} more`} were ${turn}`;
  if (turn !== 'changed') return `${name} was ${turn}`;
  const fields = [...new Set(lines.map((line) => fieldName(kind, fieldIn(line))))];
  const more = fields.length - namedAtMost;
  const said = more > 1 ? [...fields.slice(0, namedAtMost), `${more} more`] : fields;
  return `${name} was changed: ${said.join(', ')}`;
}

function turnOf(lines: readonly Line[]): string {
  const ofRecord = lines.filter(({ what }) => what === 'record');
  if (ofRecord.some(({ key }) => key === 'created')) return 'made';
  const removal = ofRecord.filter(({ key }) => key === 'removedAt').at(-1);
  if (removal === undefined) return 'changed';
  return removal.after === null ? 'brought back' : 'removed';
}

/** The field that a line is about; a reading says its own. */
function fieldIn({ what, key, after }: Line): string {
  const of = what === 'reading' ? (after as { readonly field?: unknown } | null)?.field : key;
  return typeof of === 'string' ? of : key;
}
