import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { expect, test } from './person.ts';
import { startYard, type YardServer } from './yardServer.ts';

interface Made {
  readonly id: string;
  readonly revision: number;
}

let yard: YardServer;
/** Ids of the sample yard by name. */
let ids: ReadonlyMap<string, string>;

test.beforeAll(async () => {
  yard = await startYard();
  await yard.ask('POST', '/api/sample');
  const { items } = await yard.ask<{ items: { id: string; name: string }[] }>('GET', '/api/records?limit=1000');
  ids = new Map(items.map(({ id, name }) => [name, id]));
});
test.afterAll(() => yard.stop());

function recordAt(id: string): string {
  return `${yard.address}#record=${id}`;
}

async function made(draft: object): Promise<Made> {
  return yard.ask('POST', '/api/records', draft);
}

/** A rake of one reading that somebody wrote down before. */
function rake(name: string): Promise<Made> {
  const readings = [{ field: 'mastHeight', leaf: { value: '18 in', plusMinus: '1/16 in' }, grade: 'measured' }];
  return made({ kind: 'implement', name, fields: { category: '1' }, readings });
}

function field(page: Page, name: RegExp) {
  return page.locator('.reading-field').filter({ has: page.getByRole('button', { name }) });
}

async function faultsOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' | ')}`);
}

test('every record is listed, and found as its name is typed', async ({ page }) => {
  await page.goto(`${yard.address}#records`);
  await expect(page.getByRole('status').filter({ hasText: `${ids.size} records.` })).toBeVisible();
  await page.getByRole('searchbox').fill('box bl');
  await expect(page.getByRole('listitem')).toHaveCount(1);
  await expect(page.getByRole('listitem')).toContainText('Wickset 60-in box blade');
  await page.getByRole('searchbox').fill('nothing is called this');
  await expect(page.getByRole('status').filter({ hasText: 'nothing is called this' })).toBeVisible();
  await page.getByRole('searchbox').fill('');
  await page.getByRole('link', { name: 'Couplers' }).click();
  await expect(page.getByRole('status').filter({ hasText: /^\d records\.$/ })).toBeVisible();
  for (const item of await page.getByRole('listitem').all()) await expect(item).toContainText('coupler');
});

test('a list of thousands keeps only what is in sight in the page, and goes on as it is scrolled', async ({ page }) => {
  test.setTimeout(90_000);
  const rows = Array.from({ length: 400 }, (_, i) => `Gable rake ${String(i).padStart(3, '0')},1,18`);
  const csv = `Implement,Category,Mast height (in)\n${rows.join('\n')}\n`;
  const sent = await fetch(new URL('/api/imports?name=rakes.csv', yard.address), {
    method: 'POST',
    body: csv,
    headers: { 'content-type': 'text/csv' },
  });
  const { id } = (await sent.json()) as { id: string };
  await yard.ask('POST', `/api/imports/${id}/commit`, {});
  await expect(async () => {
    const { state } = await yard.ask<{ state: string }>('GET', `/api/imports/${id}`);
    expect(state).toBe('done');
  }).toPass();
  await page.goto(`${yard.address}#records`);
  await page.getByRole('searchbox').fill('gable');
  await expect(page.getByRole('listitem').first()).toContainText('Gable rake 000');
  expect(await page.getByRole('listitem').count()).toBeLessThan(60);
  await expect(async () => {
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await expect(page.getByRole('listitem').last()).toContainText('Gable rake 399', { timeout: 500 });
  }).toPass({ timeout: 30_000 });
  expect(await page.getByRole('listitem').count()).toBeLessThan(60);
});

test('a new record is made by its class, and another one like it', async ({ page }) => {
  await page.goto(`${yard.address}#new=implement`);
  await page.getByLabel('Name').fill('Harl weed rake');
  await page.getByLabel('category stamped or sold as').selectOption('1');
  await page.getByRole('button', { name: 'Make the record' }).click();
  await expect(page.getByLabel('Implement: Harl weed rake')).toBeVisible();
  await expect(page.getByLabel('category stamped or sold as')).toHaveValue('1');
  await page.getByRole('button', { name: 'Make a copy' }).click();
  await expect(page.getByLabel('Implement: Harl weed rake, copy')).toBeVisible();
});

