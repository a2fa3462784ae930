import { readLink } from '@hitchwright/core/exchange';
import { withEdits, type SetupDocument } from '@hitchwright/core/records';
import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, site, test } from './person.ts';
import { checkOf, documentOf, linked, unplaced, valueIn } from './sample.ts';

function verdict(page: Page): Locator {
  return page.getByRole('region', { name: 'Verdict' }).getByRole('heading');
}

function staysUpright(page: Page): Locator {
  return page.locator('.answer', { hasText: 'Stays upright' });
}

function axles(page: Page): Locator {
  return page.getByRole('region', { name: 'Axle loads' });
}

/** The row of a table by its heading. */
function row(table: Locator, name: string): Locator {
  return table.getByRole('row').filter({ has: table.page().getByRole('rowheader', { name }) });
}

/** A bale spear that takes too much off the front axle of the 35. */
function spear(): string {
  return checkOf('bale spear', '35', '');
}

async function openTractor(page: Page, fragment: string): Promise<void> {
  await page.goto(site(fragment));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  await page
    .getByRole('group', { name: 'Whose dimensions' })
    .getByRole('button', { name: /tractor/ })
    .click();
}

/** A group of fields, unfolded. */
async function unfold(page: Page, title: string): Promise<void> {
  const group = page.locator('.field-group', { has: page.getByText(title, { exact: true }) });
  if ((await group.getAttribute('open')) === null) await group.locator('summary').click();
}

test('too little on the front axle: the answer says by how much, the weights that cure it and their price', async ({
  page,
}) => {
  await page.goto(site(spear()));
  await expect(verdict(page)).toHaveText('Works with parts');
  await expect(staysUpright(page)).toContainText(/not as it stands: front axle .* short/);
  await expect(axles(page)).toContainText(/The rule wants 741\slb \(336\skg\), 20 % of the tractor\./);
  await expect(axles(page)).toContainText('From the list: 8 × 42-lb front weight.');
  await expect(axles(page)).toContainText('Liquid in the rear tyres does not load the front axle.');
  const cures = page.locator('.cures');
  await expect(cures).toContainText(
    'Hang 8 × 42-lb front weight on the front, in place of what hangs there. USD 680.00.',
  );
  await expect(cures).toContainText('What is counted on costs USD 680.00.');
  await expect(cures).not.toContainText('Not every combination');
  await expect(page.getByRole('list', { name: 'Cautions' }).first()).toContainText('can rear up faster');
});

test('the weights that cure it are hung with one click, and it works with them', async ({ page }) => {
  await page.goto(site(spear()));
  await page.getByRole('button', { name: /^Apply this cure.*front weight/ }).click();
  await expect(verdict(page)).toHaveText(/^Works with parts/);
  await expect(staysUpright(page)).toContainText('to spare in front');
  await expect(axles(page)).toContainText(/Counted: .*the front weights, 336\slb/);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(staysUpright(page)).toContainText('short');
});

test('front weights that are typed change the answer', async ({ page }) => {
  await openTractor(page, spear());
  await expect(staysUpright(page)).toContainText('short');
  const front = page.getByLabel('mass of the front weights', { exact: true });
  await front.fill('100 lb');
  const before = await staysUpright(page).textContent();
  await front.fill('200 lb');
  await expect(staysUpright(page)).not.toHaveText(before ?? '');
  await expect(staysUpright(page)).toContainText('short');
  await front.fill('360 lb');
  await expect(staysUpright(page)).toContainText('to spare in front');
  await expect(verdict(page)).toHaveText('Works');
});

test('a screen reader gets the axle loads as tables with headings', async ({ page }) => {
  await page.goto(site(spear()));
  const table = axles(page).getByRole('table', { name: /^What the axles carry/ });
  await expect(table.getByRole('columnheader')).toHaveText([
    'Balls',
    'Front axle',
    'Rear axle',
    /^Front,\s*of the tractor$/,
    /^Front,\s*of everything$/,
  ]);
  await expect(table.getByRole('rowheader')).toHaveText([
    /^As the lift stands/,
    'Nothing hung behind',
    /^Pick-up/,
    /^Carry/,
    /^Full lift/,
    /^Least to spare in front/,
  ]);
  await expect(row(table, 'Nothing hung behind').getByRole('cell').nth(2)).toHaveText('41.2 %');
  await expect(row(table, 'Full lift').getByRole('cell').first()).toContainText('short');
  await expect(row(table, 'Nothing hung behind').getByRole('cell').first()).not.toContainText('short');
  const limits = axles(page).getByRole('table', { name: /^Limits/ });
  await expect(limits.getByRole('rowheader')).toHaveText(['Front axle', 'Rear axle', 'In all']);
  await expect(row(limits, 'Front axle')).toContainText(/front tyres: .* to spare/);
  await expect(row(limits, 'In all')).toContainText(/plate: .* to spare/);
});

