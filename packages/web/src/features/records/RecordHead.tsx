import { useMutation } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { ListingButton } from './ListingButton.tsx';
import { titleOf, kindWords } from './kinds.ts';
import { Sure } from '../history/Sure.tsx';
import { copied } from './copied.ts';
import { OwnerOf } from './OwnerOf.tsx';
import type { RecordDesk } from './useRecord.ts';
import { useTyped } from './useTyped.ts';

/** Name of the record, whose it is, what it is one of, and what can be done with the whole of it. */
export function RecordHead({ desk }: { readonly desk: RecordDesk }) {
  const { record } = desk;
  return (
    <header className="record-head">
      <p className="record-of">
        <a href={`#records=${record.kind}`}>{kindWords[record.kind].many}</a>
        {record.sample ? <span className="stamp">sample, invented</span> : null}
        {record.over == null ? null : (
          <span>
            {record.kind === 'machine' ? 'is one of ' : 'laid over '}
            <a href={`#record=${record.over.id}`}>{record.over.name}</a>: what it has no reading of its own for comes
            from there
          </span>
        )}
      </p>
      <NameField desk={desk} />
      {record.kind === 'machine' && record.removedAt === null ? <OwnerOf desk={desk} /> : null}
      {record.removedAt === null ? <WholeRecord desk={desk} /> : <RemovedNote desk={desk} />}
    </header>
  );
}

function NameField({ desk: { record, change, isWriting } }: { readonly desk: RecordDesk }) {
  const [name, setName] = useTyped(record.name);
  const isChanged = name.trim() !== record.name && name.trim() !== '';
  return (
    <form
      className="record-name-field"
      onSubmit={(event) => {
        event.preventDefault();
        if (isChanged) void change({ name: name.trim() });
      }}
    >
      <input
        aria-label={titleOf(record)}
        value={name}
        maxLength={200}
        onChange={({ target }) => setName(target.value)}
      />
      {isChanged ? (
        <button type="submit" disabled={isWriting}>
          Rename
        </button>
      ) : null}
    </form>
  );
}

function WholeRecord({ desk }: { readonly desk: RecordDesk }) {
  const { record, remove } = desk;
  const copy = useMutation({
    mutationFn: () => copied(record, `${record.name.slice(0, 190)}, copy`),
  });
  const copyAndOpen = (): void => copy.mutate(undefined, { onSuccess: ({ id }) => (location.hash = `#record=${id}`) });
  const isModel = record.kind === 'tractor' || record.kind === 'coupler' || record.kind === 'implement';
  return (
    <>
      <Trouble problem={copy.error} />
      <div className="button-row">
        <button type="button" disabled={copy.isPending} onClick={copyAndOpen}>
          Make a copy
        </button>
        {isModel ? (
          <a className="button" href={`#new=machine:${record.id}`}>
            A customer has one
          </a>
        ) : null}
        {record.kind === 'tractor' ? (
          <a className="button" href={`#new=state:${record.id}`}>
            Another state of it
          </a>
        ) : null}
        <ListingButton record={record} />
        <Sure
          ask="It leaves the lists; its readings and history stay, and it can be brought back."
          yes="Remove it"
          onYes={() => void remove()}
        >
          Remove
        </Sure>
      </div>
    </>
  );
}

function RemovedNote({ desk: { restore } }: { readonly desk: RecordDesk }) {
  return (
    <p className="button-row">
      <b>This record was removed.</b>
      <button type="button" onClick={() => void restore()}>
        Bring it back
      </button>
    </p>
  );
}
