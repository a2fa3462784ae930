import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { useListTop } from '../history/useListTop.ts';
import type { Column, Row } from './importTypes.ts';
import { RowLine } from './RowLine.tsx';

interface RowListProps {
  readonly rows: readonly Row[];
  readonly left: ReadonlySet<number>;
  readonly columns: readonly Column[];
  readonly onToggle: (row: number) => void;
}

/** Height of a row until it has been measured [px]. */
const rowHeight = 72;

/** Rows of the sheet, of which only those in sight are in the page. */
export function RowList({ rows, left, columns, onToggle }: RowListProps) {
  const [top, follow] = useListTop();
  const lines = useWindowVirtualizer({
    count: rows.length,
    estimateSize: () => rowHeight,
    overscan: 6,
    scrollMargin: top,
    getItemKey: (index) => rows[index]?.row ?? index,
  });
  return (
    <div ref={follow} role="list" aria-label="Rows" className="imp-rows" style={{ height: lines.getTotalSize() }}>
      {lines.getVirtualItems().map(({ index, key, start }) => {
        const row = rows[index];
        if (row === undefined) return null;
        return (
          <div
            key={key}
            role="listitem"
            aria-posinset={index + 1}
            aria-setsize={rows.length}
            ref={lines.measureElement}
            data-index={index}
            className="imp-row"
            style={{ transform: `translateY(${start - top}px)` }}
          >
            <RowLine row={row} isLeft={left.has(row.row)} columns={columns} onToggle={() => onToggle(row.row)} />
          </div>
        );
      })}
    </div>
  );
}
