import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { textRow, workbook } from '../../server/test/sheetsWorkbook.ts';
import { expectOpen, looks } from './pageChecks.ts';
import { expect, test } from './person.ts';
import { startYard, type YardServer } from './yardServer.ts';

let yard: YardServer;
test.beforeEach(async () => {
  yard = await startYard();
});
/** A server that is ended waits for the connections of a browser that is still there. */
test.afterEach(async ({ page }) => {
  await page.context().close();
  await yard.stop();
});

const nasty = fileURLToPath(new URL('../../../examples/nasty-yard.csv', import.meta.url));
const xlsx = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

async function choose(
  page: Page,
  file: string | { name: string; text: string | Buffer; type?: string },
): Promise<void> {
  await page.goto(`${yard.address}#import`);
  const input = page.getByLabel('The file', { exact: true }).and(page.locator('input'));
  if (typeof file === 'string') await input.setInputFiles(file);
  else
    await input.setInputFiles({ name: file.name, mimeType: file.type ?? 'text/csv', buffer: Buffer.from(file.text) });
}

async function look(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'See what becomes of every row' }).click();
  await expect(page.getByText(/^All [\d,]+ rows? (?:is|are) looked at/)).toBeVisible({ timeout: 90_000 });
}

async function write(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Write [\d,]+ rows?$/ }).click();
  await expect(page.getByRole('heading', { name: /^(?:Written|There was nothing new in it)$/ })).toBeVisible();
}

function row(page: Page, number: number) {
  return page
    .getByRole('listitem')
    .filter({ has: page.locator('.imp-row-number', { hasText: new RegExp(`^Row ${number}$`) }) });
}

async function names(): Promise<string[]> {
  const { items } = await yard.ask<{ items: { name: string }[] }>('GET', '/api/records?limit=1000');
  return items.map(({ name }) => name);
}

/** A list of rakes, wholly understood. */
function rakes(count: number, height = 18): string {
  const lines = Array.from({ length: count }, (_, i) => `R-${i},Rake ${i},1,${height + (i % 8) / 8},300`);
  return `Stock no,Implement,Category,Mast height (in),Weight (lb)\n${lines.join('\n')}\n`;
}

test('a nasty spreadsheet is looked at row by row, written without what is wrong, and taken back', async ({ page }) => {
  await choose(page, nasty);
  await expect(page.getByRole('heading', { name: 'What the columns mean' })).toBeFocused();
  const colour = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'Colour' }) });
  await expect(colour).toContainText('red');
  await expect(colour).toContainText('not known');
  await page.getByRole('button', { name: 'Change column L' }).click();
  await page.getByLabel('It holds').selectOption({ label: 'kept as it stands, under its heading' });
  await expect(colour).toContainText('you chose it');

  await look(page);
  expect(await names()).toEqual([]);
  await page
    .getByRole('group', { name: 'Which rows are shown' })
    .getByRole('button', { name: /^Errors/ })
    .click();
  await expect(row(page, 9)).toContainText('Two categories stand here');
  await expect(row(page, 11)).toContainText('A spreadsheet makes dates of fractions');
  await page.getByRole('button', { name: /^Guesses/ }).click();
  await expect(row(page, 9)).toContainText('“27ish” was taken for 27 in give or take 1 in');
  await page.getByRole('button', { name: /^Not written/ }).click();
  await expect(row(page, 12)).toContainText('there twice');
  await expect(row(page, 23)).toContainText('“TOTAL” is a line of totals');
  await page.getByRole('button', { name: /^New/ }).click();
  await row(page, 13).getByRole('checkbox').check();
  await expect(row(page, 13)).toContainText('left out');
  await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' }));
  await expect(row(page, 20)).toContainText('@SUM(A1:A9) spreader');
  await expect(page.getByRole('button', { name: 'Write 12 rows' })).toBeEnabled();

  await write(page);
  await expect(page.getByText('New records').locator('..')).toContainText('12');
  const written = await names();
  expect(written).toHaveLength(12);
  expect(written).toContain('@SUM(A1:A9) spreader');
  expect(written).not.toContain('Wickset 60-in tiller');
  await page.getByRole('button', { name: 'Take the import back' }).click();
  await page.getByRole('button', { name: 'No' }).click();
  expect(await names()).toHaveLength(12);
  await page.getByRole('button', { name: 'Take the import back' }).click();
  await page.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect(page.getByText('The import was taken back: 12 records')).toBeVisible();
  expect(await names()).toEqual([]);
});

