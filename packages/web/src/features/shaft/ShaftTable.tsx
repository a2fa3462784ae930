import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { nameOf, sampleYard } from '../yard/sampleYard.ts';
import { ServeCell } from './ServeCell.tsx';
import { ShaftBar } from './ShaftBar.tsx';
import type { ShaftViewProps } from './ShaftGrid.tsx';
import { drivenImplements, shaftParts } from './shaftSetups.ts';
import { shelfShaft } from './shelf.ts';

/** A row for each drive shaft, drawn to one scale; a column for each driven implement. */
export function ShaftTable({ pair, replies }: ShaftViewProps) {
  return (
    <table className="yard-table shaft-table">
      <caption className="unseen">Which drive shaft serves which implement, and why not</caption>
      <thead>
        <tr>
          <th scope="col" className="yard-corner">
            <span className="yard-title">{shaftParts.length} drive shafts</span>
            Drawn pushed together, to one scale; the overlap is solid.
          </th>
          {drivenImplements.map((implement) => (
            <th key={nameOf(implement, '')} scope="col" className="shaft-column">
              <Figures text={nameOf(implement, 'implement')} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {shaftParts.map((part, row) => (
          <tr key={nameOf(part, String(row))}>
            <ShaftHead row={row} />
            {drivenImplements.map((implement, column) => (
              <td key={nameOf(implement, '')}>
                <ServeCell pair={pair} part={part} implement={implement} reply={replies[row]?.[column] ?? null} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function ShaftHead({ row }: { readonly row: number }) {
  const { system } = usePreferences();
  const shafts = shaftParts.flatMap((part) => shelfShaft(part, sampleYard.units, system) ?? []);
  const longest = Math.max(1, ...shafts.map(({ closed }) => closed ?? 0));
  const shaft = shafts[row];
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
