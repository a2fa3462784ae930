import { createServer, type Server as HttpServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { YardDocument } from '@hitchwright/core/records';
import type { Store } from '@hitchwright/store';
import { getRequestListener } from '@hono/node-server';
import { appOver } from './app.ts';
import { openAssessors } from './assessing/assessors.ts';
import { holdCharts } from './charts/held.ts';
import { isLoopback } from './http/gate.ts';
import { HttpRefusal } from './http/refusal.ts';
import { holdImports } from './imports/held.ts';
import { openRecheck } from './recheck/recheck.ts';

/** What a server serves, and where. */
export interface ServerOptions {
  readonly store: Store;
  /** Folder of the built pages; null where none are served [path]. */
  readonly site: string | null;
  /** Where backups of what a restore replaces are kept [path]. */
  readonly folder: string;
  /** The sample yard; null where there is none. */
  readonly sample: YardDocument | null;
  /** The time now [ISO 8601, UTC]. */
  readonly clock: () => string;
  /** A new id, never given before; later ones sort after earlier ones. */
  readonly ids: () => string;
  /** 0, or left out, for a free one. */
  readonly port?: number;
  /** A name or number of this machine; 127.0.0.1 where it is left out. */
  readonly host?: string;
}

/** A server that runs. */
export interface Server {
  /** Such as `http://127.0.0.1:4173/`. */
  readonly address: string;
  /** Takes nothing new, finishes what runs, and leaves the store open. */
  close(): Promise<void>;
}

/**
 * Serves the yard’s records and the pages on this machine only.
 *
 * @param options what to serve, and where [record]
 * @returns the server; throws where the host is not this machine, or the port is taken [record]
 */
export async function openServer(options: ServerOptions): Promise<Server> {
  const { store, site, folder, sample, clock, ids, port = 0, host = '127.0.0.1' } = options;
  if (!isLoopback(host))
    throw new Error(
      `There are no accounts yet, so the server listens on this machine only: 127.0.0.1, not ${host}. Anybody in the network could read and change the yard.`,
    );
  const assessors = openAssessors();
  const recheck = openRecheck({ store, assessors, clock });
  const imports = holdImports({ store, clock, ids, onWritten: () => recheck.wake() });
  const charts = holdCharts({ assessors, clock, ids });
  const app = appOver({ store, assessors, recheck, imports, charts, clock, folder, sample }, site);
  const http = createServer(getRequestListener(app.fetch, { errorHandler: () => unreadable() }));
  await store.requests.forget(before(clock(), rememberedMs));
  await listening(http, port, host);
  recheck.wake();
  return {
    address: addressOf(http, host),
    async close() {
      const closed = new Promise<void>((resolve) => http.close(() => resolve()));
      http.closeIdleConnections();
      charts.close();
      await Promise.all([imports.close(), recheck.close()]);
      // A browser keeps connections open on which it has asked for nothing yet: whatever is not answered by then is cut off.
      const cut = setTimeout(() => http.closeAllConnections(), graceMs);
      await closed;
      clearTimeout(cut);
      await assessors.close();
    },
  };
}

/** How long requests may still take once the server is to end and nothing else is being written [ms]. */
const graceMs = 5_000;
/** How long an Idempotency-Key is remembered [ms]. */
const rememberedMs = 30 * 86_400_000;

function before(time: string, ms: number): string {
  return new Date(Date.parse(time) - ms).toISOString();
}

function listening(http: HttpServer, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    http.once('error', reject);
    http.listen(port, host === '[::1]' ? '::1' : host, resolve);
  });
}

function addressOf(http: HttpServer, host: string): string {
  const { port } = http.address() as AddressInfo;
  return `http://${host === '::1' ? '[::1]' : host}:${port}/`;
}

/** A request that can’t even be read: its address or its Host header is none. */
function unreadable(): Response {
  const refusal = new HttpRefusal(400, {
    errors: [
      {
        code: 'wrong-type',
        path: '',
        expected: 'an address and a Host header',
        got: 'something else',
        hint: 'Write it again.',
      },
    ],
  });
  return Response.json(refusal.json(), { status: 400, headers: { 'x-content-type-options': 'nosniff' } });
}
