import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { said, yard } from '../../app/server/yard.ts';
import { counted, whenText } from '../history/whenText.ts';

/** How often the checking again is looked at while it runs, and while it rests [ms]. */
const lookEvery = { running: 700, idle: 5000 } as const;

/** How far the checking again is; when it has ended, the lists are read anew. */
export function RecheckState() {
  const client = useQueryClient();
  const { data } = useQuery({
    queryKey: ['recheck'],
    queryFn: ({ signal }) => said(yard.recheck.$get({}, { init: { signal } })),
    refetchInterval: ({ state }) => lookEvery[state.data?.state ?? 'idle'],
  });
  const ended = data?.state === 'idle' ? data.endedAt : null;
  const seen = useRef(ended);
  useEffect(() => {
    if (ended === null || seen.current === ended) return;
    seen.current = ended;
    void client.invalidateQueries({ queryKey: ['answers'] });
  }, [ended, client]);
  if (data === undefined) return null;
  const { state, checked, changed, left, failed, endedAt } = data;
  return (
    <section className="ans-recheck" aria-label="Checking again" aria-busy={state === 'running'}>
      <p role="status">
        {state === 'running'
          ? `Answers are checked again: ${counted(checked, 'answer')} done, ${left.toLocaleString()} or more left.`
          : restText(endedAt, checked, changed)}
        {failed === 0
          ? ''
          : ` ${counted(failed, 'answer')} could not be checked; they are tried again after the next change.`}
      </p>
      {state === 'running' ? (
        <progress
          className="ans-progress"
          value={checked}
          max={Math.max(1, checked + left)}
          aria-label="How far it is"
        />
      ) : null}
    </section>
  );
}

function restText(endedAt: string | null, checked: number, changed: number): string {
  if (endedAt === null || checked === 0)
    return 'Every answer stands on the values in use. When one of them changes, the answers that rest on it are checked again by themselves.';
  return `Checked again on ${whenText(endedAt)}: ${counted(checked, 'answer')}, of which ${changed.toLocaleString()} came out otherwise.`;
}
