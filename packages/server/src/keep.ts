// Backs the yard up or restores it from a terminal: `npm run backup [-- FILE]`, `npm run restore -- FILE [--replace]`. A backup may run while the yard is
// in use; for a restore its server has to be stopped. HITCHWRIGHT_DATA and HITCHWRIGHT_DB say which yard, as for `npm start`.
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { Conflict, openStore, restoreBackup, StoreTrouble } from '@hitchwright/store';
import { now, placeOfYard, type Place } from './place.ts';

const usage = 'Say what to do: `npm run backup [-- FILE]` or `npm run restore -- FILE [--replace]`.';

async function backup({ folder, url }: Place, file: string | undefined): Promise<void> {
  const store = await openStore({ url, clock: now, ids: () => randomBytes(12).toString('hex') });
  try {
    const made = await store.backup(file ?? join(folder, 'backups', `yard ${now().replaceAll(':', '-')}.backup`));
    console.log(`Backed up and read again from end to end: ${made.file}`);
    console.log(countsText(made.counts));
  } finally {
    await store.close();
  }
}

async function restore({ url }: Place, file: string, replace: boolean): Promise<void> {
  const { counts, kept } = await restoreBackup({ url, file, replace, clock: now });
  console.log('Restored.', countsText(counts));
  if (kept !== null) console.log(`What was there before is kept as ${kept}.`);
}

function countsText({ record, reading, answer, photo }: Readonly<Record<string, number>>): string {
  return `${record ?? 0} records, ${reading ?? 0} readings, ${answer ?? 0} saved answers, ${photo ?? 0} photos.`;
}

async function run([what, ...more]: readonly string[]): Promise<void> {
  const place = placeOfYard(process.env);
  const [file] = more.filter((one) => !one.startsWith('--'));
  if (what === 'backup') await backup(place, file);
  else if (what === 'restore' && file !== undefined) await restore(place, file, more.includes('--replace'));
  else {
    console.error(usage);
    process.exitCode = 2;
  }
}

try {
  await run(process.argv.slice(2));
} catch (problem) {
  const isTold = problem instanceof StoreTrouble || problem instanceof Conflict;
  const hint = problem instanceof Conflict ? ' Add --replace where what is there may go.' : '';
  console.error(isTold ? `${problem.message}${process.argv[2] === 'restore' ? hint : ''}` : problem);
  process.exitCode = 1;
}
