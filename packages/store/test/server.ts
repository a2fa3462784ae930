import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

/** A PostgreSQL server that runs until it is left. */
export interface PostgresServer {
  readonly url: string;
  readonly owner: string | null;
  /** Kills it as if the power had gone. */
  crash(): Promise<void>;
  start(): Promise<void>;
  leave(): Promise<void>;
}

const script = fileURLToPath(new URL('../../../scripts/postgres.mjs', import.meta.url));

/** Starts a PostgreSQL server of its own; fails in one sentence where none can be had. */
export async function startServer(env: Readonly<Record<string, string>> = {}): Promise<PostgresServer> {
  const child = spawn(process.execPath, [script], { stdio: ['pipe', 'pipe', 'pipe'], env: { ...process.env, ...env } });
  let problem = '';
  child.stderr.on('data', (data) => (problem += String(data)));
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const next = async (): Promise<unknown> => {
    const { value, done } = await lines.next();
    if (done === true) {
      await gone;
      throw new Error(problem.trim());
    }
    return JSON.parse(value);
  };
  const say = async (word: string): Promise<void> => {
    child.stdin.write(`${word}\n`);
    await next();
  };
  const { url, owner } = (await next()) as Pick<PostgresServer, 'url' | 'owner'>;
  return {
    url,
    owner,
    crash: () => say('crash'),
    start: () => say('start'),
    async leave() {
      child.stdin.end();
      await gone;
    },
  };
}
