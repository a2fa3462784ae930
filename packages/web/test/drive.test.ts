import type { Locator, Page } from '@playwright/test';
import { expect, site, test } from './person.ts';
import { checkOf, countedOn, linked, tillerWith, unplaced, valueIn } from './sample.ts';

function runs(page: Page): Locator {
  return page.locator('.answer', { hasText: 'Runs' });
}

function verdict(page: Page): Locator {
  return page.getByRole('region', { name: 'Verdict' });
}

/** The snow blower fails as it stands, so every coupler of the yard is tried for it too: that takes its time. */
async function openSnowBlower(page: Page): Promise<void> {
  test.setTimeout(60_000);
  await page.goto(site(checkOf('snow', '35', '')));
  await expect(verdict(page).getByRole('heading')).toHaveText('Works with parts', { timeout: 40_000 });
}

/** The markup of one drawing of the lift. */
function drawing(page: Page, which: string): Promise<string> {
  return page.locator(`[data-drawing=${which}] svg`).evaluate((svg) => svg.outerHTML);
}

test('the snow blower does not run as it stands: the answer and the notes name the joint and by how much', async ({
  page,
}) => {
  await openSnowBlower(page);
  await expect(runs(page)).toContainText(/not as it stands: front joint .*° too far when raised/);
  await expect(page.getByText('Joint at the tractor, raised a part cures it')).toBeVisible();
  await expect(page.getByText(/keep the drive off there/)).toBeVisible();
  await expect(page.locator('.cure').first()).toContainText('Set the lift to stop with the balls');
});

test('what nobody said to be driven is asked in one click, and the link carries the answer', async ({ page }) => {
  await page.goto(site(unplaced()));
  await expect(runs(page)).toContainText('say whether a shaft drives it');
  await expect(page.locator('.unchecked')).toContainText(/Drive and \d+ limits? not checked/);
  await expect(verdict(page).getByRole('heading')).toHaveText('Measure first');
  await expect(page.getByText('Not known yet: whether a drive shaft drives the implement.').first()).toBeVisible();
  await expect(page.getByText('Overlap while it turns')).toHaveCount(0);
  await runs(page).getByRole('button', { name: 'No shaft' }).click();
  await expect(runs(page)).toContainText('needs no drive');
  await expect(page.locator('.unchecked')).not.toContainText('drive');
  await expect.poll(() => valueIn(page.url(), 'implement.driven')).toBe(false);
  await page.goto('about:blank');
  await page.goto(site(unplaced()));
  await runs(page).getByRole('button', { name: 'A shaft drives it' }).click();
  await expect(runs(page)).toContainText('not known yet');
  await expect.poll(() => valueIn(page.url(), 'implement.driven')).toBe(true);
});

test('the drive is told by each set of rules, and another set is used in one click', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', '')));
  const rules = page.getByRole('region', { name: 'The drive by each set of rules' });
  await expect(rules.getByRole('listitem')).toHaveCount(6);
  await expect(rules.locator('[aria-current=true]')).toContainText('The usual');
  await expect(rules.getByRole('listitem').first()).toContainText('2 in (50 mm) left at its shortest');
  await rules.getByRole('button', { name: /^Use it.*Most cautious/ }).click();
  await expect(rules.locator('[aria-current=true]')).toContainText('Most cautious');
  await expect(runs(page)).toContainText(/overlap .* short/);
  await expect.poll(() => valueIn(page.url(), 'rules.driveShaft')).toBe('mostCautious');
  await rules.getByRole('button', { name: /^Use it.*The usual/ }).click();
  await expect(runs(page)).toContainText('of overlap to spare');
  await expect.poll(() => valueIn(page.url(), 'rules.driveShaft')).toBeUndefined();
});

test('an implement that nothing drives has no rules to choose from', async ({ page }) => {
  await page.goto(site(checkOf('box blade', '35', '')));
  await expect(runs(page)).toContainText('needs no drive');
  await expect(page.getByRole('region', { name: 'The drive by each set of rules' })).toHaveCount(0);
});