test('the first row follows the slider, and goes where no slider is in sight', async ({ page }) => {
  await page.goto(site(spear()));
  const table = axles(page).getByRole('table', { name: /^What the axles carry/ });
  const here = row(table, 'As the lift stands');
  const slider = page.getByRole('slider', { name: 'Height of the lift' });
  await slider.focus();
  await page.keyboard.press('End');
  await expect(here.getByRole('cell').first()).toHaveText(
    (await row(table, 'Full lift').getByRole('cell').first().textContent()) ?? '',
  );
  const full = await here.textContent();
  await page.keyboard.press('Home');
  await expect(here).not.toHaveText(full ?? '');
  await page.getByRole('button', { name: 'Rear', exact: true }).click();
  await expect(here).toHaveCount(0);
  await expect(axles(page).getByRole('img', { name: /^Axle loads as a see-saw/ })).toBeVisible();
});

test('a front axle that is short opens from the side, where it is worst, with its plots and the see-saw', async ({
  page,
}) => {
  await page.goto(site(spear()));
  await expect(page.getByRole('button', { name: 'Side, through the lift' })).toHaveAttribute('aria-pressed', 'true');
  const plots = page.getByRole('group', { name: 'Plots' });
  await expect(plots.getByRole('button')).toHaveText(['Lift', 'Axles']);
  await expect(plots.getByRole('button', { name: 'Axles' })).toHaveAttribute('aria-pressed', 'true');
  const seeSaw = page.locator('[data-drawing=seeSaw] svg');
  await expect(seeSaw).toContainText('weights wanted');
  const before = await seeSaw.evaluate((svg) => svg.outerHTML);
  await page.getByRole('slider', { name: 'Height of the lift' }).focus();
  await page.keyboard.press('End');
  await expect.poll(() => seeSaw.evaluate((svg) => svg.outerHTML)).not.toBe(before);
  await page.getByText('The drawing in words').click();
  await expect(page.locator('.drawing-words p').nth(1)).toContainText(/front axle/);
});

test('the steering is told by each rule, and another one is used in one click', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', 'U-28')));
  const rules = page.getByRole('region', { name: 'The steering by each rule' });
  await expect(rules.getByRole('listitem')).toHaveCount(3);
  await expect(rules.locator('[aria-current=true]')).toContainText('20 % of the tractor');
  await expect(rules.getByRole('listitem').nth(2)).toContainText('The manual of one row-crop tractor asks for that');
  await rules.getByRole('button', { name: /^Use it.*20 % of everything/ }).click();
  await expect(rules.locator('[aria-current=true]')).toContainText('20 % of everything');
  await expect(axles(page)).toContainText('20 % of everything.');
  await expect(staysUpright(page)).toContainText('not known yet');
  await expect.poll(() => valueIn(page.url(), 'rules.steeringShare')).toBe('ofTotal');
  await rules.getByRole('button', { name: /^Use it.*20 % of the tractor/ }).click();
  await expect(staysUpright(page)).toContainText('to spare in front');
  await expect.poll(() => valueIn(page.url(), 'rules.steeringShare')).toBeUndefined();
});

test('the rule is a plain choice among the dimensions too', async ({ page }) => {
  await openTractor(page, spear());
  await page.getByLabel('rule the steering is judged by').selectOption('halfOfFront');
  await expect(
    page.getByRole('region', { name: 'The steering by each rule' }).locator('[aria-current=true]'),
  ).toContainText('Half of the front axle');
  await expect.poll(() => valueIn(page.url(), 'rules.steeringShare')).toBe('halfOfFront');
});

