import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { useEffect } from 'react';
import { useListTop } from '../history/useListTop.ts';
import { whenText } from '../history/whenText.ts';
import type { AnswerNote } from './answerTypes.ts';
import { Says } from './VerdictWord.tsx';

interface AnswerListProps {
  readonly answers: readonly AnswerNote[];
  /** They are those of the search before, until the new ones are there. */
  readonly isOlder: boolean;
  readonly hasMore: boolean;
  /** The end of what is there was reached. */
  readonly onEnd: () => void;
}

/** Height of a line until it has been measured [px]. */
const lineHeight = 76;

/** Saved answers as lines, of which only those in sight are in the page. */
export function AnswerList({ answers, isOlder, hasMore, onEnd }: AnswerListProps) {
  const [top, follow] = useListTop();
  const lines = useWindowVirtualizer({
    count: answers.length,
    estimateSize: () => lineHeight,
    overscan: 8,
    scrollMargin: top,
    getItemKey: (index) => answers[index]?.id ?? index,
  });
  const shown = lines.getVirtualItems();
  const last = shown.at(-1)?.index ?? 0;
  useEffect(() => {
    if (last >= answers.length - 20) onEnd();
  });
  return (
    <div
      ref={follow}
      role="list"
      aria-label="Saved answers"
      className={isOlder ? 'ans-lines ans-lines-older' : 'ans-lines'}
      style={{ height: lines.getTotalSize() }}
    >
      {shown.map(({ index, key, start }) => {
        const answer = answers[index];
        return answer === undefined ? null : (
          <div
            key={key}
            role="listitem"
            aria-posinset={index + 1}
            aria-setsize={hasMore ? -1 : answers.length}
            ref={lines.measureElement}
            data-index={index}
            className="ans-line"
            style={{ transform: `translateY(${start - top}px)` }}
          >
            <AnswerLine answer={answer} />
          </div>
        );
      })}
    </div>
  );
}

function AnswerLine({ answer: { id, title, customer, verdict, reason, askedAt, sample } }: { answer: AnswerNote }) {
  return (
    <a href={`#answer=${encodeURIComponent(id)}`}>
      <span className="ans-line-title">
        {title}
        <span className="ans-customer">{customer === null ? '' : customer.name}</span>
        {sample ? <span className="stamp">sample</span> : null}
      </span>
      <span className="ans-line-says">
        <Says verdict={verdict} reason={reason} />
      </span>
      <span className="ans-when">{whenText(askedAt)}</span>
    </a>
  );
}
