import { expect, site, test } from './person.ts';
import { named, yard } from './sample.ts';

test('a cell of the yard opens its check', async ({ page }) => {
  await page.goto(site('yard'));
  const cell = page.getByRole('link', { name: /box blade.*U-28.*/i }).first();
  await cell.click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    String(named(yard.implements, 'box blade')['name']),
  );
  await expect(page.getByRole('region', { name: 'Verdict' })).toContainText('Works with parts');
});

test('the yard is worked out row by row and can be stopped', async ({ page }) => {
  test.setTimeout(90_000);
  await page.goto(site('yard'));
  const progress = page.getByRole('region', { name: 'Progress' });
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(progress).toContainText('Stopped');
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(progress).toContainText('All worked out', { timeout: 60_000 });
});

test('another tractor has its own address', async ({ page }) => {
  await page.goto(site('yard'));
  const other = String(named(yard.tractors, '55')['name']);
  await page.getByRole('button', { name: String(named(yard.tractors, '35')['name']) }).click();
  await page.getByRole('option', { name: other }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(other);
  expect(decodeURIComponent(new URL(page.url()).hash)).toBe(`#yard=${other}`);
});

test('a tractor that is not in the yard is said so', async ({ page }) => {
  await page.goto(site('yard=Nobody%2099'));
  await expect(page.getByText('There is no tractor “Nobody 99”')).toBeVisible();
});

test('the drive shafts are tried on every driven implement, one coupler at a time, and it can be stopped', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await page.goto(site('yard'));
  await page.getByRole('region', { name: 'Progress' }).getByRole('button', { name: 'Stop' }).click();
  await page.getByRole('button', { name: 'Drive shafts' }).click();
  const couplers = page.getByRole('group', { name: /are the shafts tried/ });
  await couplers.getByRole('button', { name: 'No coupler' }).click();
  const table = page.getByRole('table', { name: /Which drive shaft serves/ });
  await expect(table.getByRole('columnheader')).toHaveCount(1 + yard.implements.filter(({ driven }) => driven).length);
  await expect(table.getByRole('rowheader')).toHaveCount(9);
  const progress = page.getByRole('region', { name: 'How far the shafts are' });
  const own = table.getByRole('link', { name: /^shaft of the Wickset 60-in rotary cutter for Wickset 60-in rotary/ });
  await expect(own).toContainText('serves', { timeout: 60_000 });
  await expect(own).toContainText('its own shaft');
  const long = table.getByRole('link', { name: /^shaft of the Wickset 60-in rotary cutter for Wickset 60-in tiller/ });
  await expect(long).toHaveText(/does not serve\. no: shaft .*in too long/, { timeout: 60_000 });
  await progress.getByRole('button', { name: 'Stop' }).click();
  await expect(progress).toContainText('Stopped');
  await expect(progress.getByRole('button', { name: 'Go on' })).toBeVisible();
  await own.click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Wickset 60-in rotary cutter');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('no coupler');
  await expect(page.locator('.answer', { hasText: 'Runs' })).toContainText('of overlap to spare');
});

test('on a phone each driven implement lists its shafts, those that serve first', async ({ page }) => {
  test.setTimeout(90_000);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(site('yard'));
  await page.getByRole('button', { name: 'Drive shafts' }).click();
  await page
    .getByRole('group', { name: /are the shafts tried/ })
    .getByRole('button', { name: 'No coupler' })
    .click();
  const cutter = page.locator('.shaft-list-one').first();
  await expect(cutter.locator('summary')).toContainText('1 serves', { timeout: 60_000 });
  await cutter.locator('summary').click();
  await expect(cutter.getByRole('listitem').first()).toContainText('its own shaft');
});
