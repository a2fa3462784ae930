import { chosenIn } from '@hitchwright/core/records';
import { linkOf, readLink } from '@hitchwright/core/exchange';
import type { Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { inUnits } from '../src/features/check/inUnits.ts';
import { checkOf } from './sample.ts';
import { expect, site, test } from './person.ts';
import { made, ownYard } from './ownRecords.ts';
import { startYard } from './yardServer.ts';

const verdict = (page: Page) => page.getByRole('region', { name: 'Verdict' });

/** Parts of the cures that the address of the page counts on. */
function countedIn(page: Page): (string | null)[] {
  const reading = readLink(new URL(page.url()).hash);
  return reading.ok ? chosenIn(reading.document).map(({ part }) => part) : [];
}

async function countOnPlate(page: Page): Promise<void> {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await page.getByRole('button', { name: /^Apply this cure.*Upper-pin plate/ }).click();
  await expect(verdict(page)).toContainText('Shown with: Upper-pin plate');
  await expect(verdict(page).getByRole('heading')).toHaveText('Works with parts');
  await expect.poll(() => countedIn(page)).toEqual(['upper-pin plate with a hole at 18 in']);
}

test('a cure that is applied is counted on wherever the answer goes, and the machine stays as it is', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await countOnPlate(page);
  await page.getByRole('button', { name: 'Hand over' }).click();
  await page.getByRole('button', { name: 'Draft a reply' }).click();
  const reply = page.getByRole('textbox', { name: 'Reply' });
  await expect(reply).toHaveValue(/Works with parts\. The upper pin sits .* too high for the top hook\./, {
    timeout: 60_000,
  });
  await expect(reply).toHaveValue(/- Upper-pin plate with a hole at 18 in\..* \(counted on\)/);
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the setup file' }).click(),
  ]);
  const saved = JSON.parse(readFileSync(await file.path(), 'utf8')) as Record<string, Record<string, unknown>>;
  expect(saved['implement']?.['mastHeight']).toMatchObject({ value: 521 });
  await page.goto(site(''));
  await page.getByLabel('Open a setup file').setInputFiles(await file.path());
  await expect(verdict(page)).toContainText('Shown with: Upper-pin plate');
  await expect.poll(() => countedIn(page)).toEqual(['upper-pin plate with a hole at 18 in']);
});

