// Checking saved answers again, within one run: `npx tsx bench/recheck.ts [saved] [affected]`. Many answers are kept, one figure of one implement changes, and
// those that rest on it are worked out again. The answers are copies of one that the server saved itself, read back as an archive.
import { readFileSync, rmSync, mkdtempSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { YardDocument } from '@hitchwright/core/records';
import { openServer } from '@hitchwright/server';
import { openStore, type FullRecord, type SavedAnswer } from '@hitchwright/store';

const [saved = 100_000, affected = 1_000] = process.argv.slice(2).map(Number);
const folder = mkdtempSync(join(tmpdir(), 'hitchwright-bench-'));
let given = 0;
const ids = (): string => String((given += 1)).padStart(9, '0');
const clock = (): string => new Date().toISOString();
const store = await openStore({ url: `sqlite:${join(folder, 'yard.db')}`, clock, ids });
const sample = JSON.parse(readFileSync('examples/sample-yard.json', 'utf8')) as YardDocument;
const server = await openServer({ store, site: null, folder, sample, clock, ids });

async function sent<T>(method: string, path: string, body: unknown = {}, headers: object = {}): Promise<T> {
  const answer = await fetch(server.address + path, {
    method,
    // A connection that was idle while the answers came in may be closed by now.
    headers: { 'content-type': 'application/json', connection: 'close', ...headers },
    ...(method === 'GET' ? {} : { body: JSON.stringify(body) }),
  });
  if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
  return (await answer.json()) as T;
}

const idOf = async (name: string): Promise<string> => {
  const { items } = await store.records.list({ search: name, limit: 1 });
  return items[0]?.id ?? '';
};

interface Line {
  readonly table?: string;
  readonly row?: Record<string, unknown>;
  readonly end?: true;
}

/** The archive with the saved answers of two questions multiplied: a line for each row, and the counts and the hash of what then is there. */
async function* multiplied(lines: readonly string[], rare: string): AsyncGenerator<string> {
  const parsed = lines.map((line) => JSON.parse(line) as Line & { counts?: Record<string, number> });
  const rows = parsed.filter(({ table }) => table !== undefined);
  const copiesOf = (row: Record<string, unknown>): number => {
    const id = row['answer_id'] ?? row['id'];
    return id === rare ? affected : saved - affected;
  };
  const isOfAnswer = ({ table }: Line): boolean => table?.startsWith('answer') === true;
  const counts = { ...parsed[0]?.counts };
  for (const table of Object.keys(counts).filter((name) => name.startsWith('answer')))
    counts[table] = rows.filter((one) => one.table === table).reduce((n, { row = {} }) => n + copiesOf(row), 0);
  const hash = createHash('sha256');
  const said = (value: unknown): string => {
    const line = `${JSON.stringify(value)}\n`;
    hash.update(line);
    return line;
  };
  yield said({ ...parsed[0], counts });
  for (const { table, row = {} } of rows) {
    if (!isOfAnswer({ table: table ?? '' })) yield said({ table, row });
    else
      for (let i = 0; i < copiesOf(row); i += 1) {
        const key = row['answer_id'] === undefined ? 'id' : 'answer_id';
        yield said({ table, row: { ...row, [key]: `${String(row[key])}.${i}` } });
      }
  }
  yield `${JSON.stringify({ end: true, sha256: hash.digest('hex') })}\n`;
}

try {
  await sent('POST', 'api/sample');
  const tractor = await idOf('Ostrey 35');
  const [common, rare] = [await idOf('Wickset 60-in box blade'), await idOf('Harl 72-in landscape rake')];
  const ask = (implement: string): Promise<SavedAnswer> =>
    sent('POST', 'api/answers', { title: 'asked', refs: { tractor, implement } });
  await ask(common);
  const rarely = await ask(rare);
  const lines: string[] = [];
  await store.exportAll((line) => void lines.push(line));
  const start = performance.now();
  await store.importAll(multiplied(lines, rarely.id), { replace: true });
  console.log(`${saved} saved answers brought in: ${((performance.now() - start) / 1000).toFixed(1)} s`);
  const implement = await sent<FullRecord>('GET', `api/records/${rare}`);
  const changed = performance.now();
  await sent('POST', `api/records/${rare}/readings`, {
    readings: [{ field: 'mass', leaf: { value: '900 lb' }, grade: 'measured', pin: true }],
  });
  let state = { state: 'running', checked: 0, ruledOut: 0, changed: 0 };
  while (state.state === 'running' || state.checked < affected) {
    await new Promise((resolve) => setTimeout(resolve, 200));
    state = await sent('GET', 'api/recheck');
    if (performance.now() - changed > 600_000) break;
  }
  const seconds = (performance.now() - changed) / 1000;
  console.log(
    `of ${saved} saved, ${implement.name} changed: ${state.checked} checked again (${state.changed} came out otherwise, ${state.ruledOut} ruled out) in ${seconds.toFixed(1)} s`,
  );
} finally {
  await server.close();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
}
