import type { Page } from '@playwright/test';
import { expectOpen, looks } from './pageChecks.ts';
import { expect, test } from './person.ts';
import { startYard, type YardServer } from './yardServer.ts';

let yard: YardServer;
/** Ids of the sample yard by name. */
let ids: ReadonlyMap<string, string>;
let customer: string;

test.beforeEach(async () => {
  yard = await startYard();
  await yard.ask('POST', '/api/sample');
  const { items } = await yard.ask<{ items: { id: string; name: string }[] }>('GET', '/api/records?limit=1000');
  ids = new Map(items.map(({ id, name }) => [name, id]));
  ({ id: customer } = await yard.ask<{ id: string }>('POST', '/api/records', {
    kind: 'customer',
    name: 'Ada <i>Quill</i>',
  }));
});
/** A server that is ended waits for the connections of a browser that is still there. */
test.afterEach(async ({ page }) => {
  await page.context().close();
  await yard.stop();
});

function idOf(name: string): string {
  const id = ids.get(name);
  if (id === undefined) throw new Error(`The sample yard has no ${name}.`);
  return id;
}

interface Saved {
  readonly id: string;
  readonly verdict: string;
}

function save(implement: string, title: string, of?: string): Promise<Saved> {
  const refs = { tractor: idOf('Ostrey 35'), implement: idOf(implement) };
  return yard.ask('POST', '/api/answers', { title, refs, ...(of === undefined ? {} : { customer: of }) });
}

/** A ball that no pin goes into any more: what worked does not, once it is checked again. */
async function narrowBall(): Promise<void> {
  const readings = [{ field: 'lowerBallBore', leaf: { value: '15 mm', who: 'Ann' }, grade: 'measured', pin: true }];
  await yard.ask('POST', `/api/records/${idOf('Ostrey 35')}/readings`, { readings });
}

function turned(page: Page, title: string) {
  return page
    .getByRole('region', { name: /came out otherwise/ })
    .getByRole('listitem')
    .filter({ hasText: title });
}

test('what a check changed is listed first, with what it said and says, until it is dealt with', async ({ page }) => {
  expect((await save('Wickset 60-in box blade', 'Blade for Ada', customer)).verdict).toBe('works');
  await save('Harl 72-in landscape rake', 'Rake for the yard');
  await page.goto(`${yard.address}#answers`);
  await expect(page.getByRole('listitem')).toHaveCount(2);
  await expect(page.getByRole('region', { name: /came out otherwise/ })).toHaveCount(0);
  await narrowBall();
  const blade = turned(page, 'Blade for Ada');
  await expect(blade).toContainText('Ada <i>Quill</i>', { timeout: 30_000 });
  await expect(blade).toContainText(/It saidWorks/);
  await expect(blade).toContainText(/Now it saysWill not workThe lower pin is .*too thick for the ball/);
  await expect(page.getByRole('region', { name: 'Checking again' })).toContainText(
    '2 answers, of which 2 came out otherwise',
  );
  await blade.getByRole('button', { name: /Dealt with.*Blade for Ada/ }).click();
  await expect(blade).toHaveCount(0);
  await expect(turned(page, 'Rake for the yard')).toBeVisible();
  const { items } = await yard.ask<{ items: unknown[] }>('GET', '/api/answers?changed=true');
  expect(items).toHaveLength(1);
});

test('dealt with by somebody else meanwhile is told, and nothing is lost', async ({ page }) => {
  const { id } = await save('Wickset 60-in box blade', 'Blade for Ada', customer);
  await narrowBall();
  await page.goto(`${yard.address}#answers`);
  const blade = turned(page, 'Blade for Ada');
  await expect(blade).toBeVisible({ timeout: 30_000 });
  const { revision } = await yard.ask<{ revision: number }>('GET', `/api/answers/${id}`);
  await page.route(
    '**/settle',
    async (route) => {
      await yard.ask('POST', `/api/answers/${id}/settle`, undefined, { 'if-match': `"${revision}"` });
      await route.continue();
    },
    { times: 1 },
  );
  await blade.getByRole('button', { name: /Dealt with/ }).click();
  await expect(blade).toHaveCount(0);
});

