import { usePreferences } from '../../app/preferences.ts';
import { fieldName, valueWords } from '../history/valueWords.ts';
import { kindWords } from './kinds.ts';
import type { Answered, Change } from './recordTypes.ts';
import type { RecordDesk } from './useRecord.ts';

/** Somebody was first: what one wanted beside how it stands now, and which of them shall hold. Nothing is lost meanwhile. */
export function MeetingNote({ desk: { record, meeting, settle } }: { readonly desk: RecordDesk }) {
  const { system } = usePreferences();
  if (meeting === null) return null;
  const { now, change } = meeting;
  const { kind } = record;
  return (
    <div className="trouble" role="alert">
      <p>
        <b>Somebody changed this {now === null ? 'record' : kindWords[now.kind].one} meanwhile.</b> Nothing of yours was
        written yet.
      </p>
      <table className="meeting">
        <thead>
          <tr>
            <th scope="col">what</th>
            <th scope="col">yours</th>
            <th scope="col">as it stands now</th>
          </tr>
        </thead>
        <tbody>
          {wantedIn(change).map(([field, value]) => (
            <tr key={field}>
              <th scope="row">{fieldName(kind, field)}</th>
              <td>{valueWords(kind, field, value, system)}</td>
              <td>{valueWords(kind, field, standing(now, field), system)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="button-row">
        <button type="button" className="button-solid" onClick={() => settle('mine')}>
          Write mine all the same
        </button>
        <button type="button" onClick={() => settle('theirs')}>
          Leave it as it stands now
        </button>
      </p>
    </div>
  );
}

/** What a change wants, line by line. */
function wantedIn({ name, fields = {}, withdraw, pin, unpin }: Change): [string, unknown][] {
  const readings = [
    ['readings withdrawn', withdraw],
    ['readings to use', pin],
    ['readings no longer to use', unpin],
  ] as const;
  return [
    ...(name === undefined ? [] : [['name', name] as [string, unknown]]),
    ...Object.entries(fields),
    ...readings.flatMap(([what, ids]): [string, unknown][] => (ids === undefined ? [] : [[what, ids.length]])),
  ];
}

function standing(now: Answered | null, field: string): unknown {
  if (now === null) return null;
  if (field === 'name') return now.name;
  return field.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], now.fields);
}
