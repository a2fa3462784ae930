import { useMemo } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { nameOf } from '../yard/sampleYard.ts';
import { ServeCell } from './ServeCell.tsx';
import { ShaftBar } from './ShaftBar.tsx';
import type { ShaftViewProps } from './ShaftGrid.tsx';
import { shelfShaft, type ShelfShaft } from './shelf.ts';

/** A row for each drive shaft, drawn to one scale; a column for each driven implement. */
export function ShaftTable({ pair, driven, replies }: ShaftViewProps) {
  const { system } = usePreferences();
  const shelf = useMemo(
    () => driven.shafts.flatMap((part) => shelfShaft(part, pair.yard.units, system) ?? []),
    [driven, pair, system],
  );
  const longest = Math.max(1, ...shelf.map(({ closed }) => closed ?? 0));
  return (
    <table className="yard-table shaft-table">
      <caption className="unseen">Which drive shaft serves which implement, and why not</caption>
      <thead>
        <tr>
          <th scope="col" className="yard-corner">
            <span className="yard-title">
              {driven.shafts.length} drive {driven.shafts.length === 1 ? 'shaft' : 'shafts'}
            </span>
            Drawn pushed together, to one scale; the overlap is solid.
          </th>
          {driven.implements.map((implement, column) => (
            <th key={column} scope="col" className="shaft-column">
              <Figures text={nameOf(implement, 'implement')} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {driven.shafts.map((part, row) => (
          <tr key={row}>
            <ShaftHead shaft={shelf[row]} longest={longest} />
            {driven.implements.map((implement, column) => (
              <td key={column}>
                <ServeCell pair={pair} part={part} implement={implement} reply={replies[row]?.[column] ?? null} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface ShaftHeadProps {
  readonly shaft: ShelfShaft | undefined;
  /** The longest closed length on the shelf [mm]. */
  readonly longest: number;
}

function ShaftHead({ shaft, longest }: ShaftHeadProps) {
  if (shaft === undefined) return <th scope="row" className="shaft-row" />;
  return (
    <th scope="row" className="shaft-row">
      <span className="shelf-name">
        <Figures text={shaft.name} />
      </span>
      <ShaftBar closed={shaft.closed} overlap={shaft.overlap} longest={longest} />
      <span className="shelf-note">
        <Figures text={shaft.note} />
      </span>
    </th>
  );
}
