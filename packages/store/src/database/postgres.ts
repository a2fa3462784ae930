import { Kysely, PostgresDialect, type IsolationLevel } from 'kysely';
import pg from 'pg';
import { shown } from './address.ts';
import type { Database } from './database.ts';
import { isStarting, isWriterInTheWay, troubleOf } from './driverTrouble.ts';
import { patiently } from './retry.ts';
import type { Tables } from './tables.ts';

/** Connections that one server of ours holds. */
const mostConnections = 8;
/** How long a server that is not there yet is waited for [ms]. */
const patience = 5000;
/** A lock is waited for so long; a client that was lost in the middle of its work holds its locks no longer than that. */
const settings = '-c lock_timeout=10s -c idle_in_transaction_session_timeout=60s -c tcp_keepalives_idle=30';

/**
 * Connects to a PostgreSQL server. Several servers of ours may share one database: every change locks the rows of the records that
 * it touches before it reads them.
 *
 * @param url postgres://… [text]
 * @returns the database; throws StoreTrouble where it can’t be reached within some seconds [record]
 */
export async function openPostgres(url: string): Promise<Database> {
  const where = shown(url);
  const pool = new pg.Pool({ connectionString: withSettings(url), max: mostConnections, keepAlive: true });
  pool.on('error', ignored);
  pool.on('connect', (client) => client.on('error', ignored));
  const kysely = new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
  try {
    const connect = async (): Promise<void> => (await pool.connect()).release();
    await patiently(connect, isStarting, patience);
  } catch (problem) {
    await kysely.destroy();
    throw troubleOf(problem, where);
  }
  const run = async <T>(level: IsolationLevel, work: (queries: Kysely<Tables>) => Promise<T>): Promise<T> => {
    try {
      return await patiently(() => kysely.transaction().setIsolationLevel(level).execute(work), isWriterInTheWay);
    } catch (problem) {
      throw troubleOf(problem, where);
    }
  };
  return {
    kind: 'postgres',
    where,
    read: (work) => run('repeatable read', work),
    readLong: (work) => run('repeatable read', work),
    write: (work) => run('read committed', work),
    close: () => kysely.destroy(),
  };
}

function withSettings(url: string): string {
  const address = new URL(url);
  const own = address.searchParams.get('options');
  address.searchParams.set('options', own === null ? settings : `${settings} ${own}`);
  return address.href;
}

/** A connection that breaks between two statements: whoever uses it hears of it with the next one, and the pool replaces it. */
function ignored(): void {
  return;
}
