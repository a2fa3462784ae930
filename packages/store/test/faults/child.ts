// A server of its own: opens the store named on its command line, waits for a line on its standard input, then edits or imports until it is killed,
// or counts up in the note of one record. After each change that was kept it says so in one line of JSON, at once.
import { writeSync } from 'node:fs';
import { Conflict, openStore, type Store } from '../../src/index.ts';

const [url = '', does = 'edits', mark = 'a', counted = ''] = process.argv.slice(2);
let given = 0;
const by = { who: mark };

const store = await openStore({
  url,
  clock: () => new Date().toISOString(),
  ids: () => `${Date.now().toString(36)}${String((given += 1)).padStart(6, '0')}${mark}`,
});
say({ ready: true });
process.stdin.once('end', () => process.exit(0));
await new Promise((resolve) => process.stdin.once('data', resolve));
if (does === 'counts') await countUp();
for (let i = 0; ; i += 1) await (does === 'imports' ? importSome(i) : editOne(store, i));

/** Adds one to the number in the note, again where somebody was in between, so many times; then leaves. */
async function countUp(): Promise<never> {
  let left = 25;
  let conflicts = 0;
  while (left > 0) {
    const { revision, fields } = await store.records.get(counted);
    try {
      await store.records.change(by, counted, revision, { fields: { note: String(Number(fields['note']) + 1) } });
      left -= 1;
    } catch (problem) {
      if (!(problem instanceof Conflict)) throw problem;
      conflicts += 1;
    }
  }
  say({ conflicts });
  process.exit(0);
}

async function importSome(i: number): Promise<void> {
  const rows = Array.from({ length: 120 }, (_, row) => ({
    kind: 'implement' as const,
    name: `${mark} ${i} ${row}`,
    readings: [{ field: 'mastHeight', leaf: 400 + row, grade: 'listed' as const }],
  }));
  say({ begins: 'import' });
  const { group } = await store.imports.write(by, { source: mark, rows });
  say({ group, records: rows.length });
}

async function editOne(to: Store, i: number): Promise<void> {
  const made = await to.records.create(by, { kind: 'implement', name: `${mark} ${i}` });
  say({ id: made.id, revision: 1 });
  const leaves = [457, 458, 459].map((leaf) => ({
    field: 'mastHeight',
    leaf,
    grade: 'measured' as const,
    pin: leaf === 458,
  }));
  const read = await to.readings.add(by, made.id, leaves);
  say({ id: made.id, revision: 2 });
  await to.readings.pin(by, made.id, 2, read.readings[2]?.id ?? '');
  say({ id: made.id, revision: 3 });
  await to.records.change(by, made.id, 3, {
    name: `${mark} ${i} changed`,
    fields: { note: 'changed', price: { amount: i, currency: 'USD' } },
  });
  say({ id: made.id, revision: 4 });
}

function say(line: unknown): void {
  writeSync(1, `${JSON.stringify(line)}\n`);
}
