import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { basePath, serveSite } from '../packages/web/test/site.ts';

/** A line between a host and its visitor. */
interface Line {
  /** What goes down and up [bytes a second]. */
  readonly down: number;
  readonly up: number;
  /** From a request to the first byte that comes back, at the least [ms]. */
  readonly latency: number;
}

/** A host of the built pages that packs what it sends and counts it. */
export interface PackingHost {
  readonly address: string;
  /** The line that everything goes through together from now on; null for none but this machine’s. */
  use(line: Line | null): void;
  /** Everything that was sent up to now, headers and all [bytes]. */
  sent(): number;
  close(): void;
}

interface Packed {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
}

const packed = promisify(gzip);

/** Headers that say how a file is to be taken and kept. */
const passedOn = ['content-type', 'cache-control'];

/** What goes down the line at a time, so that files share it [bytes]. */
const portion = 2048;

/**
 * Serves the built pages through gzip, each file packed once; fonts and pictures are packed already.
 *
 * @returns the host, on a free port of this machine
 */
export async function openPackingHost(): Promise<PackingHost> {
  const site = await serveSite();
  const files = new Map<string, Promise<Packed>>();
  let line: Line | null = null;
  let sent = 0;
  let freeAt = 0;
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const path = request.url ?? '/';
    const file = files.get(path) ?? packedFile(new URL(path, site.address));
    files.set(path, file);
    const { status, headers, body } = await file;
    const { socket } = request;
    const before = socket.bytesWritten;
    if (line !== null) await pause(line.latency + (1000 * request.rawHeaders.join(': ').length) / line.up);
    response.writeHead(status, { ...headers, 'content-length': body.length });
    for (let at = 0; at < body.length; at += portion) {
      const part = body.subarray(at, at + portion);
      if (line !== null) {
        const now = performance.now();
        freeAt = Math.max(freeAt, now) + (1000 * part.length) / line.down;
        await pause(freeAt - now);
      }
      response.write(part);
    }
    response.end(() => (sent += socket.bytesWritten - before));
  };
  const server = createServer((request, response) => void answer(request, response));
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}${basePath}`,
    use: (other) => (line = other),
    sent: () => sent,
    close: () => {
      for (const one of [server, site.server]) {
        one.close();
        one.closeAllConnections();
      }
    },
  };
}

async function packedFile(address: URL): Promise<Packed> {
  const response = await fetch(address);
  const headers = Object.fromEntries([...response.headers].filter(([name]) => passedOn.includes(name)));
  const body = Buffer.from(await response.arrayBuffer());
  const { status } = response;
  if (!/text|json|svg/.test(headers['content-type'] ?? '')) return { status, headers, body };
  return { status, headers: { ...headers, 'content-encoding': 'gzip' }, body: await packed(body, { level: 9 }) };
}
