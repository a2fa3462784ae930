import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContext, Locator, Page } from '@playwright/test';
import { cpSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type * as LastingStorageModule from '../src/app/offline/lastingStorage.ts';
import { hostOf, twoVersions, type Host, type Versions } from './host.ts';
import { askedFor, begin, beginSafely, draftKept, keyIn, readTwice, truth, unread } from './measuring.ts';
import { checkOf, linked, valueIn } from './sample.ts';
import { expect as plainExpect, test as base } from './person.ts';

/** A busy machine may take its time over a whole site; what must not happen is waited for separately. */
const expect = plainExpect.configure({ timeout: 15_000 });
base.describe.configure({ timeout: 90_000 });

interface Fixtures {
  /** A phone that has not been here before. */
  readonly phone: BrowserContext;
  /** Serves the first version. */
  readonly host: Host;
}

const test = base.extend<Fixtures, { versions: Versions }>({
  versions: [
    async ({}, use) => {
      const versions = await twoVersions();
      await use(versions);
      versions.remove();
    },
    { scope: 'worker' },
  ],
  phone: async ({ chrome }, use) => {
    const context = await newPhone(chrome);
    await use(context);
    await context.close();
  },
  host: async ({ versions }, use) => {
    const host = await hostOf({ folder: versions.first });
    await use(host);
    await host.stop();
  },
});

function newPhone(chrome: Browser): Promise<BrowserContext> {
  return chrome.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
}

/** Opens the site for the first time and stays until it is kept. */
async function visit(phone: BrowserContext, address: string): Promise<Page> {
  const page = await phone.newPage();
  await page.goto(address);
  await expect(page.getByText('Works without a signal now')).toBeVisible();
  return page;
}

/** No network on the phone, and no host that would answer. */
async function loseSignal(phone: BrowserContext, host: Host): Promise<void> {
  await phone.setOffline(true);
  await host.stop();
  await expect(fetch(host.address)).rejects.toThrow();
}

let hours = 0;

/** The page is returned to after some hours: that is when it looks for a newer version. */
async function returnLater(page: Page): Promise<void> {
  hours += 2;
  await page.clock.setFixedTime(Date.now() + hours * 3_600_000);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
}

function verdict(page: Page): Locator {
  return page.getByRole('region', { name: 'Verdict' }).getByRole('heading');
}

function bar(page: Page): Locator {
  return page.getByRole('status').filter({ hasText: 'A newer version is here.' });
}

async function expectEdition(page: Page, which: 'first' | 'second'): Promise<void> {
  await expect(page).toHaveTitle(which === 'first' ? 'Hitchwright' : 'Hitchwright, second');
  await expect(page.locator('html[data-edition=second]')).toHaveCount(which === 'first' ? 0 : 1);
}

/** Keeps the browser's own store of what it has fetched out of a test: what opens then was kept by the site itself. */
const notStored = { 'cache-control': 'no-store' };

function keptCaches(page: Page): Promise<string[]> {
  return page.evaluate(() => caches.keys());
}

test('after one visit it opens, answers and shows the yard with the signal gone and the host stopped', async ({
  phone,
  host,
}) => {
  const elsewhere: string[] = [];
  phone.on('request', (request) => {
    if (!request.url().startsWith(host.address)) elsewhere.push(request.url());
  });
  const page = await visit(phone, host.address);
  await loseSignal(phone, host);
  await page.reload();
  await expect(
    page.getByRole('region', { name: /^Example/ }).getByRole('heading', { name: 'Works with parts' }),
  ).toBeVisible();
  await expect(page.getByText('Works without a signal now')).toHaveCount(0);

  const opened = await phone.newPage();
  await opened.goto(`${host.address}#${checkOf('tiller', '35', '')}`);
  await expect(verdict(opened)).toHaveText('Works');
  await opened.getByRole('button', { name: 'Side, through the lift' }).click();
  await expect(opened.locator('.lift-drawing svg').last()).toBeVisible();
  await opened.getByRole('navigation').getByRole('button', { name: 'Dimensions' }).click();
  await expect(opened.getByLabel('mast height', { exact: true })).toBeVisible();

  await opened.getByRole('link', { name: 'Yard' }).click();
  await expect(opened.getByRole('link', { name: /box blade.*U-28.*works with parts/i }).first()).toBeVisible();

  await opened.goto(`${host.address}#${linked(unread())}`);
  await opened.getByRole('button', { name: 'Measure step by step' }).click();
  await beginSafely(opened);
  await expect(opened.locator('.keypad')).toBeVisible();
  await opened.goto(`${host.address}mistyped/address`);
  await expect(opened).toHaveURL(host.address);
  await expect(opened.getByRole('heading', { level: 1 })).toContainText('Will the');
  expect(elsewhere).toEqual([]);
});

test('that it works without a signal is told beside the name, the question and the thumb bar, not over them', async ({
  phone,
  host,
}) => {
  const page = await visit(phone, `${host.address}#${checkOf('tiller', '35', '')}`);
  for (const width of [390, 1366]) {
    await page.setViewportSize({ width, height: 720 });
    const plate = await page.getByText('Works without a signal now').boundingBox();
    if (plate === null) throw new Error('the plate is gone already');
    expect(plate.y + plate.height).toBeLessThanOrEqual(720);
    for (const covered of [page.locator('.strip'), page.getByRole('navigation').filter({ visible: true })]) {
      const box = (await covered.count()) === 0 ? null : await covered.boundingBox();
      if (box !== null) expect(plate.y >= box.y + box.height || plate.y + plate.height <= box.y).toBe(true);
    }
  }
});

test('the page of the first visit itself goes on without a signal, parts that were never opened included', async ({
  phone,
  host,
}) => {
  host.hosting.headers = notStored;
  const page = await visit(phone, host.address);
  await loseSignal(phone, host);
  await page.getByRole('link', { name: 'Yard' }).click();
  await expect(page.getByRole('link', { name: /box blade.*U-28.*/i }).first()).toBeVisible();
});

test('an update waits: the old page goes on, the bar says so when nothing is touched, and taking it keeps what was typed', async ({
  phone,
  host,
  versions,
}) => {
  host.hosting.headers = notStored;
  const page = await visit(phone, host.address);
  await page.goto(`${host.address}#${checkOf('tiller', '35', '')}`);
  await page.reload();
  await expect(verdict(page)).toHaveText('Works');
  const asked = host.asked.length;
  await page.getByRole('navigation').getByRole('button', { name: 'Dimensions' }).click();
  const mast = page.getByLabel('mast height', { exact: true });
  await mast.fill('17 in');

  host.hosting.folder = versions.second;
  await returnLater(page);
  await expect.poll(() => isWaiting(page)).toBe(true);
  for (const key of ['1', '8', ' ', 'i', 'n', 'Tab']) {
    if (key === '1') await mast.selectText();
    await page.keyboard.press(key);
    await page.waitForTimeout(1000);
    await expect(bar(page)).toHaveCount(0);
  }
  await expect(bar(page)).toBeVisible();
  await expectEdition(page, 'first');

  const oldParts = readdirSync(join(versions.first, 'assets')).filter((file) => /^LiftView.*js$/.test(file));
  expect(oldParts).toHaveLength(1);
  expect((await fetch(`${host.address}assets/${oldParts[0]}`)).status).toBe(404);
  await page.getByRole('button', { name: 'Side, through the lift' }).click();
  await expect(page.locator('.lift-drawing svg').last()).toBeVisible();

  const address = page.url();
  expect(valueIn(address, 'implement.mastHeight')).toMatchObject({ value: '18 in' });
  await bar(page).getByRole('button', { name: 'Take it' }).click();
  await expectEdition(page, 'second');
  expect(page.url()).toBe(address);
  await page.getByRole('navigation').getByRole('button', { name: 'Dimensions' }).click();
  await expect(page.getByLabel('mast height', { exact: true })).toHaveValue('18 in');
  await expect(bar(page)).toHaveCount(0);
  const fetched = host.asked.slice(asked).map((path) => path.slice(path.lastIndexOf('/') + 1));
  expect(fetched.filter((file) => file.startsWith('index-'))).not.toEqual([]);
  expect(fetched.filter((file) => file.endsWith('.woff2'))).toEqual([]);
});

test('while figures are keyed in the bar stays away, and what is half typed outlives the update', async ({
  phone,
  host,
  versions,
}) => {
  const page = await visit(phone, host.address);
  await page.goto(`${host.address}#${linked(unread())}`);
  await page.getByRole('button', { name: 'Measure step by step' }).click();
  await expect(page.locator('.offline-status')).toHaveText(/^Kept on this device/);
  await beginSafely(page);
  host.hosting.folder = versions.second;
  await returnLater(page);
  await keyIn(page, 66);
  await expect.poll(() => isWaiting(page)).toBe(true);
  await page.waitForTimeout(6000);
  await expect(page.locator('.keypad')).toBeVisible();
  await expect(bar(page)).toBeHidden();

  const measuring = page.url();
  await page.goto(`${host.address}#measure`);
  await expect(bar(page)).toBeVisible();
  await page.goto(measuring);
  await expect(page.locator('.reading-box')).toHaveValue('66');
  await page.goto(`${host.address}#measure`);
  await bar(page).getByRole('button', { name: 'Take it' }).click();
  await expectEdition(page, 'second');
  await page.getByRole('link', { name: /^Go on/ }).click();
  await expect(page.locator('.reading-box')).toHaveValue('66');
});

test('a page that stays open looks for a newer version when it is returned to, once an hour', async ({
  phone,
  host,
}) => {
  const page = await visit(phone, host.address);
  await page.waitForTimeout(4000); // By then the browser has looked of its own accord.
  const looks = (): number => host.asked.filter((path) => path.endsWith('/sw.js')).length;
  const before = looks();
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await page.waitForTimeout(1000);
  expect(looks()).toBe(before);
  await returnLater(page);
  await expect.poll(looks).toBe(before + 1);
});

test('what is typed last is kept by taking the update at once', async ({ phone, host, versions }) => {
  const page = await visit(phone, host.address);
  await page.goto(`${host.address}#${checkOf('tiller', '35', '')}`);
  await page.reload();
  await page.getByRole('navigation').getByRole('button', { name: 'Dimensions' }).click();
  host.hosting.folder = versions.second;
  await returnLater(page);
  await expect(bar(page)).toBeVisible();
  await page.getByLabel('mast height', { exact: true }).fill('17 3/4 in');
  await bar(page)
    .getByRole('button', { name: 'Take it' })
    .evaluate((button) => (button as HTMLElement).click());
  await expectEdition(page, 'second');
  expect(valueIn(page.url(), 'implement.mastHeight')).toMatchObject({ value: '17 3/4 in' });
});

test('an update that is put off is offered again at the next visit, and comes by itself once every page is closed', async ({
  phone,
  host,
  versions,
}) => {
  const page = await visit(phone, host.address);
  host.hosting.folder = versions.second;
  await returnLater(page);
  await bar(page).getByRole('button', { name: 'Later' }).click();
  await expect(bar(page)).toHaveCount(0);
  await page.reload();
  await expectEdition(page, 'first');
  await expect(bar(page)).toBeVisible();
  await page.close();
  const next = await phone.newPage();
  await expect
    .poll(async () => {
      await next.goto('about:blank');
      await next.waitForTimeout(500);
      await next.goto(host.address);
      return next.title();
    })
    .toBe('Hitchwright, second');
  await expectEdition(next, 'second');
});

test('with two tabs only the one that asked is opened anew; the other is told and goes on until it is', async ({
  phone,
  host,
  versions,
}) => {
  host.hosting.headers = notStored;
  const page = await visit(phone, host.address);
  await page.evaluate((address) => caches.open(`hitchwright ${address} long-ago`), host.address);
  const other = await phone.newPage();
  await other.goto(`${host.address}#${checkOf('tiller', '35', '')}`);
  await other.evaluate(() => (document.documentElement.dataset['mark'] = 'never loaded again'));
  host.hosting.folder = versions.second;
  await returnLater(page);
  for (const tab of [page, other]) await expect(bar(tab)).toBeVisible();
  await bar(page).getByRole('button', { name: 'Take it' }).click();
  await expectEdition(page, 'second');

  const told = other.getByRole('status').filter({ hasText: 'This tab still shows the older version.' });
  await expect(told).toBeVisible();
  await expect(bar(other)).toHaveCount(0);
  await expectEdition(other, 'first');
  expect(await other.evaluate(() => document.documentElement.dataset['mark'])).toBe('never loaded again');
  await other.getByRole('link', { name: 'Yard' }).click();
  await expect(other.getByRole('link', { name: /box blade.*U-28.*/i }).first()).toBeVisible();
  await told.getByRole('button', { name: 'Reload' }).click();
  await expectEdition(other, 'second');
  expect(new URL(other.url()).hash).toBe('#yard');

  const kept = await keptCaches(other);
  expect(kept).toHaveLength(2);
  expect(kept.filter((name) => name.endsWith('long-ago'))).toEqual([]);
});

test('taking one version while a third is just being fetched harms neither', async ({ phone, host, versions }) => {
  host.hosting.headers = notStored;
  const page = await visit(phone, host.address);
  host.hosting.folder = versions.second;
  await returnLater(page);
  await expect(bar(page)).toBeVisible();

  const third = `${versions.second}-third`;
  cpSync(versions.second, third, { recursive: true });
  const [sw, icon] = [join(third, 'sw.js'), join(third, 'icon.svg')];
  writeFileSync(icon, readFileSync(icon, 'utf8').replace('#fbf7ec', '#ffffff'));
  writeFileSync(
    sw,
    readFileSync(sw, 'utf8').replace(/"revision":"\w+","url":"icon.svg"/, '"revision":"3","url":"icon.svg"'),
  );
  let release = (): void => undefined;
  const held = new Promise<void>((resolve) => (release = resolve));
  host.hosting.folder = third;
  host.hosting.delay = (file) => (file === icon ? held : Promise.resolve());
  await returnLater(page);
  await expect.poll(() => page.evaluate(hasInstalling)).toBe(true);
  await bar(page).getByRole('button', { name: 'Take it' }).click();
  await expectEdition(page, 'second');
  release();
  await expect(bar(page)).toBeVisible();
  await bar(page).getByRole('button', { name: 'Take it' }).click();
  await expect(bar(page)).toHaveCount(0);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Will the');
  await loseSignal(phone, host);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Will the');
  rmSync(third, { recursive: true });
});

async function hasInstalling(): Promise<boolean> {
  return (await navigator.serviceWorker.getRegistration())?.installing != null;
}

test('a version that is not wholly there is never offered, not even by a host that answers everything', async ({
  phone,
  host,
  versions,
}) => {
  const page = await visit(phone, host.address);
  const half = `${versions.second}-half`;
  cpSync(versions.second, half, { recursive: true });
  const missing = readdirSync(join(half, 'assets')).find((file) => file.startsWith('YardPage') && file.endsWith('js'));
  rmSync(join(half, 'assets', missing ?? 'there is a yard page'));
  host.hosting.folder = half;
  host.hosting.isForgiving = true;
  await returnLater(page);
  await expect.poll(() => host.asked.filter((path) => path.endsWith(`/${missing}`)).length).toBe(1);
  await page.waitForTimeout(6000);
  await expect(bar(page)).toHaveCount(0);
  await page.reload();
  await expectEdition(page, 'first');
  rmSync(half, { recursive: true });

  host.hosting.folder = versions.second;
  await returnLater(page);
  await expect(bar(page)).toBeVisible();
});

test('a host that leads from index.html to its folder serves the page without a signal too', async ({
  phone,
  host,
}) => {
  host.hosting.isTidy = true;
  const page = await visit(phone, host.address);
  await loseSignal(phone, host);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Will the');
  await page.goto(`${host.address}index.html`);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Will the');
});

test('the bar bars nobody’s way: contrast, targets, and neither verdict nor thumb bar under it', async ({
  phone,
  host,
  versions,
}) => {
  const page = await visit(phone, `${host.address}#${checkOf('tiller', '35', '')}`);
  await expect(verdict(page)).toHaveText('Works');
  host.hosting.folder = versions.second;
  await returnLater(page);
  await expect(bar(page)).toBeVisible();
  for (const [width, colorScheme] of [
    [390, 'light'],
    [390, 'dark'],
    [1280, 'light'],
    [1280, 'dark'],
  ] as const) {
    await page.setViewportSize({ width, height: 844 });
    await page.emulateMedia({ colorScheme });
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    for (const button of await bar(page).getByRole('button').all()) {
      const box = await button.boundingBox();
      expect(box?.height).toBeGreaterThanOrEqual(width < 700 ? 56 : 44);
      expect(box?.width).toBeGreaterThanOrEqual(44);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    const ends = await lowerEdge(bar(page));
    for (const other of [page.getByRole('region', { name: 'Verdict' }), page.locator('.strip')])
      expect((await other.boundingBox())?.y).toBeGreaterThanOrEqual(ends);
  }
  await page.setViewportSize({ width: 390, height: 844 });
  expect((await page.getByRole('navigation').boundingBox())?.y).toBeGreaterThan(await lowerEdge(bar(page)));
  await expect(page.getByRole('navigation')).toBeInViewport({ ratio: 1 });
});

async function lowerEdge(shown: Locator): Promise<number> {
  const box = await shown.boundingBox();
  if (box === null) throw new Error('it is not shown');
  return box.y + box.height;
}

test('the site can be installed, and its icons and colours are what the manifest says', async ({ phone, host }) => {
  const page = await visit(phone, host.address);
  const link = await page.locator('link[rel=manifest]').evaluate((element) => (element as HTMLLinkElement).href);
  const response = await fetch(link);
  expect(response.headers.get('content-type')).toBe('application/manifest+json');
  const manifest = (await response.json()) as Manifest;
  expect(manifest.name).toBe('Hitchwright');
  expect(manifest.display).toBe('standalone');
  expect(new URL(manifest.scope, link).href).toBe(host.address);
  expect(new URL(manifest.start_url, link).href).toBe(host.address);

  const sized = await Promise.all(
    manifest.icons.map(({ src }) => page.evaluate(naturalWidth, new URL(src, link).href)),
  );
  expect(sized.slice(1)).toEqual(manifest.icons.slice(1).map(({ sizes }) => Number.parseInt(sizes)));
  expect(sized[0]).toBeGreaterThan(0);
  expect(manifest.icons.some(({ purpose }) => purpose === 'maskable')).toBe(true);

  const ground = await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--ground'));
  expect([manifest.theme_color, manifest.background_color]).toEqual([ground, ground]);

  const devtools = await phone.newCDPSession(page);
  expect((await devtools.send('Page.getAppManifest')).errors).toEqual([]);
  await page.goto(new URL(manifest.start_url, link).href);
  expect(await page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
});

interface Manifest {
  readonly name: string;
  readonly display: string;
  readonly scope: string;
  readonly start_url: string;
  readonly theme_color: string;
  readonly background_color: string;
  readonly icons: readonly { readonly src: string; readonly sizes: string; readonly purpose?: string }[];
}

async function naturalWidth(address: string): Promise<number> {
  const image = new Image();
  image.src = address;
  await image.decode();
  return image.naturalWidth;
}

const guide = readFileSync(new URL('../../../docs/guide/hosting.md', import.meta.url), 'utf8');

function fromGuide(pattern: RegExp): string {
  const [, found] = pattern.exec(guide) ?? [];
  if (found === undefined) throw new Error(`docs/guide/hosting.md has no ${pattern.source}`);
  return found;
}

test('the content security policy of the guide lets the site do all it does', async ({ phone, host }) => {
  host.hosting.headers = { 'content-security-policy': fromGuide(/^content-security-policy: (.+)$/m) };
  const refused: string[] = [];
  phone.on('console', (message) => {
    if (/content security policy/i.test(message.text())) refused.push(message.text());
  });
  const page = await visit(phone, `${host.address}#${checkOf('tiller', '35', '')}`);
  await expect(verdict(page)).toHaveText('Works');
  await expect(page.locator('.drawing-picture svg').first()).toBeVisible();
  await page.getByRole('button', { name: 'Side, through the lift' }).click();
  await expect(page.locator('.lift-drawing svg').last()).toBeVisible();
  await page.getByRole('link', { name: 'Yard' }).click();
  await expect(page.getByRole('link', { name: /box blade.*U-28.*/i }).first()).toBeVisible();
  expect(refused).toEqual([]);
  await page.evaluate(() => fetch('https://example.org/').catch(() => undefined));
  expect(refused).not.toEqual([]);
});

test('the worker of the guide takes the keeping back', async ({ phone, host, versions }) => {
  const page = await visit(phone, host.address);
  expect(await keptCaches(page)).toHaveLength(1);
  const without = `${versions.second}-without`;
  cpSync(versions.second, without, { recursive: true });
  writeFileSync(join(without, 'sw.js'), fromGuide(/```js\n([\s\S]+?)```/));
  host.hosting.folder = without;
  await returnLater(page);
  await expect.poll(() => keptCaches(page)).toEqual([]);
  await page.reload();
  await expectEdition(page, 'second');
  await page.waitForTimeout(1000);
  expect(await keptCaches(page)).toEqual([]);
  rmSync(without, { recursive: true });
});

for (const [name, hinder] of Object.entries({
  'has no service workers': () => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'),
  'refuses service workers': () => {
    if ('serviceWorker' in navigator)
      ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException('not here', 'SecurityError'));
  },
})) {
  test(`a browser that ${name} shows the site as long as there is a network, and says nothing`, async ({
    phone,
    host,
  }) => {
    const faults: Error[] = [];
    phone.on('weberror', (fault) => faults.push(fault.error()));
    await phone.addInitScript(hinder);
    const page = await phone.newPage();
    await page.goto(`${host.address}#${checkOf('tiller', '35', '')}`);
    await expect(verdict(page)).toHaveText('Works');
    await page.waitForTimeout(1000);
    await expect(page.locator('.notices')).toBeEmpty();
    expect(faults).toEqual([]);
  });
}

test('lasting storage is asked for once, and a browser without it says no', async () => {
  const asked: string[] = [];
  const storage = {
    persisted: () => Promise.resolve(false),
    persist: () => Promise.resolve(asked.push('asked') > 0),
  };
  const { askForLastingStorage } = await withNavigator({ storage });
  expect([await askForLastingStorage(), await askForLastingStorage()]).toEqual([true, true]);
  expect(asked).toHaveLength(1);
  const bare = await withNavigator({});
  expect(await bare.askForLastingStorage()).toBe(false);
});

/** The module as a page with this navigator would load it. */
async function withNavigator(navigator: object): Promise<typeof LastingStorageModule> {
  Object.defineProperty(globalThis, 'navigator', { value: navigator, configurable: true });
  loads += 1;
  return (await import(`../src/app/offline/lastingStorage.ts?${loads}`)) as typeof LastingStorageModule;
}

let loads = 0;

/** Whether a newer version waits to be taken. */
function isWaiting(page: Page): Promise<boolean> {
  return page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting != null);
}

test('a measuring goes on without a signal: half typed, reloaded, finished', async ({ phone, host }) => {
  const page = await visit(phone, host.address);
  await begin(page, host.address);
  const first = await askedFor(page);
  await keyIn(page, 66);
  await draftKept(page, '66');
  await loseSignal(phone, host);
  await page.reload();
  await expect(page.locator(`[data-path="${first}"] .reading-box`)).toHaveValue('66');
  await page.getByRole('button', { name: 'Erase', exact: true }).dblclick();
  await readTwice(page, truth[first] ?? 0);
  await expect(page.locator(`[data-path]:not([data-path="${first}"])`)).toBeVisible();
  await readTwice(page, truth[await askedFor(page)] ?? 0);
  await expect(page.locator('.done-verdict h2')).toHaveText(/^(?:Works|Works with parts|Will not hook up)$/);
  await expect(page.locator('.reading-list li')).toHaveCount(2);
});
