import { fieldRules, readValue } from '@hitchwright/core/records';
import { couplerKinds } from '@hitchwright/core/tables';
import { inUnits } from '../src/features/check/inUnits.ts';
import { groupsOf, pathsOf } from '../src/features/dimensions/groups.ts';
import { readText, toleranceText } from '../src/features/dimensions/readText.ts';
import type { Page } from '@playwright/test';
import { checkOf, documentOf, linked, valueIn } from './sample.ts';
import { expect, site, test } from './person.ts';

/** A second row is one of lower pins without bushings: it has no upper pin of its own. */
const notOfSecondRow = /^implement\.secondRow\.(lowerBushing|upper|mast|clevis)/;

test('every field of a setup is asked somewhere, and none twice', () => {
  const machines = (['implement', 'tractor', 'coupler', 'shaft'] as const).map((machine) =>
    couplerKinds.map((kind) => groupsOf(machine, kind).flatMap(pathsOf)),
  );
  const asked = new Set(machines.flat(2));
  const fields = [...fieldRules.keys()].filter((path) => !notOfSecondRow.test(path));
  expect(fields.filter((path) => !asked.has(path))).toEqual([]);
  for (const paths of machines.flat()) expect(paths.length).toBe(new Set(paths).size);
});

test('masses, angles and counts are typed in their own units', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', 'U-28')));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  const mass = page.getByRole('group', { name: /^mass/ });
  await mass.getByLabel('mass', { exact: true }).fill('700');
  await expect(mass).toContainText('= 700 lb (318 kg)');
  await page
    .getByRole('group', { name: 'Whose dimensions' })
    .getByRole('button', { name: /tractor/ })
    .click();
  await page.getByText('Lift arms and rods').click();
  const angle = page.getByRole('group', { name: /^lift arm angle at its lowest/ });
  await angle.getByLabel('lift arm angle at its lowest', { exact: true }).fill('-20');
  await expect(angle).toContainText('= −20');
  await page.getByText('Lift cylinder', { exact: true }).click();
  await page.getByLabel('lift cylinders that push together').selectOption('2');
  await expect(page.getByText('can’t be read')).toHaveCount(0);
});

test('a figure without a unit keeps its meaning when the units are switched', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', 'U-28')));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  const mass = page.getByRole('group', { name: /^mass/ });
  await mass.getByLabel('mass', { exact: true }).fill('700');
  await expect(mass).toContainText('= 700 lb (318 kg)');
  await page.getByRole('button', { name: /^Units/ }).click();
  await page.getByLabel('carrying height', { exact: true }).fill('600');
  await expect(mass).toContainText('= 318 kg (700 lb)');
});

test('what one system reads and the other does not, or reads as something else, gets its unit', () => {
  const implement = {
    name: '7/8',
    lowerPinDiameter: { value: '7/8', plusMinus: '1/64', note: '3/4' },
    mastHeight: { between: ['18 1/2', '19 in'] },
    shoulderSpan: '683',
    mass: 1850,
  };
  const parts = [{ kind: 'clevisSpacers', name: '1/2', gapAfter: '1 3/4' }];
  expect(inUnits({ implement, parts, tractor: { mass: '3700' } }, 'metric')).toEqual({
    units: 'metric',
    implement: {
      ...implement,
      lowerPinDiameter: { value: '7/8 in', plusMinus: '1/64 in', note: '3/4' },
      mastHeight: { between: ['18 1/2 in', '19 in'] },
    },
    parts: [{ ...parts[0], gapAfter: '1 3/4 in' }],
    tractor: { mass: '3700 lb' },
  });
});

test('a fraction survives a switch of the units and back, and the box says which unit it is in', async ({ page }) => {
  await open(page, checkOf('tiller', '35', 'U-28'));
  const pin = page.getByRole('group', { name: /^lower pin diameter/ });
  const box = pin.getByLabel('lower pin diameter', { exact: true });
  const mass = page.getByRole('group', { name: /^mass/ });
  await box.fill('7/8');
  await mass.getByLabel('mass', { exact: true }).fill('700');
  const units = page.getByRole('button', { name: /^Units/ });
  await units.click();
  await expect(box).toHaveValue('7/8 in');
  await expect(pin).toContainText(/= 22\smm \(.*7\/8\sin\)/);
  await expect(mass.getByLabel('mass', { exact: true })).toHaveValue('700 lb');
  await expect(mass).toContainText('= 318 kg (700 lb)');
  await page.getByLabel('carrying height', { exact: true }).fill('600');
  await expect.poll(() => valueIn(page.url(), 'implement.carryHeight')).toBe('600');
  expect(valueIn(page.url(), 'implement.lowerPinDiameter.value')).toBe('7/8 in');
  await units.click();
  await expect(pin).toContainText('7/8 in (22 mm)');
  await expect(page.getByText('Expected')).toHaveCount(0);
});

