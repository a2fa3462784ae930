import { assess } from '@hitchwright/core/assess';
import { readReplyLink } from '@hitchwright/core/exchange';
import { withEdits, type SetupDocument } from '@hitchwright/core/records';
import { verdictWords } from '@hitchwright/core/words';
import { AxeBuilder } from '@axe-core/playwright';
import type { BrowserContext, Page } from '@playwright/test';
import { askedFor, begin, beginSafely, draftKept, keptIn, keyIn, readTwice, truth, unread } from './measuring.ts';
import { basePath } from './site.ts';
import { expect, site, test } from './person.ts';
import { documentOf, linked } from './sample.ts';

function verdictOfTruth(): string {
  const edits = Object.entries(truth).map(([path, value]) => ({ path, value: { value, plusMinus: 1.5 } }));
  const assessment = assess(withEdits(unread(), edits), { full: false });
  if (!assessment.ok) throw new Error(JSON.stringify(assessment.errors));
  return verdictWords(assessment.answer);
}

/** Reads whatever is asked for, until nothing is. */
async function readAll(page: Page): Promise<string[]> {
  const asked: string[] = [];
  const heading = page.getByRole('heading', { level: 1 });
  await expect(page.locator('.measure-verdict')).toHaveAttribute('aria-busy', 'false');
  while (!(await heading.textContent())?.includes('Nothing left')) {
    const path = await askedFor(page);
    asked.push(path);
    const value = truth[path];
    if (value === undefined) throw new Error(`asked for ${path}, which is known`);
    const before = await heading.textContent();
    await readTwice(page, value);
    await expect(heading).not.toHaveText(before ?? '');
    await expect(page.locator('.measure-verdict')).toHaveAttribute('aria-busy', 'false');
  }
  return asked;
}

test('two readings in, the verdict is that of the whole truth, and the check opens with them', async ({ page }) => {
  await begin(page);
  await expect(page.locator('.measure-verdict')).toContainText('Measure first');
  const asked = await readAll(page);
  expect(new Set(asked).size).toBe(asked.length);
  await expect(page.locator('.done-verdict')).toContainText(verdictOfTruth());
  await page.getByRole('link', { name: 'Open the check with these figures' }).click();
  await expect(page.getByRole('region', { name: 'Verdict' }).getByRole('heading')).toHaveText(verdictOfTruth());
});

test('fraction keys type what the tape shows, in both units', async ({ page }) => {
  await begin(page);
  for (const digit of ['2', '0'])
    await page.locator('.keypad-digits').getByRole('button', { name: digit, exact: true }).click();
  await page.getByRole('button', { name: '1/2' }).click();
  await expect(page.locator('.reading-box')).toHaveValue('20 1/2');
  await expect(page.locator('.reading-other')).toHaveText('521 mm');
  await page.getByRole('button', { name: /^and 1\/16|1\/16/ }).click();
  await expect(page.locator('.reading-box')).toHaveValue('20 9/16');
  await page.getByRole('button', { name: 'Erase' }).click();
  await expect(page.locator('.reading-box')).toHaveValue('20');
});

test('readings that disagree are read a third time, and two that agree are kept', async ({ page }) => {
  await begin(page);
  const path = await askedFor(page);
  const value = truth[path] ?? 0;
  await keyIn(page, value);
  await page.getByRole('button', { name: 'Keep this reading' }).click();
  await page.locator('.way-list .big-choice').first().click();
  await keyIn(page, value + 20);
  await page.getByRole('button', { name: 'Compare' }).click();
  await expect(page.locator('.said')).toContainText('apart, more than the tool explains');
  await keyIn(page, value + 1);
  await page.getByRole('button', { name: 'Compare' }).click();
  await expect(page.locator('.said')).toContainText('Two readings agree');
});

