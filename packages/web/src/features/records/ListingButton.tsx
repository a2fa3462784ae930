import type { ListedMachine } from '@hitchwright/core/handover';
import type { SetupDocument } from '@hitchwright/core/records';
import { useMutation } from '@tanstack/react-query';
import { lazy, Suspense } from 'react';
import { Trouble } from '../../app/server/Trouble.tsx';
import { said, yard } from '../../app/server/yard.ts';
import type { Answered } from './recordTypes.ts';

const ListingDialog = lazy(() =>
  import('../handover/ListingDialog.tsx').then(({ ListingDialog }) => ({ default: ListingDialog })),
);

/** Lists an implement or a coupler for a shop page by its values in use; nothing for any other record. */
export function ListingButton({ record }: { readonly record: Answered }) {
  const kind = record.over?.kind ?? record.kind;
  const fetched = useMutation({ mutationFn: (machine: ListedMachine) => setupOf(machine, record.id) });
  if (kind !== 'implement' && kind !== 'coupler') return null;
  return (
    <>
      <button type="button" aria-haspopup="dialog" disabled={fetched.isPending} onClick={() => fetched.mutate(kind)}>
        Listing
      </button>
      <Trouble problem={fetched.error} />
      {fetched.data === undefined ? null : (
        <Suspense fallback={null}>
          <ListingDialog machine={kind} document={fetched.data} onClose={() => fetched.reset()} />
        </Suspense>
      )}
    </>
  );
}

/** The machine by its values in use in a setup of which nothing else is known. */
async function setupOf(machine: ListedMachine, id: string): Promise<SetupDocument> {
  const { setup } = await said(yard.setups.$post({ json: { [machine]: id, shaft: null } }));
  return { tractor: {}, implement: {}, ...setup };
}
