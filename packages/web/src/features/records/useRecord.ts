import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { onceOf, Refusal, said, yard } from '../../app/server/yard.ts';
import type { Answered, Change, Draft, Meeting } from './recordTypes.ts';

/** A record as it is worked on here. */
export interface RecordDesk {
  readonly record: Answered;
  readonly isWriting: boolean;
  /** What the last change was refused for, unless somebody was first. */
  readonly problem: unknown;
  /** A change of one’s own that met somebody else’s. */
  readonly meeting: Meeting | null;
  /** Changes the record as it is seen here; tells whether that was done. */
  change(change: Change): Promise<boolean>;
  /** Writes a reading beside the others: it gets in nobody’s way, whoever else is at the record. */
  add(reading: Draft): Promise<boolean>;
  /** Makes one’s own change over what somebody else has made of it, or lets it be. */
  settle(how: 'mine' | 'theirs'): void;
  remove(): Promise<boolean>;
  restore(): Promise<boolean>;
}

/** What was asked of the server, and the desk once the record is there. */
export function useRecord(id: string) {
  const { system } = usePreferences();
  const client = useQueryClient();
  const [meeting, setMeeting] = useState<Meeting | null>(null);
  const asked = useQuery({ queryKey: ['record', id], queryFn: () => recordOf(id) });
  const fresh = (): Promise<unknown> =>
    Promise.all([
      client.invalidateQueries({ queryKey: ['record', id] }),
      client.invalidateQueries({ queryKey: ['records'] }),
      client.invalidateQueries({ queryKey: ['history'] }),
    ]);
  const writing = useMutation({ mutationFn: (write: () => Promise<unknown>) => write(), onSettled: fresh });
  const write = async (what: () => Promise<unknown>, change: Change | null): Promise<boolean> => {
    try {
      await writing.mutateAsync(what);
      return true;
    } catch (problem) {
      if (change !== null && problem instanceof Refusal && problem.status === 412)
        setMeeting({ change, refusal: problem, now: problem.current as Answered | null });
      return false;
    }
  };
  const record = asked.data ?? null;
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const written = useRef(0);
  /** One change after the other: one’s own last one is nobody else’s. */
  const changeAt = (change: Change, revision: number): Promise<boolean> => {
    const next = line.current.then(() =>
      write(async () => {
        const header = { 'if-match': `"${Math.max(revision, written.current)}"` };
        const json = { ...change, units: system };
        const now = await said(yard.records[':id'].$patch({ param: { id }, header, json }));
        written.current = now.revision;
      }, change),
    );
    line.current = next;
    return next;
  };
  const match = { 'if-match': `"${record?.revision ?? 0}"` };
  const desk: RecordDesk | null =
    record === null
      ? null
      : {
          record,
          isWriting: writing.isPending,
          problem: meeting === null ? writing.error : null,
          meeting,
          change: (change) => changeAt(change, record.revision),
          add: (reading) =>
            write(
              () =>
                onceOf({ id, reading, system }, (key) =>
                  said(
                    yard.records[':id'].readings.$post({
                      param: { id },
                      header: { 'idempotency-key': key },
                      json: { readings: [reading], units: system },
                    }),
                  ),
                ),
              null,
            ),
          settle: (how) => {
            setMeeting(null);
            writing.reset();
            if (how === 'mine' && meeting !== null)
              void changeAt(meeting.change, meeting.now?.revision ?? record.revision);
          },
          remove: () => write(() => said(yard.records[':id'].$delete({ param: { id }, header: match })), null),
          restore: () => write(() => said(yard.records[':id'].restore.$post({ param: { id }, header: match })), null),
        };
  return { asked, desk };
}

/** A record with what it stands on, removed or not. */
export function recordOf(id: string): Promise<Answered> {
  return said(yard.records[':id'].$get({ param: { id }, query: { over: 'true', removed: 'true' } }));
}
