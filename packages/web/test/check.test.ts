import { linkOf } from '@hitchwright/core/exchange';
import type { Page } from '@playwright/test';
import { checkOf, valueIn } from './sample.ts';
import { expect, site, test } from './person.ts';

function verdict(page: Page) {
  return page.getByRole('region', { name: 'Verdict' });
}

/** The words of a verdict, once there is one. */
const answered = /^(?:Works|Works with parts|Measure first|Will not (?:hook up|run|lift|stay upright))$/;

async function openDimensions(page: Page): Promise<void> {
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
}

test('a first visit shows an empty question and a worked example that says it is one', async ({ page }) => {
  await page.goto(site());
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Will the');
  const example = page.getByRole('region', { name: /^Example/ });
  await expect(example.getByRole('heading', { name: 'Works with parts' })).toBeVisible();
  await expect(example.locator('svg[role=img]')).toBeVisible();
});

test('from an empty page to an answer takes at most eight taps and keys', async ({ page }) => {
  await page.goto(site());
  let actions = 0;
  const tap = async (name: RegExp, role: 'button' | 'option'): Promise<void> => {
    actions += 1;
    await page.getByRole(role, { name }).first().click();
  };
  const key = async (name: string): Promise<void> => {
    actions += 1;
    await page.keyboard.press(name);
  };
  await tap(/choose the implement/, 'button');
  await tap(/box blade/i, 'option');
  await tap(/choose the tractor/, 'button');
  await key('3');
  await key('5');
  await key('Enter');
  await expect(verdict(page).getByRole('heading')).toHaveText(answered);
  expect(actions).toBeLessThanOrEqual(8);
});

test('a tractor and an implement known only by category are answered from what is typed', async ({ page }) => {
  await page.goto(site());
  await page.locator('[data-machine=implement]').click();
  await page.keyboard.type('cat 1');
  await page.keyboard.press('Enter');
  await page.locator('[data-machine=tractor]').click();
  await page.keyboard.type('1, 35 hp');
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-machine=tractor]')).toHaveText('category 1 tractor');
  await expect(verdict(page).getByRole('heading')).toContainText('Measure first');
  await expect.poll(() => valueIn(page.url(), 'tractor.enginePower')).toBe('35 hp');
});

test('the box blade on the coupler does not go on as it stands, and the upper pin is named', async ({ page }) => {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await expect(verdict(page).getByRole('heading')).toHaveText('Works with parts');
  await expect(verdict(page)).toContainText(/upper pin/i);
  await expect(verdict(page)).toContainText(/limits? not checked/);
});

test('the tiller without a coupler works: it runs, lifts and stays upright with so much to spare', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', '')));
  await expect(verdict(page).getByRole('heading')).toHaveText('Works');
  await expect(page.locator('.answer', { hasText: 'Runs' })).toContainText(/in \(\d+\smm\) of overlap to spare/);
  await expect(page.locator('.answer', { hasText: 'Lifts' })).toContainText(/lb \(\d+\skg\) to spare/);
  await expect(page.locator('.answer', { hasText: 'Stays upright' })).toContainText(/lb \(\d+\skg\) to spare in front/);
  await expect(page.getByText('not checked yet', { exact: true })).toHaveCount(0);
});

test('an auger on the top-link bracket will not lift high enough, and the answer says by how much', async ({
  page,
}) => {
  await page.goto(site(checkOf('auger', '35', '')));
  await expect(verdict(page).getByRole('heading')).toContainText('Will not lift');
  await expect(page.locator('.answer', { hasText: 'Lifts' })).toContainText(/no: lifts .* too low/);
});

test('the unmeasured flail says what to measure and where it decides', async ({ page }) => {
  await page.goto(site(checkOf('flail', '35', 'U-28')));
  await expect(verdict(page).getByRole('heading')).toContainText('Measure first');
  await expect(page.getByRole('region', { name: 'Measure first' })).toContainText(/about \d+ min/);
  await expect(page.getByRole('region', { name: 'Measure first' })).toContainText('No need to measure');
});

