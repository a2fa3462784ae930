import type { SetupDocument } from '@hitchwright/core/records';
import { lazy, Suspense, useMemo, useState } from 'react';
import { Header } from '../../app/Header.tsx';
import { useMedia } from '../../app/media.ts';
import { yardHash } from '../../app/route.ts';
import { SearchPanel } from '../question/SearchPanel.tsx';
import { couplerName } from './CouplerHead.tsx';
import { exampleNames, nameOf, recordNamed, sampleYard } from './sampleYard.ts';
import { couplerColumns, useYard } from './useYard.ts';
import { YardList } from './YardList.tsx';
import { YardSummary } from './YardSummary.tsx';
import { YardTable } from './YardTable.tsx';
import '../question/question.css';
import './yard.css';

const ShaftGrid = lazy(() => import('../shaft/ShaftGrid.tsx').then(({ ShaftGrid }) => ({ default: ShaftGrid })));

/** Every implement of the yard on one tractor, with each coupler and with none. */
export function YardPage({ tractorName }: { readonly tractorName: string | null }) {
  const tractor = recordNamed('tractor', tractorName ?? exampleNames.tractor);
  return (
    <>
      <Header
        actions={
          <a className="quiet" href="#">
            One check
          </a>
        }
      >
        <YardQuestion name={nameOf(tractor, tractorName ?? exampleNames.tractor)} />
      </Header>
      <main>
        <p className="yard-banner">
          <span className="stamp">Sample yard</span> Every machine in it is invented.
        </p>
        {tractor === null ? (
          <NoTractor name={tractorName ?? ''} />
        ) : (
          <section className="sheet yard" aria-label={`Yard on the ${nameOf(tractor, 'tractor')}`}>
            <Yard tractor={tractor} />
          </section>
        )}
      </main>
    </>
  );
}

function YardQuestion({ name }: { readonly name: string }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <h1 className="question">
        What goes on the{' '}
        <button type="button" className="slot" aria-haspopup="dialog" onClick={() => setOpen(true)}>
          {name}
        </button>
        ?
      </h1>
      {isOpen ? (
        <SearchPanel
          machine="tractor"
          onlySamples
          onClose={() => setOpen(false)}
          onChoose={({ record }) => {
            setOpen(false);
            location.hash = yardHash(nameOf(record, ''));
          }}
        />
      ) : null}
    </>
  );
}

function NoTractor({ name }: { readonly name: string }) {
  return (
    <section className="sheet sheet-message" aria-label="No such tractor">
      <p className="because">There is no tractor “{name}” in the sample yard.</p>
      <p>Choose one that is:</p>
      <p className="button-row">
        {sampleYard.tractors.map((tractor) => (
          <a key={nameOf(tractor, '')} className="button" href={yardHash(nameOf(tractor, ''))}>
            {nameOf(tractor, 'tractor')}
          </a>
        ))}
      </p>
    </section>
  );
}

type YardView = 'implements' | 'shafts';

const views: Readonly<Record<YardView, string>> = {
  implements: 'Implements and couplers',
  shafts: 'Drive shafts',
};

/** Both tables of the yard; the one of the shafts is worked out once it has been asked for. */
function Yard({ tractor }: { readonly tractor: SetupDocument }) {
  const [view, setView] = useState<YardView>('implements');
  const [chosen, setChosen] = useState(Math.min(1, couplerColumns.length - 1));
  const [areShaftsWanted, setShaftsWanted] = useState(false);
  const show = (next: YardView): void => {
    setView(next);
    if (next === 'shafts') setShaftsWanted(true);
  };
  return (
    <>
      <div className="side-switch view-switch yard-switch" role="group" aria-label="Table">
        {(['implements', 'shafts'] as const).map((one) => (
          <button key={one} type="button" className="side-tab" aria-pressed={one === view} onClick={() => show(one)}>
            {views[one]}
          </button>
        ))}
      </div>
      <div hidden={view !== 'implements'}>
        <ImplementGrid tractor={tractor} chosen={chosen} onChoose={setChosen} />
      </div>
      {areShaftsWanted ? (
        <div hidden={view !== 'shafts'}>
          <Suspense fallback={<p className="pad">Opening the drive shafts…</p>}>
            <ShaftPart tractor={tractor} chosen={chosen} onChoose={setChosen} />
          </Suspense>
        </div>
      ) : null}
    </>
  );
}

interface GridProps {
  readonly tractor: SetupDocument;
  /** Column of the coupler that is looked at. */
  readonly chosen: number;
  readonly onChoose: (column: number) => void;
}

function ImplementGrid({ tractor, chosen, onChoose }: GridProps) {
  const yard = useYard(tractor);
  const isPhone = useMedia('(max-width: 699px)');
  const View = isPhone ? YardList : YardTable;
  return (
    <>
      <View rows={yard.rows} chosen={chosen} onChoose={onChoose} />
      <YardSummary yard={yard} chosen={chosen} />
    </>
  );
}

function ShaftPart({ tractor, chosen, onChoose }: GridProps) {
  const coupler = couplerColumns[chosen] ?? null;
  const pair = useMemo(() => ({ tractor, coupler }), [tractor, coupler]);
  return (
    <>
      <CouplerChoice chosen={chosen} onChoose={onChoose} />
      <ShaftGrid key={chosen} pair={pair} name={couplerName(chosen)} />
    </>
  );
}

function CouplerChoice({ chosen, onChoose }: Pick<GridProps, 'chosen' | 'onChoose'>) {
  return (
    <div className="shaft-couplers" role="group" aria-label="With which coupler are the shafts tried">
      {couplerColumns.map((_, column) => (
        <button
          key={couplerName(column)}
          type="button"
          aria-pressed={column === chosen}
          onClick={() => onChoose(column)}
        >
          {couplerName(column)}
        </button>
      ))}
    </div>
  );
}
