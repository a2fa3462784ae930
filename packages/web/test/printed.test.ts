import { printedLinkOf } from '@hitchwright/core/exchange';
import { documentOf } from './sample.ts';
import { expect, site, test } from './person.ts';

test('the code of a sheet opens its setup, and says whether today’s answer is still the one that was printed', async ({
  page,
}) => {
  const document = documentOf('box blade', '35', 'U-28');
  await page.goto(site(printedLinkOf(document, { date: '2026-11-26', verdict: 'withParts' })));
  await expect(page.getByRole('note').filter({ hasText: 'You came from a sheet' })).toContainText('works with parts');
  await page.goto('about:blank');
  await page.goto(site(printedLinkOf(document, { date: '2026-09-14', verdict: 'works' })));
  const differs = page.getByRole('alert').filter({ hasText: 'out of date' });
  await expect(differs).toContainText('it said “Works”');
  await expect(differs).toContainText('today the same figures give “Works with parts”');
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  await page.getByLabel('mast height', { exact: true }).fill('18 1/2');
  await expect(differs).toHaveCount(0);
});