test('19 in the mast height asks about inches, keeps what was typed and the last good answer', async ({ page }) => {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await page.getByRole('button', { name: /^Units/ }).click();
  await openDimensions(page);
  await expect(verdict(page).getByRole('heading')).toHaveText(answered);
  const before = await verdict(page).getByRole('heading').textContent();
  const field = page.getByLabel('mast height', { exact: true });
  await field.fill('19');
  await expect(page.getByText('Was it typed in inches?')).toBeVisible();
  await expect(field).toHaveValue('19');
  await expect(verdict(page)).toContainText('Older answer');
  await expect(verdict(page).getByRole('heading')).toHaveText(before ?? '');
  await field.fill('19 in');
  await expect(page.getByText('Was it typed in inches?')).toBeHidden();
  await expect(verdict(page)).not.toContainText('Older answer');
});

test('a lower mast typed in changes the verdict, and the address carries it', async ({ page }) => {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await openDimensions(page);
  await expect(verdict(page)).toContainText(/upper pin sits/i);
  const address = page.url();
  await page.getByLabel('mast height', { exact: true }).fill('18 in');
  await expect(verdict(page)).not.toContainText(/upper pin sits/i);
  await expect.poll(() => page.url()).not.toBe(address);
});

test('the keyboard alone asks, answers and gives focus back', async ({ page }) => {
  await page.goto(site());
  await page.locator('[data-machine=implement]').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog').getByRole('combobox')).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.locator('[data-machine=implement]')).toBeFocused();
  await page.keyboard.press('Enter');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await expect(page.locator('[data-machine=implement]')).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog').getByRole('combobox')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(verdict(page).getByRole('heading')).toHaveText(answered);
});

test('a word pressed at once after its search was closed opens it again', async ({ page }) => {
  await page.goto(site());
  await page.locator('[data-machine=implement]').click();
  await expect(page.getByRole('combobox')).toBeFocused();
  // The page has told itself of the first press before the second; the browser tells of the closed dialog after both.
  await page.evaluate(async () => {
    document.querySelector<HTMLElement>('dialog .quiet')?.click();
    for (let i = 0; i < 10; i += 1) await Promise.resolve();
    document.querySelector<HTMLElement>('[data-machine=implement]')?.click();
  });
  await page.waitForTimeout(300);
  await expect(page.getByRole('combobox')).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.locator('[data-machine=implement]')).toBeFocused();
});

test('the units are switched in one tap and remembered', async ({ page }) => {
  await page.goto(site());
  const units = page.getByRole('button', { name: /^Units/ });
  await expect(units).toContainText('in (mm)');
  await units.click();
  await page.reload();
  await expect(units).toContainText('mm (in)');
});

test('a copied link shows the same in another browser', async ({ page, chrome }) => {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await openDimensions(page);
  await page.getByLabel('mast height', { exact: true }).fill('23 7/8 in');
  await expect(verdict(page)).toContainText(/upper pin sits 5/i);
  await expect.poll(() => valueIn(page.url(), 'implement.mastHeight.value')).toBe('23 7/8 in');
  const shown = await verdict(page).textContent();
  const other = await (await chrome.newContext()).newPage();
  await other.goto(page.url());
  await expect(verdict(other)).toHaveText(shown ?? '');
  await other.context().close();
});

test('typing the dimensions of the first machine begins at once, and no example stands in the way', async ({
  page,
}) => {
  await page.goto(site());
  await page.locator('[data-machine=implement]').click();
  await page.getByRole('option', { name: 'Type its dimensions' }).click();
  const height = page.getByLabel('mast height', { exact: true });
  await expect(height).toBeVisible();
  await expect(page.getByRole('region', { name: /^Example/ })).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'Now pick the tractor' })).toBeVisible();
  await height.fill('18 1/2');
  await expect(page.getByRole('group', { name: /^mast height/ })).toContainText('18 and 1/2 in (470 mm)');
  await page.locator('[data-machine=tractor]').click();
  await page.keyboard.type('35');
  await page.keyboard.press('Enter');
  await expect(verdict(page).getByRole('heading')).toHaveText(answered);
  await expect(height).toHaveValue('18 1/2');
});

