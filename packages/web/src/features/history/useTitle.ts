import { useQuery } from '@tanstack/react-query';
import { changedWords } from './changedWords.ts';
import { linesOf, madeIn, titleOf, type Group } from './historyTypes.ts';
import { useRecordName } from './useRecordName.ts';

/** What a group is called: its own title; where it has none, the record that it changed and how, once that is known. */
export function useTitle(group: Group): string {
  const { id, kind, title, records } = group;
  const isNamed = title !== '' || (kind !== 'edit' && kind !== 'undo');
  const asked = useQuery({
    queryKey: ['history', 'first lines', id],
    queryFn: ({ signal }) => linesOf(id, null, signal),
    staleTime: Infinity,
    enabled: !isNamed,
  });
  const items = asked.data?.items ?? [];
  const first = items[0]?.recordId ?? null;
  const named = useRecordName(first, madeIn(items.filter(({ recordId }) => recordId === first)));
  if (isNamed || named === null) return titleOf(group);
  if (kind === 'undo') return titleOf({ ...group, title: `a change of ${named.name}` });
  return changedWords(named, items, records - 1);
}