test('a file that is no setup is refused by what is wrong with it', async ({ page }) => {
  await page.goto(site(''));
  const open = async (text: string): Promise<void> =>
    page
      .getByLabel('Open a setup file')
      .setInputFiles({ name: 'setup.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await open('{"hitchwright":1,"tractor":{},"implement":{"mastHeight":19}}');
  await expect(page.getByText('Expected 200–1200 mm, got 19. Was it typed in inches?')).toBeVisible();
  await open('a shopping list');
  await expect(page.getByText(/Expected a setup in JSON, got a shopping list/)).toBeVisible();
  await expect(page.getByRole('heading', { name: /Example/ })).toBeVisible();
});

test('it is still counted on after a reload, and the way back leads to what was before it', async ({ page }) => {
  await countOnPlate(page);
  await page.reload();
  await expect(verdict(page)).toContainText('Shown with: Upper-pin plate');
  await page.goBack();
  await expect(verdict(page)).toContainText('too high for the top hook');
  await expect(verdict(page)).not.toContainText('Shown with');
  await page.goForward();
  await expect(verdict(page)).toContainText('Shown with: Upper-pin plate');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(verdict(page)).toContainText('too high for the top hook');
  await expect.poll(() => countedIn(page)).toEqual([]);
});

test('what a cure sets keeps its meaning when the units are switched', () => {
  const edits = (length: unknown, mast: unknown) => [
    { path: 'shaft', value: { name: '21', closedLength: { value: length } } },
    { path: 'implement.mastHeight', value: mast },
  ];
  const nothing = { price: null, amount: null, count: 1, returnable: true, altersMachine: false };
  const part = { kind: 'part', part: '18', on: 'shaft', ...nothing };
  expect(inUnits({ chosen: [{ ...part, edits: edits('21', '18 1/2') }] }, 'metric')).toEqual({
    units: 'metric',
    chosen: [{ ...part, edits: edits('21 in', '18 1/2 in') }],
  });
});

test('a question made of the yard’s records can be saved after a reload too', async ({ page }) => {
  const yard = await startYard();
  await yard.ask('POST', '/api/sample');
  const { items } = await yard.ask<{ items: { id: string; name: string }[] }>('GET', '/api/records?limit=1000');
  await page.goto(yard.address);
  for (const [machine, name] of [
    ['implement', 'Wickset 60-in box blade'],
    ['tractor', 'Ostrey 35'],
  ] as const) {
    await page.locator(`[data-machine=${machine}]`).click();
    await page.locator('.search-field').fill(name);
    await page.locator(`#choice-record-${items.find((one) => one.name === name)?.id ?? ''}`).click();
    await expect(page.locator(`[data-machine=${machine}]`)).toHaveText(name);
  }
  await expect(page.getByRole('button', { name: 'Save the answer' })).toBeVisible();
  await expect.poll(() => new URL(page.url()).hash.length).toBeGreaterThan(100);
  await page.waitForTimeout(400);
  await page.reload();
  await expect(verdict(page)).toContainText('Works');
  await expect(page.getByRole('button', { name: 'Save the answer' })).toBeVisible();
  await yard.stop();
});

test('what was typed into a question is kept as records, and can be picked then', async ({ page }) => {
  const yard = await startYard();
  const typed = {
    hitchwright: 1,
    units: 'us',
    tractor: { name: 'Brook 30', category: '1', lowerBallBore: '0.88 in' },
    implement: { category: '1', mastHeight: { value: '18', plusMinus: '1/16', tool: 'tape' } },
  };
  await page.goto(`${yard.address}#${linkOf(typed)}`);
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  const dialog = page.getByRole('dialog', { name: 'Keep it in the records' });
  await expect(dialog.getByLabel('Tractor: its name')).toHaveValue('Brook 30');
  await expect(dialog.getByRole('button', { name: 'Keep it' }).first()).toBeDisabled();
  await dialog.getByLabel('Implement: its name').fill('Harl rake');
  await dialog.getByRole('button', { name: 'Keep it' }).first().click();
  await expect(dialog.getByRole('status')).toContainText('Kept.');
  const { items } = await yard.ask<{ items: { id: string; name: string }[] }>('GET', '/api/records?kind=implement');
  expect(items.map(({ name }) => name)).toEqual(['Harl rake']);
  const rake = await yard.ask<{ readings: unknown[] }>('GET', `/api/records/${items[0]?.id ?? ''}`);
  expect(rake.readings).toMatchObject([{ field: 'mastHeight', leaf: { value: '18 in' }, grade: 'measured' }]);
  await dialog.getByRole('link', { name: 'Open the record' }).click();
  await expect(page.getByLabel('Implement: Harl rake')).toBeVisible();
  await yard.stop();
});

test('where a coupler does not do, the others of one’s own yard are tried, and one is looked at', async ({ page }) => {
  const yard = await startYard();
  await ownYard(yard);
  await made(yard, {
    kind: 'coupler',
    name: 'Tall frame',
    fields: { kind: 'uFrame', category: '1' },
    readings: [{ field: 'topHookHeight', leaf: { value: '24 in', plusMinus: '1/16 in' }, grade: 'measured' }],
  });
  await made(yard, {
    kind: 'implement',
    name: 'Low rake',
    fields: { category: '1', mounting: 'threePoint' },
    readings: [{ field: 'mastHeight', leaf: { value: '18 in', plusMinus: '1/16 in' }, grade: 'measured' }],
  });
  await page.goto(yard.address);
  for (const [machine, name] of [
    ['implement', 'Low rake'],
    ['tractor', 'Brook 30'],
    ['coupler', 'Tall frame'],
  ] as const) {
    await page.locator(`[data-machine=${machine}]`).click();
    await page.locator('.search-field').fill(name);
    await page.getByRole('option', { name: `${name} of the yard` }).click();
    await expect(page.locator(`[data-machine=${machine}]`)).toHaveText(name);
  }
  await expect(verdict(page)).toContainText('Will not');
  await page.getByRole('button', { name: /Take Brook frame: measure first/ }).click();
  await expect(page.locator('[data-machine=coupler]')).toHaveText('Brook frame');
  await expect(verdict(page)).not.toContainText('Will not');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.locator('[data-machine=coupler]')).toHaveText('Tall frame');
  await yard.stop();
});
