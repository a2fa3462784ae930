// Serves the yard on this machine. HITCHWRIGHT_DATA names its folder, HITCHWRIGHT_DB its database, HITCHWRIGHT_PORT the port: `data` beside the
// packages, yard.db in it and a free port where they are left out.
import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { YardDocument } from '@hitchwright/core/records';
import { openStore, StoreTrouble } from '@hitchwright/store';
import { openServer } from './openServer.ts';
import { now, placeOfYard, root } from './place.ts';

const pages = join(root, 'packages/web/dist');
const sample = join(root, 'examples/sample-yard.json');

/** Ids that sort as they are given, even where the clock is set back; two servers on one database are told apart by the end. */
function timedIds(): () => string {
  const mark = randomBytes(5).toString('hex');
  let [last, given] = [0, 0];
  return () => {
    last = Math.max(last, Date.now());
    given += 1;
    return `${last.toString(36).padStart(9, '0')}${given.toString(36).padStart(6, '0')}${mark}`;
  };
}

function portWanted(text: string): number {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : NaN;
  if (port <= 65_535) return port;
  throw new StoreTrouble('unreachable', `HITCHWRIGHT_PORT is ${text}: give a number from 0 to 65535.`);
}

/** Opens store and server, and closes both where the process is asked to end. */
async function start(): Promise<void> {
  const { folder, url } = placeOfYard(process.env);
  const [clock, ids] = [now, timedIds()];
  const port = portWanted(process.env['HITCHWRIGHT_PORT'] ?? '0');
  const store = await openStore({ url, clock, ids });
  const { address, close } = await openServer({
    store,
    site: existsSync(join(pages, 'index.html')) ? pages : null,
    folder,
    sample: JSON.parse(readFileSync(sample, 'utf8')) as YardDocument,
    clock,
    ids,
    port,
  }).catch(async (problem: unknown) => {
    await store.close();
    throw problem;
  });
  console.log(`The yard is at ${address} (this machine only; Ctrl+C stops it)`);
  let isEnding = false;
  const end = async (): Promise<void> => {
    if (isEnding) process.exit(1);
    isEnding = true;
    await close();
    await store.close();
  };
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => void end());
}

try {
  await start();
} catch (problem) {
  const isTold = problem instanceof StoreTrouble || (problem as { code?: unknown }).code === 'EADDRINUSE';
  console.error(isTold ? (problem as Error).message : problem);
  process.exitCode = 1;
}
