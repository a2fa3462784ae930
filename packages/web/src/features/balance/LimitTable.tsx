import type { Answer } from '@hitchwright/core/assess';
import type { Finding } from '@hitchwright/core/findings';
import { printMarginSize, type UnitSystem } from '@hitchwright/core/units';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { limitRows, permittedBy, type LimitRow } from './axleLimits.ts';
import { MassCell } from './MassCell.tsx';

/** What axles, tractor and bracket carry at most, against what they may; what governs, and what is not known. */
export function LimitTable({ answer }: { readonly answer: Answer }) {
  const { system } = usePreferences();
  return (
    <table className="axle-table">
      <caption>Limits, at the height where each carries most</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">At most</th>
          <th scope="col">Permitted</th>
          <th scope="col">Governed by</th>
        </tr>
      </thead>
      <tbody>
        {limitRows(answer).map((row) => (
          <Limit key={row.name} row={row} system={system} />
        ))}
      </tbody>
    </table>
  );
}

function Limit({ row, system }: { readonly row: LimitRow; readonly system: UnitSystem }) {
  const { name, governs, unknown } = row;
  if (governs === null) {
    return (
      <tr>
        <th scope="row">{name}</th>
        <td colSpan={3}>not checked: needs the {unknown.join(' or the ')}</td>
      </tr>
    );
  }
  const { finding, by } = governs;
  return (
    <tr>
      <th scope="row">{name}</th>
      <MassCell value={finding.quantity?.high ?? 0} round="up" note={finding.status === 'fail' ? 'over' : null} />
      <MassCell value={permittedBy(finding) ?? 0} round="down" />
      <td className="axle-words">
        {by}: <Figures text={standingOf(finding, system)} />
        {unknown.length === 0 ? null : <span className="axle-other"> {unknown.join(', ')} not known</span>}
      </td>
    </tr>
  );
}

function standingOf({ status, margin }: Finding, system: UnitSystem): string {
  const low = margin?.low ?? null;
  if (low === null) return 'not settled';
  const size = printMarginSize(low, 'mass', system);
  if (status === 'pass') return low < 0 ? 'holds' : `${size} to spare`;
  return status === 'undecided' ? `not settled, at worst ${size} over` : `${size} over`;
}
