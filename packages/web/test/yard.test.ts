import { made, ownYard } from './ownRecords.ts';
import { expectOpen, looks } from './pageChecks.ts';
import { expect, site, test } from './person.ts';
import { named, yard } from './sample.ts';
import { startYard, type YardServer } from './yardServer.ts';

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
  test.setTimeout(180_000);
  await page.goto(site('yard'));
  const progress = page.getByRole('region', { name: 'Progress' });
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(progress).toContainText('Stopped');
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(progress).toContainText('All worked out', { timeout: 60_000 });
});

test('a worker that could not begin holds nothing up: there is a fresh one when it goes on', async ({ page }) => {
  await page.route(/assess\.worker/, (route) => route.abort());
  await page.goto(site('yard'));
  const progress = page.getByRole('region', { name: 'Progress' });
  await expect(progress).toContainText('Stopped: 0 of 85', { timeout: 30_000 });
  await page.unroute(/assess\.worker/);
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(progress).toContainText(/Working: [1-9]/, { timeout: 30_000 });
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

test.describe('with the yard’s records', () => {
  let own: YardServer;
  test.beforeAll(async () => {
    own = await startYard();
    await own.ask('POST', '/api/sample');
    await ownYard(own);
  });
  test.afterAll(() => own.stop());

  test('the sample yard stands in only while there is no tractor, and says so', async ({ page }) => {
    const empty = await startYard();
    await page.goto(`${empty.address}#yard`);
    await expect(page.getByText('There is no tractor in the yard’s records yet.')).toBeVisible();
    await expect(page.getByText('Every machine in it is invented.')).toBeVisible();
    await empty.ask('POST', '/api/sample');
    await page.reload();
    await expect(page.getByText('Every machine in it is invented.')).toBeVisible();
    await expect(page.getByText('There is no tractor')).toHaveCount(0);
    await empty.stop();
    await page.goto(`${own.address}#yard`);
    await expect(page.getByText('Your yard')).toBeVisible();
    const table = page.getByRole('table', { name: /Which implement goes on/ });
    await expect(table.getByRole('rowheader')).toHaveText(['Brook rake', 'Brook tiller']);
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Brook 30');
    await expect(page.getByText('invented')).toHaveCount(0);
  });

  test('a cell opens its check as a question to the records, which can be saved', async ({ page }) => {
    await page.goto(`${own.address}#yard`);
    await page.getByRole('link', { name: /^Brook rake, Brook frame: / }).click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Brook rake');
    await page.getByRole('button', { name: 'Save the answer' }).click();
    await page.getByRole('dialog').getByRole('button', { name: /^Save/ }).click();
    await expect(page.getByText(/^Saved: /)).toBeVisible({ timeout: 30_000 });
    const { items } = await own.ask<{ items: { refs: Record<string, string> }[] }>('GET', '/api/answers');
    const names = new Map(
      (await own.ask<{ items: { id: string; name: string }[] }>('GET', '/api/records?limit=1000')).items.map((one) => [
        one.id,
        one.name,
      ]),
    );
    const { tractor = '', coupler = '', implement = '' } = items[0]?.refs ?? {};
    expect([tractor, coupler, implement].map((id) => names.get(id))).toEqual(['Brook 30', 'Brook frame', 'Brook rake']);
  });

  test('another tractor of the records has its own address, and a state of it', async ({ page }) => {
    const { items } = await own.ask<{ items: { id: string; name: string }[] }>('GET', '/api/records?kind=tractor');
    const parent = items.find(({ name }) => name === 'Brook 50')?.id;
    await made(own, { kind: 'state', name: 'loader on', parent, fields: { loader: 'loaded' } });
    await page.goto(`${own.address}#yard`);
    await page.getByRole('button', { name: 'Brook 30' }).click();
    await page.getByRole('option', { name: /^Brook 50 of the yard/ }).click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Brook 50?');
    await page.getByRole('button', { name: 'Brook 50' }).click();
    await page.getByRole('option', { name: /^Brook 50, loader on/ }).click();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Brook 50, loader on');
    await page.reload();
    await expect(page.getByRole('heading', { level: 1 })).toContainText('Brook 50, loader on');
  });

  test('its own drive shafts are tried, and stand on the shelf of a check', async ({ page }) => {
    await made(own, { kind: 'shaft', name: 'Brook spare', fields: { fits: ['Brook rake'] } });
    await page.goto(`${own.address}#yard`);
    await page.getByRole('button', { name: 'Drive shafts' }).click();
    const table = page.getByRole('table', { name: /Which drive shaft serves/ });
    await expect(table.getByRole('rowheader')).toHaveText([/^Brook shaft/, /^Brook spare/]);
    await expect(table.getByRole('columnheader', { name: 'Brook tiller' })).toBeVisible();
    await page.getByRole('button', { name: 'Implements and couplers' }).click();
    await page.getByRole('link', { name: /^Brook tiller, No coupler: / }).click();
    await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
    const whose = page.getByRole('group', { name: 'Whose dimensions' });
    await whose.getByRole('button', { name: /drive shaft/ }).click();
    const shelf = page.getByRole('group', { name: 'Which drive shaft?' });
    await expect(shelf.getByText('Brook shaft')).toBeVisible();
    await expect(shelf.getByText('Brook spare')).toBeVisible();
    await expect(shelf.getByText('Wickset')).toHaveCount(0);
  });

  test('invented drive shafts are not offered for a tractor of one’s own that has none', async ({ page }) => {
    const bare = await startYard();
    await bare.ask('POST', '/api/sample');
    await made(bare, { kind: 'tractor', name: 'Brook 30', fields: { category: '1' } });
    await made(bare, { kind: 'implement', name: 'Brook tiller', fields: { category: '1', driven: true } });
    await page.goto(`${bare.address}#yard`);
    await page.getByRole('link', { name: /^Brook tiller, No coupler: / }).click();
    await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
    const whose = page.getByRole('group', { name: 'Whose dimensions' });
    await whose.getByRole('button', { name: /drive shaft/ }).click();
    const shelf = page.getByRole('group', { name: 'Which drive shaft?' });
    await expect(shelf.getByText('There is no drive shaft in the yard’s records.')).toBeVisible();
    await expect(shelf.getByRole('radio')).toHaveCount(1);
    await bare.stop();
  });

  test('of a large yard a part is shown, found by words, and it says that there is more', async ({ page }) => {
    const large = await startYard();
    await ownYard(large);
    for (let i = 0; i < 24; i += 1)
      await made(large, { kind: 'implement', name: `Gable ${String(i).padStart(2, '0')}` });
    await page.goto(`${large.address}#yard`);
    const status = page.getByRole('search').getByRole('status');
    await expect(status).toHaveText('25 implements by name, from Brook rake to Gable 22. There are more.');
    await page.getByRole('button', { name: 'Next implements' }).click();
    const rows = page.getByRole('table', { name: /Which implement goes on/ }).getByRole('rowheader');
    await expect(rows).toHaveText(['Gable 23']);
    await page.route(/\/api\/yard\?.*implements=tiller/, (route) => route.fulfill({ status: 500, json: {} }));
    await page.getByLabel('Implements called').fill('tiller');
    await page.getByRole('button', { name: 'Show these' }).click();
    await expect(page.getByRole('alert')).toContainText('The server answers 500.');
    await expect(rows).toHaveText(['Gable 23']);
    await page.getByRole('button', { name: 'From the first' }).click();
    await expect(page.getByRole('alert')).toHaveCount(0);
    await expect(rows).toHaveCount(25);
    await page.unroute(/\/api\/yard\?.*implements=tiller/);
    await page.getByLabel('Implements called').fill('tiller');
    await page.getByRole('button', { name: 'Show these' }).click();
    await expect(rows).toHaveText(['Brook tiller']);
    await page.getByLabel('Implements called').fill('nothing like it');
    await page.getByRole('button', { name: 'Show these' }).click();
    await expect(page.getByText('No implement is called so.')).toBeVisible();
    await large.stop();
  });

  for (const { width, colorScheme } of looks)
    test(`nothing bars the way: ${width} px, ${colorScheme}`, async ({ page }) => {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      await page.goto(`${own.address}#yard`);
      await expect(page.getByText('Your yard')).toBeVisible();
      await expect(page.getByRole('region', { name: 'Progress' })).toContainText('All worked out', { timeout: 45_000 });
      await expectOpen(page);
    });
});