test('the list is found by words, customer and verdict, and keeps only what is in sight in the page', async ({
  page,
}) => {
  test.setTimeout(120_000);
  for (let i = 0; i < 130; i += 1) await save('Tarn log splitter', `Splitter ${i}`);
  await save('Harl 84-in rear blade', 'Blade of Ada', customer);
  await page.goto(`${yard.address}#answers`);
  const list = page.getByRole('list', { name: 'Saved answers' });
  await expect(list.getByRole('listitem').first()).toContainText('Blade of Ada');
  expect(await list.getByRole('listitem').count()).toBeLessThan(40);
  await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' }));
  await expect(async () => {
    await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' }));
    await expect(page.getByText('Splitter 0', { exact: true })).toBeVisible({ timeout: 500 });
  }).toPass();
  await page.getByRole('searchbox', { name: 'Search by title' }).fill('splitter 77');
  await expect(list.getByRole('listitem')).toHaveCount(1);
  await page.getByRole('searchbox', { name: 'Search by title' }).fill('');
  await page.getByRole('combobox', { name: 'Verdict' }).selectOption('Will not work');
  await expect(list.getByRole('listitem')).toHaveText([/Blade of Ada/]);
  await page.getByRole('combobox', { name: 'Verdict' }).selectOption('any');
  await page.getByRole('searchbox', { name: 'Customer', exact: true }).fill('quill');
  await page.getByRole('button', { name: /Quill/ }).click();
  await expect(list.getByRole('listitem')).toHaveText([/Blade of Ada/]);
  await page.getByRole('combobox', { name: 'Verdict' }).selectOption('Works');
  await expect(page.getByText('No saved answer is like that.')).toBeVisible();
});

test('an answer shows its verdicts over time and what it rests on, and opens as a check', async ({ page }) => {
  const { id } = await save('Wickset 60-in box blade', 'Blade for Ada', customer);
  await page.goto(`${yard.address}#answer=${id}`);
  await expect(page.getByText(/It comes to the same/)).toBeVisible({ timeout: 20_000 });
  await narrowBall();
  await expect
    .poll(async () => (await yard.ask<{ checks: unknown[] }>('GET', `/api/answers/${id}`)).checks.length)
    .toBe(2);
  await page.reload();
  const time = page.getByRole('region', { name: 'What it said over time' }).getByRole('listitem');
  await expect(time).toHaveText([/Will not work/, /Works/]);
  const rests = page.getByRole('region', { name: 'What it rests on' });
  await rests.locator('summary', { hasText: 'Ostrey 35' }).click();
  await expect(rests).toContainText(/lower ball bore.*\(15.mm\) \(measured by Ann/);
  await page.getByRole('button', { name: 'Dealt with' }).click();
  await expect(page.getByRole('button', { name: 'Dealt with' })).toHaveCount(0);
  await page.getByRole('link', { name: 'Open it as a check' }).click();
  await expect(page.locator('.verdict')).toContainText('Will not hook up', { timeout: 30_000 });
});

test('says where today’s answer is not what is saved', async ({ page }) => {
  const { id } = await save('Wickset 60-in box blade', 'Blade for Ada', customer);
  await page.route(`**/api/answers/${id}`, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, json: { ...((await response.json()) as object), verdict: 'measureFirst' } });
  });
  await page.goto(`${yard.address}#answer=${id}`);
  await expect(page.getByText('Today it comes out otherwise than what is saved')).toBeVisible({ timeout: 20_000 });
  await page.goto(`${yard.address}#answer=nothing`);
  await expect(page.getByRole('alert')).toContainText('There is no such answer');
});

test('nothing bars the way through saved answers, at any size and in either light', async ({ page }) => {
  test.setTimeout(120_000);
  const { id } = await save('Wickset 60-in box blade', 'Blade for Ada', customer);
  await narrowBall();
  await expect
    .poll(async () => (await yard.ask<{ checks: unknown[] }>('GET', `/api/answers/${id}`)).checks.length)
    .toBe(2);
  for (const { width, colorScheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await page.goto(`${yard.address}#answers`);
    await expect(turned(page, 'Blade for Ada')).toContainText(/It saidWorks/);
    await expectOpen(page);
    await page.goto(`${yard.address}#answer=${id}`);
    await expect(page.getByText(/It comes to the same/)).toBeVisible({ timeout: 20_000 });
    await page.getByRole('region', { name: 'What it rests on' }).locator('summary').first().click();
    await expectOpen(page);
  }
});
