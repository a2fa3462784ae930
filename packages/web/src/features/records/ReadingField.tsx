import { useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { FieldPicture } from './FieldPicture.tsx';
import { ReadingForm } from './ReadingForm.tsx';
import { ReadingsTable } from './ReadingsTable.tsx';
import { leafText, readingsOf, readingTaken, ruleOf } from './fieldsOf.ts';
import { readingKey, useHalfTyped } from './halfTyped.ts';
import { becauseWords, gradeWords } from './readingWords.ts';
import type { RecordDesk } from './useRecord.ts';

interface ReadingFieldProps {
  readonly desk: RecordDesk;
  readonly field: string;
  readonly isOpen: boolean;
  readonly hasPicture: boolean;
  readonly onOpen: (isOpen: boolean) => void;
}

/** One figure: the value in use on its line; opened, everything that was read of it, and a place for another reading. */
export function ReadingField({ desk, field, isOpen, hasPicture, onOpen }: ReadingFieldProps) {
  const { record } = desk;
  const [wasOpen, setWasOpen] = useState(isOpen);
  if (isOpen && !wasOpen) setWasOpen(true);
  const rule = ruleOf(record, field);
  if (rule === undefined) return null;
  const id = `field-${field}`;
  return (
    <div className={isOpen ? 'reading-field reading-field-open' : 'reading-field'}>
      <div className="reading-head">
        <button
          type="button"
          id={id}
          aria-expanded={isOpen}
          aria-controls={`${id}-readings`}
          onClick={() => onOpen(!isOpen)}
        >
          <span className="reading-name">{rule.label}</span>
          <InUseText desk={desk} field={field} />
        </button>
      </div>
      {wasOpen ? (
        <div id={`${id}-readings`} role="group" aria-labelledby={id} className="reading-open" hidden={!isOpen}>
          {hasPicture && isOpen ? <FieldPicture record={record} field={field} /> : null}
          <ReadingsTable desk={desk} field={field} rule={rule} />
          <ReadingForm desk={desk} field={field} rule={rule} />
        </div>
      ) : null}
    </div>
  );
}

/** The value in use, what it won by, and whether something stands against it. */
function InUseText({ desk: { record }, field }: Pick<ReadingFieldProps, 'desk' | 'field'>) {
  const { system } = usePreferences();
  const [typed] = useHalfTyped(readingKey(record.id, field));
  const waits = typed === undefined ? null : <b className="reading-conflict">typed, not written down</b>;
  const rule = ruleOf(record, field);
  const taken = readingTaken(record, field);
  if (rule === undefined || taken === null) return <span className="reading-none">not known yet {waits}</span>;
  const { reading, isOwn } = taken;
  const choice = isOwn ? record.inUse[field] : undefined;
  const conflicts = choice?.conflicts.length ?? 0;
  const others = readingsOf(record, field).length - 1;
  return (
    <span className="reading-used">
      <span className="reading-value">
        <Figures text={leafText(reading.leaf, rule, system)} />
      </span>
      <span className="reading-why">
        {!isOwn ? `from ${record.over?.name ?? 'what it stands on'}` : gradeWords[reading.grade]}
        {choice === undefined || others < 1 ? '' : `, ${becauseWords[choice.because]} of ${others + 1}`}
      </span>
      {waits}
      {conflicts > 0 ? <b className="reading-conflict">readings don’t agree</b> : null}
    </span>
  );
}