test('the same sheet again is remembered, doubles nothing, and says what changes', async ({ page }) => {
  await choose(page, { name: 'rakes.csv', text: rakes(3) });
  await look(page);
  await write(page);
  await choose(page, { name: 'rakes.csv', text: rakes(3, 19) });
  await expect(page.getByText('A sheet with these headings was read before')).toBeVisible();
  await look(page);
  const changed = row(page, 2);
  await expect(changed).toContainText('changes');
  await expect(changed.locator('dl')).toContainText(/mast height18.in.*becomes.19.in/);
  await expect(page.getByRole('button', { name: /^New/ })).toContainText('0');
  await write(page);
  await expect(page.getByText('Records that changed').locator('..')).toContainText('3');
  expect(await names()).toHaveLength(3);
  await choose(page, { name: 'rakes.csv', text: rakes(3, 19) });
  await look(page);
  await expect(row(page, 2)).toContainText('nothing new');
  await expect(page.getByRole('button', { name: /^Write/ })).toBeDisabled();
});

test('what may mean two is asked first, and is not guessed', async ({ page }) => {
  const text = 'Tractor,HP,Weight,Wheelbase\nOstrey 24,24,1650,57.1\nOstrey 35,35,3704,67.7\n';
  await choose(page, { name: 'tractors.csv', text });
  await expect(page.getByRole('heading', { name: '2 questions before the rest' })).toBeVisible();
  await expect(page.getByText('2 questions left: what isn’t answered is refused')).toBeVisible();
  await look(page);
  await expect(row(page, 2)).toContainText('C, Weight:');
  await page.getByRole('button', { name: 'Back to the columns' }).click();
  await page
    .getByRole('group', { name: /What does “HP” mean/ })
    .getByRole('button', { name: 'PTO power' })
    .click();
  await page
    .getByRole('group', { name: /“Weight”/ })
    .getByRole('button', { name: /pounds|lb/ })
    .click();
  await expect(page.getByRole('heading', { name: /before the rest/ })).toHaveCount(0);
  await look(page);
  await expect(page.getByRole('button', { name: /^Errors/ })).toContainText('0');
  await row(page, 3).locator('summary').click();
  await expect(row(page, 3)).toContainText(/PTO power35\.0.hp/);
  await expect(row(page, 3)).toContainText(/3,704.lb/);
});

/** A yard’s list as somebody keeps it: spans in inches but one, prices without a currency, one machine twice. */
const list = `Model,Category,Shoulder span,Mast height (in),Price
Harl rake,1,26,18,1200
Tarn tiller,1,26 1/2,18,2100
Wickset blade,1,26 3/4,18,900.50 EUR
Harl blade,1,84,18,750
Tarn tiller,1,26 1/2,18 1/2,2100
`;

test('a figure in another unit than its column is held until somebody says that it is meant', async ({ page }) => {
  await choose(page, { name: 'list.csv', text: list });
  await look(page);
  await expect(row(page, 5)).toContainText('The other figures of the column are in inches');
  await row(page, 5).locator('summary').click();
  await expect(row(page, 5).locator('dl')).not.toContainText('shoulder span');
  await page.getByRole('button', { name: 'Back to the columns' }).click();
  await page.getByRole('button', { name: 'Change column C' }).click();
  await page.getByLabel('Figures without a unit are in').selectOption({ label: 'whatever fits, each by itself' });
  await look(page);
  await row(page, 5).locator('summary').click();
  await expect(row(page, 5).locator('dl')).toContainText(/shoulder span.*840.mm/);
});

test('only what somebody chose is said to be chosen', async ({ page }) => {
  await choose(page, { name: 'list.csv', text: list });
  await expect(page.locator('.imp-column')).toHaveCount(5);
  await expect(page.getByText('you chose it')).toHaveCount(0);
  await page
    .getByRole('group', { name: /“Price”: which currency/ })
    .getByRole('button', { name: 'USD' })
    .click();
  await expect(page.getByRole('heading', { name: /before the rest/ })).toHaveCount(0);
  await expect(page.getByText('you chose it')).toHaveCount(0);
  await expect(page.getByText('in USD, as you said')).toBeVisible();
});