test('choices that are numbers or yes and no are kept as such, and what was chosen for another kind is let go', async ({
  page,
}) => {
  await page.goto(`${yard.address}#new=implement`);
  await page.getByLabel('Name').fill('Harl driven rake');
  await page.getByLabel('does a drive shaft drive it?').selectOption('yes');
  await page.getByRole('button', { name: 'Make the record' }).click();
  await expect(page.getByLabel('Implement: Harl driven rake')).toBeVisible();
  await expect(page.getByLabel('does a drive shaft drive it?')).toHaveValue('yes');
  await page.goto(`${yard.address}#new=tractor`);
  await page.getByLabel('Name').fill('Pellin frame');
  await page.getByLabel('category stamped or sold as').selectOption('2');
  await page.getByLabel('What it is').selectOption('coupler');
  await page.getByRole('button', { name: 'Make the record' }).click();
  await expect(page.getByLabel('Coupler: Pellin frame')).toBeVisible();
  await expect(page.getByLabel('kind of coupler')).toHaveValue('uFrame');
  await expect(page.getByLabel('category stamped or sold as')).toHaveValue('');
});

test('a copy’s figures are guesses that say after what', async ({ page }) => {
  const { id } = await rake('Harl rake to copy');
  await page.goto(recordAt(id));
  await page.getByRole('button', { name: 'Make a copy' }).click();
  await expect(page.getByLabel('Implement: Harl rake to copy, copy')).toBeVisible();
  const mast = field(page, /^mast height/i);
  await mast.getByRole('button', { name: /^mast height/i }).click();
  await expect(mast.locator('.reading-line-used')).toContainText('guessed');
  await expect(mast.locator('.reading-line-used')).toContainText('source: like Harl rake to copy');
});

test('what is typed into one figure is still there after another one was looked at', async ({ page }) => {
  const { id } = await rake('Harl rake half typed');
  await page.goto(recordAt(id));
  const mast = field(page, /^mast height/i);
  await mast.getByRole('button', { name: /^mast height/i }).click();
  await mast.getByRole('textbox', { name: 'mast height', exact: true }).fill('18 3/4');
  await page.getByRole('button', { name: /^mast setback/i }).click();
  await expect(mast.getByRole('textbox', { name: 'mast height', exact: true })).toBeHidden();
  await page.getByRole('button', { name: /^mast height/i }).click();
  await expect(mast.getByRole('textbox', { name: 'mast height', exact: true })).toHaveValue('18 3/4');
});

test('a reading is typed beside the drawing of where it is measured, doubted where it can’t be, and written down', async ({
  page,
}) => {
  const { id } = await rake('Harl rake of one reading');
  await page.goto(recordAt(id));
  await page.getByLabel('Who writes').fill('Ida Moss');
  const mast = field(page, /^mast height/i);
  await mast.getByRole('button', { name: /^mast height/i }).click();
  await expect(page.locator('.record-picture svg')).toBeVisible();
  await expect(page.locator('.record-picture')).toContainText('Lay a bar across both lower pins');
  const box = mast.getByRole('textbox', { name: 'mast height', exact: true });
  await box.fill('2');
  await expect(mast.locator('.field-error')).toBeVisible();
  await expect(mast.getByRole('button', { name: 'Write it down' })).toBeDisabled();
  await box.fill('18 1/2');
  await mast.getByLabel('mast height, plus or minus').fill('1/16');
  await expect(mast.locator('.field-read')).toContainText('470 mm');
  await mast.getByLabel('With what').selectOption('tape');
  await mast.getByRole('button', { name: 'Write it down' }).click();
  await expect(mast.locator('.reading-line')).toHaveCount(2);
  await expect(mast.locator('.reading-line-used')).toContainText('18 1/2');
  await expect(mast.locator('.reading-line-used')).toContainText('tape · read by Ida Moss');
  await expect(mast.getByRole('note')).toContainText('don’t agree');
});