test('a shaft that is too long: the cut is drawn, said not to be returnable, applied and taken back', async ({
  page,
}) => {
  await page.goto(site(linked(tillerWith('medium shaft'))));
  await expect(verdict(page).getByRole('heading')).toContainText('with parts');
  await expect(runs(page)).toContainText(/not as it stands: shaft .* too long/);
  const cut = page.locator('.cure', { hasText: 'off both tubes' });
  await expect(cut).toContainText('Can’t be returned once cut.');
  await expect(cut.getByRole('img', { name: /Drive shaft/ })).toBeVisible();
  await expect(cut).toContainText(/tube 1.*9/);
  await cut.getByRole('button', { name: /^Apply this cure/ }).click();
  await expect(runs(page)).toContainText('of overlap to spare');
  await expect.poll(() => countedOn(page.url())).toMatchObject({ 'shaft.closedLength': { value: 544 } });
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(runs(page)).toContainText('too long');
});

test('another shaft of the shelf stands before the cut, and is put in with one click', async ({ page }) => {
  await page.goto(site(linked(tillerWith('medium shaft'))));
  const cures = page.locator('.cure', { hasText: /^Cure \d/ });
  await expect(cures.first()).toContainText('shaft of the Wickset 60-in tiller', { ignoreCase: true });
  await expect(cures.last()).toContainText('off both tubes');
  await cures
    .first()
    .getByRole('button', { name: /^Apply this cure/ })
    .click();
  await expect(runs(page)).toContainText('of overlap to spare');
  await expect
    .poll(() => countedOn(page.url()))
    .toMatchObject({
      shaft: { name: 'shaft of the Wickset 60-in tiller' },
    });
});

test('a drive that fails opens from the side, at the height where it is worst, with its own plots', async ({
  page,
}) => {
  await openSnowBlower(page);
  await expect(page.getByRole('slider', { name: 'Height of the lift' })).toHaveValue('60');
  const plots = page.getByRole('group', { name: 'Plots' });
  await expect(plots.getByRole('button', { name: 'Drive' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.locator('[data-drawing=drivePlots]')).toContainText('Joint angles');
  await plots.getByRole('button', { name: 'Lift' }).click();
  await expect(page.locator('[data-drawing=plots]')).toContainText('Attitude');
  await expect(page.locator('[data-drawing=drivePlots]')).toHaveCount(0);
});

test('one slider moves side view, top view and plots, and speaks of the drive', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 1600 });
  await openSnowBlower(page);
  const slider = page.getByRole('slider', { name: 'Height of the lift' });
  await slider.focus();
  await page.keyboard.press('Home');
  await expect(slider).toHaveAttribute('aria-valuetext', /shaft overlap .*, joints .*°/);
  // Until its own picture is ready the nearest one stands in.
  await expect(page.locator('[data-drawing=view] desc')).toContainText('Balls at 7 7/8 in (200 mm).');
  const shown = ['view', 'top', 'drivePlots'];
  const before = await Promise.all(shown.map((which) => drawing(page, which)));
  await page.keyboard.press('PageUp');
  for (const [i, which] of shown.entries())
    await expect.poll(() => drawing(page, which), { message: which }).not.toBe(before[i]);
  await page.keyboard.press('Home');
  for (const [i, which] of shown.entries())
    await expect.poll(() => drawing(page, which), { message: which }).toBe(before[i]);
  await page.getByText('The drawing in words').click();
  await expect(page.locator('.drawing-words p').nth(1)).toContainText('The joint at the implement stands');
});

test('a drawing that was out of sight while the lift moved is right when it comes back', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openSnowBlower(page);
  await expect(page.locator('.lift-drawing svg')).toHaveCount(6);
  const slider = page.getByRole('slider', { name: 'Height of the lift' });
  await slider.focus();
  await page.keyboard.press('Home');
  await page.locator('[data-drawing=top]').scrollIntoViewIfNeeded();
  await expect(page.locator('[data-drawing=top]')).toContainText('77⁄8 in (200 mm)');
});

test('below the pictures the shaft is drawn by itself, with where to measure', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', '')));
  await page.getByRole('button', { name: 'Side, through the lift' }).click();
  const shaft = page.locator('.lift-shaft');
  await expect(shaft.getByRole('img', { name: /Drive shaft/ })).toBeVisible();
  await expect(shaft).toContainText('cross to cross');
  await shaft.getByText('The shaft in words').click();
  await expect(shaft).toContainText('Pushed right together it measures');
});
