import { useMutation, useQueryClient } from '@tanstack/react-query';
import { onceKey, said, yard } from '../../app/server/yard.ts';
import type { AnswerNote } from './answerTypes.ts';

/** Says that somebody has dealt with an answer that a check changed, as it is seen here. */
export function useSettle({ id, revision }: Pick<AnswerNote, 'id' | 'revision'>) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: () => {
      const header = { 'if-match': `"${revision}"`, 'idempotency-key': onceKey() };
      return said(yard.answers[':id'].settle.$post({ param: { id }, header }));
    },
    onSettled: () =>
      Promise.all([
        client.invalidateQueries({ queryKey: ['answers'] }),
        client.invalidateQueries({ queryKey: ['answer', id] }),
      ]),
  });
}
