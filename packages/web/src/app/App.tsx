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
const RecordPages = lazy(() =>
  import('../features/records/RecordPages.tsx').then(({ RecordPages }) => ({ default: RecordPages })),
);
const ImportPage = lazy(() =>
  import('../features/imports/ImportPage.tsx').then(({ ImportPage }) => ({ default: ImportPage })),
);
const AnswersPage = lazy(() =>
  import('../features/answers/AnswersPage.tsx').then(({ AnswersPage }) => ({ default: AnswersPage })),
);
const AnswerPage = lazy(() =>
  import('../features/answers/AnswerPage.tsx').then(({ AnswerPage }) => ({ default: AnswerPage })),
);
const HistoryPage = lazy(() =>
  import('../features/history/HistoryPage.tsx').then(({ HistoryPage }) => ({ default: HistoryPage })),
);
const BackupPage = lazy(() =>
  import('../features/keeping/BackupPage.tsx').then(({ BackupPage }) => ({ default: BackupPage })),
);

/** One page of the site, by the fragment of the address. */
export function App() {
  const { hash, count } = useVisit();
  return <Suspense fallback={<p className="waiting">Opening the page…</p>}>{pageAt(routeOf(hash), count)}</Suspense>;
}

function pageAt(route: Route, count: number): ReactNode {
  switch (route.page) {
    case 'check':
      return <CheckPage key={count} opened={route.document} printed={route.printed} />;
    case 'yard':
    case 'yardOf':
      return <YardPage key={count} route={route} />;
    case 'broken':
      return <BrokenLink errors={route.errors} />;
    case 'measure':
    case 'asked':
      return <MeasurePages key={count} route={route} />;
    case 'request':
    case 'replied':
      return <RequestPages key={count} route={route} />;
    case 'records':
    case 'record':
    case 'newRecord':
      return <RecordPages key={count} route={route} />;
    case 'import':
      return <ImportPage key={count} id={route.id} />;
    case 'answers':
      return <AnswersPage key={count} />;
    case 'answer':
      return <AnswerPage key={count} id={route.id} />;
    case 'history':
      return <HistoryPage key={count} />;
    case 'backup':
      return <BackupPage key={count} />;
  }
}
