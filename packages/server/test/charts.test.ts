import { chartHtml, chartOf, type Chart } from '@hitchwright/core/handover';
import type { YardDocument } from '@hitchwright/core/records';
import { StoreTrouble } from '@hitchwright/store';
import { describe, expect, it } from 'vitest';
import { holdCharts, mostPairings } from '../src/charts/held.ts';
import { openServer } from '../src/index.ts';
import { freshFolder, said, sample, served, until, type Refusal, type Served } from './served.ts';

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

  it('says on itself what of the yard is not in it', { timeout: 120_000 }, async () => {
    const here = await served();
    const small = {
      ...yard,
      tractors: yard.tractors.slice(0, 1),
      couplers: [],
      implements: yard.implements.slice(0, 1),
    };
    const leftOut = '3 tractors are left out. Only implements called “<rake>”.';
    const { id } = await begun(here, small, `?leftOut=${encodeURIComponent(` ${leftOut} `)}`);
    await made(here, id);
    const { notes } = await said<Chart>(here.send('GET', `/api/charts/${id}/file?format=json`));
    expect(notes).toContain(`A part of the yard. ${leftOut}`);
    const page = await (await here.send('GET', `/api/charts/${id}/file?format=html`)).text();
    expect(page).toContain('A part of the yard. 3 tractors are left out. Only implements called “&lt;rake&gt;”.');
    for (const wrong of ['', '%20%0A', 'x'.repeat(2001)]) {
      const { errors } = await said<Refusal>(here.send('POST', `/api/charts?leftOut=${wrong}`, small), 400);
      expect(errors.map(({ path }) => path)).toEqual(['query.leftOut']);
    }
  });

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

describe('a wall chart that is asked for twice under one Idempotency-Key', () => {
  const key = { 'idempotency-key': 'chart-1' };

  function asked({ send }: Served, document: object = sample, query = '', headers = key): Promise<Response> {
    return send('POST', `/api/charts${query}`, document, headers);
  }

  async function refused(response: Promise<Response>, status: number): Promise<string> {
    return (await said<Refusal>(response, status)).trouble ?? '';
  }

  it('is one chart, told as it stands now', { timeout: 120_000 }, async () => {
    const here = await served();
    const first = await asked(here, yard);
    const { id } = await said<ChartState>(first, 202);
    const done = await made(here, id);
    const again = await asked(here, yard);
    expect(again.headers.get('location')).toBe(`/api/charts/${id}`);
    expect(first.headers.get('location')).toBe(`/api/charts/${id}`);
    expect(await said(again, 202)).toEqual({ ...done, state: 'done' });
  });

  it('at the same time is begun once: the places of others stay free', async () => {
    const here = await served();
    const all = await Promise.all(Array.from({ length: 6 }, async () => said<ChartState>(asked(here), 202)));
    expect(new Set(all.map(({ id }) => id)).size).toBe(1);
    // Four have a place, and this one took one of them.
    for (let i = 0; i < 3; i += 1) await begun(here, sample);
    expect(await refused(here.send('POST', '/api/charts', sample), 503)).toBe('busy');
    // Whoever asks again needs no place.
    expect((await said<ChartState>(asked(here), 202)).id).toBe(all[0]?.id);
  });

  it('with another yard, another query or for something else is refused, and nothing is begun', async () => {
    const here = await served();
    const { id } = await said<ChartState>(asked(here), 202);
    expect(await refused(asked(here, yard), 422)).toBe('otherRequest');
    expect(await refused(asked(here, sample, '?leftOut=Only%20rakes.'), 422)).toBe('otherRequest');
    expect(await refused(here.send('POST', '/api/records', { kind: 'customer', name: 'Ada' }, key), 422)).toBe(
      'otherRequest',
    );
    await said(here.send('POST', '/api/records', { kind: 'customer', name: 'Ada' }, { 'idempotency-key': 'ada' }), 201);
    expect(await refused(asked(here, sample, '', { 'idempotency-key': 'ada' }), 422)).toBe('otherRequest');
    for (let i = 0; i < 3; i += 1) await begun(here, sample);
    expect((await said<ChartState>(here.send('GET', `/api/charts/${id}`))).state).not.toBe('stopped');
  });

  it('does not come back once it was let go of', async () => {
    const here = await served();
    const { id } = await said<ChartState>(asked(here), 202);
    await said(here.send('DELETE', `/api/charts/${id}`));
    const again = await said<Refusal>(asked(here), 409);
    expect([again.trouble, again.current]).toEqual(['conflict', { id }]);
    await said(here.send('GET', `/api/charts/${id}`), 404);
    const other = await said<ChartState>(asked(here, sample, '', { 'idempotency-key': 'chart-2' }), 202);
    expect(other.id).not.toBe(id);
  });

  it('does not come back with the next server either', async () => {
    const here = await served();
    const { store } = here;
    const { id } = await said<ChartState>(asked(here, yard), 202);
    const clock = (): string => '2026-09-15T08:00:00.000Z';
    const later = await openServer({
      store,
      folder: freshFolder(),
      site: null,
      sample: null,
      clock,
      ids: () => 'later',
    });
    const headers = { ...key, 'content-type': 'application/json' };
    const body = JSON.stringify(yard);
    const again = await said<Refusal>(fetch(`${later.address}api/charts`, { method: 'POST', body, headers }), 409);
    await later.close();
    expect(again.current).toEqual({ id });
  });

  it('is tried again where it was refused, and its place is free where its key could not be kept', async () => {
    const here = await served();
    await said(asked(here, { ...sample, cars: [] }), 400);
    const ids = [];
    for (let i = 0; i < 4; i += 1) ids.push((await begun(here, sample)).id);
    expect(await refused(asked(here), 503)).toBe('busy');
    for (const id of ids) await said(here.send('DELETE', `/api/charts/${id}`));
    const { once } = here.store.requests;
    const requests = here.store.requests as { once: typeof once };
    requests.once = async (...request) => {
      await once(...request);
      throw new StoreTrouble('full', 'no room');
    };
    for (let i = 0; i < 5; i += 1)
      expect(await refused(asked(here, sample, '', { 'idempotency-key': `full-${i}` }), 500)).toBe('full');
    requests.once = once;
    expect((await said<ChartState>(asked(here), 202)).state).toMatch(/waiting|running/);
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
