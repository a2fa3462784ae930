import { useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { kinds, kindWords, type Kind } from '../records/kinds.ts';
import { addressIn } from './addressIn.ts';

/** What stands on another record is no row of a sheet. */
const onlyAsJson: readonly Kind[] = ['machine', 'state'];

/** Everything as a file, or one kind as a sheet. */
export function Downloads() {
  return (
    <section className="keep-part" aria-labelledby="keep-take">
      <h2 id="keep-take">Take everything elsewhere</h2>
      <p>
        A backup is made while the yard is in use, and read again from end to end before you get it. Keep it on another
        machine. The archive holds the same as lines of text, which any other program can read.
      </p>
      <p className="button-row">
        <a className="button button-solid" href={addressIn('api/backup')} download>
          Download a backup
        </a>
        <a className="button" href={addressIn('api/archive')} download>
          Download everything as an archive
        </a>
      </p>
      <OneKind />
    </section>
  );
}

function OneKind() {
  const { system } = usePreferences();
  const [kind, setKind] = useState<Kind>('implement');
  const file = (format: string): string => addressIn(`api/export/${kind}?format=${format}&units=${system}`);
  const isSheet = !onlyAsJson.includes(kind);
  return (
    <div className="keep-kind">
      <label>
        <span>One kind of record</span>
        <select value={kind} onChange={({ target }) => setKind(target.value as Kind)}>
          {kinds.map((one) => (
            <option key={one} value={one}>
              {kindWords[one].many}
            </option>
          ))}
        </select>
      </label>
      <p className="button-row">
        {isSheet ? (
          <>
            <a className="button" href={file('xlsx')} download>
              as XLSX
            </a>
            <a className="button" href={file('csv')} download>
              as CSV
            </a>
          </>
        ) : null}
        <a className="button" href={file('json')} download>
          as JSON
        </a>
      </p>
      <p className="keep-note">
        {isSheet
          ? 'A sheet has the figures in use and reads back to the same records; JSON has every reading.'
          : 'These stand on other records, so that a sheet of them would say too little.'}
      </p>
    </div>
  );
}
