import type { Finding } from '@hitchwright/core/hookup';
import type { Setup } from '@hitchwright/core/records';
import { sentenceOf, titleOf } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { InputTable } from './InputTable.tsx';
import { marginText } from './margin.ts';

interface FindingNoteProps {
  readonly number: number | null;
  readonly finding: Finding;
  readonly setup: Setup;
}

const standing: Readonly<Record<Finding['status'], string>> = {
  pass: 'holds',
  fail: 'misfit',
  cured: 'misfit that a part cures',
  undecided: 'open',
  notNeeded: 'not needed',
  notChecked: 'not checked',
};

/** One note: its number as on the drawing, what was found, and the figures behind it on demand. */
export function FindingNote({ number, finding, setup }: FindingNoteProps) {
  const { system } = usePreferences();
  const margin = marginText(finding, system);
  return (
    <li className={`finding finding-${finding.status}`} id={`note-${finding.id}`}>
      {number === null ? <span /> : <Balloon number={number} />}
      <div>
        <h3 className="finding-title">
          {titleOf(finding)}
          <span className="finding-standing"> {standing[finding.status]}</span>
        </h3>
        <p>
          <Figures text={sentenceOf(finding, setup, system)} />
        </p>
        {finding.drivers.length === 0 ? null : (
          <details className="inputs">
            <summary>
              Figures behind it<span className="unseen">: {titleOf(finding)}</span>
            </summary>
            {margin === null ? null : (
              <p className="margin">
                <Figures text={margin} />
              </p>
            )}
            <InputTable drivers={finding.drivers} />
          </details>
        )}
      </div>
    </li>
  );
}

function Balloon({ number }: { readonly number: number }) {
  return (
    <span className="balloon">
      <span className="unseen">Note </span>
      {number}
    </span>
  );
}
