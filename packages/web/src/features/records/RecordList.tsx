import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { useCallback, useEffect, useState } from 'react';
import { kindWords } from './kinds.ts';
import type { ListedRecord } from './recordTypes.ts';

interface RecordListProps {
  readonly records: readonly ListedRecord[];
  /** They are those of the search before, until the new ones are there. */
  readonly isOlder: boolean;
  readonly hasMore: boolean;
  /** The end of what is there was reached. */
  readonly onEnd: () => void;
}

/** Height of a line until it has been measured [px]. */
const lineHeight = 56;

/** The records as lines, of which only those in sight are in the page. */
export function RecordList({ records, isOlder, hasMore, onEnd }: RecordListProps) {
  const [top, setTop] = useState(0);
  const place = useCallback((list: HTMLDivElement | null) => {
    if (list !== null) setTop(list.getBoundingClientRect().top + scrollY);
  }, []);
  const lines = useWindowVirtualizer({
    count: records.length,
    estimateSize: () => lineHeight,
    overscan: 8,
    scrollMargin: top,
    getItemKey: (index) => records[index]?.id ?? index,
  });
  const shown = lines.getVirtualItems();
  const last = shown.at(-1)?.index ?? 0;
  useEffect(() => {
    if (last >= records.length - 20) onEnd();
  });
  return (
    <>
      <div
        ref={place}
        role="list"
        className={isOlder ? 'record-list record-list-older' : 'record-list'}
        style={{ height: lines.getTotalSize() }}
      >
        {shown.map(({ index, key, start }) => {
          const record = records[index];
          if (record === undefined) return null;
          return (
            <div
              key={key}
              role="listitem"
              aria-posinset={index + 1}
              aria-setsize={hasMore ? -1 : records.length}
              ref={lines.measureElement}
              data-index={index}
              className="record-line"
              style={{ transform: `translateY(${start - lines.options.scrollMargin}px)` }}
            >
              <RecordLine record={record} />
            </div>
          );
        })}
      </div>
      <p className="record-count" role="status">
        {hasMore ? `The first ${records.length}; more come as you scroll.` : countText(records.length)}
      </p>
    </>
  );
}

function countText(count: number): string {
  return count === 1 ? 'One record.' : `${count} records.`;
}

function RecordLine({ record: { id, kind, name, fields, sample, updatedAt, removedAt } }: { record: ListedRecord }) {
  const category = fields['category'];
  return (
    <a href={`#record=${encodeURIComponent(id)}`}>
      <span className="record-name">{name}</span>
      <span className="record-kind">
        {kindWords[kind].one}
        {typeof category === 'string' ? `, category ${category}` : ''}
      </span>
      {sample ? <span className="stamp">sample</span> : null}
      <span className="record-when">
        {removedAt === null ? 'changed' : 'removed'}{' '}
        {new Date(removedAt ?? updatedAt).toLocaleDateString(undefined, { dateStyle: 'medium' })}
      </span>
    </a>
  );
}
