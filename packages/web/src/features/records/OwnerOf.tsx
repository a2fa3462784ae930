import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { RecordPicker } from './RecordPicker.tsx';
import { recordOf, type RecordDesk } from './useRecord.ts';

/** Whose a machine is: the way to their page, and to say that it is another’s. */
export function OwnerOf({ desk: { record, change } }: { readonly desk: RecordDesk }) {
  const [isOpen, setOpen] = useState(false);
  const { owner } = record;
  const asked = useQuery({
    queryKey: ['record', owner],
    queryFn: () => recordOf(owner ?? ''),
    enabled: owner !== null,
  });
  const choose = (id: string | null): void => {
    setOpen(false);
    void change({ owner: id });
  };
  if (owner === null || isOpen)
    return (
      <div className="owner-field">
        <RecordPicker
          words="Whose it is"
          kinds={['customer']}
          picked={null}
          onPick={(one) => choose(one?.id ?? null)}
        />
        {owner === null ? null : (
          <p className="button-row">
            <button type="button" onClick={() => choose(null)}>
              Nobody’s
            </button>
            <button type="button" onClick={() => setOpen(false)}>
              Leave it
            </button>
          </p>
        )}
      </div>
    );
  return (
    <p className="owner-field">
      <span>
        Belongs to <a href={`#record=${encodeURIComponent(owner)}`}>{asked.data?.name ?? 'a customer'}</a>
      </span>
      <button type="button" className="quiet" onClick={() => setOpen(true)}>
        Somebody else’s
      </button>
    </p>
  );
}