test('of readings that stand side by side a person chooses one, withdraws one, and takes it back', async ({ page }) => {
  const { id } = await rake('Harl rake of two readings');
  const second = { field: 'mastHeight', leaf: { value: '19 in' }, grade: 'guessed' };
  await yard.ask('POST', `/api/records/${id}/readings`, { readings: [second] });
  await page.goto(recordAt(id));
  const mast = field(page, /^mast height/i);
  const line = mast.getByRole('button', { name: /^mast height/i });
  await expect(line).toContainText('18 in');
  await line.click();
  await mast.getByRole('listitem').filter({ hasText: '19 in' }).getByRole('button', { name: 'Use this one' }).click();
  await expect(mast.locator('.reading-line-used')).toContainText('19 in');
  await mast.getByRole('button', { name: 'Let the rule choose' }).click();
  await expect(mast.locator('.reading-line-used')).toContainText('18 in');
  await mast.locator('.reading-line-used').getByRole('button', { name: 'Withdraw' }).click();
  await expect(mast.locator('.reading-line')).toHaveCount(1);
  await page.getByText('What was changed').click();
  await page.locator('.record-history').getByRole('button', { name: /^Open/ }).first().click();
  await page.getByRole('button', { name: 'Take it back' }).click();
  await page.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect(mast.locator('.reading-line')).toHaveCount(2);
});

test('two people at one record: the later one sees both, and nothing is lost', async ({ page }) => {
  const { id } = await rake('Harl rake of two people');
  const other = await page.context().newPage();
  await page.goto(recordAt(id));
  await other.goto(recordAt(id));
  const note = (one: Page) => one.getByRole('textbox', { name: 'Note', exact: true });
  await expect(note(other)).toBeVisible();
  await note(page).fill('the tines are new');
  await note(page).blur();
  await expect(async () => {
    const { fields } = await yard.ask<{ fields: { note?: string } }>('GET', `/api/records/${id}`);
    expect(fields.note).toBe('the tines are new');
  }).toPass();
  await note(other).fill('the frame is bent');
  await note(other).blur();
  const meeting = other.getByRole('alert').filter({ hasText: 'meanwhile' });
  await expect(meeting).toContainText('the frame is bent');
  await expect(meeting).toContainText('the tines are new');
  expect(await faultsOf(other)).toEqual([]);
  await meeting.getByRole('button', { name: 'Write mine all the same' }).click();
  await expect(meeting).toHaveCount(0);
  await expect(async () => {
    const { fields } = await yard.ask<{ fields: { note?: string } }>('GET', `/api/records/${id}`);
    expect(fields.note).toBe('the frame is bent');
  }).toPass();
  await other.getByText('What was changed').click();
  await expect(other.locator('.record-history > li')).toHaveCount(3);
});

test('a customer’s machine shows the model’s value until it has a reading of its own', async ({ page }) => {
  const model = await rake('Harl rake, the model');
  const ada = await made({ kind: 'customer', name: 'Ada Brook' });
  await page.goto(`${yard.address}#new=machine:${model.id}`);
  await page.getByLabel('Name').fill('Ada’s rake');
  await page.getByLabel('Whose it is').fill('ada b');
  await page.getByRole('button', { name: 'Ada Brook customer' }).click();
  await page.getByRole('button', { name: 'Make the record' }).click();
  const mast = field(page, /^mast height/i);
  await expect(mast.getByRole('button', { name: /^mast height/i })).toContainText('from Harl rake, the model');
  await expect(page.getByRole('link', { name: 'Ada Brook' })).toHaveAttribute('href', `#record=${ada.id}`);
  await yard.ask('POST', `/api/records/${model.id}/readings`, {
    readings: [{ field: 'mastHeight', leaf: { value: '18 1/4 in' }, grade: 'measured' }],
  });
  await page.reload();
  await expect(mast.getByRole('button', { name: /^mast height/i })).toContainText('464 mm');
  const [, own = ''] = /#record=(.+)$/.exec(page.url()) ?? [];
  await yard.ask('POST', `/api/records/${own}/readings`, {
    readings: [{ field: 'mastHeight', leaf: { unknown: true }, grade: 'measured' }],
  });
  await page.reload();
  await expect(mast.getByRole('button', { name: /^mast height/i })).toContainText('464 mm');
  await expect(mast.getByRole('button', { name: /^mast height/i })).toContainText('from Harl rake, the model');
});

