import { chartHtml, chartOf } from '@hitchwright/core/handover';
import type { YardDocument } from '@hitchwright/core/records';
import type { Download, Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { made, ownYard } from './ownRecords.ts';
import { expectOpen, looks } from './pageChecks.ts';
import { expect, site, test } from './person.ts';
import { yard as sample } from './sample.ts';
import { startYard, type YardServer } from './yardServer.ts';

let own: YardServer;

test.beforeAll(async () => {
  own = await startYard();
  await ownYard(own);
});
test.afterAll(() => own.stop());

async function openChart(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('button', { name: 'Wall chart' }).click();
  await expect(page.getByRole('heading', { name: 'Wall chart' })).toBeVisible();
}

function chartOn(page: Page) {
  return page.getByRole('dialog', { name: 'Wall chart' });
}

async function downloaded(page: Page, button: string): Promise<Download> {
  const [file] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    chartOn(page).getByRole('button', { name: button }).click(),
  ]);
  return file;
}

async function textOf(file: Download): Promise<string> {
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(await file.path())), verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: pdf.numPages }, async (_, i) => (await (await pdf.getPage(i + 1)).getTextContent()).items),
  );
  return pages
    .flat()
    .map((item) => ('str' in item ? item.str : ''))
    .join('');
}

test('the chart of the yard’s own records is the one that the server’s yard gives, as a page and on paper', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await openChart(page, `${own.address}#yard`);
  await chartOn(page).getByLabel('Tractors').selectOption('every');
  await chartOn(page).getByRole('button', { name: 'Make the chart' }).click();
  await expect(chartOn(page).getByText(/^8 pairings: /)).toBeVisible({ timeout: 60_000 });
  const html = await downloaded(page, 'HTML page');
  const [, date = ''] = /^wall chart (\d{4}-\d\d-\d\d)\.html$/.exec(html.suggestedFilename()) ?? [];
  const { items } = await own.ask<{ items: { id: string }[] }>('GET', '/api/records?kind=tractor');
  const { yard } = await own.ask<{ yard: YardDocument }>('GET', `/api/yard?tractor=${items[0]?.id ?? ''}&every=true`);
  const reading = chartOf(yard, { system: 'us', date });
  if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
  expect(readFileSync(await html.path(), 'utf8')).toBe(chartHtml(reading.chart));
  await chartOn(page).getByLabel('Paper').selectOption('a4');
  const text = (await textOf(await downloaded(page, 'PDF to print'))).replace(/\s/g, '');
  for (const { tractor, rows } of reading.chart.tables)
    for (const words of [tractor, ...rows.flatMap(({ cells }) => cells.map(({ verdict }) => verdict))])
      expect(text).toContain(words.replace(/\s/g, ''));
});

test('a chart of a part of the yard says so itself, and another choice lets go of it', async ({ page }) => {
  test.setTimeout(120_000);
  const wide = await startYard();
  await ownYard(wide);
  for (let i = 0; i < 8; i += 1)
    await made(wide, { kind: 'coupler', name: `Gable ${i}`, fields: { kind: 'uFrame', category: '1' } });
  await openChart(page, `${wide.address}#yard`);
  await chartOn(page).getByRole('button', { name: 'Make the chart' }).click();
  const state = chartOn(page).getByText(/^18 pairings: .*Only the first 8 couplers, by name\.$/);
  await expect(state).toBeVisible({ timeout: 60_000 });
  const html = await downloaded(page, 'HTML page');
  expect(readFileSync(await html.path(), 'utf8')).toContain('A part of the yard. Only the first 8 couplers, by name.');
  expect((await textOf(await downloaded(page, 'PDF to print'))).replace(/\s/g, '')).toContain('Onlythefirst8couplers');
  await chartOn(page).getByLabel('Tractors').selectOption('every');
  await expect(chartOn(page).getByRole('button', { name: 'PDF to print' })).toHaveCount(0);
  await expect(state).toHaveCount(0);
  await wide.stop();
});

test('it says how far it is and can be stopped; nothing half done stays', async ({ page }) => {
  await openChart(page, site('yard'));
  await chartOn(page).getByLabel('Tractors').selectOption('every');
  await chartOn(page).getByRole('button', { name: 'Make the chart' }).click();
  const all = sample.tractors.length * sample.implements.length * (1 + sample.couplers.length);
  const state = chartOn(page).getByRole('status');
  await expect(state).toHaveText(new RegExp(`^[1-9]\\d* of ${all}$`));
  await expect(chartOn(page).getByRole('progressbar')).toBeVisible();
  await chartOn(page).getByRole('button', { name: 'Stop' }).click();
  await expect(state).toHaveText(new RegExp(`^Stopped at \\d+ of ${all}\\. Nothing was kept\\.$`));
  const stopped = await state.textContent();
  await page.waitForTimeout(2500);
  expect(await state.textContent()).toBe(stopped);
  await expect(chartOn(page).getByRole('button', { name: 'PDF to print' })).toHaveCount(0);
  await expect(chartOn(page).getByRole('button', { name: 'Make the chart' })).toBeEnabled();
});

test('the page is never held up while it is made', async ({ page }) => {
  await openChart(page, site('yard'));
  await page.evaluate(() => {
    const seen = { longest: 0 };
    Object.assign(globalThis, { seen });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) seen.longest = Math.max(seen.longest, duration);
    }).observe({ type: 'longtask' });
  });
  await chartOn(page).getByRole('button', { name: 'Make the chart' }).click();
  await expect(chartOn(page).getByRole('status')).toHaveText(/^[1-9]\d of 85$/, { timeout: 45_000 });
  const longest = await page.evaluate(() => (globalThis as unknown as { seen: { longest: number } }).seen.longest);
  expect(longest).toBeLessThan(500);
});

test('without a signal it is made and printed all the same', async ({ page }) => {
  test.setTimeout(300_000);
  await page.goto(site('yard'));
  await expect(page.getByText('Works without a signal now')).toBeVisible({ timeout: 60_000 });
  await page.context().setOffline(true);
  await page.getByRole('button', { name: 'Wall chart' }).click();
  await chartOn(page).getByRole('button', { name: 'Make the chart' }).click();
  await expect(chartOn(page).getByText(/^85 pairings: /)).toBeVisible({ timeout: 240_000 });
  const text = await textOf(await downloaded(page, 'PDF to print'));
  expect(text).toContain('Wickset 60-in box blade');
  expect(text).toContain('A sample yard');
});

for (const { width, colorScheme } of looks) {
  test(`nothing bars the way to the chart: ${width} px, ${colorScheme}`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await openChart(page, `${own.address}#yard`);
    await expectOpen(page);
    await chartOn(page).getByRole('button', { name: 'Make the chart' }).click();
    await expect(chartOn(page).getByRole('heading', { name: 'Print or keep it' })).toBeVisible({ timeout: 60_000 });
    await expectOpen(page);
  });
}
