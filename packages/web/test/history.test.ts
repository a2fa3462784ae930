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

interface Made {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  readonly inUse: Readonly<Record<string, { readonly id: string }>>;
}

const by = (who: string, title: string) => ({
  'hitchwright-who': encodeURIComponent(who),
  'hitchwright-title': encodeURIComponent(title),
});

function rake(name: string): Promise<Made> {
  const readings = [{ field: 'mastHeight', leaf: { value: '18 in', who: 'Ann' }, grade: 'measured' }];
  const draft = { kind: 'implement', name, fields: { category: '1' }, readings };
  return yard.ask('POST', '/api/records', draft, by('Ann', `${name} was written down`));
}

function change({ id, revision }: Made, json: object, who: string, title: string): Promise<Made> {
  return yard.ask('PATCH', `/api/records/${id}`, json, { ...by(who, title), 'if-match': `"${revision}"` });
}

async function open(page: Page, title: string) {
  const group = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: title, exact: true }) });
  await group.getByRole('button', { name: /^Open/ }).click();
  return group;
}

test('groups of changes say who, when and what, every change before and after in the person’s units', async ({
  page,
}) => {
  const made = await rake('Harl rake');
  const json = {
    name: 'Harl <b>rake</b>',
    fields: { category: '2' },
    add: [{ field: 'mastHeight', leaf: '460 mm', grade: 'maker' }],
  };
  await change(made, json, 'Jo', 'Read again');
  await page.goto(`${yard.address}#history`);
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(['Read again', 'Harl rake was written down']);
  const group = await open(page, 'Read again');
  await expect(group).toContainText('Jo');
  await expect(group).toContainText('1 record');
  await expect(group.locator('dl')).toContainText(/nameHarl rake.*became.*Harl <b>rake<\/b>/);
  await expect(group.locator('dl')).toContainText(/category 1.*became.*category 2/);
  await expect(group.locator('dl')).toContainText(
    /mast height181⁄818 and 1\/8.in \(460.mm\) \(from the maker\) was written down/,
  );
  await page.getByRole('button', { name: /Switch to millimetres first/ }).click();
  await expect(group.locator('dl')).toContainText(/460.mm \(18.*in\)/);
  expect(await page.locator('main b').filter({ hasText: 'rake' }).count()).toBe(0);
});

test('a change without a title says which record was made, changed or removed, and what of it', async ({ page }) => {
  const readings = [{ field: 'mastHeight', leaf: '18 in', grade: 'measured' }];
  const draft = { kind: 'implement', name: 'Harl rake', fields: { category: '1' }, readings };
  const first = await yard.ask<Made>('POST', '/api/records', draft);
  const match = ({ revision }: Made) => ({ 'if-match': `"${revision}"` });
  const json = {
    fields: { category: '2', note: 'bent' },
    add: [{ field: 'mastHeight', leaf: '460 mm', grade: 'maker' }],
  };
  const second = await yard.ask<Made>('PATCH', `/api/records/${first.id}`, json, match(first));
  const third = await yard.ask<Made>('DELETE', `/api/records/${first.id}`, undefined, match(second));
  await yard.ask('POST', `/api/records/${first.id}/restore`, undefined, match(third));
  await page.goto(`${yard.address}#history`);
  await expect(page.getByRole('heading', { level: 2 })).toHaveText([
    'Harl rake was brought back',
    'Harl rake was removed',
    /^Harl rake was changed: (?=.*mast height)(?=.*note)(?=.*category)/,
    'Harl rake was made',
  ]);
  await page.goto(`${yard.address}#record=${first.id}`);
  await page.getByText('What was changed').click();
  await expect(page.getByRole('heading', { level: 2, name: 'Harl rake was removed' })).toBeVisible();
});

test('a change is taken back after a second look, and that can be taken back, too', async ({ page }) => {
  const made = await rake('Harl rake');
  await change(made, { fields: { category: '2' } }, 'Jo', 'Category mended');
  const category = async (): Promise<unknown> =>
    (await yard.ask<{ fields: { category: string } }>('GET', `/api/records/${made.id}`)).fields.category;
  await page.goto(`${yard.address}#history`);
  await page.getByLabel('Who writes').fill('Ida');
  const group = await open(page, 'Category mended');
  await group.getByRole('button', { name: 'Take it back' }).click();
  await expect(group.getByRole('button', { name: 'No' })).toBeFocused();
  await page.keyboard.press('Escape');
  expect(await category()).toBe('2');
  await group.getByRole('button', { name: 'Take it back' }).click();
  await group.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect(page.getByRole('heading', { name: 'Taken back: Category mended' })).toBeVisible();
  await expect(group.first()).toContainText(/Taken back|taken back since/);
  expect(await category()).toBe('1');
  const undo = await open(page, 'Taken back: Category mended');
  await expect(undo).toContainText('Ida');
  await undo.getByRole('button', { name: 'Do it again' }).click();
  await undo.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect.poll(category).toBe('2');
});

test('an undo that would overwrite somebody’s later change is refused, and says whose', async ({ page }) => {
  const made = await rake('Harl rake');
  const second = await change(made, { fields: { category: '2' } }, 'Jo', 'Category mended');
  await change(second, { fields: { category: '1N' } }, 'Ann Quill', 'Category mended again');
  await page.goto(`${yard.address}#history`);
  const group = await open(page, 'Category mended');
  await group.getByRole('button', { name: 'Take it back' }).click();
  await group.getByRole('button', { name: 'Yes, take it back' }).click();
  const refused = page.getByRole('alert');
  await expect(refused).toContainText('Nothing was taken back');
  await expect(refused).toContainText(/Ann Quill changed the category.* of Harl rake on/);
  const { fields } = await yard.ask<{ fields: unknown }>('GET', `/api/records/${made.id}`);
  expect(fields).toMatchObject({ category: '1N' });
  await expectOpen(page);
});

test('many groups come page by page, and by their kind', async ({ page }) => {
  for (let i = 0; i < 55; i += 1)
    await yard.ask('POST', '/api/records', { kind: 'customer', name: `C ${i}` }, by('Ann', `Customer ${i}`));
  await yard.ask('POST', '/api/sample', undefined, by('Ann', 'The sample yard'));
  await page.goto(`${yard.address}#history`);
  await expect(page.getByRole('heading', { level: 2 })).toHaveCount(50);
  await page.getByRole('button', { name: 'Earlier ones' }).click();
  await expect(page.getByRole('heading', { level: 2 })).toHaveCount(56);
  await page.getByRole('button', { name: 'Imports' }).click();
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(['The sample yard']);
});

test('nothing bars the way through the history, at any size and in either light', async ({ page }) => {
  test.setTimeout(90_000);
  await yard.ask('POST', '/api/sample', undefined, by('Ann', 'The sample yard'));
  for (const { width, colorScheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await page.goto(`${yard.address}#history`);
    const group = await open(page, 'The sample yard');
    await expect(group.getByRole('heading', { level: 3 }).first()).toBeVisible();
    await group.getByRole('button', { name: 'Take it back' }).click();
    await expectOpen(page);
  }
});
