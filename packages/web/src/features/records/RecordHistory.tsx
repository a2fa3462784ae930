import { useQuery } from '@tanstack/react-query';
import { Trouble } from '../../app/server/Trouble.tsx';
import { said, yard } from '../../app/server/yard.ts';
import { GroupLine } from '../history/GroupLine.tsx';
import '../history/history.css';

interface RecordHistoryProps {
  readonly id: string;
  readonly revision: number;
}

/** What was changed in a record, the latest first, each with a way to take it back. */
export function RecordHistory({ id, revision }: RecordHistoryProps) {
  const asked = useQuery({
    queryKey: ['history', 'record', id, revision],
    queryFn: () => said(yard.records[':id'].history.$get({ param: { id }, query: { limit: '1000' } })),
  });
  const lines = asked.data?.items ?? [];
  const groups = [...new Map(lines.map(({ group }) => [group.id, group])).values()].reverse();
  return (
    <details className="field-group">
      <summary>
        <span>What was changed</span>
        <span className="field-count">{asked.data === undefined ? '' : groups.length}</span>
      </summary>
      <Trouble problem={asked.error} />
      <ol className="record-history">
        {groups.map((group) => (
          <GroupLine key={group.id} group={group} />
        ))}
      </ol>
    </details>
  );
}