test('while one box can’t be read, the line under every other says what stands in it', async ({ page }) => {
  await open(page, checkOf('box blade', '35', 'U-28'));
  await expect(page.getByRole('region', { name: 'Verdict' })).toContainText('Works with parts');
  await page.getByLabel('mast height', { exact: true }).fill('a foot or so');
  await expect(page.getByRole('region', { name: 'Verdict' })).toContainText('Older answer');
  const pin = page.getByRole('group', { name: /^lower pin diameter/ });
  await pin.getByLabel('lower pin diameter', { exact: true }).fill('1 1/8');
  await expect(pin).toContainText('1 and 1/8 in (29 mm)');
  await pin.getByLabel('lower pin diameter', { exact: true }).fill('1 1/8 kg');
  await expect(pin).toContainText('Expected');
  await expect(pin).not.toContainText('=');
});

test('a small tolerance is never shown as none', async ({ page }) => {
  const blade = documentOf('box blade', '35', 'U-28');
  const implement = { ...(blade['implement'] as object), lowerPinDiameter: { value: 22.2, plusMinus: 0.04 } };
  await open(page, linked({ ...blade, implement }));
  const box = page.getByLabel('lower pin diameter, plus or minus').first();
  await expect(box).toHaveValue('1/64 in');
  await page.getByRole('button', { name: /^Units/ }).click();
  await expect(box).toHaveValue('0.1 mm');
});

test('a tolerance reads the same in its box and in the line under it', () => {
  const rule = fieldRules.get('implement.lowerPinDiameter');
  if (rule === undefined) throw new Error('the field is gone');
  for (const [size, us, metric] of [
    [0.1, '1/64 in', '0.1 mm'],
    [1.5875, '1/16 in', '1.6 mm'],
    [2, '3/32 in', '2.0 mm'],
  ] as const) {
    const { value } = readValue({ value: 22.3, plusMinus: size }, rule, '', 'metric');
    expect(readText(value, rule, 'us')).toMatch(new RegExp(` ± ${us}$`));
    expect(toleranceText(size, rule, 'us')).toBe(us);
    expect(readText(value, rule, 'metric')).toMatch(new RegExp(` ± ${metric}$`));
    expect(toleranceText(size, rule, 'metric')).toBe(metric);
  }
});

async function open(page: Page, fragment: string, whose?: RegExp): Promise<void> {
  await page.goto(site(fragment));
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  if (whose !== undefined)
    await page.getByRole('group', { name: 'Whose dimensions' }).getByRole('button', { name: whose }).click();
}

test('what a drive needs is asked only of what a shaft drives', async ({ page }) => {
  await open(page, checkOf('box blade', '35', ''));
  const driven = page.getByLabel('does a drive shaft drive it?');
  await expect(driven).toHaveValue('no');
  await expect(page.getByText('Its input shaft')).toHaveCount(0);
  await expect(page.getByLabel('speed it is made to be driven at')).toHaveCount(0);
  const whose = page.getByRole('group', { name: 'Whose dimensions' });
  await expect(whose.getByRole('button', { name: /drive shaft/ })).toHaveCount(0);
  await driven.selectOption('yes');
  await expect(page.getByLabel('input shaft behind the pins', { exact: true })).toBeVisible();
  await expect(whose.getByRole('button', { name: /drive shaft none chosen yet/ })).toBeVisible();
  await whose.getByRole('button', { name: /tractor/ }).click();
  await expect(page.getByLabel('speeds the PTO can be set to')).toHaveValue('540');
  await expect(page.getByLabel('PTO stub height', { exact: true })).toBeVisible();
});

