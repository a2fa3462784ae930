import { useQuery } from '@tanstack/react-query';
import { usePreferences } from '../../app/preferences.ts';
import { Trouble } from '../../app/server/Trouble.tsx';
import { said, yard } from '../../app/server/yard.ts';
import { Figures } from '../../marks/Figures.tsx';
import { fieldName, valueWords } from '../history/valueWords.ts';
import { readingInUse } from '../records/fieldsOf.ts';
import { kindWords } from '../records/kinds.ts';
import { gradeWords } from '../records/readingWords.ts';
import type { Answered, Reading } from '../records/recordTypes.ts';
import { atPath } from '@hitchwright/core/records';
import { usesOf } from './answerTypes.ts';

/** What an answer rests on, record by record, as it stands today. */
export function RestsOn({ id, revision }: { readonly id: string; readonly revision: number }) {
  const asked = useQuery({
    queryKey: ['answer', id, 'uses', revision],
    queryFn: ({ signal }) => usesOf(id, signal),
  });
  const uses = asked.data?.items ?? [];
  const records = [...new Set(uses.map(({ recordId }) => recordId))];
  return (
    <section aria-labelledby="ans-rests">
      <h2 id="ans-rests" className="ans-title">
        What it rests on
      </h2>
      <Trouble problem={asked.error} onAgain={() => void asked.refetch()} />
      {asked.isSuccess && records.length === 0 ? <p className="ans-part">On nothing that is still there.</p> : null}
      {records.map((recordId) => (
        <UsedRecord
          key={recordId}
          recordId={recordId}
          fields={uses.flatMap((use) => (use.recordId === recordId && use.field !== '' ? [use.field] : []))}
        />
      ))}
    </section>
  );
}

interface UsedRecordProps {
  readonly recordId: string;
  readonly fields: readonly string[];
}

function UsedRecord({ recordId, fields }: UsedRecordProps) {
  const asked = useQuery({
    queryKey: ['record', recordId],
    queryFn: (): Promise<Answered> =>
      said(yard.records[':id'].$get({ param: { id: recordId }, query: { over: 'true', removed: 'true' } })),
  });
  if (asked.data === undefined)
    return <div className="ans-part">{asked.error === null ? 'Looking…' : <Trouble problem={asked.error} />}</div>;
  const record = asked.data;
  return (
    <details className="ans-rests">
      <summary>
        <span className="ans-rests-name">{record.name}</span>
        <span className="ans-when">
          {kindWords[record.kind].one}
          {record.removedAt === null ? '' : ', removed'}
        </span>
      </summary>
      <p>
        <a className="ans-link" href={`#record=${encodeURIComponent(recordId)}`}>
          Open the record
        </a>
      </p>
      <dl className="ans-uses">
        {fields.map((field) => (
          <UsedField key={field} record={record} field={field} />
        ))}
      </dl>
    </details>
  );
}

/** A field that comes from what the record stands on is told there. */
function UsedField({ record, field }: { readonly record: Answered; readonly field: string }) {
  const { system } = usePreferences();
  const reading = readingInUse(record, field);
  const value = reading?.leaf ?? atPath(record.fields, field);
  if (value === undefined || value === null) return null;
  return (
    <div>
      <dt>{fieldName(record.kind, field)}</dt>
      <dd>
        <Figures text={valueWords(record.kind, field, value, system)} />
        {reading === null ? null : <span className="ans-when"> {sourceText(reading)}</span>}
      </dd>
    </div>
  );
}

function sourceText({ grade, who, readAt }: Reading): string {
  const parts = [
    gradeWords[grade],
    who === null ? '' : `by ${who}`,
    readAt === null ? '' : `on ${readAt.slice(0, 10)}`,
  ];
  return `(${parts.filter((part) => part !== '').join(' ')})`;
}
