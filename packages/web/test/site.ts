import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type Server, type ServerResponse } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The built site is served below a path of its own, as on a shared host. */
export const basePath = '/some/path/';
/** Folder of the built site. */
export const built = fileURLToPath(new URL('../dist/', import.meta.url));

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** How the site is served; what is served can be exchanged while it is. */
export interface Hosting {
  port?: number;
  folder?: string;
  /** Sent with every file. */
  headers?: Readonly<Record<string, string>>;
  /** Answers what is not there with the front page, as some hosts do. */
  isForgiving?: boolean;
  /** Leads from index.html to its folder, as some hosts do. */
  isTidy?: boolean;
  /** What a file waits for before it is sent. */
  delay?: (file: string) => Promise<void>;
}

/** Serves the built site on a free port of this machine; what lies outside the base path is not found. */
export async function serveSite(hosting: Hosting = {}): Promise<{ server: Server; address: string }> {
  if (!existsSync(join(hosting.folder ?? built, 'index.html')))
    throw new Error('Build the site first: npm run build --workspace @hitchwright/web');
  const server = createServer((request, response) => void answer(request.url ?? '/', response, hosting));
  await new Promise<void>((resolve) => server.listen(hosting.port ?? 0, '127.0.0.1', resolve));
  const bound = server.address();
  if (bound === null || typeof bound === 'string') throw new Error('invariant: a TCP server has a port');
  return { server, address: `http://127.0.0.1:${bound.port}${basePath}` };
}

async function answer(url: string, response: ServerResponse, hosting: Hosting): Promise<void> {
  if (hosting.isTidy === true && url === `${basePath}index.html`) {
    response.writeHead(301, { location: basePath }).end();
    return;
  }
  const file = fileOf(url, hosting);
  if (file === null) {
    response.writeHead(404).end();
    return;
  }
  await hosting.delay?.(file);
  response.writeHead(200, {
    'content-type': types[extname(file)] ?? 'application/octet-stream',
    'cache-control': file.includes('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    ...hosting.headers,
  });
  createReadStream(file).pipe(response);
}

function fileOf(url: string, { folder = built, isForgiving = false }: Hosting): string | null {
  const path = decodeURIComponent(new URL(url, 'http://site').pathname);
  if (!path.startsWith(basePath)) return null;
  const rest = path.slice(basePath.length);
  const file = join(folder, normalize(rest === '' ? 'index.html' : rest));
  if (file.startsWith(folder) && existsSync(file) && statSync(file).isFile()) return file;
  return isForgiving ? join(folder, 'index.html') : null;
}
