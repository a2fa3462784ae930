import type { Desk } from './desk.ts';
import { emptyApi } from './http/api.ts';
import { described } from './http/described.ts';
import { apiHeaders, gate, plainHeaders } from './http/gate.ts';
import { limits, shallow } from './http/limits.ts';
import { HttpRefusal, refusalOf, revisionOf } from './http/refusal.ts';
import { revisionTag, tagged } from './http/tags.ts';
import { answerRoutes } from './routes/answers.ts';
import { chartRoutes } from './routes/charts.ts';
import { checkRoutes } from './routes/check.ts';
import { customerRoutes } from './routes/customers.ts';
import { handOverRoutes } from './routes/handover.ts';
import { historyRoutes } from './routes/history.ts';
import { importRoutes } from './routes/imports.ts';
import { keepingRoutes } from './routes/keeping.ts';
import { mappingRoutes } from './routes/mappings.ts';
import { photoRoutes } from './routes/photos.ts';
import { readingRoutes } from './routes/readings.ts';
import { recordRoutes } from './routes/records.ts';
import { sampleRoutes } from './routes/sample.ts';
import { yardRoutes } from './routes/yard.ts';
import { site } from './site/site.ts';

/** Every route of the API. */
function routesOver(desk: Desk) {
  return emptyApi()
    .route('/api', checkRoutes(desk))
    .route('/api', handOverRoutes(desk))
    .route('/api', chartRoutes(desk))
    .route('/api', recordRoutes(desk))
    .route('/api', readingRoutes(desk))
    .route('/api', historyRoutes(desk))
    .route('/api', customerRoutes(desk))
    .route('/api', photoRoutes(desk))
    .route('/api', answerRoutes(desk))
    .route('/api', importRoutes(desk))
    .route('/api', mappingRoutes(desk))
    .route('/api', keepingRoutes(desk))
    .route('/api', sampleRoutes(desk))
    .route('/api', yardRoutes(desk));
}

/** The API as its clients see it. */
export type Api = ReturnType<typeof routesOver>;

/**
 * Everything that the server answers: the API and the pages.
 *
 * @param desk what the routes work with
 * @param pages folder of the built pages; null where none are served [path]
 */
export function appOver(desk: Desk, pages: string | null) {
  const app = emptyApi();
  app.use(plainHeaders(), gate());
  app.use('/api/*', apiHeaders(), tagged(), limits(), shallow());
  app.use('/api/*', async (c, next) => {
    await next();
    if (c.req.method !== 'GET' && c.res.status < 300) desk.recheck.wake();
  });
  app.route('/', routesOver(desk));
  let description: object | undefined;
  app.get('/api/openapi.json', (c) => c.json((description ??= described(app)), 200));
  if (pages !== null) app.use(site(pages));
  app.notFound((c) =>
    c.json(new HttpRefusal(404, { trouble: 'notFound', message: 'There is nothing here.' }).json(), 404),
  );
  app.onError((problem, c) => {
    const refusal = refusalOf(problem, c.req.header('if-match') !== undefined);
    if (refusal.trouble === 'fault' || refusal.trouble === 'store') console.error(c.req.method, c.req.path, problem);
    const revision = refusal.status === 412 ? revisionOf(refusal.current) : null;
    if (revision !== null) c.header('etag', revisionTag(revision));
    return c.json(refusal.json(), refusal.status);
  });
  return app;
}
