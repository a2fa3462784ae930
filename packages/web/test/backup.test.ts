import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { expectOpen, looks } from './pageChecks.ts';
import { expect, test } from './person.ts';
import { startYard, type YardServer } from './yardServer.ts';

let yard: YardServer;
test.beforeEach(async () => {
  yard = await startYard();
});
/** A server that is ended waits for the connections of a browser that is still there. */
test.afterEach(async ({ page }) => {
  await page.context().close();
  await yard.stop();
});

async function names(): Promise<string[]> {
  const { items } = await yard.ask<{ items: { name: string }[] }>('GET', '/api/records?limit=1000');
  return items.map(({ name }) => name);
}

function add(kind: string, name: string): Promise<{ id: string }> {
  return yard.ask('POST', '/api/records', { kind, name });
}

async function downloaded(page: Page, name: string): Promise<Buffer> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name }).click()]);
  return readFileSync(await file.path());
}

function region(page: Page, name: string) {
  return page.getByRole('region', { name });
}

for (const link of ['Download a backup', 'Download everything as an archive'])
  test(`what comes of “${link}” takes the place of everything, once it was read and asked`, async ({ page }) => {
    await add('implement', 'Harl <script>alert(1)</script> rake');
    await page.goto(`${yard.address}#backup`);
    const kept = await downloaded(page, link);
    await add('customer', 'Ada');
    const restore = region(page, 'Bring a backup back');
    await restore.locator('input[type=file]').setInputFiles({ name: 'kept.bin', mimeType: '', buffer: kept });
    await expect(restore).toContainText('kept.bin is whole');
    await expect(restore).toContainText('holds 1 record,');
    expect(await names()).toHaveLength(2);
    await restore.getByRole('button', { name: 'Replace everything in the yard with it' }).click();
    await expect(restore).toContainText('A backup of what goes is kept');
    await restore.getByRole('button', { name: 'Yes, replace everything' }).click();
    await expect(restore).toContainText('The yard is restored. It holds 1 record,');
    expect(await names()).toEqual(['Harl <script>alert(1)</script> rake']);
    const before = await restore.locator('.keep-kept').innerText();
    expect(existsSync(join(yard.folder, before))).toBe(true);
    await restore.locator('input[type=file]').setInputFiles(join(yard.folder, before));
    await expect(restore).toContainText('holds 2 records');
  });

test('a damaged backup is refused before anything is asked', async ({ page }) => {
  await add('customer', 'Ada');
  await page.goto(`${yard.address}#backup`);
  const kept = await downloaded(page, 'Download everything as an archive');
  const restore = region(page, 'Bring a backup back');
  await restore
    .locator('input[type=file]')
    .setInputFiles({ name: 'cut.jsonl', mimeType: '', buffer: kept.subarray(0, kept.length - 40) });
  await expect(restore.getByRole('alert')).toContainText('a whole backup or archive of this program');
  await expect(restore.getByRole('button', { name: /Replace/ })).toHaveCount(0);
  expect(await names()).toEqual(['Ada']);
});

test('one kind comes as a sheet or as lines of JSON', async ({ page }) => {
  await add('customer', '=1+1');
  await page.goto(`${yard.address}#backup`);
  const take = region(page, 'Take everything elsewhere');
  await take.getByRole('combobox').selectOption('Customers');
  expect((await downloaded(page, 'as CSV')).toString('utf8')).toContain("'=1+1");
  expect((await downloaded(page, 'as XLSX')).subarray(0, 2).toString()).toBe('PK');
  expect(JSON.parse((await downloaded(page, 'as JSON')).toString('utf8'))).toMatchObject({ name: '=1+1' });
  await take.getByRole('combobox').selectOption('Customers’ machines');
  await expect(take.getByRole('link', { name: 'as CSV' })).toHaveCount(0);
});

test('the sample yard goes in and out with one click, and leaves what is the yard’s own', async ({ page }) => {
  await add('customer', 'Ada');
  await page.goto(`${yard.address}#backup`);
  const sample = region(page, 'Sample yard');
  await sample.getByRole('button', { name: 'Put the sample yard in' }).click();
  await expect(sample).toContainText(/The sample yard is in: \d+ records/);
  expect((await names()).length).toBeGreaterThan(20);
  await sample.getByRole('button', { name: 'Take the sample yard out' }).click();
  await expect(sample).toContainText(/The sample yard is out: \d+ records/);
  expect(await names()).toEqual(['Ada']);
  await expect(sample.getByRole('button', { name: 'Put the sample yard in' })).toBeVisible();
});

test('a customer is handed over, and deleted for good only once the name is typed', async ({ page }) => {
  await add('customer', 'Ada Quill');
  await add('customer', 'Bo Quill');
  await page.goto(`${yard.address}#backup`);
  const part = region(page, 'One customer');
  await part.getByRole('searchbox').fill('ada');
  await part.getByRole('button', { name: /Ada Quill/ }).click();
  const all = JSON.parse((await downloaded(page, 'Download everything of them')).toString('utf8')) as object;
  expect(all).toMatchObject({ records: [{ name: 'Ada Quill' }] });
  const forget = part.getByRole('button', { name: 'Delete for good' });
  await expect(forget).toBeDisabled();
  await part.getByLabel('Name of the customer').fill('Bo Quill');
  await expect(forget).toBeDisabled();
  await part.getByLabel('Name of the customer').fill('Ada Quill');
  await forget.click();
  await expect(part).toContainText('Deleted for good: 1 record');
  expect(await names()).toEqual(['Bo Quill']);
});

test('nothing bars the way through backup and restore, at any size and in either light', async ({ page }) => {
  test.setTimeout(90_000);
  await add('customer', 'Ada Quill');
  const archive = Buffer.from(await (await fetch(new URL('api/archive', yard.address))).arrayBuffer());
  for (const { width, colorScheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await page.goto(`${yard.address}#backup`);
    const restore = region(page, 'Bring a backup back');
    await restore.locator('input[type=file]').setInputFiles({ name: 'a.jsonl', mimeType: '', buffer: archive });
    await restore.getByRole('button', { name: /^Replace everything/ }).click();
    const part = region(page, 'One customer');
    await part.getByRole('searchbox').fill('ada');
    await part.getByRole('button', { name: /Ada Quill/ }).click();
    await expectOpen(page);
  }
});
