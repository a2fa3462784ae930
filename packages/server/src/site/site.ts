import { createReadStream } from 'node:fs';
import { readFile, realpath, stat } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { Readable } from 'node:stream';
import type { Context, MiddlewareHandler } from 'hono';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.woff2': 'font/woff2',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** What the pages may do, and nothing else; docs/guide/hosting.md says why. */
const policy =
  "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' blob: data:; font-src 'self'; " +
  "connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

/** Tells the pages that the yard’s records are where they came from. */
const recordsMark = '<meta name="hitchwright-records" content="here" />';

/** Serves the built pages, and nothing that lies outside their folder. */
export function site(folder: string): MiddlewareHandler {
  return async (c, next) => {
    if (c.req.method !== 'GET' && c.req.method !== 'HEAD') return next();
    const found = await fileOf(folder, c.req.path);
    return found === null ? next() : sent(c, found);
  };
}

interface SiteFile {
  readonly file: string;
  readonly isHashed: boolean;
  readonly isPage: boolean;
  readonly size: number;
  readonly tag: string;
}

async function fileOf(folder: string, path: string): Promise<SiteFile | null> {
  const names = namesOf(path);
  if (names === null) return null;
  try {
    const [root, file] = await Promise.all([realpath(folder), realpath(join(folder, ...names))]);
    const found = await stat(file);
    if (!file.startsWith(root + sep) || !found.isFile()) return null;
    const { size, mtimeMs } = found;
    return {
      file,
      isHashed: names[0] === 'assets',
      isPage: file.endsWith('.html'),
      size,
      tag: `"${size.toString(36)}-${Math.round(mtimeMs).toString(36)}"`,
    };
  } catch (problem) {
    if (['ENOENT', 'ENOTDIR', 'ENAMETOOLONG', 'ELOOP', 'EACCES'].includes(String((problem as { code?: unknown }).code)))
      return null;
    throw problem;
  }
}

/** The names of a path from the front page’s folder on; null where it is none of the pages’. */
function namesOf(path: string): string[] | null {
  try {
    const names = decodeURIComponent(path).split('/').slice(1);
    if (names.length === 1 && names[0] === '') return ['index.html'];
    return names.every((name) => /^[\w-][\w.-]*$/.test(name)) ? names : null;
  } catch (problem) {
    if (problem instanceof URIError) return null;
    throw problem;
  }
}

async function sent(c: Context, { file, isHashed, isPage, size, tag }: SiteFile): Promise<Response> {
  c.header('content-security-policy', policy);
  c.header('cache-control', isHashed ? 'public, max-age=31536000, immutable' : 'no-cache');
  c.header('etag', tag);
  if (c.req.header('if-none-match') === tag) return c.body(null, 304);
  c.header('content-type', types[extname(file)] ?? 'application/octet-stream');
  const page = isPage ? Buffer.from(marked(await readFile(file, 'utf8'))) : null;
  c.header('content-length', String(page?.length ?? size));
  if (c.req.method === 'HEAD') return c.body(null, 200);
  if (page !== null) return c.body(page, 200);
  return c.body(Readable.toWeb(createReadStream(file)) as ReadableStream, 200);
}

function marked(page: string): string {
  return page.replace('<head>', `<head>\n    ${recordsMark}`);
}