test('a figure out of its class is doubted, and one between other points is turned or read again', async ({ page }) => {
  await begin(page);
  while ((await askedFor(page)) !== 'implement.shoulderSpan') await readTwice(page, truth[await askedFor(page)] ?? 0);
  await keyIn(page, 790);
  await page.getByRole('button', { name: 'Keep this reading' }).click();
  await page.getByRole('button', { name: 'from the step on one pin' }).click();
  await expect(page.getByRole('alert')).toContainText('tip to tip');
  await page.getByRole('button', { name: 'Read it again' }).click();
  await keyIn(page, 661);
  await page.getByRole('button', { name: 'Keep this reading' }).click();
  await expect(page.getByText('From where to where?')).toBeVisible();
});

test('what can’t be reached leads to the next best, is listed, and can be tried after all', async ({ page }) => {
  await begin(page);
  const first = await askedFor(page);
  await page.getByRole('button', { name: 'Can’t reach it' }).click();
  await expect(page.locator(`[data-path]:not([data-path="${first}"])`)).toBeVisible();
  await page.getByRole('button', { name: 'Can’t reach it' }).click();
  await expect(page.getByRole('heading', { name: 'Left out' })).toBeVisible();
  await expect(page.locator('.done-verdict')).toContainText('Measure first');
  await expect(page.locator('.done-verdict')).toContainText('nobody can say that it works');
  await page
    .getByRole('button', { name: /^Try it after all/ })
    .first()
    .click();
  await expect(page.locator('[data-path]')).toBeVisible();
});

test('a photo is shrunk and loses where and when it was taken', async ({ page }) => {
  await begin(page);
  const jpeg = await page.evaluate(jpegWithPlace);
  await page
    .locator('.photo input')
    .setInputFiles({ name: 'tape.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(jpeg) });
  await expect(page.getByAltText('Your photo of this reading')).toBeVisible();
  const kept = await (await keptIn<{ jpeg?: Blob }>(page, 'photos')).evaluate(keptPhoto);
  expect(Buffer.from(jpeg).includes('GPS-47.11N')).toBe(true);
  expect(Buffer.from(kept.bytes).includes('Exif')).toBe(false);
  expect(Buffer.from(kept.bytes).includes('GPS-47.11N')).toBe(false);
  expect(Math.max(kept.width, kept.height)).toBe(1280);
  expect(kept.bytes.length).toBeLessThan(jpeg.length);
});

/** A large photo with an Exif segment that says where it was taken; runs in the page. */
async function jpegWithPlace(): Promise<number[]> {
  const canvas = document.createElement('canvas');
  canvas.width = 3000;
  canvas.height = 2000;
  const pen = canvas.getContext('2d');
  for (let x = 0; x < 3000; x += 25) {
    if (pen === null) break;
    pen.fillStyle = `hsl(${x % 360} 80% 50%)`;
    pen.fillRect(x, 0, 25, 2000);
  }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.95));
  const bytes = [...new Uint8Array((await blob?.arrayBuffer()) ?? new ArrayBuffer(0))];
  const text = [...'Exif\0\0GPS-47.11N'].map((letter) => letter.charCodeAt(0));
  return [...bytes.slice(0, 2), 0xff, 0xe1, 0, text.length + 2, ...text, ...bytes.slice(2)];
}

/** The photo as the device has it; runs in the page. */
async function keptPhoto([photo]: readonly { jpeg?: Blob }[]): Promise<{
  bytes: number[];
  width: number;
  height: number;
}> {
  const blob = photo?.jpeg ?? new Blob();
  const picture = await createImageBitmap(blob);
  return { bytes: [...new Uint8Array(await blob.arrayBuffer())], width: picture.width, height: picture.height };
}

test('a closed page and a new one go on where the first was left, half-typed figures and all', async ({ page }) => {
  await begin(page);
  await keyIn(page, 52);
  const address = page.url();
  await draftKept(page, '52');
  await page.goto('about:blank');
  await page.goto(address);
  await expect(page.locator('.reading-box')).toHaveValue('52');
});

