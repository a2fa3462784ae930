import { useMemo, type ReactNode } from 'react';
import { yardHash } from '../../app/route.ts';
import { exampleNames, nameOf, recordNamed, sampleYard } from './sampleYard.ts';
import { Yard } from './Yard.tsx';
import { YardHead } from './YardHead.tsx';
import { sampleInView } from './yardInView.ts';

interface SampleYardPageProps {
  /** Null for that of the worked example. */
  readonly tractorName: string | null;
  /** Why it is the sample that is shown. */
  readonly because?: ReactNode;
}

/** The invented yard that comes with the site. */
export function SampleYardPage({ tractorName, because }: SampleYardPageProps) {
  const name = tractorName ?? exampleNames.tractor;
  const view = useMemo(() => {
    const tractor = recordNamed('tractor', name);
    return tractor === null ? null : sampleInView(tractor);
  }, [name]);
  return (
    <>
      <YardHead
        name={nameOf(view?.tractor, name)}
        only="samples"
        onChoose={({ record }) => (location.hash = yardHash(nameOf(record, '')))}
      />
      <main>
        <p className="yard-banner">
          <span className="stamp">Sample yard</span> Every machine in it is invented. {because}
        </p>
        {view === null ? <NoTractor name={name} /> : <Yard view={view} />}
      </main>
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
