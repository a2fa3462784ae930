import { chartHtml, chartOf, type Chart } from '@hitchwright/core/handover';
import type { YardDocument } from '@hitchwright/core/records';
import { describe, expect, it } from 'vitest';
import { holdCharts, mostPairings } from '../src/charts/held.ts';
import { said, sample, served, until, type Refusal, type Served } from './served.ts';

interface ChartState {
  readonly id: string;
  readonly state: string;
  readonly progress: { readonly done: number; readonly total: number };
  readonly message: string | null;
}

/** A yard of few pairings. */
const yard: YardDocument = {
  ...sample,
  tractors: sample.tractors.slice(0, 2),
  couplers: sample.couplers.slice(0, 1),
  implements: sample.implements.slice(2, 4),
};

function begun({ send }: Served, document: object, query = ''): Promise<ChartState> {
  return said<ChartState>(send('POST', `/api/charts${query}`, document), 202);
}

function made({ send }: Served, id: string): Promise<ChartState> {
  return until(
    () => said<ChartState>(send('GET', `/api/charts/${id}`)),
    ({ state }) => state === 'done' || state === 'failed',
  );
}

function chartHere(document: YardDocument, tractor?: string): Chart {
  const reading = chartOf(document, { system: 'metric', date: '2026-11-26', ...(tractor && { tractor }) });
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  return reading.chart;
}

describe('a wall chart over HTTP', () => {
  it(
    'is made in the background, says how far it is, and is the one that core makes',
    { timeout: 120_000 },
    async () => {
      const here = await served();
      const answer = await here.send('POST', '/api/charts?units=metric&date=2026-11-26', yard);
      const one = await said<ChartState>(answer, 202);
      expect(answer.headers.get('location')).toBe(`/api/charts/${one.id}`);
      expect(one.progress).toEqual({ done: 0, total: 8 });
      expect(await made(here, one.id)).toEqual({ ...one, state: 'done', progress: { done: 8, total: 8 } });
      const file = (format: string): Promise<Response> =>
        here.send('GET', `/api/charts/${one.id}/file?format=${format}&paper=a4`);
      const chart = chartHere(yard);
      expect(await said(file('json'))).toEqual({ hitchwright: 1, ...chart });
      const page = await file('html');
      expect(page.headers.get('content-type')).toBe('text/html');
      expect(page.headers.get('content-disposition')).toBe('attachment; filename="wall chart 2026-11-26.html"');
      expect(await page.text()).toBe(chartHtml(chart));
      const pdf = await file('pdf');
      expect(pdf.headers.get('content-type')).toBe('application/pdf');
      const bytes = new Uint8Array(await pdf.arrayBuffer());
      expect(new TextDecoder().decode(bytes.slice(0, 5))).toBe('%PDF-');
      expect(new Uint8Array(await (await file('pdf')).arrayBuffer())).toEqual(bytes);
    },
  );

  it('is of one tractor where one is named', { timeout: 120_000 }, async () => {
    const here = await served();
    const tractor = String(yard.tractors[1]?.['name']);
    const { id, progress } = await begun(here, yard, `?units=metric&date=2026-11-26&tractor=${tractor}`);
    expect(progress.total).toBe(4);
    await made(here, id);
    expect(await said(here.send('GET', `/api/charts/${id}/file?format=json`))).toMatchObject({
      tables: chartHere(yard, tractor).tables,
    });
  });

  it('can be looked at and asked for other things while it is made; stopped, nothing of it stays', async () => {
    const here = await served();
    const { id } = await begun(here, sample);
    const before = await said<Refusal & { message: string }>(
      here.send('GET', `/api/charts/${id}/file?format=pdf`),
      409,
    );
    expect(before.message).toMatch(/So far \d+ of 255 are judged\./);
    const waiting = await begun(here, yard);
    expect(waiting.state).toBe('waiting');
    const check = { hitchwright: 1, tractor: { category: '1' }, implement: { category: '1' } };
    await said(here.send('POST', '/api/check?full=false', check));
    const { progress } = await said<ChartState>(here.send('GET', `/api/charts/${id}`));
    expect(progress.done).toBeLessThan(progress.total);
    expect((await said<ChartState>(here.send('DELETE', `/api/charts/${id}`))).state).toBe('stopped');
    await said(here.send('GET', `/api/charts/${id}`), 404);
    // The one that waited has its turn as soon as the other is stopped.
    expect((await made(here, waiting.id)).state).toBe('done');
    expect((await said<ChartState>(here.send('DELETE', `/api/charts/${waiting.id}`))).state).toBe('done');
    await said(here.send('GET', `/api/charts/${waiting.id}/file?format=json`), 404);
  }, 120_000);

  it('is refused with every error of the yard, and where it would take too long', async () => {
    const { send } = await served();
    const refused = (body: unknown, query = ''): Promise<Refusal> =>
      said<Refusal>(send('POST', `/api/charts${query}`, body), 400);
    const errors = async (body: unknown, query = ''): Promise<string[]> =>
      (await refused(body, query)).errors.map(({ code, path }) => `${path} ${code}`);
    expect(await errors({ hitchwright: 1, tractors: {}, implements: [3] })).toEqual([
      'tractors wrong-type',
      'couplers missing',
      'implements.0 wrong-type',
    ]);
    const wrong = { ...yard, implements: [{ name: 'x', mastHeight: 19 }], parts: [{ kind: 'bolt' }] };
    expect(await errors(wrong)).toEqual(['implements.0.mastHeight out-of-range', 'parts.0.kind not-a-choice']);
    expect(await errors(yard, '?tractor=nobody')).toEqual(['tractors not-a-choice']);
    expect(await errors({ ...yard, cars: [] })).toEqual(['cars unknown-key']);
    const large = { ...sample, implements: Array.from({ length: 200 }, () => yard.implements[0]) };
    expect(large.tractors.length * 200 * (1 + sample.couplers.length)).toBeGreaterThan(mostPairings);
    expect(await errors(large)).toEqual(['implements too-large']);
  });

  it('waits in a short line only', async () => {
    const here = await served();
    const ids = [];
    for (let i = 0; i < 4; i += 1) ids.push((await begun(here, sample)).id);
    const busy = await said<Refusal>(here.send('POST', '/api/charts', sample), 503);
    expect(busy.trouble).toBe('busy');
    await said(here.send('DELETE', `/api/charts/${ids[3] ?? ''}`));
    await begun(here, sample);
  });

  it('stays text whatever the machines are called', { timeout: 120_000 }, async () => {
    const here = await served();
    const name = '<script>alert(1)</script>';
    const { id } = await begun(here, { ...yard, tractors: [{ ...yard.tractors[0], name }], couplers: [] });
    await made(here, id);
    const page = await here.send('GET', `/api/charts/${id}/file?format=html`);
    expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(await page.text()).not.toContain('<script');
  });
});

