import { AxeBuilder } from '@axe-core/playwright';
import type { Download, Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { checkOf, documentOf, linked } from './sample.ts';
import { expect, site, test } from './person.ts';

async function openHandOver(page: Page, fragment: string): Promise<void> {
  await page.goto(site(fragment));
  await page.getByRole('button', { name: 'Hand over' }).click();
  await expect(page.getByRole('heading', { name: 'The sheet' })).toBeVisible();
}

async function downloaded(page: Page, button: string | RegExp): Promise<Download> {
  const [file] = await Promise.all([
    page.waitForEvent('download', { timeout: 60_000 }),
    page.getByRole('button', { name: button }).click(),
  ]);
  return file;
}

/** Everything that is written in it. */
async function textOf(file: Download): Promise<string> {
  const data = new Uint8Array(readFileSync(await file.path()));
  const pdf = await getDocument({ data, verbosity: 0 }).promise;
  const pages = await Promise.all(
    Array.from({ length: pdf.numPages }, async (_, i) => (await (await pdf.getPage(i + 1)).getTextContent()).items),
  );
  const words = pages.flat().flatMap((item) => ('str' in item ? item.str.split(/\s+/) : []));
  return words.filter((word) => word !== '').join(' ');
}

test('the sheet is made in the browser, in any script that its fonts have', async ({ page }) => {
  test.setTimeout(120_000);
  const setup = documentOf('box blade', '35', 'U-28');
  const named = { ...setup, implement: { ...(setup['implement'] as object), name: 'Λεπίδα Отвал 60' } };
  await openHandOver(page, linked(named));
  await page.getByLabel('For whom').fill('Ada Brook');
  await page.getByLabel('Paper').selectOption('a4');
  const file = await downloaded(page, 'Make the sheet (PDF)');
  expect(file.suggestedFilename()).toMatch(/^sheet \d{4}-\d\d-\d\d\.pdf$/);
  const text = await textOf(file);
  expect(text).toContain('Will not hook up');
  expect(text).toContain('Read and received: Ada Brook');
  expect(text).toContain('Λεπίδα');
  expect(text).toContain('Отвал');
});

test('a drawing comes as PDF, SVG and DXF, and a view that can’t be drawn says what is missing', async ({ page }) => {
  test.setTimeout(120_000);
  await openHandOver(page, checkOf('box blade', '35', 'U-28'));
  const svg = await downloaded(page, /^SVG of the drawing/);
  expect(readFileSync(await svg.path(), 'utf8')).toContain('<svg');
  const dxf = await downloaded(page, /^DXF.*of the drawing/);
  expect(readFileSync(await dxf.path(), 'utf8')).toContain('$INSUNITS');
  expect(await textOf(await downloaded(page, /^PDF of the drawing/))).toContain('Rear view, looking forward');
  await page.locator('.hand-over').getByLabel('View').selectOption('shaft');
  await page.getByRole('button', { name: /^PDF of the drawing/ }).click();
  await expect(page.getByRole('alert')).toContainText('where a shaft drives the implement', { timeout: 30_000 });
});

test('the pin plan is drawn where moving pins cures it, and refused in words where it does not', async ({ page }) => {
  test.setTimeout(120_000);
  await openHandOver(page, checkOf('box blade', '35', 'U-28'));
  expect((await downloaded(page, /^PDF of the pin plan/)).suggestedFilename()).toMatch(/^pin plan /);
  const rented = documentOf('box blade', '35', 'U-28');
  await page.goto('about:blank');
  await openHandOver(
    page,
    linked({ ...rented, implement: { ...(rented['implement'] as object), alteration: 'rented' } }),
  );
  await page.getByRole('button', { name: /^PDF of the pin plan/ }).click();
  await expect(page.getByRole('alert')).toContainText('rented', { timeout: 30_000 });
});

test('a reply is drafted and a listing made, to be copied', async ({ page }) => {
  await openHandOver(page, checkOf('box blade', '35', 'U-28'));
  await page.getByRole('button', { name: 'Draft a reply' }).click();
  await expect(page.getByRole('textbox', { name: 'Reply' })).toHaveValue(/Works with parts\. The upper pin sits/);
  await page.getByRole('button', { name: 'Of the implement' }).click();
  await expect(page.getByRole('textbox', { name: 'HTML of the listing' })).toHaveValue(
    /<h2>Wickset 60-in box blade<\/h2>/,
  );
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy the structured data' }).click();
  await expect(page.getByRole('button', { name: 'Copied' })).toBeVisible();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toContain('"@type"');
});

for (const width of [390, 1440] as const) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`nothing bars the way to what is handed over: ${width} px, ${colorScheme}`, async ({ page }) => {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      await openHandOver(page, checkOf('box blade', '35', 'U-28'));
      await page.getByRole('button', { name: 'Draft a reply' }).click();
      await expect(page.getByRole('textbox', { name: 'Reply' })).toBeVisible();
      await page.getByRole('button', { name: 'Of the implement' }).click();
      await expect(page.getByRole('textbox', { name: 'HTML of the listing' })).toBeVisible();
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' | ')}`)).toEqual([]);
    });
  }
}