test('two pages on one measuring lose nothing of each other', async ({ page }) => {
  await begin(page);
  const first = await askedFor(page);
  const other = await page.context().newPage();
  await other.goto(page.url());
  await expect(other.locator('[data-path]')).toHaveAttribute('data-path', first);
  await readTwice(page, truth[first] ?? 0);
  await expect(other.locator(`[data-path="${first}"]`)).toHaveCount(0);
  const second = await askedFor(other);
  await readTwice(other, truth[second] ?? 0);
  for (const one of [page, other]) {
    await expect(one.getByRole('heading', { level: 1 })).toHaveText('Nothing left to read');
    await expect(one.locator('.reading-list li')).toHaveCount(2);
  }
});

test('a full device is said, what was typed stays on the page, and is kept once there is room', async ({ page }) => {
  test.setTimeout(90_000);
  await page.goto(site());
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const devtools = await page.context().newCDPSession(page);
  const origin = new URL(page.url()).origin;
  const usage = await page.evaluate(async () => (await navigator.storage.estimate()).usage ?? 0);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usage + 40_000 });
  await begin(page);
  const full = page.getByRole('alert').filter({ hasText: 'This device is full' });
  for (let press = 0; press < 300 && !(await full.isVisible()); press += 1)
    await page.getByRole('button', { name: press % 2 === 0 ? '7' : 'Erase', exact: true }).click();
  await expect(full).toBeVisible();
  await page.locator('.reading-box').fill('521');
  await expect(page.locator('.reading-box')).toHaveValue('521');
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usage + 100_000_000 });
  const again = page.getByRole('button', { name: 'Try to keep it again' });
  await expect(async () => {
    if (await again.isVisible()) await again.click({ timeout: 1_000 });
    await expect(full).toHaveCount(0, { timeout: 2_000 });
  }).toPass({ timeout: 40_000 });
  await page.reload();
  await expect(page.locator('.reading-box')).toHaveValue('521');
});

test('a request asks for what matters, and its reply merges with who and when', async ({ page }) => {
  await page.goto(await shared(page.context(), linked(unread())));
  await page.getByRole('link', { name: 'Ask the customer to measure' }).click();
  await page.getByLabel('Who asks').fill('Yard at the ford');
  await page.getByLabel('Who is asked').fill('Holm, lower barn');
  await expect(page.locator('.field-list li')).toHaveCount(2);
  await expect(page.locator('.qr').first()).toBeVisible();
  await expect(page.locator('.worksheet-box')).toHaveCount(2);
  const link = await page.getByLabel('What to measure on the tractor and implement').inputValue();
  await expect.poll(async () => (await keptIn(page, 'requests')).evaluate((all) => all.length)).toBe(1);

  const customer = await page.context().newPage();
  await customer.goto(link);
  await expect(customer.locator('.safety-asked')).toContainText(
    'Holm, lower barn: Yard at the ford asks you for 2 figures, about 3 min',
  );
  await customer.getByLabel(/Who measures/).fill('Ada');
  await beginSafely(customer);
  await expect(customer.locator('.measure-verdict')).toHaveText('Asked by Yard at the ford');
  await readAll(customer);
  await expect(customer.getByRole('heading', { name: 'That is all that was asked' })).toBeVisible();
  const answer = await customer.getByLabel('Readings for a tractor and implement').inputValue();
  const reply = readReplyLink(new URL(answer).hash);
  expect(reply.ok && reply.value.who).toBe('Ada');

  await page.goto(answer);
  await expect(page.locator('.request-by')).toContainText('Read by Ada on');
  await expect(page.locator('.merge-list li')).toHaveCount(2);
  await page.getByRole('link', { name: 'Take these 2 into the check' }).click();
  await expect(page.getByRole('region', { name: 'Verdict' }).getByRole('heading')).toHaveText(verdictOfTruth());
});

/** The same pages as others find them: under a name of their own, served from here, and kept on no device. */
async function shared(context: BrowserContext, fragment: string): Promise<string> {
  const home = 'https://yard.example';
  await context.route(`${home}/**`, async (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname.endsWith('/sw.js')) return route.abort();
    await route.fulfill({ response: await route.fetch({ url: new URL(pathname, site()).href }) });
  });
  return `${home}${basePath}#${fragment}`;
}

