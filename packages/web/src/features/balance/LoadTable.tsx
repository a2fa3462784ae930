import { printBoth } from '@hitchwright/core/units';
import type { Answer } from '@hitchwright/core/assess';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { useAtPlace, type LiftPlace } from '../lift/place.ts';
import { axleRows, rowAt, type AxleRow, type Balance } from './axleLoads.ts';
import { MassCell } from './MassCell.tsx';
import { shareText } from './massText.ts';

interface LoadTableProps {
  readonly answer: Answer;
  readonly balance: Balance;
  /** Where the lift stands; null where no slider is in sight that moves it. */
  readonly place: LiftPlace | null;
}

/** What both axles carry at every height that has a name, and where the slider stands. */
export function LoadTable({ answer, balance, place }: LoadTableProps) {
  return (
    <table className="axle-table">
      <caption>What the axles carry, on level ground and at rest, at the middle of every figure</caption>
      <thead>
        <tr>
          <th scope="col">Balls</th>
          <th scope="col">Front axle</th>
          <th scope="col">Rear axle</th>
          <th scope="col">
            Front, <span>of the tractor</span>
          </th>
          <th scope="col">
            Front, <span>of everything</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {place === null ? null : <SliderRow balance={balance} place={place} />}
        {axleRows({ ...answer, balance }).map((row) => (
          <LoadRow key={row.name} row={row} />
        ))}
      </tbody>
    </table>
  );
}

/** The row that follows the slider; it alone is written again when the lift moves. */
function SliderRow({ balance, place }: { readonly balance: Balance; readonly place: LiftPlace }) {
  const station = useAtPlace(place, (at) => at);
  const row = rowAt(balance, station, 'As the lift stands');
  return row === null ? null : <LoadRow row={row} />;
}

function LoadRow({ row }: { readonly row: AxleRow }) {
  const { system } = usePreferences();
  const { name, height, front, rear } = row;
  return (
    <tr>
      <th scope="row">
        {name}
        {height === null ? null : (
          <span className="axle-other">
            {' '}
            <Figures text={printBoth(height, 'length', { system })} />
          </span>
        )}
      </th>
      <MassCell value={front} round="down" note={shortNote(row)} />
      <MassCell value={rear} round="up" />
      <td>{shareText(row.ofTractor)}</td>
      <td>{shareText(row.ofEverything)}</td>
    </tr>
  );
}

function shortNote({ front, wanted, height }: AxleRow): string | null {
  if (front <= 0) return 'wheels up';
  return front < wanted && height !== null ? 'short' : null;
}