test('prices without a currency are in the one that is chosen for the column', async ({ page }) => {
  await choose(page, { name: 'list.csv', text: list });
  await look(page);
  await expect(row(page, 2)).toContainText('Which currency?');
  await page.getByRole('button', { name: 'Back to the columns' }).click();
  await page.getByRole('button', { name: 'Change column E' }).click();
  await page.getByLabel('Prices without a currency are in').selectOption('CAD');
  await look(page);
  await row(page, 2).locator('summary').click();
  await expect(row(page, 2).locator('dl')).toContainText('1200.00 CAD');
  await row(page, 4).locator('summary').click();
  await expect(row(page, 4).locator('dl')).toContainText('900.50 EUR');
});

test('a machine that stands in two rows is one record before it is written as it is after', async ({ page }) => {
  await choose(page, { name: 'list.csv', text: list });
  await look(page);
  await expect(row(page, 6)).toContainText('there twice');
  await expect(row(page, 6)).toContainText('name or number of row 3');
  await expect(row(page, 6)).not.toContainText('row 2');
  await expect(row(page, 6)).not.toContainText('refused');
  await write(page);
  await expect(page.getByText('New records').locator('..')).toContainText('4');
  const { items } = await yard.ask<{ items: { id: string; name: string }[] }>('GET', '/api/records?search=tarn');
  expect(items).toHaveLength(1);
  const { readings } = await yard.ask<{ readings: { field: string }[] }>('GET', `/api/records/${items[0]?.id}`);
  expect(readings.filter(({ field }) => field === 'mastHeight')).toHaveLength(2);
});

test('a workbook opens at the sheet that fits, and a wrong one is told', async ({ page }) => {
  const text = workbook({
    sheets: {
      Hours: textRow(1, ['Week', 'Who', 'Hours']) + textRow(2, ['1', 'Jo', '40']),
      Shelf:
        textRow(1, ['Implement', 'Cat', 'Mast height (in)']) + textRow(2, ['<img src=x onerror=alert(1)>', '1', '18']),
    },
  });
  await choose(page, { name: 'yard.xlsx', text, type: xlsx });
  const sheet = page.getByRole('combobox', { name: 'Sheet' });
  await expect(sheet).toHaveValue('1');
  await sheet.selectOption({ label: 'Hours (2 rows)' });
  await expect(page.getByRole('alert')).toContainText('The sheet “Shelf” fits better: 3 of 3');
  await sheet.selectOption({ label: 'Shelf (2 rows)' });
  await look(page);
  await expect(row(page, 2)).toContainText('<img src=x onerror=alert(1)>');
  await write(page);
  expect(await names()).toEqual(['<img src=x onerror=alert(1)>']);
  expect(await page.locator('main img').count()).toBe(0);
});

test('files that are not taken are refused in words, and the next one can be chosen', async ({ page }) => {
  const sheets = { A: textRow(1, ['Implement']) };
  const bomb = `<row r="1"><c r="A1" t="str"><v>${'0'.repeat(30_000_000)}</v></c></row>`;
  for (const [text, words] of [
    [workbook({ sheets, more: [{ name: 'xl/vbaProject.bin', content: 'x' }] }), 'a workbook with macros'],
    [workbook({ sheets: { A: bomb } }), /\d+ times/],
    [Buffer.from('PK nothing'), /damaged|got/],
    [Buffer.alloc(20_000_001, 'a,b\n'), 'at most 20000000 bytes'],
  ] as const) {
    await choose(page, { name: 'bad.xlsx', text, type: xlsx });
    await expect(page.getByRole('alert')).toContainText(words);
    await expect(page.getByText(/^bad\.xlsx, /)).toBeVisible();
  }
  await choose(page, { name: 'rakes.csv', text: rakes(2) });
  await expect(page.getByRole('heading', { name: 'What the columns mean' })).toBeVisible();
});

