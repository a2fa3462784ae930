import type { CSSProperties } from 'react';
import { nameOf } from './sampleYard.ts';
import { drawnColumns } from './drawnColumns.ts';
import { CouplerHead } from './CouplerHead.tsx';
import { LowerPinDrawing } from './LowerPinDrawing.tsx';
import { PinRuler } from './PinRuler.tsx';
import { UpperPinDrawing } from './UpperPinDrawing.tsx';
import type { YardRow } from './useYard.ts';
import { columnName, useYardInView } from './yardInView.ts';
import { YardCell } from './YardCell.tsx';
import { usePreferences } from '../../app/preferences.ts';

export interface YardViewProps {
  readonly rows: readonly YardRow[];
  /** Column of the coupler that the pins are drawn against. */
  readonly chosen: number;
  readonly onChoose: (column: number) => void;
}

/** The yard as a table: a row for each implement, a column for each coupler, two drawn columns for the chosen one. */
export function YardTable({ rows, chosen, onChoose }: YardViewProps) {
  const { system } = usePreferences();
  const { columns } = useYardInView();
  const drawn = drawnColumns(rows, chosen);
  const against = columnName(columns, chosen);
  return (
    <div className="yard-scroll">
      <table className="yard-table" style={{ '--columns': columns.length } as CSSProperties}>
        <caption className="unseen">Which implement goes on with which coupler, and why not</caption>
        <thead>
          <tr>
            <th scope="col" className="yard-corner">
              <span className="yard-title">
                Yard, {rows.length} {rows.length === 1 ? 'implement' : 'implements'}
              </span>
              Pins are drawn to scale against the marked column. Pick another to compare.
            </th>
            <th scope="col" className="yard-drawn">
              <span className="drawn-head">
                <span className="yard-title">Lower pin, right side</span>
                {drawn.lower.words}
              </span>
              <PinRuler scale={drawn.lower.scale} system={system} />
            </th>
            <th scope="col" className="yard-drawn">
              <span className="drawn-head">
                <span className="yard-title">Upper pin height</span>
                {drawn.upper.words}
              </span>
              <PinRuler scale={drawn.upper.scale} system={system} />
            </th>
            {columns.map((_, column) => (
              <CouplerHead key={column} column={column} isChosen={column === chosen} onChoose={onChoose} />
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ implement, documents, replies }, i) => (
            <tr key={i}>
              <th scope="row" className="yard-implement">
                {nameOf(implement, `implement ${i + 1}`)}
              </th>
              <td className="yard-drawn">
                <LowerPinDrawing pins={drawn.lower} row={i} against={against} />
              </td>
              <td className="yard-drawn">
                <UpperPinDrawing pins={drawn.upper} row={i} against={against} />
              </td>
              {replies.map((reply, column) => (
                <td key={column} className={column === chosen ? 'yard-chosen' : undefined}>
                  <YardCell
                    reply={reply}
                    document={documents[column] ?? {}}
                    row={i}
                    column={column}
                    implement={nameOf(implement, 'it')}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
