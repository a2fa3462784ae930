import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { said, yard } from '../../app/server/yard.ts';
import { counted } from '../history/whenText.ts';
import { RecordPicker } from '../records/RecordPicker.tsx';
import type { ListedRecord } from '../records/recordTypes.ts';
import { addressIn } from './addressIn.ts';

/** Everything that is kept of one customer: handed over, or deleted for good. */
export function CustomerPart() {
  const client = useQueryClient();
  const [customer, setCustomer] = useState<ListedRecord | null>(null);
  const forgetting = useMutation({
    mutationFn: async ({ id }: ListedRecord) => said(yard.customers[':id'].$delete({ param: { id }, header: {} })),
    onSuccess: () => setCustomer(null),
    onSettled: () => client.invalidateQueries(),
  });
  return (
    <section className="keep-part" aria-labelledby="keep-customer">
      <h2 id="keep-customer">One customer</h2>
      <p>
        A customer may ask for everything that you keep of them, or to be deleted: their machines, readings, history,
        photos and saved answers.
      </p>
      <RecordPicker
        words="Customer"
        kinds={['customer']}
        picked={customer}
        onPick={(picked) => {
          setCustomer(picked);
          forgetting.reset();
        }}
      />
      {customer === null ? null : (
        <>
          <p className="button-row">
            <a className="button" href={addressIn(`api/customers/${encodeURIComponent(customer.id)}/export`)} download>
              Download everything of them
            </a>
          </p>
          <Forget
            key={customer.id}
            name={customer.name}
            isBusy={forgetting.isPending}
            onYes={() => forgetting.mutate(customer)}
          />
        </>
      )}
      <p role="status" className="keep-status">
        {forgetting.data === undefined
          ? ''
          : `Deleted for good: ${counted(forgetting.data.records, 'record')}, ${counted(forgetting.data.answers, 'saved answer')}, ${counted(forgetting.data.photos, 'photo')}.`}
      </p>
      <Trouble problem={forgetting.error} />
    </section>
  );
}

interface ForgetProps {
  readonly name: string;
  readonly isBusy: boolean;
  readonly onYes: () => void;
}

/** Nobody deletes a customer by a slip of the hand: the name has to be typed. */
function Forget({ name, isBusy, onYes }: ForgetProps) {
  const [typed, setTyped] = useState('');
  return (
    <form
      className="keep-forget"
      onSubmit={(event) => {
        event.preventDefault();
        if (isSame(typed, name)) onYes();
      }}
    >
      <p>
        <b>There is no way back but a backup.</b> Type the name to delete them for good: {name}
      </p>
      <label>
        <span>Name of the customer</span>
        <input value={typed} autoComplete="off" spellCheck={false} onChange={({ target }) => setTyped(target.value)} />
      </label>
      <button type="submit" disabled={isBusy || !isSame(typed, name)}>
        Delete for good
      </button>
    </form>
  );
}

function isSame(typed: string, name: string): boolean {
  const plain = (text: string): string => text.trim().replace(/\s+/g, ' ');
  return plain(typed) === plain(name);
}
