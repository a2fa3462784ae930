import type { Route } from '../../app/route.ts';
import '../measure/measure.css';
import { RepliedPage } from './RepliedPage.tsx';
import { RequestPage } from './RequestPage.tsx';

/** The pages of whoever asks for readings and gets them back. */
export function RequestPages({ route }: { readonly route: Extract<Route, { page: 'request' | 'replied' }> }) {
  return route.page === 'request' ? <RequestPage document={route.document} /> : <RepliedPage opened={route.reply} />;
}
