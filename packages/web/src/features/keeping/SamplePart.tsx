import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { onceKey, said, yard } from '../../app/server/yard.ts';
import { counted } from '../history/whenText.ts';

/** The invented yard to look around in: in and out with one click. */
export function SamplePart() {
  const client = useQueryClient();
  const found = useQuery({
    queryKey: ['records', 'sample'],
    queryFn: ({ signal }) => said(yard.records.$get({ query: { sample: 'true', limit: '1' } }, { init: { signal } })),
  });
  const moving = useMutation({
    mutationFn: (move: () => Promise<string>) => move(),
    onSettled: () => client.invalidateQueries(),
  });
  const isIn = (found.data?.items.length ?? 0) > 0;
  return (
    <section className="keep-part" aria-labelledby="keep-sample">
      <h2 id="keep-sample">Sample yard</h2>
      <p>
        Machines, figures and people to look around with. All of it is invented, marked as a sample wherever it is
        shown, and leaves again without touching what is yours.
      </p>
      {found.data === undefined ? null : (
        <p className="button-row">
          <button type="button" disabled={moving.isPending} onClick={() => moving.mutate(isIn ? takenOut : putIn)}>
            {isIn ? 'Take the sample yard out' : 'Put the sample yard in'}
          </button>
        </p>
      )}
      <p role="status" className="keep-status">
        {moving.isPending ? 'A moment…' : (moving.data ?? '')}
      </p>
      <Trouble problem={found.error ?? moving.error} />
    </section>
  );
}

async function putIn(): Promise<string> {
  const header = {
    'idempotency-key': onceKey(),
    'hitchwright-title': encodeURIComponent('The sample yard was put in'),
  };
  const { created, restored } = await said(yard.sample.$post({ header }));
  return `The sample yard is in: ${counted(created + restored, 'record')}.`;
}

async function takenOut(): Promise<string> {
  const { records, answers } = await said(yard.sample.$delete({ header: {} }));
  return `The sample yard is out: ${counted(records, 'record')} and ${counted(answers, 'saved answer')}.`;
}
