import type { Route } from '../../app/route.ts';
import { AskedPage } from './AskedPage.tsx';
import { KeptPage } from './KeptPage.tsx';
import { MeasurePage } from './MeasurePage.tsx';

/** The pages of whoever holds the tape. */
export function MeasurePages({ route }: { readonly route: Extract<Route, { page: 'measure' | 'asked' }> }) {
  if (route.page === 'asked') return <AskedPage request={route.request} />;
  return route.id === null ? <KeptPage /> : <MeasurePage id={route.id} />;
}
