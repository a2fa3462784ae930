import { lazy, Suspense, useMemo, useState } from 'react';
import { DialogButton } from '../../app/DialogButton.tsx';
import { useMedia } from '../../app/media.ts';
import { useBook, type AnswerBook } from './answerBook.ts';
import { nameOf } from './sampleYard.ts';
import { useYard } from './useYard.ts';
import { columnName, useYardInView, YardContext, type YardInView } from './yardInView.ts';
import { YardList } from './YardList.tsx';
import { YardSummary } from './YardSummary.tsx';
import { YardTable } from './YardTable.tsx';

const ShaftGrid = lazy(() => import('../shaft/ShaftGrid.tsx').then(({ ShaftGrid }) => ({ default: ShaftGrid })));
const WallChart = lazy(() => import('./WallChart.tsx').then(({ WallChart }) => ({ default: WallChart })));

type Table = 'implements' | 'shafts';

const tables: Readonly<Record<Table, string>> = {
  implements: 'Implements and couplers',
  shafts: 'Drive shafts',
};

/** The sheet of a yard around one tractor: both tables, and the way to the wall chart. */
export function Yard({ view }: { readonly view: YardInView }) {
  return (
    <YardContext value={view}>
      <section className="sheet yard" aria-label={`Yard on the ${nameOf(view.tractor, 'tractor')}`}>
        <Tables />
      </section>
    </YardContext>
  );
}

/** The table of the shafts is worked out once it has been asked for. */
function Tables() {
  const { columns } = useYardInView();
  const book = useBook();
  const [table, setTable] = useState<Table>('implements');
  const [chosen, setChosen] = useState(Math.min(1, columns.length - 1));
  const [areShaftsWanted, setShaftsWanted] = useState(false);
  const show = (next: Table): void => {
    setTable(next);
    if (next === 'shafts') setShaftsWanted(true);
  };
  return (
    <>
      <div className="yard-top">
        <div className="side-switch view-switch yard-switch" role="group" aria-label="Table">
          {(['implements', 'shafts'] as const).map((one) => (
            <button key={one} type="button" className="side-tab" aria-pressed={one === table} onClick={() => show(one)}>
              {tables[one]}
            </button>
          ))}
        </div>
        <DialogButton label="Wall chart">{(close) => <WallChart book={book} onClose={close} />}</DialogButton>
      </div>
      <div hidden={table !== 'implements'}>
        <ImplementGrid book={book} chosen={chosen} onChoose={setChosen} />
      </div>
      {areShaftsWanted ? (
        <div hidden={table !== 'shafts'}>
          <Suspense fallback={<p className="pad">Opening the drive shafts…</p>}>
            <ShaftPart chosen={chosen} onChoose={setChosen} />
          </Suspense>
        </div>
      ) : null}
    </>
  );
}

interface ChosenProps {
  /** Column of the coupler that is looked at. */
  readonly chosen: number;
  readonly onChoose: (column: number) => void;
}

function ImplementGrid({ book, chosen, onChoose }: ChosenProps & { readonly book: AnswerBook }) {
  const yard = useYard(book);
  const isPhone = useMedia('(max-width: 699px)');
  const View = isPhone ? YardList : YardTable;
  return (
    <>
      <View rows={yard.rows} chosen={chosen} onChoose={onChoose} />
      <YardSummary yard={yard} chosen={chosen} />
    </>
  );
}

function ShaftPart({ chosen, onChoose }: ChosenProps) {
  const { yard, tractor, columns } = useYardInView();
  const coupler = columns[chosen] ?? null;
  const pair = useMemo(() => ({ yard, tractor, coupler }), [yard, tractor, coupler]);
  return (
    <>
      <div className="shaft-couplers" role="group" aria-label="With which coupler are the shafts tried">
        {columns.map((_, column) => (
          <button key={column} type="button" aria-pressed={column === chosen} onClick={() => onChoose(column)}>
            {columnName(columns, column)}
          </button>
        ))}
      </div>
      <ShaftGrid key={chosen} pair={pair} name={columnName(columns, chosen)} />
    </>
  );
}
