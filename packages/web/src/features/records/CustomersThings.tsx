import { useQuery } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { said, yard } from '../../app/server/yard.ts';
import { answersOf } from '../answers/answerTypes.ts';
import { whenText } from '../history/whenText.ts';

/** What belongs to a customer: their machines, and the answers that were saved for them. */
export function CustomersThings({ id }: { readonly id: string }) {
  return (
    <>
      <Machines owner={id} />
      <Answers customer={id} />
    </>
  );
}

function Machines({ owner }: { readonly owner: string }) {
  const asked = useQuery({
    queryKey: ['records', 'of customer', owner],
    queryFn: ({ signal }) => said(yard.records.$get({ query: { owner, limit: '100' } }, { init: { signal } })),
  });
  const machines = asked.data?.items ?? [];
  return (
    <details className="field-group" open>
      <summary>
        <span>Their machines</span>
        <span className="field-count">{asked.data === undefined ? '' : machines.length}</span>
      </summary>
      <Trouble problem={asked.error} onAgain={() => void asked.refetch()} />
      {asked.isSuccess && machines.length === 0 ? (
        <p className="things-none">
          None yet. On the page of the tractor, coupler or implement press “A customer has one”, or say whose it is on
          the page of a machine that is there.
        </p>
      ) : null}
      <ul className="plain-list things">
        {machines.map((machine) => (
          <li key={machine.id}>
            <a href={`#record=${encodeURIComponent(machine.id)}`}>{machine.name}</a>
          </li>
        ))}
      </ul>
      {asked.data?.next == null ? null : (
        <p className="things-none">Only the first 100 stand here; the list of records has all.</p>
      )}
    </details>
  );
}

function Answers({ customer }: { readonly customer: string }) {
  const asked = useQuery({
    queryKey: ['answers', 'of customer', customer],
    queryFn: ({ signal }) => answersOf({ customer }, null, signal),
  });
  const answers = asked.data?.items ?? [];
  return (
    <details className="field-group" open>
      <summary>
        <span>Their saved answers</span>
        <span className="field-count">{asked.data === undefined ? '' : answers.length}</span>
      </summary>
      <Trouble problem={asked.error} onAgain={() => void asked.refetch()} />
      {asked.isSuccess && answers.length === 0 ? (
        <p className="things-none">None yet. Save the answer of a check and say for whom it was asked.</p>
      ) : null}
      <ul className="plain-list things">
        {answers.map(({ id, title, reason, askedAt }) => (
          <li key={id}>
            <a href={`#answer=${encodeURIComponent(id)}`}>{title}</a>
            <span>{reason}</span>
            <span>{whenText(askedAt)}</span>
          </li>
        ))}
      </ul>
      {asked.data?.next == null ? null : (
        <p className="things-none">Only the latest 100 stand here; Saved answers has all.</p>
      )}
    </details>
  );
}
