import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'vite';
import { built, serveSite, type Hosting } from './site.ts';

/** A host of its own for one test: what it serves can be exchanged, and it can be stopped for good. */
export interface Host {
  readonly address: string;
  readonly hosting: Hosting;
  /** Paths that were asked for, as they came. */
  readonly asked: readonly string[];
  stop(): Promise<void>;
}

export async function hostOf(hosting: Hosting): Promise<Host> {
  const { server, address } = await serveSite(hosting);
  const asked: string[] = [];
  server.on('request', ({ url }) => asked.push(url ?? ''));
  const stop = (): Promise<void> =>
    new Promise((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { address, hosting, asked, stop };
}

/** Two versions of the site in folders of their own: the built one, and one that was built from changed sources. */
export interface Versions {
  readonly first: string;
  readonly second: string;
  remove(): void;
}

export async function twoVersions(): Promise<Versions> {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-versions-'));
  const [first, second] = [join(folder, 'first'), join(folder, 'second')];
  cpSync(built, first, { recursive: true });
  await build({
    root: fileURLToPath(new URL('..', import.meta.url)),
    logLevel: 'silent',
    plugins: [secondEdition],
    build: { outDir: second },
  });
  return { first, second, remove: () => rmSync(folder, { recursive: true }) };
}

/** Changes the page and its first script, and with them the name of every part that comes later. */
const secondEdition: Plugin = {
  name: 'second-edition',
  enforce: 'pre',
  transform: (code, id) =>
    id.endsWith('/src/main.tsx') ? `${code}\ndocument.documentElement.dataset['edition'] = 'second';` : undefined,
  transformIndexHtml: (html) => html.replace('<title>Hitchwright</title>', '<title>Hitchwright, second</title>'),
};
