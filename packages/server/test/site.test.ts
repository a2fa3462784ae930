import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder, served } from './served.ts';

/** A small built site with something beside it that is nobody’s business. */
function smallSite(): string {
  const around = freshFolder();
  const site = join(around, 'dist');
  mkdirSync(join(site, 'assets'), { recursive: true });
  const files = {
    'index.html': '<!doctype html><title>yard</title>',
    'sw.js': 'self;',
    'manifest.webmanifest': '{}',
    'icon-192.png': 'png',
    'assets/index-Ab1_2.js': 'export {};',
    'assets/index-Ab1_2.css': 'p{}',
    'assets/face.woff2': 'font',
    '.env': 'SECRET',
  };
  for (const [name, text] of Object.entries(files)) writeFileSync(join(site, name), text);
  writeFileSync(join(around, 'secret.txt'), 'SECRET');
  writeFileSync(join(around, 'dist-secret.txt'), 'SECRET');
  symlinkSync(join(around, 'secret.txt'), join(site, 'way-out.txt'));
  return site;
}

/** What comes for a path as it stands, which fetch would put in order first. */
function raw(address: string, path: string): Promise<{ status: number; text: string }> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    const sent = request({ hostname, port, path }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (piece: string) => (text += piece));
      response.on('end', () => resolve({ status: response.statusCode ?? 0, text }));
    });
    sent.on('error', reject);
    sent.end();
  });
}

describe('the pages', () => {
  it('come with the types and headers that docs/guide/hosting.md asks for', async () => {
    const { address } = await served({ site: smallSite() });
    const expected = [
      ['', 'text/html; charset=utf-8', 'no-cache'],
      ['index.html', 'text/html; charset=utf-8', 'no-cache'],
      ['sw.js', 'text/javascript; charset=utf-8', 'no-cache'],
      ['manifest.webmanifest', 'application/manifest+json', 'no-cache'],
      ['icon-192.png', 'image/png', 'no-cache'],
      ['assets/index-Ab1_2.js', 'text/javascript; charset=utf-8', 'public, max-age=31536000, immutable'],
      ['assets/index-Ab1_2.css', 'text/css; charset=utf-8', 'public, max-age=31536000, immutable'],
      ['assets/face.woff2', 'font/woff2', 'public, max-age=31536000, immutable'],
    ] as const;
    for (const [path, type, cache] of expected) {
      const { status, headers } = await fetch(address + path);
      expect([status, headers.get('content-type'), headers.get('cache-control')], path).toEqual([200, type, cache]);
      expect(headers.get('content-security-policy'), path).toMatch(
        /^default-src 'none'; script-src 'self'; .*frame-ancestors 'self'$/,
      );
      expect(headers.get('x-content-type-options'), path).toBe('nosniff');
    }
  });

  it('are answered 304 where they are known, and HEAD without a body', async () => {
    const { address } = await served({ site: smallSite() });
    const first = await fetch(address);
    const again = await fetch(address, { headers: { 'if-none-match': first.headers.get('etag') ?? '' } });
    expect([again.status, await again.text()]).toEqual([304, '']);
    const head = await fetch(address, { method: 'HEAD' });
    expect([head.status, head.headers.get('content-length'), await head.text()]).toEqual([200, '34', '']);
  });

  it('lead nowhere else, however a path is written', async () => {
    const { address } = await served({ site: smallSite() });
    const paths = [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/..%2fsecret.txt',
      '/assets/../../secret.txt',
      '/assets/%2e%2e/%2e%2e/secret.txt',
      '/assets/..%5c..%5csecret.txt',
      '/assets\\..\\..\\secret.txt',
      '/....//secret.txt',
      '//etc/passwd',
      '/%2fetc%2fpasswd',
      '/../dist-secret.txt',
      '/way-out.txt',
      '/.env',
      '/assets/',
      '/assets',
      '/index.html%00.txt',
      '/%',
      '/%ff',
      '/C:/windows/win.ini',
    ];
    for (const path of paths) {
      const { status, text } = await raw(address, path);
      expect([400, 404], path).toContain(status);
      expect(text, path).not.toMatch(/SECRET|root:|\/tmp|node_modules/);
    }
  });

  it('are not there where none are built, while the API is', async () => {
    const { address } = await served();
    expect((await fetch(address)).status).toBe(404);
    expect((await fetch(`${address}api/records`)).status).toBe(200);
  });
});
