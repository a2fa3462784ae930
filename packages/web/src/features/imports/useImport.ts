import type { MappingChange } from '@hitchwright/core/exchange';
import { useInfiniteQuery, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState } from 'react';
import { onceKey, Refusal, said, yard } from '../../app/server/yard.ts';
import { asImport, importOf, rowsOf, type Choice, type Import, type Row } from './importTypes.ts';

/** An import as it is worked on here. */
export interface ImportDesk {
  readonly state: Import;
  /** Counted up with every choice: rows of the one before are not read on. */
  readonly version: number;
  readonly isChoosing: boolean;
  readonly isStopping: boolean;
  readonly isBeginning: boolean;
  /** What the last choice, or the writing, was refused for. */
  readonly problem: unknown;
  choose(choice: Choice): void;
  change(change: MappingChange): void;
  write(wanted: WriteWanted): void;
  stop(): void;
}

/** How the rows are to be written. */
interface WriteWanted {
  readonly leaveOut: readonly number[];
  /** Whether what the columns mean is remembered. */
  readonly remember: boolean;
}

/** How often a running import is looked at [ms]. */
const lookEvery = 250;

/** What was asked of the server, and the desk once the import is there; `isGone` where the server has let go of the file. */
export function useImport(id: string) {
  const [version, setVersion] = useState(0);
  const asked = useQuery({
    queryKey: ['import', id],
    queryFn: ({ signal }) => importOf(id, signal),
    refetchInterval: ({ state }) => (state.data?.state === 'running' ? lookEvery : false),
  });
  const choosing = useChoosing(id, () => setVersion((before) => before + 1));
  const writing = useWriting(id, asked.data?.name ?? '');
  const stopping = useStopping(id);
  const problem = stopping.error ?? writing.error ?? choosing.error;
  const desk: ImportDesk | null =
    asked.data === undefined
      ? null
      : {
          state: asked.data,
          version,
          isChoosing: choosing.isPending,
          isStopping: stopping.isPending,
          isBeginning: writing.isPending,
          problem,
          choose: choosing.mutate,
          change: (change) => choosing.mutate({ change }),
          write: writing.mutate,
          stop: stopping.mutate,
        };
  const isGone = [asked.error, problem].some((one) => one instanceof Refusal && one.status === 404);
  return { asked, desk, isGone };
}

type Mappings = (typeof yard.imports)[':id']['mapping'];

function useChoosing(id: string, onChosen: () => void) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async (choice: Choice) => {
      const json = choice as Parameters<Mappings['$post']>[0]['json'];
      return asImport(await said(yard.imports[':id'].mapping.$post({ param: { id }, json })));
    },
    onSuccess: (state) => {
      client.setQueryData(['import', id], state);
      onChosen();
    },
  });
}

function useWriting(id: string, name: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async ({ leaveOut, remember }: WriteWanted) => {
      const header = { 'idempotency-key': onceKey(), 'hitchwright-title': encodeURIComponent(`Import of ${name}`) };
      const json = { leaveOut: [...leaveOut], remember };
      return asImport(await said(yard.imports[':id'].commit.$post({ param: { id }, header, json })));
    },
    onSuccess: (state) => client.setQueryData(['import', id], state),
  });
}

function useStopping(id: string) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async () => {
      const state = asImport(await said(yard.imports[':id'].$delete({ param: { id }, header: {} })));
      await client.cancelQueries({ queryKey: ['import', id] });
      return client.setQueryData<Import>(['import', id], state);
    },
  });
}

/** Every row of the sheet, fetched page by page. */
export function useRows(id: string, version: number) {
  const found = useInfiniteQuery({
    queryKey: ['import rows', id, version],
    queryFn: ({ pageParam, signal }) => rowsOf(id, pageParam, signal),
    initialPageParam: null as string | null,
    getNextPageParam: ({ next }) => next,
    structuralSharing: false,
    staleTime: Infinity,
    gcTime: 60_000,
  });
  const { hasNextPage, isFetching, isError, fetchNextPage, data } = found;
  useEffect(() => {
    if (hasNextPage && !isFetching && !isError) void fetchNextPage();
  });
  const rows = useMemo((): readonly Row[] => data?.pages.flatMap(({ items }) => items) ?? [], [data]);
  return {
    rows,
    isAll: data !== undefined && !hasNextPage,
    problem: found.error,
    again: () => void (data === undefined ? found.refetch() : fetchNextPage()),
  };
}