/** A tiller of which only name and category are known: much is open. */
function bare(): SetupDocument {
  const { hitchwright, tractor } = documentOf('tiller', '35', '');
  return { hitchwright, tractor, implement: { name: 'Tiller in the shed', category: '1' } };
}

/** A customer opens a request for a bare tiller, and begins. */
async function beginAsked(page: Page): Promise<void> {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(await shared(page.context(), `request=${linked(bare())}`));
  await expect(page.locator('.field-list input:checked')).toHaveCount(5);
  await page.goto(await page.getByLabel('What to measure on the tractor and implement').inputValue());
  await beginSafely(page);
  await expect(page.locator('#figure-title')).toBeVisible();
}

test('a few are asked for at first, all by one press, and both pages say the same count', async ({ page }) => {
  await page.goto(await shared(page.context(), `request=${linked(bare())}`));
  const boxes = page.locator('.field-list input');
  await expect(page.locator('.field-list input:checked')).toHaveCount(5);
  const all = await boxes.count();
  expect(all).toBeGreaterThan(8);
  await expect(boxes.nth(4)).toBeChecked();
  await expect(boxes.nth(5)).not.toBeChecked();
  await page.getByRole('button', { name: `Ask for all ${all}` }).click();
  await expect(page.locator('.field-list input:checked')).toHaveCount(all);
  const asked = /\d+ figures, about \d+ min/.exec((await page.locator('.how-many').textContent()) ?? '')?.[0] ?? 'none';
  expect(asked).toContain(`${all} figures`);
  await page.goto(await page.getByLabel('What to measure on the tractor and implement').inputValue());
  await expect(page.locator('.safety-asked')).toContainText(`asks you for ${asked}`);
  await beginSafely(page);
  await expect(page.getByRole('heading', { level: 1 })).toContainText(`1 of ${all}`);
});

test('pages of this machine only send nobody a link: paper, this device and a file are what works', async ({
  page,
}) => {
  await page.goto(site(`request=${linked(unread())}`));
  await expect(page.getByText('These pages are on this machine only')).toBeVisible();
  await expect(page.locator('.worksheet-box')).toHaveCount(2);
  await expect(page.locator('.qr')).toHaveCount(0);
  await expect(page.locator('.link-box')).toHaveCount(0);
  await page.getByRole('link', { name: 'Read it on this device' }).click();
  await beginSafely(page);
  await readTwice(page, truth[await askedFor(page)] ?? 0);
  await readTwice(page, truth[await askedFor(page)] ?? 0);
  await expect(page.getByRole('heading', { name: 'Send it back' })).toBeVisible();
  await expect(page.locator('.link-box')).toHaveCount(0);
  await expect(page.locator('.qr')).toHaveCount(0);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const file = await (await saving).path();
  await page.goto(site('reply'));
  await page.getByLabel('A file of readings').setInputFiles(file);
  await expect(page.locator('.merge-list li')).toHaveCount(2);
});

test('nobody is taken to have looked at the ground before they say so', async ({ page }) => {
  await page.goto(site(linked(unread())));
  await page.getByRole('button', { name: 'Measure step by step' }).click();
  await expect(page.getByRole('radio', { checked: true })).toHaveCount(0);
  await page.getByRole('button', { name: 'It is safe: begin' }).click();
  await expect(page.getByRole('alert')).toContainText('Look how the tractor stands');
  await expect(page.locator('[data-path]')).toHaveCount(0);
  await beginSafely(page);
  await expect(page.locator('[data-path]')).toBeVisible();
});