test('a name that is typed and not picked holds the record back, and says so', async ({ page }) => {
  const model = await rake('Harl rake, the other model');
  await made({ kind: 'customer', name: 'Bo Carver' });
  await page.goto(`${yard.address}#new=machine:${model.id}`);
  await page.getByLabel('Name').fill('Bo’s rake');
  const make = page.getByRole('button', { name: 'Make the record' });
  await expect(make).toBeEnabled();
  await page.getByLabel('Whose it is').fill('bo carv');
  await expect(page.getByRole('alert')).toContainText('“Whose it is” is typed but not picked');
  await expect(make).toBeDisabled();
  await page.getByLabel('Whose it is').fill('');
  await expect(make).toBeEnabled();
  await page.getByLabel('Whose it is').fill('bo carv');
  await page.getByRole('button', { name: 'Bo Carver customer' }).click();
  await make.click();
  await expect(page.getByRole('link', { name: 'Bo Carver' })).toBeVisible();
});

test('a reading that is not written down yet is still there after another page was looked at', async ({ page }) => {
  const { id } = await rake('Harl rake left half typed');
  const other = await rake('Harl rake beside it');
  await page.goto(recordAt(id));
  const mast = field(page, /^mast height/i);
  const box = mast.getByRole('textbox', { name: 'mast height', exact: true });
  await mast.getByRole('button', { name: /^mast height/i }).click();
  await box.fill('18 3/4');
  await mast.getByLabel('Note').fill('by lamplight');
  await page.getByRole('link', { name: 'Implements' }).click();
  await expect(page.getByRole('searchbox')).toBeVisible();
  await page.goto(recordAt(other.id));
  await expect(page.getByLabel('Implement: Harl rake beside it')).toBeVisible();
  await expect(page.getByText('typed, not written down')).toHaveCount(0);
  await page.goto(recordAt(id));
  await expect(mast.getByRole('button', { name: /^mast height/i })).toContainText('typed, not written down');
  await mast.getByRole('button', { name: /^mast height/i }).click();
  await expect(box).toHaveValue('18 3/4');
  await expect(mast.getByLabel('Note')).toHaveValue('by lamplight');
  await mast.getByRole('button', { name: 'Write it down' }).click();
  await expect(box).toHaveValue('');
  await expect(page.getByText('typed, not written down')).toHaveCount(0);
});

test('a record is removed, found among the removed, and brought back', async ({ page }) => {
  const { id } = await rake('Harl rake that goes');
  await page.goto(recordAt(id));
  await page.getByRole('button', { name: 'Remove', exact: true }).click();
  await page.getByRole('button', { name: 'Remove it' }).click();
  await expect(page.getByText('This record was removed.')).toBeVisible();
  await page.goto(`${yard.address}#records`);
  await page.getByLabel('Removed ones').check();
  await page.getByRole('link', { name: /Harl rake that goes/ }).click();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByText('This record was removed.')).toHaveCount(0);
});

test('the check picks from the yard and its answer is saved with who asked', async ({ page }) => {
  await made({ kind: 'customer', name: 'Bela Hart' });
  await page.goto(yard.address);
  for (const [machine, name] of [
    ['implement', 'Wickset 60-in box blade'],
    ['tractor', 'Ostrey 35'],
    ['coupler', 'Pellin U-28'],
  ] as const) {
    await page.locator(`[data-machine=${machine}]`).click();
    await page.locator('.search-field').fill(name);
    await page.locator(`#choice-record-${ids.get(name) ?? ''}`).click();
    await expect(page.locator(`[data-machine=${machine}]`)).toHaveText(name);
  }
  await expect(page.locator('.title-block')).toContainText('Works with parts');
  await page.getByRole('button', { name: 'Save the answer' }).click();
  expect(await faultsOf(page)).toEqual([]);
  await page.getByLabel('Who asked').fill('bela');
  await expect(page.getByRole('button', { name: 'Save', exact: true })).toBeDisabled();
  await expect(page.getByRole('button', { name: 'Bela Hart customer' })).toBeVisible();
  await page.getByLabel('Who asked').press('Enter');
  await expect(page.locator('.picked')).toContainText('Bela Hart');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Saved: works with parts.' })).toBeVisible();
  const { items } = await yard.ask<{ items: { verdict: string; customer: { name: string } | null }[] }>(
    'GET',
    '/api/answers',
  );
  expect(items).toMatchObject([{ verdict: 'withParts', customer: { name: 'Bela Hart' } }]);
});

