import { usePreferences } from '../../app/preferences.ts';
import { couplerKindOf } from './CouplerHead.tsx';
import { drawnColumns } from './drawnColumns.ts';
import { LowerPinDrawing } from './LowerPinDrawing.tsx';
import { PinRuler } from './PinRuler.tsx';
import { nameOf } from './sampleYard.ts';
import { tallyOf } from './tally.ts';
import { UpperPinDrawing } from './UpperPinDrawing.tsx';
import { YardCell } from './YardCell.tsx';
import { columnName, useYardInView } from './yardInView.ts';
import type { YardViewProps } from './YardTable.tsx';

/** The yard on a phone: one coupler at a time, and every implement under it with its two pins. */
export function YardList({ rows, chosen, onChoose }: YardViewProps) {
  const { system } = usePreferences();
  const { columns } = useYardInView();
  const drawn = drawnColumns(rows, chosen);
  const against = columnName(columns, chosen);
  return (
    <>
      <div className="yard-couplers" role="group" aria-label="With which coupler">
        {columns.map((coupler, column) => (
          <button key={column} type="button" aria-pressed={column === chosen} onClick={() => onChoose(column)}>
            <span>
              <b>{columnName(columns, column)}</b> {couplerKindOf(coupler)}
            </span>
            <span className="yard-count">{tallyOf(rows, column).works}</span>
          </button>
        ))}
        <p className="yard-count-words">The figure is how many work as they stand.</p>
      </div>
      <div className="yard-rulers" aria-hidden="true">
        <div>
          Lower pin from the centre
          <PinRuler scale={drawn.lower.scale} system={system} />
        </div>
        <div>
          Upper pin above the lower
          <PinRuler scale={drawn.upper.scale} system={system} />
        </div>
      </div>
      <ol className="yard-list">
        {rows.map(({ implement, documents, replies }, i) => (
          <li key={i}>
            <h2 className="yard-list-name">{nameOf(implement, `implement ${i + 1}`)}</h2>
            <YardCell
              reply={replies[chosen] ?? null}
              document={documents[chosen] ?? {}}
              row={i}
              column={chosen}
              implement={nameOf(implement, 'it')}
            />
            <div className="yard-list-pins">
              <LowerPinDrawing pins={drawn.lower} row={i} against={against} />
              <UpperPinDrawing pins={drawn.upper} row={i} against={against} />
            </div>
          </li>
        ))}
      </ol>
    </>
  );
}
