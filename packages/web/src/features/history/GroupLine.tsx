import { useState } from 'react';
import { GroupLines } from './GroupLines.tsx';
import type { Group } from './historyTypes.ts';
import { RefusedUndo } from './RefusedUndo.tsx';
import { Sure } from './Sure.tsx';
import { useTitle } from './useTitle.ts';
import { useUndo } from './useUndo.ts';
import { counted, whenText } from './whenText.ts';

/** One group of changes: who, when, what and how much; opened, every change of it. */
export function GroupLine({ group }: { readonly group: Group }) {
  const [isOpen, setOpen] = useState(false);
  const title = useTitle(group);
  const { id, who, at, records, undoneBy, kind } = group;
  return (
    <li className={undoneBy === null ? 'his-group' : 'his-group his-group-undone'}>
      <p className="his-when">
        <time dateTime={at}>{whenText(at)}</time>
        <span>{who}</span>
      </p>
      <div className="his-what">
        <h2>{title}</h2>
        <p>
          {counted(records, 'record')}
          {undoneBy === null ? '' : ', taken back since'}
        </p>
      </div>
      {kind === 'forget' ? (
        <p className="his-no-way">There is no way back but a backup.</p>
      ) : (
        <button type="button" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {isOpen ? 'Close' : 'Open'}
          <span className="unseen">: {title}</span>
        </button>
      )}
      {isOpen ? (
        <div className="his-open">
          {undoneBy === null ? <TakeBack id={id} isUndo={kind === 'undo'} records={records} /> : null}
          <GroupLines id={id} />
        </div>
      ) : null}
    </li>
  );
}

interface TakeBackProps {
  readonly id: string;
  readonly isUndo: boolean;
  readonly records: number;
}

function TakeBack({ id, isUndo, records }: TakeBackProps) {
  const undo = useUndo(id);
  if (undo.data !== undefined) return <p role="status">Taken back: {counted(undo.data.records, 'record')}.</p>;
  return (
    <div className="his-undo">
      <RefusedUndo problem={undo.error} />
      <Sure
        ask={`Take this back? ${records === 1 ? 'The record becomes' : `${counted(records, 'record')} become`} what ${records === 1 ? 'it was' : 'they were'} before. You can take that back, too.`}
        yes="Yes, take it back"
        isBusy={undo.isPending}
        onYes={() => undo.mutate()}
      >
        {isUndo ? 'Do it again' : 'Take it back'}
      </Sure>
    </div>
  );
}
