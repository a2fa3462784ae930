import type { SetupDocument } from '@hitchwright/core/records';
import { useEffect, useRef, useState } from 'react';
import { latestOnly } from '../../app/asker.ts';
import { usePreferences } from '../../app/preferences.ts';
import { openAssessor, type Reply, type Request } from './assessor.ts';

export type Answered = Extract<Reply, { kind: 'answer' }>;

/** What the page knows of its question: the last good answer stays while the figures are in error. */
export interface Assessment {
  readonly answered: Answered | null;
  readonly reply: Reply | null;
}

const nothing: Assessment = { answered: null, reply: null };

/** Follows a document with answers from a worker; while one is worked out only the newest document waits. */
export function useAssessment(document: SetupDocument | null, couplers: readonly SetupDocument[]): Assessment {
  const [assessment, setAssessment] = useState(nothing);
  const { system } = usePreferences();
  const latest = useRef<{ ask(request: Request): void } | null>(null);
  useEffect(() => {
    const queue = latestOnly(openAssessor(), (reply) => {
      setAssessment(({ answered }) => ({ reply, answered: reply.kind === 'answer' ? reply : answered }));
    });
    latest.current = queue;
    return queue.close;
  }, []);
  useEffect(() => {
    if (document !== null) latest.current?.ask({ document, couplers, full: system });
  }, [document, couplers, system]);
  return document === null ? nothing : assessment;
}