test('a state of a tractor is made, picked in the check, and saved with the answer', async ({ page }) => {
  const tractor = ids.get('Ostrey 35') ?? '';
  await page.goto(`${yard.address}#new=state:${tractor}`);
  await page.getByLabel('Name').fill('tyres filled');
  await page.getByRole('button', { name: 'Make the record' }).click();
  await page.getByText('Wheels and tyres').or(page.getByText('Tyres and side play')).first().waitFor();
  await page.goto(yard.address);
  await page.locator('[data-machine=tractor]').click();
  await page.locator('.search-field').fill('tyres filled');
  await page.getByRole('option', { name: 'Ostrey 35, tyres filled' }).click();
  await expect(page.locator('[data-machine=tractor]')).toHaveText('Ostrey 35, tyres filled');
  await page.locator('[data-machine=implement]').click();
  await page.locator('.search-field').fill('Wickset 60-in box blade');
  await page.locator(`#choice-record-${ids.get('Wickset 60-in box blade') ?? ''}`).click();
  await page.getByRole('button', { name: 'Save the answer' }).click();
  await page.getByLabel('What was asked').fill('with filled tyres');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Saved:' })).toBeVisible();
  const { items } = await yard.ask<{ items: { refs: { tractor: string; state?: string } }[] }>(
    'GET',
    '/api/answers?search=filled',
  );
  expect(items[0]?.refs).toMatchObject({ tractor, state: expect.any(String) as unknown });
});

test('a figure that is changed by hand is no longer what the records say, and is not saved as if it were', async ({
  page,
}) => {
  await page.goto(yard.address);
  for (const name of ['Wickset 60-in box blade', 'Ostrey 35'] as const) {
    await page.locator(`[data-machine=${name === 'Ostrey 35' ? 'tractor' : 'implement'}]`).click();
    await page.locator('.search-field').fill(name);
    await page.locator(`#choice-record-${ids.get(name) ?? ''}`).click();
  }
  await expect(page.getByRole('button', { name: 'Save the answer' })).toBeVisible();
  await page.getByRole('group', { name: 'Beside the drawing' }).getByRole('button', { name: 'Dimensions' }).click();
  await page.getByLabel('mast height', { exact: true }).fill('19');
  await expect(page.getByRole('button', { name: 'Save the answer' })).toHaveCount(0);
  await page.locator('[data-machine=implement]').click();
  await page.locator('.search-field').fill('Wickset 60-in box blade');
  await page.locator(`#choice-record-${ids.get('Wickset 60-in box blade') ?? ''}`).click();
  await expect(page.locator('.title-block')).toContainText(/Works|Will not|Measure first/);
  await expect(page.getByRole('button', { name: 'Save the answer' })).toHaveCount(0);
});

