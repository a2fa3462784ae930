import type { SetupDocument } from '@hitchwright/core/records';
import { useEffect, useRef, useState } from 'react';
import { latestOnly } from '../../app/asker.ts';
import { openAdvisor, type AdviceQuestion, type AdviceReply } from './advisor.ts';

export type Advised = Extract<AdviceReply, { kind: 'advice' }>;

/** What is known of what to read next: the last good advice stays while the newest is worked out or can’t be. */
export interface Following {
  readonly advised: Advised | null;
  readonly reply: AdviceReply | null;
  /** The document that the reply is about. */
  readonly about: SetupDocument | null;
}

const nothing: Following = { advised: null, reply: null, about: null };

/** Follows a document with advice from a worker. */
export function useAdvice(document: SetupDocument | null): Following {
  const [following, setFollowing] = useState(nothing);
  const latest = useRef<{ ask(question: AdviceQuestion): void } | null>(null);
  useEffect(() => {
    const queue = latestOnly(openAdvisor(), (reply: AdviceReply, { document: about }: AdviceQuestion) => {
      setFollowing(({ advised }) => ({ reply, about, advised: reply.kind === 'advice' ? reply : advised }));
    });
    latest.current = queue;
    return queue.close;
  }, []);
  useEffect(() => {
    if (document !== null) latest.current?.ask({ document });
  }, [document]);
  return document === null ? nothing : following;
}
