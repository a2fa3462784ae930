import { lazy, Suspense } from 'react';
import type { Route } from '../../app/route.ts';
import { hasYard } from '../../app/server/hasYard.ts';
import { SampleYardPage } from './SampleYardPage.tsx';
import '../question/question.css';
import './yard.css';

const OwnYardPage = lazy(() => import('./OwnYardPage.tsx').then(({ OwnYardPage }) => ({ default: OwnYardPage })));

/** Every implement of the yard on one tractor, with each coupler and with none: of the yard’s own records where there are some. */
export function YardPage({ route }: { readonly route: Extract<Route, { page: 'yard' | 'yardOf' }> }) {
  if (route.page === 'yard' && (!hasYard || route.tractor !== null))
    return <SampleYardPage tractorName={route.tractor} />;
  if (!hasYard) return <SampleYardPage tractorName={null} because="These pages came without the yard’s records." />;
  return (
    <Suspense fallback={<p className="waiting">Opening the yard…</p>}>
      <OwnYardPage asked={route.page === 'yard' ? null : route} />
    </Suspense>
  );
}