test('without its server the pages check all the same, and say where the records are', async ({ page }) => {
  const gone = await startYard();
  await page.goto(gone.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  await gone.stop();
  await page.locator('[data-machine=implement]').click();
  await expect(page.getByText('The yard’s records can’t be reached.')).toBeVisible();
  await page.getByRole('option', { name: /Wickset 60-in box blade/ }).click();
  await page.locator('[data-machine=tractor]').click();
  await page.getByRole('option', { name: /Ostrey 35/ }).click();
  await expect(page.locator('.title-block')).toContainText(/Works|Will not|Measure first/);
  await page.goto(`${gone.address}#records`);
  await expect(page.getByRole('alert')).toContainText('can’t be reached', { timeout: 15_000 });
});

const hostile = [
  '<img src=x onerror="document.title=1">',
  '"><script>document.title=1</script>',
  '=HYPERLINK("http://x")',
  '../../etc/passwd',
  '\u202Eevil {{7*7}} ${7*7}',
];

test('whatever a record is called stands in the pages as text', async ({ page }) => {
  for (const name of hostile) {
    const { id } = await made({ kind: 'implement', name, fields: { note: name, category: '1' } });
    await page.goto(recordAt(id));
    await expect(page.locator('.record-name-field input')).toHaveValue(name);
    await expect(page.getByRole('textbox', { name: 'Note', exact: true })).toHaveValue(name);
  }
  await page.goto(`${yard.address}#records=implement`);
  for (const name of hostile) {
    await page.getByRole('searchbox').fill(name.slice(0, 12));
    await expect(page.getByText(name, { exact: true })).toBeVisible();
  }
  expect(await page.title()).toBe('Hitchwright');
});

for (const width of [390, 1440] as const) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`nothing bars the way to the records: ${width} px, ${colorScheme}`, async ({ page }) => {
      test.setTimeout(60_000);
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      const expectClean = async (): Promise<void> => {
        expect(await faultsOf(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      };
      await page.goto(`${yard.address}#records`);
      await expect(page.getByRole('listitem').first()).toBeVisible();
      await expectClean();
      await page.goto(recordAt(ids.get('Wickset 60-in box blade') ?? ''));
      await page.getByRole('button', { name: /^mast height/i }).click();
      await expect(page.locator('.field-picture svg')).toBeVisible();
      await expectClean();
      await page.goto(`${yard.address}#new=coupler`);
      await expect(page.getByLabel('Name')).toBeVisible();
      await expectClean();
    });
  }
}

test('an implement and a coupler are listed for a shop page without a check; a tractor is not', async ({ page }) => {
  const listed = page.getByRole('textbox', { name: 'HTML of the listing' });
  for (const [name, machine] of [
    ['Wickset 60-in box blade', 'implement'],
    ['Pellin U-28', 'coupler'],
  ] as const) {
    await page.goto(recordAt(ids.get(name) ?? ''));
    await page.getByRole('button', { name: 'Listing', exact: true }).click();
    await page.getByRole('button', { name: `Of the ${machine}` }).click();
    await expect(listed).toHaveValue(new RegExp(`<h2>${name}</h2>`), { timeout: 30_000 });
    expect(await listed.inputValue()).toContain('in (');
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Close' }).click();
    await expect(listed).toHaveCount(0);
  }
  await page.goto(recordAt(ids.get('Ostrey 35') ?? ''));
  await expect(page.getByRole('button', { name: 'Make a copy' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Listing', exact: true })).toHaveCount(0);
});

test('a machine gets an owner later, another one and none; their page lists it with their answers', async ({
  page,
}) => {
  const model = await rake('Harl rake, the third model');
  const [cleo, dan] = [
    await made({ kind: 'customer', name: 'Cleo Marsh' }),
    await made({ kind: 'customer', name: 'Dan Hurst' }),
  ];
  const { id } = await made({ kind: 'machine', name: 'The red rake', model: model.id });
  const tractor = await made({ kind: 'tractor', name: 'Cleo’s tractor', fields: { category: '1' } });
  await yard.ask('POST', '/api/answers', {
    title: 'Red rake for Cleo',
    customer: cleo.id,
    refs: { tractor: tractor.id, implement: id },
  });
  await page.goto(recordAt(id));
  await page.getByLabel('Whose it is').fill('cleo');
  await page.getByRole('button', { name: 'Cleo Marsh customer' }).click();
  await page.getByRole('link', { name: 'Cleo Marsh' }).click();
  await expect(page.getByRole('link', { name: 'The red rake' })).toHaveAttribute('href', `#record=${id}`);
  await expect(page.getByRole('link', { name: 'Red rake for Cleo' })).toBeVisible();
  expect(await faultsOf(page)).toEqual([]);
  await page.goto(recordAt(id));
  await page.getByRole('button', { name: 'Somebody else’s' }).click();
  await page.getByLabel('Whose it is').fill('dan');
  await page.getByRole('button', { name: 'Dan Hurst customer' }).click();
  await expect(page.getByRole('link', { name: 'Dan Hurst' })).toHaveAttribute('href', `#record=${dan.id}`);
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('button', { name: 'Somebody else’s' }).click();
  await page.getByRole('button', { name: 'Nobody’s' }).click();
  await expect(page.getByLabel('Whose it is')).toBeVisible();
  const now = await yard.ask<{ owner: string | null }>('GET', `/api/records/${id}`);
  expect(now.owner).toBeNull();
});
