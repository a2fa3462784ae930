import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { checkOf, unplaced } from './sample.ts';
import { expect, site, test } from './person.ts';

const states: Readonly<Record<string, () => string>> = {
  empty: () => '',
  answered: () => checkOf('box blade', '35', 'U-28'),
  side: () => checkOf('tiller', '35', 'U-28'),
  'side, long implement': () => checkOf('rotary cutter', '35', 'U-28'),
  'side, links not placed': unplaced,
  yard: () => 'yard',
  error: () => '1.nothing-good',
};

const widths = [390, 1440] as const;

async function settle(page: Page, state: string): Promise<void> {
  if (state === 'yard')
    await expect(page.getByRole('region', { name: 'Progress' })).toContainText('All worked out', { timeout: 60_000 });
  else if (state.startsWith('side')) {
    await page.getByRole('button', { name: 'Side, through the lift' }).click();
    await expect(page.locator('.lift-drawing svg, .lift-unknown').last()).toBeVisible();
  } else if (state !== 'error') await expect(page.locator('.drawing-picture svg').first()).toBeVisible();
}

for (const [state, fragment] of Object.entries(states)) {
  for (const width of widths) {
    for (const colorScheme of ['light', 'dark'] as const) {
      test(`nothing bars the way: ${state}, ${width} px, ${colorScheme}`, async ({ page }) => {
        test.setTimeout(90_000);
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

test('nothing scrolls sideways at 360 px', async ({ page }) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 360, height: 740 });
  for (const [state, fragment] of Object.entries(states)) {
    await page.goto('about:blank');
    await page.goto(site(fragment()));
    await settle(page, state);
    expect(await page.evaluate(() => document.documentElement.scrollWidth), state).toBeLessThanOrEqual(360);
  }
});

test('targets on a phone are large enough for a thumb', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await settle(page, 'side');
  const small = await page.evaluate(() =>
    [...document.querySelectorAll('button:not(.slot), summary, a, input, select')]
      .filter((target) => target.getBoundingClientRect().height > 0 && target.getBoundingClientRect().height < 56)
      .map((target) => target.textContent),
  );
  expect(small).toEqual([]);
});
