import type { Route } from '../../app/route.ts';
import { NewRecordPage } from './NewRecordPage.tsx';
import { RecordPage } from './RecordPage.tsx';
import { RecordsPage } from './RecordsPage.tsx';
import '../dimensions/dimensions.css';
import './records.css';

/** The lists of records, one record, and a new one. */
export function RecordPages({ route }: { route: Extract<Route, { page: 'records' | 'record' | 'newRecord' }> }) {
  if (route.page === 'record') return <RecordPage key={route.id} id={route.id} />;
  return route.page === 'newRecord' ? <NewRecordPage kind={route.kind} /> : <RecordsPage kind={route.kind} />;
}
