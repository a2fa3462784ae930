import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { onceKey, said, yard } from '../../app/server/yard.ts';
import { fieldWords } from './plainWords.ts';
import type { HistoryLine } from './recordTypes.ts';

interface RecordHistoryProps {
  readonly id: string;
  readonly revision: number;
}

/** What was changed in a record, the latest first, each with a way to take it back. */
export function RecordHistory({ id, revision }: RecordHistoryProps) {
  const client = useQueryClient();
  const asked = useQuery({
    queryKey: ['history', 'record', id, revision],
    queryFn: () => said(yard.records[':id'].history.$get({ param: { id }, query: { limit: '1000' } })),
  });
  const undo = useMutation({
    mutationFn: (group: string) =>
      said(yard.history[':id'].undo.$post({ param: { id: group }, header: { 'idempotency-key': onceKey() } })),
    onSettled: () =>
      Promise.all(['record', 'records', 'history'].map((key) => client.invalidateQueries({ queryKey: [key] }))),
  });
  const groups = groupsIn(asked.data?.items ?? []);
  return (
    <details className="field-group">
      <summary>
        <span>What was changed</span>
        <span className="field-count">{asked.data === undefined ? '' : groups.length}</span>
      </summary>
      <Trouble problem={asked.error ?? undo.error} />
      <ol className="record-history">
        {groups.map(({ group, what }) => (
          <li key={group.id}>
            <span>
              <b>{group.title}</b> {what.map(fieldWords).join(', ')}
              <br />
              {group.who}, {new Date(group.at).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })}
            </span>
            {group.undoneBy === null && group.kind !== 'forget' ? (
              <button type="button" disabled={undo.isPending} onClick={() => undo.mutate(group.id)}>
                Undo
              </button>
            ) : (
              <span>taken back</span>
            )}
          </li>
        ))}
      </ol>
    </details>
  );
}

/** Changes that were made as one, the latest first, each with the fields it touched. */
function groupsIn(lines: readonly HistoryLine[]): { group: HistoryLine['group']; what: string[] }[] {
  const groups = new Map<string, { group: HistoryLine['group']; what: Set<string> }>();
  for (const { group, what, key } of lines) {
    const one = groups.get(group.id) ?? { group, what: new Set<string>() };
    if (what !== 'reading') one.what.add(key);
    groups.set(group.id, one);
  }
  return [...groups.values()].reverse().map(({ group, what }) => ({ group, what: [...what] }));
}
