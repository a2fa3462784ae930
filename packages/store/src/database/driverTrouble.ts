import { StoreTrouble, type TroubleCode } from '../trouble.ts';

interface DriverError {
  readonly code: string;
  readonly message: string;
  readonly constraint?: string;
}

/** What the drivers call it, by how their codes begin: SQLite’s names, PostgreSQL’s SQLSTATE, Node’s own. */
const codes: readonly (readonly [start: string, code: TroubleCode])[] = [
  ['SQLITE_FULL', 'full'],
  ['SQLITE_IOERR_SHM', 'full'],
  ['SQLITE_CORRUPT', 'damaged'],
  ['SQLITE_NOTADB', 'damaged'],
  ['SQLITE_BUSY', 'busy'],
  ['SQLITE_LOCKED', 'busy'],
  ['SQLITE_READONLY', 'unreachable'],
  ['SQLITE_CANTOPEN', 'unreachable'],
  ['SQLITE_PERM', 'unreachable'],
  ['SQLITE_IOERR', 'unreachable'],
  ['53100', 'full'],
  ['53300', 'busy'],
  ['55P03', 'busy'],
  ['40', 'busy'],
  ['XX00', 'damaged'],
  ['57P', 'unreachable'],
  ['08', 'unreachable'],
  ['28', 'unreachable'],
  ['3D000', 'unreachable'],
  ['25006', 'unreachable'],
  ['58', 'unreachable'],
  ['ENOSPC', 'full'],
  ['EDQUOT', 'full'],
  ['ECONN', 'unreachable'],
  ['EHOSTUNREACH', 'unreachable'],
  ['ENETUNREACH', 'unreachable'],
  ['ENOTFOUND', 'unreachable'],
  ['EAI_AGAIN', 'unreachable'],
  ['ETIMEDOUT', 'unreachable'],
  ['EPIPE', 'unreachable'],
];

const said: Readonly<Record<Exclude<TroubleCode, 'newer' | 'notOurs' | 'noDriver'>, string>> = {
  busy: 'somebody else has been writing in it for too long. Nothing was changed; try again.',
  full: 'there is no room left where it is kept. Nothing was changed; make room and try again.',
  damaged:
    'its content is damaged. Stop writing to it and restore the last backup with restoreBackup; the damaged one is kept beside it.',
  unreachable: 'it can’t be reached, or may not be written to. Look at its state before a change is made again.',
};

/**
 * An error of a driver as a trouble of the store; anything else stays what it is.
 *
 * @param problem what was thrown [any]
 * @param where where the store is, as it may be shown [text]
 * @returns what to throw [error]
 */
export function troubleOf(problem: unknown, where: string): unknown {
  const code = codeOf(problem);
  if (code === null || code === 'newer' || code === 'notOurs' || code === 'noDriver') return problem;
  const detail = problem instanceof Error ? problem.message : String(problem);
  return new StoreTrouble(code, `The store at ${where}: ${said[code]} (${detail})`, problem);
}

/** The same for an error of the file system, while a file is made or opened. */
export function fileTroubleOf(problem: unknown, where: string): unknown {
  if (!isDriverError(problem) || !/^E(EXIST|NOENT|NOTDIR|ISDIR|ACCES|PERM|ROFS)$/.test(problem.code))
    return troubleOf(problem, where);
  return new StoreTrouble('unreachable', `The store at ${where}: ${said.unreachable} (${problem.message})`, problem);
}

/** Which trouble a driver’s error is, or null. */
export function codeOf(problem: unknown): TroubleCode | null {
  if (problem instanceof StoreTrouble) return null;
  if (!isDriverError(problem)) return isLostConnection(problem) ? 'unreachable' : null;
  return codes.find(([start]) => problem.code.startsWith(start))?.[1] ?? null;
}

/** Another writer was in the way: nothing of the work has stayed, and it may be tried again. Trying again also tells whose key was taken. */
export function isWriterInTheWay(problem: unknown): boolean {
  if (!isDriverError(problem)) return false;
  const { code, constraint = '' } = problem;
  return /^(SQLITE_BUSY|40001|40P01|57P03)/.test(code) || (code === '23505' && takenKeys.includes(constraint));
}

/** What two servers may want to make at the same moment. */
const takenKeys = ['record_key', 'done_request_pkey', 'mapping_pkey'];

/** The server is not there yet, or is starting up. */
export function isStarting(problem: unknown): boolean {
  return isDriverError(problem) && /^(57P03|ECONNREFUSED)/.test(problem.code);
}

function isDriverError(problem: unknown): problem is DriverError {
  return problem instanceof Error && typeof (problem as Partial<DriverError>).code === 'string';
}

/** The PostgreSQL driver gives a connection that ended no code. */
function isLostConnection(problem: unknown): boolean {
  return (
    problem instanceof Error &&
    /^(Connection terminated|Client has encountered a connection error)/.test(problem.message)
  );
}
