import { lazy, Suspense } from 'react';
import { BrokenLink } from '../features/check/BrokenLink.tsx';
import { CheckPage } from '../features/check/CheckPage.tsx';
import { routeOf, useVisit } from './route.ts';

const YardPage = lazy(() => import('../features/yard/YardPage.tsx').then(({ YardPage }) => ({ default: YardPage })));

/** One page of the site, by the fragment of the address. */
export function App() {
  const { hash, count } = useVisit();
  const route = routeOf(hash);
  if (route.page === 'yard') {
    return (
      <Suspense fallback={<p className="waiting">Opening the yard…</p>}>
        <YardPage key={count} tractorName={route.tractor} />
      </Suspense>
    );
  }
  if (route.page === 'broken') return <BrokenLink errors={route.errors} />;
  return <CheckPage key={count} opened={route.document} />;
}
