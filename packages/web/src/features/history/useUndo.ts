import { useMutation, useQueryClient } from '@tanstack/react-query';
import { onceKey, said, yard } from '../../app/server/yard.ts';

/** Takes a group of changes back; everything that was read before is read anew then. */
export function useUndo(group: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () =>
      said(yard.history[':id'].undo.$post({ param: { id: group }, header: { 'idempotency-key': onceKey() } })),
    onSettled: () => client.invalidateQueries(),
  });
}
