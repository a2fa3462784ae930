import type { Finding } from '@hitchwright/core/findings';
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
  fail: 'does not hold',
  cured: 'a part cures it',
  undecided: 'open',
  notNeeded: 'not needed',
  notChecked: 'not checked',
};

/** Where pins, hooks and links don't meet the trade speaks of a misfit; a lift that ends too low is none. */
function standingOf({ id, status }: Finding): string {
  const isMeeting = id.startsWith('front.') || id.startsWith('rear.');
  if (isMeeting && status === 'fail') return 'misfit';
  return isMeeting && status === 'cured' ? 'misfit that a part cures' : standing[status];
}

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
          <span className="finding-standing"> {standingOf(finding)}</span>
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
