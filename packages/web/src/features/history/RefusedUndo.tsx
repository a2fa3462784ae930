import { Trouble } from '../../app/server/Trouble.tsx';
import { Refusal } from '../../app/server/yard.ts';
import { fieldName } from './valueWords.ts';
import { whenText } from './whenText.ts';

/** A later change that stands in the way, as the server tells it. */
interface Later {
  readonly recordId: string;
  readonly name: string;
  readonly what: 'record' | 'field' | 'reading';
  readonly key: string;
  readonly group: { readonly id: string; readonly who: string; readonly at: string };
}

/** How many of them are told one by one. */
const most = 20;

/** Why a group of changes was not taken back: what was changed since, by whom and when. */
export function RefusedUndo({ problem }: { readonly problem: unknown }) {
  if (problem === null) return null;
  const later = laterIn(problem);
  if (later.length === 0) return <Trouble problem={problem} />;
  return (
    <div className="trouble" role="alert">
      <p>
        <b>Nothing was taken back, because it would overwrite what was changed since:</b>
      </p>
      <ul className="plain-list">
        {later.slice(0, most).map(({ recordId, name, what, key, group }) => (
          <li key={`${recordId} ${what} ${key} ${group.id}`}>
            {group.who} changed {thingWords(what, key)} of{' '}
            <a className="in-line" href={`#record=${encodeURIComponent(recordId)}`}>
              {name}
            </a>{' '}
            on {whenText(group.at)}.
          </li>
        ))}
      </ul>
      {later.length > most ? <p>And {later.length - most} more.</p> : null}
      <p>Take those changes back first, or change what is wrong by hand.</p>
    </div>
  );
}

function laterIn(problem: unknown): readonly Later[] {
  return problem instanceof Refusal && problem.status === 409 && Array.isArray(problem.current)
    ? (problem.current as readonly Later[])
    : [];
}

function thingWords(what: Later['what'], key: string): string {
  if (what === 'reading') return 'a reading';
  if (key === 'removedAt') return 'whether it is there';
  return `the ${fieldName('machine', key)}`;
}