test('a loader that is on changes the answer, and its load is asked only when there is one', async ({ page }) => {
  await openTractor(page, spear());
  await unfold(page, 'Front loader');
  await expect(page.getByLabel('load of the front loader', { exact: true })).toHaveCount(0);
  const state = page.getByLabel('the front loader is');
  await expect(staysUpright(page)).toContainText('short');
  await state.selectOption('empty');
  await expect(staysUpright(page)).toContainText('to spare in front');
  await expect(axles(page)).toContainText(/Counted: .*the loader, 948\slb/);
  await state.selectOption('loaded');
  await page.getByLabel('load of the front loader', { exact: true }).fill('600 lb');
  await page.getByLabel('load of the loader ahead of the front axle', { exact: true }).fill('50 in');
  await expect(axles(page)).toContainText(/what lies in the loader, 600\slb/);
  await expect.poll(() => valueIn(page.url(), 'tractor.loader')).toBe('loaded');
  await state.selectOption('empty');
  await page.getByLabel('was it on, empty, when the tractor was weighed?').selectOption('yes');
  await expect(axles(page)).not.toContainText('the loader, 948');
  await expect.poll(() => valueIn(page.url(), 'tractor.weighedWithLoader')).toBe(true);
});

test('liquid in the rear tyres is chosen by size, fluid and fill, and loads the rear axle alone', async ({ page }) => {
  await openTractor(page, spear());
  await unfold(page, 'Weight on the rear wheels');
  const free = row(axles(page).getByRole('table', { name: /^What the axles carry/ }), 'Nothing hung behind');
  const [front, rear] = [free.getByRole('cell').first(), free.getByRole('cell').nth(1)];
  await expect(front).toContainText('lb');
  const before = [await front.textContent(), await rear.textContent()];
  await expect(page.getByLabel('what is in them')).toHaveCount(0);
  await page.getByLabel('liquid in the rear tyres: their size').selectOption('13.6-28');
  await expect(page.getByLabel('what is in them')).toHaveValue('water');
  await expect.poll(() => rear.textContent()).not.toBe(before[1]);
  await expect(front).toHaveText(before[0] ?? '');
  const water = await rear.textContent();
  await page.getByLabel('what is in them').selectOption('calciumChloride5lb');
  await expect.poll(() => rear.textContent()).not.toBe(water);
  await page.getByLabel('how full they are').selectOption('40');
  await expect
    .poll(() => valueIn(page.url(), 'tractor.tyreLiquid'))
    .toEqual({ size: '13.6-28', fluid: 'calciumChloride5lb', fill: 40 });
  await page.getByLabel('liquid in the rear tyres: their size').selectOption('');
  await expect.poll(() => valueIn(page.url(), 'tractor.tyreLiquid')).toBeUndefined();
  await expect(rear).toHaveText(before[1] ?? '');
});

test('the load index of a tyre is chosen with what it carries, and governs where it is the least', async ({ page }) => {
  await openTractor(page, spear());
  await unfold(page, 'What its tyres carry');
  const index = page.getByLabel('load index of a rear tyre');
  await expect(index.locator('option:checked')).toContainText(/^\d+: [\d,]+ lb \(\d+ kg\) a tyre$/);
  const limits = axles(page).getByRole('table', { name: /^Limits/ });
  await expect(row(limits, 'Rear axle')).toContainText('to spare');
  await index.selectOption('100');
  await expect(row(limits, 'Rear axle')).toContainText(/rear tyres: .* over/);
  await expect(row(limits, 'Rear axle').getByRole('cell').first()).toContainText('over');
  await expect.poll(() => valueIn(page.url(), 'tractor.rearTyreIndex')).toBe(100);
});

test('a tractor that nobody weighed: the page says what is missing, and leads there', async ({ page }) => {
  const unweighed = ['mass', 'frontAxleMass', 'wheelbase', 'frontAxleLimit', 'frontTyreIndex'].map((field) => ({
    path: `tractor.${field}`,
    value: undefined,
  }));
  await page.goto(site(linked(withEdits(documentOf('bale spear', '35', ''), unweighed))));
  await expect(verdict(page)).toHaveText('Measure first');
  await expect(staysUpright(page)).toContainText('not known yet');
  await expect(axles(page)).toContainText('Nothing is known of the axle loads yet.');
  await expect(axles(page)).toContainText('mass of the tractor, mass on the front axle and wheelbase');
  await expect(axles(page).getByRole('table')).toHaveCount(0);
  await expect(page.getByRole('region', { name: 'The steering by each rule' })).toHaveCount(0);
  await axles(page).getByRole('button', { name: 'Type the mass of the tractor' }).click();
  const mass = page.getByLabel('mass of the tractor', { exact: true });
  await expect(mass).toBeFocused();
  await mass.fill('1500 kg');
  await page.getByLabel('mass on the front axle', { exact: true }).fill('600 kg');
  await page.getByLabel('wheelbase', { exact: true }).fill('66 in');
  await expect(axles(page).getByRole('table')).toHaveCount(2);
  await expect(axles(page)).toContainText('not checked: needs the axle plate or the front tyres');
});

