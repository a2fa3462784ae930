import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The built site is served below a path of its own, as on a shared host. */
export const basePath = '/some/path/';
const built = fileURLToPath(new URL('../dist/', import.meta.url));

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
};

/** Serves the built site on a free port of this machine; what lies outside the base path is not found. */
export async function serveSite(port = 0): Promise<{ server: Server; address: string }> {
  if (!existsSync(join(built, 'index.html')))
    throw new Error('Build the site first: npm run build --workspace @hitchwright/web');
  const server = createServer((request, response) => {
    const file = fileOf(request.url ?? '/');
    if (file === null) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  const bound = server.address();
  if (bound === null || typeof bound === 'string') throw new Error('invariant: a TCP server has a port');
  return { server, address: `http://127.0.0.1:${bound.port}${basePath}` };
}

function fileOf(url: string): string | null {
  const path = decodeURIComponent(new URL(url, 'http://site').pathname);
  if (!path.startsWith(basePath)) return null;
  const rest = path.slice(basePath.length);
  const file = join(built, normalize(rest === '' ? 'index.html' : rest));
  return file.startsWith(built) && existsSync(file) && statSync(file).isFile() ? file : null;
}
