import { useQuery } from '@tanstack/react-query';
import { said, yard } from '../../app/server/yard.ts';
import type { Named } from './historyTypes.ts';

/** What a record is called and what it is: as it was made where that is known, else as it is called today; null until then. */
export function useRecordName(id: string | null, made: Named | null): Named | null {
  const asked = useQuery({
    queryKey: ['record name', id],
    queryFn: ({ signal }) =>
      said(yard.records[':id'].$get({ param: { id: id ?? '' }, query: { removed: 'true' } }, { init: { signal } })),
    select: ({ name, kind }) => ({ name, kind }),
    staleTime: 60_000,
    enabled: id !== null && made === null,
  });
  return made ?? asked.data ?? null;
}
