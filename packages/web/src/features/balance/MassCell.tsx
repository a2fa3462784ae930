import type { Rounding } from '@hitchwright/core/units';
import { usePreferences } from '../../app/preferences.ts';
import { massCell } from './massText.ts';

interface MassCellProps {
  readonly value: number;
  readonly round: Rounding;
  /** What has to be said of it. */
  readonly note?: string | null;
}

/** A mass in a cell of a table, in both units, one below the other. */
export function MassCell({ value, round, note = null }: MassCellProps) {
  const { system } = usePreferences();
  const [first, second] = massCell(value, system, round);
  return (
    <td className={note === null ? undefined : 'axle-wrong'}>
      <span className="axle-mass">{first}</span> <span className="axle-other">({second})</span>
      {note === null ? null : <span className="axle-note"> {note}</span>}
    </td>
  );
}