test('fifty thousand rows: only those in sight are in the page; stopped, nothing of it stays', async ({ page }) => {
  test.setTimeout(180_000);
  await choose(page, { name: 'many.csv', text: rakes(49_990) });
  await look(page);
  expect(await page.locator('.imp-row').count()).toBeLessThan(60);
  await page.evaluate(() => scrollTo({ top: document.documentElement.scrollHeight, behavior: 'instant' }));
  await expect(page.getByText('Rake 49989', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Write 49,990 rows' }).click();
  await expect(page.getByText(/^[1-9][\d,]* of 49,990 rows/)).toBeVisible();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByText('Nothing of it was written')).toBeVisible({ timeout: 30_000 });
  expect(await names()).toEqual([]);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'The server no longer has this file' })).toBeVisible();
});

test('a file that the server has let go of, and a server that has ended, are told in words', async ({ page }) => {
  await choose(page, { name: 'rakes.csv', text: rakes(2) });
  await expect(page.getByRole('heading', { name: 'What the columns mean' })).toBeVisible();
  const id = new URL(page.url()).hash.replace('#import=', '');
  await yard.ask('DELETE', `/api/imports/${id}`);
  await page.getByRole('combobox', { name: 'Its rows are' }).selectOption('tractor');
  await expect(page.getByRole('heading', { name: 'The server no longer has this file' })).toBeVisible();
  await page.getByRole('link', { name: 'Send it again' }).click();
  await expect(page.getByRole('heading', { name: 'Choose a spreadsheet, or drop it here' })).toBeVisible();
  await yard.stop();
  await page.getByLabel('The file', { exact: true }).and(page.locator('input')).setInputFiles(nasty);
  await expect(page.getByRole('alert')).toContainText('can’t be reached');
  yard = await startYard();
});

test('a dropped file is read, and the keyboard does the rest', async ({ page }) => {
  await page.goto(`${yard.address}#import`);
  await page.getByRole('heading', { name: 'Choose a spreadsheet, or drop it here' }).waitFor();
  const transfer = await page.evaluateHandle(
    (text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], 'dropped.csv', { type: 'text/csv' }));
      return data;
    },
    readFileSync(nasty, 'utf8'),
  );
  await page.locator('.imp-drop').dispatchEvent('drop', { dataTransfer: transfer });
  await expect(page.getByRole('heading', { name: 'What the columns mean' })).toBeFocused();
  await tabTo(page, 'See what becomes of every row');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'What becomes of every row' })).toBeFocused();
  await expect(page.getByText(/^All 19 rows/)).toBeVisible();
  await tabTo(page, 'Leave out row 7');
  await page.keyboard.press('Space');
  await expect(row(page, 7)).toContainText('left out');
  await tabTo(page, 'Write 12 rows');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Written' })).toBeFocused();
});

/** Goes on with the Tab key until what is called this has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let i = 0; i < 120; i += 1) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(() => {
      const at = document.activeElement;
      return (at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : at?.textContent) ?? '';
    });
    if (focused.trim() === name) return;
  }
  throw new Error(`The Tab key never comes to “${name}”.`);
}

test('nothing bars the way through an import, at any size and in either light', async ({ page }) => {
  test.setTimeout(120_000);
  for (const { width, colorScheme } of looks) {
    await page.setViewportSize({ width, height: 900 });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await choose(page, { name: 'x.xlsx', text: 'PK nothing', type: xlsx });
    await expect(page.getByRole('alert')).toContainText('Expected');
    await expectOpen(page);
    await choose(page, { name: 'hp.csv', text: `Tractor,HP,Weight\nOstrey ${width} ${colorScheme},24,1650\n` });
    await expect(page.getByRole('heading', { name: /before the rest/ })).toBeVisible();
    await page.getByRole('button', { name: 'Change column C' }).click();
    await expectOpen(page);
    await choose(page, nasty);
    await look(page);
    const opened = row(page, 7).locator('summary');
    if ((await opened.count()) > 0) await opened.click();
    await expectOpen(page);
    await page.getByRole('button', { name: /^Write/ }).click();
    await expect(page.getByRole('heading', { name: 'Written' })).toBeVisible();
    await page.getByRole('button', { name: 'Take the import back' }).click();
    await expectOpen(page);
    await page.getByRole('button', { name: 'Yes, take it back' }).click();
    await expect(page.getByText('The import was taken back')).toBeVisible();
  }
});
