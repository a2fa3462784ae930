import { useQuery } from '@tanstack/react-query';
import { useMemo, useState, type ReactNode } from 'react';
import { yardOfHash } from '../../app/route.ts';
import { Trouble } from '../../app/server/Trouble.tsx';
import { YardQueries } from '../../app/server/YardQueries.tsx';
import {
  fetchYard,
  firstTractor,
  recordsInView,
  type FetchedYard,
  type TractorAsked,
  type YardAsked,
} from './ownYard.ts';
import { SampleYardPage } from './SampleYardPage.tsx';
import { nameOf } from './sampleYard.ts';
import { Yard } from './Yard.tsx';
import { YardFilter } from './YardFilter.tsx';
import { YardHead } from './YardHead.tsx';

/** The yard of the records; the sample yard where there is no tractor among them. */
export function OwnYardPage({ asked }: { readonly asked: TractorAsked | null }) {
  return (
    <YardQueries>
      <OwnYard asked={asked} />
    </YardQueries>
  );
}

/** What is worked through stays as it was fetched: it would begin anew with every figure that somebody changes meanwhile. */
const asItWas = { staleTime: Infinity, gcTime: 0, refetchOnWindowFocus: false, refetchOnReconnect: false } as const;

function OwnYard({ asked }: { readonly asked: TractorAsked | null }) {
  const first = useQuery({ queryKey: ['yard', 'first'], queryFn: firstTractor, enabled: asked === null, ...asItWas });
  const tractor = asked ?? first.data;
  if (tractor === null) return <SampleYardPage tractorName={null} because={noTractor} />;
  return tractor === undefined ? (
    <Fetching name="tractor" problem={first.error} onAgain={() => void first.refetch()} />
  ) : (
    <YardAround tractor={tractor} />
  );
}

const noTractor = (
  <>
    There is no tractor in the yard’s records yet. <a href="#new=tractor">New tractor</a>
  </>
);

function YardAround({ tractor }: { readonly tractor: TractorAsked }) {
  const [asked, setAsked] = useState<YardAsked>({ tractor, implements: '', couplers: '', cursor: null });
  const [shown, setShown] = useState(asked);
  const page = useYardPart(shown);
  const next = useYardPart(asked);
  // What is shown stays until what was asked for is there: where it can’t be had, something else can still be asked for.
  if (asked !== shown && next.data !== undefined) setShown(asked);
  const again = (): void => void next.refetch();
  if (page.data === undefined) return <Fetching name="tractor" problem={next.error} onAgain={again} />;
  return (
    <FetchedPage key={JSON.stringify(shown)} asked={shown} fetched={page.data} onAsk={setAsked}>
      {next.data === undefined ? <Awaited problem={next.error} onAgain={again} /> : null}
    </FetchedPage>
  );
}

function useYardPart(asked: YardAsked) {
  return useQuery({ queryKey: ['yard', asked], queryFn: () => fetchYard(asked, false), ...asItWas });
}

interface FetchedPageProps {
  readonly asked: YardAsked;
  readonly fetched: FetchedYard;
  readonly onAsk: (asked: YardAsked) => void;
  /** What stands above it while something else is fetched. */
  readonly children: ReactNode;
}

function FetchedPage({ asked, fetched, onAsk, children }: FetchedPageProps) {
  const view = useMemo(() => recordsInView(asked, fetched), [asked, fetched]);
  const isSample = view.yard.sample === true;
  return (
    <>
      <OwnHead name={nameOf(view.tractor, 'tractor')} />
      <main>
        <p className="yard-banner">
          <span className="stamp">{isSample ? 'Sample yard' : 'Your yard'}</span>{' '}
          {isSample
            ? 'Every machine in it is invented.'
            : 'Its records with the values in use. Figures are changed in the records.'}
        </p>
        {children}
        <YardFilter asked={asked} fetched={fetched} onAsk={onAsk} />
        {view.yard.implements.length === 0 ? (
          <NoImplement isSearched={asked.implements !== ''} />
        ) : (
          <Yard view={view} />
        )}
      </main>
    </>
  );
}

function OwnHead({ name }: { readonly name: string }) {
  return (
    <YardHead
      name={name}
      only="records"
      onChoose={(_, picked) => {
        if (picked !== null) location.hash = yardOfHash(picked.id, picked.state);
      }}
    />
  );
}

interface AwaitedProps {
  readonly problem: unknown;
  readonly onAgain: () => void;
}

/** What is said until a part of the yard is there. */
function Awaited({ problem, onAgain }: AwaitedProps) {
  return problem === null ? (
    <p className="waiting">Fetching the yard…</p>
  ) : (
    <Trouble problem={problem} onAgain={onAgain} />
  );
}

interface FetchingProps extends AwaitedProps {
  readonly name: string;
}

/** The page until the yard is there. */
function Fetching({ name, problem, onAgain }: FetchingProps) {
  return (
    <>
      <OwnHead name={name} />
      <main>
        <Awaited problem={problem} onAgain={onAgain} />
      </main>
    </>
  );
}

function NoImplement({ isSearched }: { readonly isSearched: boolean }) {
  return (
    <section className="sheet sheet-message" aria-label="No implement">
      <p className="because">
        {isSearched ? 'No implement is called so.' : 'There is no implement in the yard’s records yet.'}
      </p>
      {isSearched ? null : (
        <p className="button-row">
          <a className="button" href="#new=implement">
            New implement
          </a>
          <a className="button" href="#import">
            Import a sheet
          </a>
        </p>
      )}
    </section>
  );
}
