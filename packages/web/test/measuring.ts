import { withEdits, type SetupDocument } from '@hitchwright/core/records';
import type { JSHandle, Page } from '@playwright/test';
import { documentOf, linked } from './sample.ts';
import { expect, site } from './person.ts';

/** What the tape shows of the box blade [mm]. */
export const truth: Readonly<Record<string, number>> = {
  'implement.shoulderSpan': 661,
  'implement.mastHeight': 521,
};

/** The box blade on the coupler, of which nobody has read span and mast. */
export function unread(): SetupDocument {
  const edits = Object.keys(truth).map((path) => ({ path, value: undefined }));
  return withEdits(documentOf('box blade', '35', 'U-28'), edits);
}

/** A phone, upright. */
export const phone = { width: 390, height: 844 } as const;

/** From the check, on this or another host, to the first figure. */
export async function begin(page: Page, address = site()): Promise<void> {
  await page.setViewportSize(phone);
  await page.goto(`${address}#${linked(unread())}`);
  await page.getByRole('button', { name: 'Measure step by step' }).click();
  await beginSafely(page);
  await expect(page.locator('[data-path]')).toBeVisible();
}

/** Says how the tractor stands, and begins. */
export async function beginSafely(page: Page): Promise<void> {
  await page.getByLabel('Yes, level').check();
  await page.getByRole('button', { name: 'It is safe: begin' }).click();
}

/** The field that is asked for. */
export async function askedFor(page: Page): Promise<string> {
  return (await page.locator('[data-path]').getAttribute('data-path')) ?? '';
}

/** Types a figure in whole millimetres with the keys on the page. */
export async function keyIn(page: Page, millimetres: number): Promise<void> {
  const toMillimetres = page.getByRole('button', { name: 'mm: type in mm instead' });
  if (await toMillimetres.isVisible()) await toMillimetres.click();
  for (const digit of String(millimetres))
    await page.locator('.keypad-digits').getByRole('button', { name: digit, exact: true }).click();
}

/** Reads one figure twice, between the field’s own points, and goes on. */
export async function readTwice(page: Page, millimetres: number): Promise<void> {
  await keyIn(page, millimetres);
  await page.getByRole('button', { name: 'Keep this reading' }).click();
  const ways = page.locator('.way-list .big-choice');
  await expect(ways.first().or(page.getByRole('button', { name: 'Compare' }))).toBeVisible();
  if ((await ways.count()) > 0) await ways.first().click();
  await keyIn(page, millimetres);
  await page.getByRole('button', { name: 'Compare' }).click();
  await page.getByRole('button', { name: 'Next' }).click();
}

/** Everything in one store of the device, as the page would read it. */
export function keptIn<T>(page: Page, store: string): Promise<JSHandle<T[]>> {
  return page.evaluateHandle(async (name) => {
    const known = await indexedDB.databases();
    if (!known.some((one) => one.name === 'hitchwright')) return [];
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('hitchwright');
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(new Error('the store can’t be opened'));
    });
    const all = await new Promise<unknown[]>((resolve) => {
      const request = database.transaction(name).objectStore(name).getAll();
      request.onsuccess = () => resolve(request.result as unknown[]);
    });
    database.close();
    return all;
  }, store) as Promise<JSHandle<T[]>>;
}

/** Waits until what is half typed is written down on the device: it is, a moment after each key. */
export async function draftKept(page: Page, text: string): Promise<void> {
  await expect
    .poll(async () =>
      (await keptIn<{ draft?: string }>(page, 'entries')).evaluate((all) => all.map(({ draft }) => draft)),
    )
    .toContain(text);
}
