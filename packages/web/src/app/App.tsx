import { lazy, Suspense, type ReactNode } from 'react';
import { BrokenLink } from '../features/check/BrokenLink.tsx';
import { CheckPage } from '../features/check/CheckPage.tsx';
import { routeOf, useVisit, type Route } from './route.ts';

const YardPage = lazy(() => import('../features/yard/YardPage.tsx').then(({ YardPage }) => ({ default: YardPage })));
const MeasurePages = lazy(() =>
  import('../features/measure/MeasurePages.tsx').then(({ MeasurePages }) => ({ default: MeasurePages })),
);
const RequestPages = lazy(() =>
  import('../features/request/RequestPages.tsx').then(({ RequestPages }) => ({ default: RequestPages })),
);

/** One page of the site, by the fragment of the address. */
export function App() {
  const { hash, count } = useVisit();
  return <Suspense fallback={<p className="waiting">Opening the page…</p>}>{pageAt(routeOf(hash), count)}</Suspense>;
}

function pageAt(route: Route, count: number): ReactNode {
  switch (route.page) {
    case 'check':
      return <CheckPage key={count} opened={route.document} />;
    case 'yard':
      return <YardPage key={count} tractorName={route.tractor} />;
    case 'broken':
      return <BrokenLink errors={route.errors} />;
    case 'measure':
    case 'asked':
      return <MeasurePages key={count} route={route} />;
    case 'request':
    case 'replied':
      return <RequestPages key={count} route={route} />;
  }
}
