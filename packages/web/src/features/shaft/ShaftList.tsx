import { Figures } from '../../marks/Figures.tsx';
import { nameOf } from '../yard/sampleYard.ts';
import { ServeCell } from './ServeCell.tsx';
import type { ShaftViewProps } from './ShaftGrid.tsx';
import { bestFirst, tallyFor, tallyWords } from './serving.ts';

/** The same where a table has no room: one implement after the other, and the shafts under it, the best first. */
export function ShaftList({ pair, driven, replies }: ShaftViewProps) {
  return (
    <div className="shaft-list">
      {driven.implements.map((implement, column) => (
        <details key={column} className="shaft-list-one">
          <summary>
            <span className="shelf-name">
              <Figures text={nameOf(implement, 'implement')} />
            </span>
            <span className="shelf-note">{tallyWords(tallyFor(replies, column))}</span>
          </summary>
          <ul className="plain-list">
            {bestFirst(replies, column).map((row) => (
              <li key={row}>
                <p className="shaft-list-name">
                  <Figures text={nameOf(driven.shafts[row], 'shaft')} />
                </p>
                <ServeCell
                  pair={pair}
                  part={driven.shafts[row] ?? {}}
                  implement={implement}
                  reply={replies[row]?.[column] ?? null}
                />
              </li>
            ))}
          </ul>
        </details>
      ))}
    </div>
  );
}
