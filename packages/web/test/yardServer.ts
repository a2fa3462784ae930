import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The yard’s own server over a new store, as a person starts it. */
export interface YardServer {
  readonly address: string;
  readonly folder: string;
  /** Sends a request with a JSON body, and has what it says. */
  ask<T>(method: string, path: string, body?: unknown, headers?: Record<string, string>): Promise<T>;
  stop(): Promise<void>;
}

const root = fileURLToPath(new URL('../../..', import.meta.url));

export async function startYard(): Promise<YardServer> {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-yard-'));
  const env: NodeJS.ProcessEnv = { ...process.env, HITCHWRIGHT_DATA: folder, HITCHWRIGHT_PORT: '0' };
  delete env['HITCHWRIGHT_DB'];
  const server = spawn(process.execPath, ['--import', 'tsx', 'packages/server/src/start.ts'], {
    cwd: root,
    env,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  const address = await new Promise<string>((resolve, reject) => {
    let text = '';
    server.stdout.on('data', (chunk: Buffer) => {
      text += chunk.toString();
      const found = /http:\S+/.exec(text)?.[0];
      if (found !== undefined) resolve(found);
    });
    server.once('exit', (code) => reject(new Error(`The yard’s server ended with ${code}: ${text}`)));
  });
  return {
    address,
    folder,
    async ask<T>(method: string, path: string, body?: unknown, headers: Record<string, string> = {}): Promise<T> {
      const answer = await fetch(new URL(path, address), {
        method,
        headers: { ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...headers },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
      return (await answer.json()) as T;
    },
    async stop() {
      server.kill();
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
