import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { checkOf, linked, tillerWith, unplaced } from './sample.ts';
import { expect, site, test } from './person.ts';
import { startYard } from './yardServer.ts';

const states: Readonly<Record<string, () => string>> = {
  empty: () => '',
  answered: () => checkOf('box blade', '35', 'U-28'),
  side: () => checkOf('tiller', '35', 'U-28'),
  'side, long implement': () => checkOf('rotary cutter', '35', 'U-28'),
  'side, links not placed': unplaced,
  'side, front axle short': () => checkOf('bale spear', '35', ''),
  'side, shaft to be cut': () => linked(tillerWith('medium shaft')),
  'drive shafts of the yard': () => 'yard',
  yard: () => 'yard',
  error: () => '1.nothing-good',
};

const widths = [390, 1440] as const;

async function settle(page: Page, state: string): Promise<void> {
  if (state === 'drive shafts of the yard') return settleShafts(page);
  if (state === 'yard')
    await expect(page.getByRole('region', { name: 'Progress' })).toContainText('All worked out', { timeout: 150_000 });
  else if (state.startsWith('side')) {
    await page.getByRole('button', { name: 'Side, through the lift' }).click();
    await expect(page.locator('.lift-drawing svg, .lift-unknown').last()).toBeVisible();
  } else if (state !== 'error') await expect(page.locator('.drawing-picture svg').first()).toBeVisible();
}

/** Some answers in, the rest stopped: every kind of cell stands in the first row. */
async function settleShafts(page: Page): Promise<void> {
  await page.getByRole('region', { name: 'Progress' }).getByRole('button', { name: 'Stop' }).click();
  await page.getByRole('button', { name: 'Drive shafts' }).click();
  await page
    .getByRole('group', { name: /are the shafts tried/ })
    .getByRole('button', { name: 'No coupler' })
    .click();
  const progress = page.getByRole('region', { name: 'How far the shafts are' });
  await expect(progress).toContainText(/(?:1[2-9]|[2-9]\d) of/, { timeout: 150_000 });
  await progress.getByRole('button', { name: 'Stop' }).click();
  const first = page.locator('.shaft-list-one summary').first();
  if (await first.isVisible()) await first.click();
}

for (const [state, fragment] of Object.entries(states)) {
  for (const width of widths) {
    for (const colorScheme of ['light', 'dark'] as const) {
      test(`nothing bars the way: ${state}, ${width} px, ${colorScheme}`, async ({ page }) => {
        test.setTimeout(180_000);
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme });
        await page.goto(site(fragment()));
        await settle(page, state);
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' | ')}`)).toEqual(
          [],
        );
      });
    }
  }
}

test('the open dimensions and the open search bar nobody’s way', async ({ page }) => {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  await expect(page.getByLabel('mast height', { exact: true })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.locator('[data-machine=tractor]').click();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});

test('a question that is only begun bars nobody’s way', async ({ page }) => {
  for (const [width, colorScheme] of [
    [390, 'dark'],
    [820, 'light'],
    [1440, 'light'],
  ] as const) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await page.goto(site(linked({ hitchwright: 1, implement: { category: '1' } })));
    await expect(page.getByLabel('mast height', { exact: true })).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});

test('the open dimensions of the drive bar nobody’s way', async ({ page }) => {
  for (const [width, colorScheme] of [
    [1440, 'light'],
    [390, 'dark'],
  ] as const) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await page.goto(site(checkOf('tiller', '35', '')));
    await page.getByRole('button', { name: 'Dimensions' }).filter({ visible: true }).first().click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await page
      .getByRole('group', { name: 'Whose dimensions' })
      .getByRole('button', { name: /drive shaft/ })
      .click();
    await expect(page.getByLabel('closed length', { exact: true })).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});

test('nothing scrolls sideways at 360 px', async ({ page }) => {
  test.setTimeout(360_000);
  await page.setViewportSize({ width: 360, height: 740 });
  for (const [state, fragment] of Object.entries(states)) {
    await page.goto('about:blank');
    await page.goto(site(fragment()));
    await settle(page, state);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), state).toBeLessThanOrEqual(360);
  }
});

test('however much can be done with a check, a phone reaches all of it and the bar below', async ({ page }) => {
  const yard = await startYard();
  try {
    await yard.ask('POST', '/api/sample');
    await page.goto(yard.address);
    for (const [machine, words] of [
      ['implement', 'box blade'],
      ['tractor', 'Ostrey 35'],
    ] as const) {
      await page.locator(`[data-machine=${machine}]`).click();
      await page.keyboard.type(words);
      await page.getByRole('group', { name: 'Yard’s records' }).getByRole('option').first().click();
    }
    await expect(page.locator('.drawing-picture svg').first()).toBeVisible();
    for (const width of [360, 390, 480, 820]) {
      await page.setViewportSize({ width, height: 844 });
      const actions = page.getByRole('banner').locator('.strip-actions > :is(a, button)').filter({ visible: true });
      await expect(actions.filter({ hasText: 'Save the answer' })).toHaveCount(1);
      for (const action of await actions.all()) {
        const box = await action.boundingBox();
        expect(box?.x).toBeGreaterThanOrEqual(0);
        expect((box?.x ?? width) + (box?.width ?? 0)).toBeLessThanOrEqual(width);
      }
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      if (width < 700) await expect(page.getByRole('navigation', { name: 'This check' })).toBeInViewport({ ratio: 1 });
    }
    await expectClearlyOff(page);
  } finally {
    await page.context().close();
    await yard.stop();
  }
});

/** A button that can't be pressed yet doesn't look as if it could. */
async function expectClearlyOff(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Save the answer' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('textbox').first().fill('');
  const save = dialog.locator('.button-solid');
  await expect(save).toBeDisabled();
  await expect(save).toHaveCSS('border-style', 'dashed');
  await expect(save).toHaveCSS('cursor', 'default');
  await expect(save).toHaveCSS('background-color', 'rgba(0, 0, 0, 0)');
}

test('targets on a phone are large enough for a thumb', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const fragment of [checkOf('box blade', '35', 'U-28'), linked(tillerWith('medium shaft')), unplaced()]) {
    await page.goto('about:blank');
    await page.goto(site(fragment));
    await settle(page, 'side');
    expect(await smallTargets(page)).toEqual([]);
  }
  await page.goto(site(checkOf('tiller', '35', '')));
  await page.getByRole('navigation').getByRole('button', { name: 'Dimensions' }).click();
  await page
    .getByRole('group', { name: 'Whose dimensions' })
    .getByRole('button', { name: /drive shaft/ })
    .click();
  const shelf = page.locator('.shaft-shelf label');
  await expect(shelf).toHaveCount(10);
  for (const label of await shelf.all()) expect((await label.boundingBox())?.height).toBeGreaterThanOrEqual(56);
});

/** What is pressed and lower than a thumb needs. */
function smallTargets(page: Page): Promise<(string | null)[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('button:not(.slot), summary, a, input, select')]
      .filter((target) => target.getBoundingClientRect().height > 0 && target.getBoundingClientRect().height < 56)
      .map((target) => target.textContent),
  );
}