test('at a desk everything under the drawing can be seen and pressed', async ({ page }) => {
  for (const [width, height] of [
    [1440, 900],
    [1366, 720],
    [1300, 1700],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.goto('about:blank');
    await page.goto(site(checkOf('box blade', '35', 'U-28')));
    const buttons = page.locator('.sheet-left .cures button');
    await expect(buttons.first()).toBeVisible();
    for (const button of await buttons.all()) {
      const isOnTop = await button.evaluate((one) => {
        one.scrollIntoView({ block: 'center', behavior: 'instant' });
        const { left, top, width, height } = one.getBoundingClientRect();
        return one.contains(document.elementFromPoint(left + width / 2, top + height / 2));
      });
      expect(isOnTop, `${await button.textContent()} at ${width} × ${height}`).toBe(true);
    }
  }
});

test('where the drawing stays in sight, what scrolls past it lies under it', async ({ page }) => {
  await page.setViewportSize({ width: 1300, height: 1700 });
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  const views = page.locator('.views');
  await expect(views).toHaveCSS('position', 'sticky');
  await expect(page.locator('.axles .figure').first()).toBeVisible();
  const foreign = await views.evaluate((box) => {
    const figure = document.querySelector('.axles .figure');
    if (figure === null) throw new Error('no figure to scroll under the drawing');
    scrollTo({ top: scrollY + figure.getBoundingClientRect().top - 300, behavior: 'instant' });
    const { left, top } = figure.getBoundingClientRect();
    const lies = document.elementFromPoint(left + 4, top + 4);
    return { top: box.getBoundingClientRect().top, isUnder: box.contains(lies) };
  });
  expect(foreign).toEqual({ top: 0, isUnder: true });
});

test('the view that shows the misfit opens, and follows it until one is chosen', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', '')));
  await expect(verdict(page).getByRole('heading')).toHaveText('Works');
  const rear = page.getByRole('button', { name: 'Rear', exact: true });
  const side = page.getByRole('button', { name: 'Side, through the lift' });
  await expect(rear).toHaveAttribute('aria-pressed', 'true');
  await openDimensions(page);
  await page
    .getByRole('group', { name: 'Whose dimensions' })
    .getByRole('button', { name: /drive shaft/ })
    .click();
  await page.getByRole('radio', { name: /medium shaft/ }).check();
  await expect(page.locator('.because')).toContainText('too long');
  await expect(side).toHaveAttribute('aria-pressed', 'true');
  await rear.click();
  await page.getByRole('radio', { name: /shaft of the Wickset 60-in tiller/ }).check();
  await expect(verdict(page).getByRole('heading')).toHaveText('Works');
  await page.getByRole('radio', { name: /medium shaft/ }).check();
  await expect(page.locator('.because')).toContainText('too long');
  await expect(rear).toHaveAttribute('aria-pressed', 'true');
});

test('another way is one that works or is open', async ({ page }) => {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  const ways = page.locator('.cure', { hasText: 'Another way' }).locator('.cure-what');
  await expect(ways.first()).toBeVisible();
  for (const way of await ways.allTextContents()) expect(way).toMatch(/: (?:works|measure first)/);
});

test('a broken link says what to do', async ({ page }) => {
  await page.goto(site('1.nothing-good'));
  await expect(page.getByRole('heading', { level: 1 })).toContainText('can’t be opened');
  await page.getByRole('link', { name: 'Start a new check' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Will the');
});

test('hostile names stay text, in the page and in the drawing', async ({ page }) => {
  const name = '<img src=x onerror="window.wasRun=1"><script>window.wasRun=1</script>';
  const record = { name, category: '1' };
  const fragment = linkOf({
    hitchwright: 1,
    tractor: record,
    implement: record,
    coupler: { ...record, kind: 'uFrame' },
  });
  await page.goto(site(fragment));
  await expect(page.getByRole('heading', { level: 1 })).toContainText(name);
  await expect(verdict(page).getByRole('heading')).toHaveText(answered);
  expect(await page.evaluate(() => 'wasRun' in window)).toBe(false);
  await expect(page.locator('img')).toHaveCount(0);
});

test('a cure that is applied can be taken back', async ({ page }) => {
  await page.goto(site(checkOf('box blade', '35', 'U-28')));
  await expect(verdict(page)).toContainText('too high');
  await page
    .getByRole('button', { name: /^Apply this cure/ })
    .first()
    .click();
  await expect(verdict(page)).toContainText('Shown with');
  await expect(verdict(page)).not.toContainText('too high');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(verdict(page)).toContainText('too high');
  await expect(verdict(page)).not.toContainText('Shown with');
});