describe('charts that are held', () => {
  const cell = { outcome: 'works', verdict: 'Works', reason: '', measure: [] } as const;
  const options = { system: 'us', date: '2026-11-26' } as const;

  function holding(chartCell: () => Promise<typeof cell>) {
    let [now, given] = [0, 0];
    return {
      pass: (ms: number) => void (now += ms),
      charts: holdCharts({
        assessors: { chartCell },
        clock: () => new Date(now).toISOString(),
        ids: () => String((given += 1)),
      }),
    };
  }

  it('are forgotten when nobody looks at them for an hour', async () => {
    const { charts, pass } = holding(() => Promise.resolve(cell));
    const { id } = charts.begin(yard, options);
    await until(
      () => Promise.resolve(charts.get(id).state),
      (state) => state === 'done',
    );
    pass(3_500_000);
    charts.begin(yard, options);
    expect(charts.get(id).state).toBe('done');
    pass(3_700_000);
    charts.begin(yard, options);
    expect(() => charts.get(id)).toThrow();
  });

  it('give their place to others once nobody asks about them', () => {
    const { charts, pass } = holding(() => new Promise(() => undefined));
    const [first, ...others] = Array.from({ length: 4 }, () => charts.begin(yard, options));
    expect(() => charts.begin(yard, options)).toThrow(/Too many charts/);
    pass(130_000);
    for (const { id } of others) charts.get(id);
    expect(charts.begin(yard, options).state).not.toBe('stopped');
    expect([first?.state, ...others.map(({ state }) => state)]).not.toContain('done');
    expect(first?.state).toBe('stopped');
    expect(others.filter(({ state }) => state === 'stopped')).toEqual([]);
  });

  it('say which pairing broke, and the next one is made all the same', async () => {
    let asked = 0;
    const { charts } = holding(() =>
      (asked += 1) === 3 ? Promise.reject(new Error('broken')) : Promise.resolve(cell),
    );
    const [one, other] = [charts.begin(yard, options), charts.begin(yard, options)];
    await until(
      () => Promise.resolve(other.state),
      (state) => state === 'done',
    );
    expect(one).toMatchObject({ state: 'failed', chart: null, progress: { done: 2, total: 8 } });
    expect(one.message).toContain('Pairing 3 of 8');
    expect(() => charts.made(one.id)).toThrow(/Pairing 3 of 8/);
  });

  it('judge nothing more once they are stopped, and their results go nowhere', async () => {
    let asked = 0;
    const { charts } = holding(() => {
      if ((asked += 1) === 2) charts.close();
      return Promise.resolve(cell);
    });
    const [one, other] = [charts.begin(yard, options), charts.begin(yard, options)];
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect([one.state, one.chart, other.state, asked]).toEqual(['stopped', null, 'stopped', 2]);
  });
});