test('the way back keeps what was read, and so does the browser’s own', async ({ page }) => {
  await begin(page);
  const address = page.url();
  const first = await askedFor(page);
  await readTwice(page, truth[first] ?? 0);
  await expect(page.locator(`[data-path]:not([data-path="${first}"])`)).toBeVisible();
  const second = await askedFor(page);
  await keyIn(page, 5);
  await page.getByRole('button', { name: 'Last reading' }).click();
  await expect(page.locator(`[data-path="${first}"]`)).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('1 of 2');
  await expect(page.locator('.said')).toContainText('Two readings agree');
  await page.getByRole('button', { name: 'Next' }).click();
  await expect(page.locator(`[data-path="${second}"] .reading-box`)).toHaveValue('5');
  await page.goBack();
  await expect(page.locator(`[data-path="${first}"] .said`)).toContainText('Two readings agree');
  await page.getByRole('button', { name: 'Safety first' }).click();
  await expect(page.getByRole('heading', { name: 'Make it safe' })).toBeVisible();
  await page.getByRole('button', { name: 'It is safe: go on' }).click();
  await expect(page.locator(`[data-path="${second}"] .reading-box`)).toHaveValue('5');
  expect(page.url()).toBe(address);
});

test('the browser’s way back stays in the measuring down to what has to be safe', async ({ page }) => {
  await begin(page);
  const first = await askedFor(page);
  await readTwice(page, truth[first] ?? 0);
  await readTwice(page, truth[await askedFor(page)] ?? 0);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nothing left to read');
  await page.goBack();
  await expect(page.locator('[data-path]')).not.toHaveAttribute('data-path', first);
  await page.goBack();
  await expect(page.locator('[data-path]')).toHaveAttribute('data-path', first);
  await page.goBack();
  await expect(page.getByRole('heading', { name: 'Make it safe' })).toBeVisible();
  await page.goForward();
  await page.goForward();
  await page.goForward();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Nothing left to read');
  await expect(page.locator('.reading-list li')).toHaveCount(2);
});

test('a figure that is read again is out of the answer until it is finished', async ({ page }) => {
  await begin(page);
  const first = await askedFor(page);
  await readTwice(page, truth[first] ?? 0);
  await readTwice(page, truth[await askedFor(page)] ?? 0);
  await page
    .getByRole('button', { name: /^Look or correct/ })
    .first()
    .click();
  await expect(page.locator('[data-path]')).toHaveAttribute('data-path', first);
  await page.getByRole('button', { name: 'Read it again' }).click();
  await page.goBack();
  await expect(page.locator('[data-path]')).toHaveAttribute('data-path', first);
  await readTwice(page, truth[first] ?? 0);
  await expect(page.locator('.reading-list li')).toHaveCount(2);
  await expect(page.locator('.done-verdict')).toContainText(verdictOfTruth());
});

test('the list behind the count opens any figure and leaves any out', async ({ page }) => {
  await beginAsked(page);
  const title = page.locator('#figure-title');
  const first = (await title.textContent()) ?? '';
  await page.getByRole('button', { name: /show the list/ }).click();
  const open = page.locator('.done-part').filter({ has: page.getByRole('heading', { name: 'Still to read' }) });
  await expect(open.locator('li')).toHaveCount(5);
  await open
    .getByRole('button', { name: /^Leave it out/ })
    .first()
    .click();
  await expect(open.locator('li')).toHaveCount(4);
  await open
    .getByRole('button', { name: /^Read it/ })
    .last()
    .click();
  await expect(title).not.toHaveText(first);
  await page.goBack();
  await page.getByRole('button', { name: /^Try it after all/ }).click();
  await expect(title).toHaveText(first);
});

test('what there is can be sent from any screen, before all is read', async ({ page }) => {
  await beginAsked(page);
  const heading = page.getByRole('heading', { level: 1 });
  await expect(heading).toContainText('1 of 5');
  await page.getByRole('button', { name: 'Send what I have' }).click();
  await expect(page.getByText('Nothing is read yet')).toBeVisible();
  await expect(page.getByLabel('Readings for a tractor and implement')).toHaveCount(0);
  await page.getByRole('button', { name: 'Go on reading' }).click();
  await page.locator('.big-choice', { hasText: 'two lower pins and a fixed upper pin' }).click();
  await expect(heading).toContainText('2 of 5');
  await page.getByRole('button', { name: 'Last reading' }).click();
  await expect(page.getByRole('button', { pressed: true })).toContainText('two lower pins and a fixed upper pin');
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect(heading).toContainText('2 of 5');
  await page.getByRole('button', { name: 'Send what I have' }).click();
  await expect(page.getByText('One figure is read and can go as it is. 4 figures are still to be read')).toBeVisible();
  const answer = await page.getByLabel('Readings for a tractor and implement').inputValue();
  const reply = readReplyLink(new URL(answer).hash);
  expect(reply.ok && reply.value.readings).toEqual([{ path: 'implement.mounting', value: 'threePoint' }]);
  await page.goBack();
  await expect(page.locator('#figure-title')).toBeVisible();
});

