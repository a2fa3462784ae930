import { inUseRule, readValue, type FieldRule } from '@hitchwright/core/records';
import { printBoth } from '@hitchwright/core/units';
import { toolWords } from '@hitchwright/core/words';
import { dayText } from '../../app/day.ts';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { pointName } from '../dimensions/plainChoices.ts';
import { leafText, pathIn, readingsOf, readingTaken } from './fieldsOf.ts';
import { gradeWords } from './readingWords.ts';
import type { Reading } from './recordTypes.ts';
import type { RecordDesk } from './useRecord.ts';

interface ReadingsTableProps {
  readonly desk: RecordDesk;
  readonly field: string;
  readonly rule: FieldRule;
}

/** Everything that was read of a field, side by side; which is in use is seen, and can be chosen. */
export function ReadingsTable({ desk, field, rule }: ReadingsTableProps) {
  const { record } = desk;
  const { system } = usePreferences();
  const readings = readingsOf(record, field);
  const choice = record.inUse[field];
  const above = record.over === null || record.over === undefined ? [] : readingsOf(record.over, field).slice(0, 1);
  if (readings.length === 0 && above.length === 0) return null;
  const taken = readingTaken(record, field);
  const worst = Math.max(0, ...(choice?.conflicts.map(({ apartBy }) => apartBy) ?? []));
  return (
    <div className="readings">
      {worst === 0 ? null : (
        <p className="reading-conflict" role="note">
          These readings don’t agree: their ranges are <Figures text={printBoth(worst, rule.dimension, { system })} />{' '}
          apart.
        </p>
      )}
      <ul>
        {readings.map((reading) => (
          <ReadingLine
            key={reading.id}
            {...{ desk, field, rule, reading }}
            isUsed={taken?.reading.id === reading.id}
            isAlone={readings.length === 1}
          />
        ))}
        {above.map((reading) => (
          <li key={reading.id} className="reading-line">
            <ReadingSays reading={reading} field={field} rule={rule} desk={desk} />
            <span className="reading-mark">
              {taken?.reading.id === reading.id ? 'in use, from' : 'of'} {record.over?.name ?? 'what it stands on'}
            </span>
          </li>
        ))}
      </ul>
      <details className="reading-rule">
        <summary>Which reading is in use?</summary>
        <p>{inUseRule}</p>
      </details>
    </div>
  );
}

interface LineProps extends ReadingsTableProps {
  readonly reading: Reading;
  readonly isUsed: boolean;
  readonly isAlone: boolean;
}

function ReadingLine({ desk, field, rule, reading, isUsed, isAlone }: LineProps) {
  const { change, isWriting } = desk;
  const isPinned = reading.pinnedAt !== null;
  return (
    <li className={isUsed ? 'reading-line reading-line-used' : 'reading-line'}>
      <ReadingSays {...{ desk, field, rule, reading }} />
      {isUsed ? <b className="reading-mark">in use{isPinned ? ', chosen' : ''}</b> : null}
      <span className="reading-actions">
        {isPinned ? (
          <button type="button" disabled={isWriting} onClick={() => void change({ unpin: [reading.id] })}>
            Let the rule choose
          </button>
        ) : isAlone ? null : (
          <button type="button" disabled={isWriting} onClick={() => void change({ pin: [reading.id] })}>
            {isUsed ? 'Always use this one' : 'Use this one'}
          </button>
        )}
        <button type="button" disabled={isWriting} onClick={() => void change({ withdraw: [reading.id] })}>
          Withdraw
        </button>
      </span>
    </li>
  );
}

/** What a reading says, between which points, and who read it how, when and from what. */
function ReadingSays({ desk, field, rule, reading }: ReadingsTableProps & { readonly reading: Reading }) {
  const { system } = usePreferences();
  const { leaf, grade, who, readAt, enteredAt, enteredBy, photoId } = reading;
  const { from, tool, source, note } = readValue(leaf, rule, '', system).value?.provenance ?? {};
  const path = pathIn(desk.record, field);
  const says = [
    from === undefined ? null : pointName(path, from),
    tool === undefined ? null : toolName(tool),
    who === null ? null : `read by ${who}`,
    readAt === null ? null : dayText(readAt),
    source === undefined ? null : `source: ${source}`,
    note,
    who === null ? `written by ${enteredBy} on ${dayText(enteredAt)}` : null,
  ];
  return (
    <span className="reading-says">
      <b>
        <Figures text={leafText(leaf, rule, system)} />
      </b>
      <span>
        {gradeWords[grade]}
        {asTyped(leaf)}
        {says.filter((one) => one !== null && one !== undefined).map((one) => ` · ${one}`)}
      </span>
      {photoId === null ? null : (
        <a href={`api/photos/${photoId}`} target="_blank" rel="noreferrer">
          <img src={`api/photos/${photoId}`} alt={`Photo of the ${rule.label}`} loading="lazy" />
        </a>
      )}
    </span>
  );
}

/** A tool by its name, or whatever else was written there. */
function toolName(tool: string): string {
  return Object.entries(toolWords).find(([name]) => name === tool)?.[1] ?? tool;
}

/** The text that was typed, where it says more than the figure does. */
function asTyped(leaf: unknown): string {
  const typed = typeof leaf === 'string' ? leaf : (leaf as { value?: unknown } | null)?.value;
  return typeof typed === 'string' ? `, typed “${typed}”` : '';
}
