import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

const program = fileURLToPath(new URL('../../dist/faults/child.js', import.meta.url));

/** What a server said before it was killed: each change that it acknowledged. */
export interface Acknowledged {
  readonly edits: readonly { readonly id: string; readonly revision: number }[];
  readonly imports: readonly { readonly group: string; readonly records: number }[];
  /** It was killed in the middle of an import. */
  readonly wasImporting: boolean;
}

/** Starts servers that count up in the note of one record at the same time, and waits until they have left; how often somebody was in between. */
export async function counted(url: string, id: string, servers: number): Promise<number> {
  const children = Array.from({ length: servers }, (_, i) =>
    spawn(process.execPath, [program, url, 'counts', `c${i}`, id], { stdio: ['pipe', 'pipe', 'inherit'] }),
  );
  let ready = 0;
  // They begin together, however long each takes to start: else the first may have left before the last has come.
  const oneMoreIsReady = (): void => {
    ready += 1;
    if (ready === servers) for (const child of children) child.stdin.write('go\n');
  };
  const told = children.map(async (child) => {
    const said: Record<string, unknown>[] = [];
    for await (const line of createInterface({ input: child.stdout })) {
      said.push(JSON.parse(line) as Record<string, unknown>);
      if (said.length === 1) oneMoreIsReady();
    }
    return Number(said.at(-1)?.['conflicts']);
  });
  return (await Promise.all(told)).reduce((sum, met) => sum + met, 0);
}

/** When a server is killed: so many changes that it acknowledged, and so long after that [ms]. */
export interface Moment {
  readonly acknowledged: number;
  readonly delay: number;
}

/** Starts a server that edits or imports, and kills it at a moment. */
export async function killedAt(
  url: string,
  does: 'edits' | 'imports',
  mark: string,
  { acknowledged, delay }: Moment,
): Promise<Acknowledged> {
  const child = spawn(process.execPath, [program, url, does, mark], { stdio: ['pipe', 'pipe', 'pipe'] });
  let problem = '';
  child.stderr.on('data', (data) => (problem += String(data)));
  const said: Record<string, unknown>[] = [];
  const lines = createInterface({ input: child.stdout });
  const ready = once(lines, 'line');
  const enough = new Promise<void>((resolve) => {
    let left = acknowledged;
    lines.on('line', (line) => {
      const told = JSON.parse(line) as Record<string, unknown>;
      said.push(told);
      if (('ready' in told || 'id' in told || 'group' in told) && left-- === 0) resolve();
    });
  });
  const gone = once(lines, 'close');
  await Promise.race([ready, gone]);
  if (problem !== '') throw new Error(problem);
  child.stdin.write('go\n');
  await Promise.race([enough, gone]);
  await new Promise((resolve) => setTimeout(resolve, delay));
  if (child.exitCode !== null) throw new Error(`It ended by itself: ${problem}`);
  child.kill('SIGKILL');
  await gone;
  return {
    edits: said.filter((line): line is { id: string; revision: number } => 'id' in line),
    imports: said.filter((line): line is { group: string; records: number } => 'group' in line),
    wasImporting: said.at(-1)?.['begins'] === 'import',
  };
}
