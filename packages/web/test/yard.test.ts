import { expect, site, test } from './person.ts';
import { named, yard } from './sample.ts';

test('a cell of the yard opens its check', async ({ page }) => {
  await page.goto(site('yard'));
  const cell = page.getByRole('link', { name: /box blade.*U-28.*/i }).first();
  await cell.click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    String(named(yard.implements, 'box blade')['name']),
  );
  await expect(page.getByRole('region', { name: 'Verdict' })).toContainText('Hook-up and lift');
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