test('links that are not placed: the axle loads stand for the ends of the lift, everything level', async ({ page }) => {
  test.setTimeout(60_000);
  const weighed = [
    { path: 'tractor.mass', value: '1500 kg' },
    { path: 'tractor.frontAxleMass', value: '600 kg' },
    { path: 'tractor.wheelbase', value: '1700 mm' },
  ];
  const links = readLink(unplaced());
  if (!links.ok) throw new Error('the link can’t be read');
  await page.goto(site(linked(withEdits(links.document, weighed))));
  const table = axles(page).getByRole('table', { name: /^What the axles carry/ });
  await expect(table.getByRole('rowheader')).toHaveText(
    ['Nothing hung behind', /^Lowest/, /^Highest/, /^Least to spare in front/],
    { timeout: 40_000 },
  );
  await expect(axles(page)).toContainText(/Not worked out: needs the height of .*, the rear track width\./);
});

test('slopes are told as ideal limits at rest, and what they need where they are not known', async ({ page }) => {
  await page.goto(site(spear()));
  await expect(axles(page)).toContainText('never a slope to work on');
  await expect(axles(page).locator('.axle-slopes dd')).toHaveText([/^\d+°$/, /^\d+°$/, /^\d+°$/]);
  await expect(axles(page).getByRole('img', { name: /^Ideal tipping limits at rest/ })).toBeVisible();
  const low = withEdits(documentOf('bale spear', '35', ''), [{ path: 'tractor.rearTrack', value: undefined }]);
  await page.goto('about:blank');
  await page.goto(site(linked(low)));
  await expect(axles(page)).toContainText('Not worked out: needs the rear track width.');
  await expect(axles(page).locator('.axle-slopes')).toHaveCount(0);
});

test('the mass of a weight on the shelf keeps its unit when the units are switched', async ({ page }) => {
  const parts = [{ kind: 'frontWeights', name: 'cast weight', mass: '42', count: 10 }];
  const setup: SetupDocument = { ...documentOf('bale spear', '35', ''), parts, units: 'us' };
  await openTractor(page, linked(setup));
  await expect(axles(page)).toContainText('From the list: 8 × cast weight.');
  await page.getByRole('button', { name: /^Units/ }).click();
  await page.getByLabel('mass of the driver', { exact: true }).fill('75');
  await expect.poll(() => valueIn(page.url(), 'tractor.driverMass')).toBe('75');
  await expect.poll(() => valueIn(page.url(), 'parts')).toEqual([{ ...parts[0], mass: '42 lb' }]);
  await expect(axles(page)).toContainText('From the list: 8 × cast weight.');
});

test('paper gets the see-saw where it is worst, and both tables', async ({ page }) => {
  await page.goto(site(spear()));
  await expect(axles(page).getByRole('table')).toHaveCount(2);
  await page.emulateMedia({ media: 'print' });
  await expect(axles(page).getByRole('img', { name: /^Axle loads as a see-saw/ })).toBeVisible();
  await expect(axles(page).getByRole('table')).toHaveCount(2);
});

test('the dimensions of axles and ballast bar nobody’s way, on a desk and on a phone', async ({ page }) => {
  for (const [width, colorScheme] of [
    [1440, 'light'],
    [390, 'dark'],
  ] as const) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await page.goto(site(spear()));
    await page.getByRole('button', { name: 'Dimensions' }).filter({ visible: true }).first().click();
    await page
      .getByRole('group', { name: 'Whose dimensions' })
      .getByRole('button', { name: /tractor/ })
      .click();
    for (const title of [
      'Front loader',
      'Weight on the rear wheels',
      'Axle plates',
      'What its tyres carry',
      'For slopes',
    ])
      await unfold(page, title);
    await expect(page.getByLabel('rear track width', { exact: true })).toBeVisible();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  }
});
