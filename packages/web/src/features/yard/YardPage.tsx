import type { SetupDocument } from '@hitchwright/core/records';
import { useState } from 'react';
import { Header } from '../../app/Header.tsx';
import { useMedia } from '../../app/media.ts';
import { yardHash } from '../../app/route.ts';
import { SearchPanel } from '../question/SearchPanel.tsx';
import { exampleNames, nameOf, recordNamed, sampleYard } from './sampleYard.ts';
import { couplerColumns, useYard } from './useYard.ts';
import { YardList } from './YardList.tsx';
import { YardSummary } from './YardSummary.tsx';
import { YardTable } from './YardTable.tsx';
import '../question/question.css';
import './yard.css';

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
          <span className="stamp">Sample yard</span> Every machine in it is invented. Hook-up and lift: whether it runs
          and stays upright is not checked yet.
        </p>
        {tractor === null ? <NoTractor name={tractorName ?? ''} /> : <Yard tractor={tractor} />}
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

function Yard({ tractor }: { readonly tractor: SetupDocument }) {
  const yard = useYard(tractor);
  const [chosen, setChosen] = useState(Math.min(1, couplerColumns.length - 1));
  const isPhone = useMedia('(max-width: 699px)');
  const View = isPhone ? YardList : YardTable;
  return (
    <section className="sheet yard" aria-label={`Yard on the ${nameOf(tractor, 'tractor')}`}>
      <View rows={yard.rows} chosen={chosen} onChoose={setChosen} />
      <YardSummary yard={yard} chosen={chosen} />
    </section>
  );
}