/** Everything that can be pressed is at least 44 px high and wide, or a box within a label that is. */
async function smallTargets(page: Page): Promise<string[]> {
  return page.locator('button, a, summary, label, select, input:not(label input)').evaluateAll((all) =>
    all
      .filter((one) => one.checkVisibility() && !one.classList.contains('unseen') && one.closest('.unseen') === null)
      .map((one) => ({
        box: one.getBoundingClientRect(),
        words: `${one.tagName} ${one.textContent.trim().slice(0, 30)}`,
      }))
      .filter(({ box }) => box.width < 44 || box.height < 44)
      .map(({ box, words }) => `${words}: ${Math.round(box.width)} × ${Math.round(box.height)}`),
  );
}

/** What axe finds, and with the ratios that sunlight wants: 7 to 1 for words. */
async function faultsOf(page: Page): Promise<string[]> {
  const builder = new AxeBuilder({ page }).options({ rules: { 'color-contrast-enhanced': { enabled: true } } });
  const { violations } = await builder.analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' | ')}`);
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`every screen is clean, large enough for a thumb and clear in the sun: ${colorScheme}`, async ({ page }) => {
    test.setTimeout(90_000);
    await page.emulateMedia({ colorScheme });
    const expectClean = async (): Promise<void> => {
      expect(await faultsOf(page)).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    };
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto(site(linked(unread())));
    await page.getByRole('button', { name: 'Measure step by step' }).click();
    await expect(page.getByRole('heading', { name: 'Make it safe' })).toBeVisible();
    await expectClean();
    await page.getByRole('button', { name: 'It is safe: begin' }).click();
    await expect(page.getByRole('alert')).toContainText('Look how the tractor stands');
    await expectClean();
    await beginSafely(page);
    await expect(page.locator('[data-path]')).toBeVisible();
    await expectClean();
    for (const place of ['list', 'Stop here']) {
      await page.getByRole('button', { name: place }).click();
      await expect(page.getByRole('heading', { name: 'Still to read' })).toBeVisible();
      await expectClean();
      await page.getByRole('button', { name: 'Go on reading' }).click();
    }
    await keyIn(page, 900);
    await page.getByRole('button', { name: 'Keep this reading' }).click();
    await expectClean();
    await page.locator('.way-list .big-choice').first().click();
    await expect(page.locator('.doubt')).toBeVisible();
    await expectClean();
    await page.getByRole('button', { name: 'Read it again' }).click();
    await readTwice(page, truth[await askedFor(page)] ?? 0);
    await page.getByRole('button', { name: 'Can’t reach it' }).click();
    await expect(page.getByRole('heading', { name: 'Send it back' })).toBeVisible();
    await expectClean();
    await page.getByRole('link', { name: 'Other measurings on this device' }).click();
    await expect(page.getByRole('link', { name: /^Go on/ })).toBeVisible();
    await expectClean();
  });
}

test('one hand: keys and the press that goes on lie in the lower part of the screen', async ({ page }) => {
  await begin(page);
  const pad = await page.locator('.keypad').boundingBox();
  const bar = await page.locator('.screen-bar').boundingBox();
  expect(pad?.y ?? 0).toBeGreaterThan(844 * 0.4);
  expect((bar?.y ?? 0) + (bar?.height ?? 0)).toBeLessThanOrEqual(845);
  expect(bar?.y ?? 0).toBeGreaterThan(844 * 0.8);
});