test('a reading at a splined shaft asks which point it was measured to', async ({ page }) => {
  await open(page, checkOf('tiller', '35', ''), /tractor/);
  const stub = page.getByRole('group', { name: /^PTO stub behind the axle/ });
  await expect(stub).toContainText('measured to');
  const point = stub.getByLabel('PTO stub behind the axle: measured to');
  await expect(point.locator('option')).toHaveText([
    'not said, taken as the groove round the shaft',
    'the groove round the shaft',
    'the end of the shaft',
    'the cross centre of the joint on it',
  ]);
  await point.selectOption('groove');
  await expect.poll(() => valueIn(page.url(), 'tractor.stubBehindAxle.from')).toBe('groove');
  const runs = page.locator('.answer', { hasText: 'Runs' });
  await expect(runs).toContainText('of overlap to spare');
  const before = await runs.textContent();
  await point.selectOption('crossCentre');
  await expect(runs).not.toHaveText(before ?? '');
});

test('choices that a document says as numbers, lists and yes or no are written so', async ({ page }) => {
  await open(page, checkOf('tiller', '35', ''));
  await page.getByLabel('while it is raised to carry').selectOption('yes');
  await page.getByLabel('splines of its input shaft').selectOption('2');
  await page.getByLabel('speed it is made to be driven at').selectOption('1000');
  await expect.poll(() => valueIn(page.url(), 'implement.inputSpeed')).toBe(1000);
  expect(valueIn(page.url(), 'implement.inputType')).toBe(2);
  expect(valueIn(page.url(), 'implement.turnsWhileRaised')).toBeUndefined();
  await page
    .getByRole('group', { name: 'Whose dimensions' })
    .getByRole('button', { name: /tractor/ })
    .click();
  await page.getByLabel('speeds the PTO can be set to').selectOption('540, 1000');
  await expect.poll(() => valueIn(page.url(), 'tractor.ptoSpeeds')).toEqual([540, 1000]);
  await expect(page.getByText('can’t be read')).toHaveCount(0);
});

test('a speed that no list holds is kept and shown', async ({ page }) => {
  const tiller = documentOf('tiller', '35', '');
  const implement = { ...(tiller['implement'] as object), inputSpeed: 850 };
  await open(page, linked({ ...tiller, implement }));
  await expect(page.getByLabel('speed it is made to be driven at')).toHaveValue('850');
});

test('a drive shaft is taken from the shelf, or none is, and a typed figure makes it one of its own', async ({
  page,
}) => {
  await open(page, checkOf('tiller', '35', ''), /drive shaft/);
  const shelf = page.getByRole('group', { name: 'Which drive shaft?' });
  await expect(shelf.getByRole('radio')).toHaveCount(10);
  await expect(shelf.getByRole('radio', { name: /shaft of the Wickset 60-in tiller/ })).toBeChecked();
  const runs = page.locator('.answer', { hasText: 'Runs' });
  await expect(runs).toContainText('of overlap to spare');
  await shelf.getByRole('radio', { name: /medium shaft/ }).check();
  await expect(runs).toContainText('not as it stands: shaft');
  await expect.poll(() => valueIn(page.url(), 'shaft.closedLength')).toBe(584);
  await page.getByLabel('closed length', { exact: true }).fill('530 mm');
  await expect(shelf.getByRole('radio', { name: 'As typed below' })).toBeChecked();
  await expect(runs).toContainText('of overlap to spare');
  await shelf.getByRole('radio', { name: 'None yet' }).check();
  await expect(runs).toContainText('not known yet');
  await expect.poll(() => valueIn(page.url(), 'shaft')).toBeUndefined();
  await expect(page.getByRole('region', { name: 'Verdict' }).getByRole('heading')).toContainText('Measure first');
});

test('another implement brings its own drive shaft along', async ({ page }) => {
  await page.goto(site(checkOf('tiller', '35', '')));
  await page.locator('[data-machine=implement]').click();
  await page.keyboard.type('rotary cutter');
  await page.keyboard.press('Enter');
  await expect.poll(() => valueIn(page.url(), 'shaft.name')).toBe('shaft of the Wickset 60-in rotary cutter');
  await page.locator('[data-machine=implement]').click();
  await page.keyboard.type('box blade');
  await page.keyboard.press('Enter');
  await expect.poll(() => valueIn(page.url(), 'shaft')).toBeUndefined();
  await expect(page.locator('.answer', { hasText: 'Runs' })).toContainText('needs no drive');
});
