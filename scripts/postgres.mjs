// A throw-away PostgreSQL on loopback, for tests and benches: found or installed, started on a free port in a temporary
// folder, as an unprivileged user when run as root, and gone again when whoever started it is gone.
//   node scripts/postgres.mjs
// prints one line of JSON ({ url, folder, bin, port, owner }) and keeps it running until its standard input ends. A line `crash` kills
// the server at once, `start` starts it again in the same folder; each is answered by a line of JSON. One line on standard error and
// exit 1 where none can be had.
import { execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, chownSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const isRoot = process.getuid?.() === 0;

try {
  await serve();
} catch (problem) {
  console.error(`No PostgreSQL for the tests: ${problem.message}`);
  process.exitCode = 1;
}

async function serve() {
  const bin = found() ?? installed();
  const server = await prepared(bin);
  try {
    await start(server);
    said({ url: server.url, folder: server.folder, bin, port: server.port, owner: server.owner?.name ?? null });
    await untilLeft(server);
  } finally {
    await stop(server, 'fast');
    rmSync(server.folder, { recursive: true, force: true });
  }
}

/** Ends with the standard input; a signal that asks to leave ends it too. */
async function untilLeft(server) {
  const lines = createInterface({ input: process.stdin });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => lines.close());
  for await (const line of lines) {
    if (line === 'crash') await crash(server);
    else if (line === 'start') await start(server);
    else continue;
    said({ done: line });
  }
}

function said(line) {
  process.stdout.write(`${JSON.stringify(line)}\n`);
}

/** The folder of the newest PostgreSQL programs on this machine; HITCHWRIGHT_POSTGRES names another. */
function found() {
  const named = process.env['HITCHWRIGHT_POSTGRES'];
  const folders = named === undefined ? [...debianFolders(), ...pathFolders()] : [named];
  return folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres')));
}

function debianFolders() {
  const root = '/usr/lib/postgresql';
  const versions = existsSync(root) ? readdirSync(root).map(Number).filter(Number.isFinite) : [];
  return versions.sort((a, b) => b - a).map((version) => join(root, String(version), 'bin'));
}

function pathFolders() {
  return (process.env['PATH'] ?? '').split(':').filter((folder) => folder !== '');
}

/** Installs it with apt-get where that is there and allowed, else says what is missing. */
function installed() {
  const wanted =
    'install it (Debian, Ubuntu: apt-get install postgresql) or name its folder of programs in HITCHWRIGHT_POSTGRES';
  if (process.env['HITCHWRIGHT_POSTGRES'] !== undefined)
    throw new Error(`no initdb and postgres in HITCHWRIGHT_POSTGRES; ${wanted}.`);
  if (!isRoot || !existsSync('/usr/bin/apt-get')) throw new Error(`it is not on this machine; ${wanted}.`);
  const options = { stdio: ['ignore', 'ignore', 'pipe'], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  try {
    execFileSync('apt-get', ['update', '-qq'], options);
    execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'postgresql'], options);
  } catch (problem) {
    throw new Error(`it is not on this machine and apt-get could not install it (${lastLine(problem)}); ${wanted}.`, {
      cause: problem,
    });
  }
  const folder = found();
  if (folder === undefined) throw new Error(`apt-get installed it, but its programs were not found; ${wanted}.`);
  return folder;
}

function lastLine(problem) {
  return String(problem.stderr ?? problem.message)
    .trim()
    .split('\n')
    .at(-1);
}

/** A new, empty cluster in a temporary folder. */
async function prepared(bin) {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-pg-'));
  const owner = isRoot ? unprivileged() : null;
  const port = await freePort();
  const server = { bin, folder, owner, port, url: `postgres://app@127.0.0.1:${port}/postgres`, child: null };
  if (owner !== null) chownSync(folder, owner.uid, owner.gid);
  const cluster = join(folder, 'data');
  const words = ['-D', cluster, '-U', 'app', '--auth=trust', '-E', 'UTF8', '--locale=C', '--no-instructions'];
  execFileSync(join(bin, 'initdb'), words, { ...asOwner(server), stdio: ['ignore', 'ignore', 'inherit'] });
  return server;
}

/** PostgreSQL refuses to run as root. */
function unprivileged() {
  const users = readFileSync('/etc/passwd', 'utf8')
    .split('\n')
    .map((line) => line.split(':'));
  const user = users.find(([name]) => name === 'postgres') ?? users.find(([name]) => name === 'nobody');
  if (user === undefined)
    throw new Error('it does not run as root, and there is no user postgres or nobody to run it as.');
  const [name, , uid, gid] = user;
  return { name, uid: Number(uid), gid: Number(gid) };
}

function asOwner({ owner, folder }) {
  return owner === null ? { cwd: folder } : { cwd: folder, uid: owner.uid, gid: owner.gid };
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

/** Starts the server and waits until it answers; after a crash its port and folder may be held for a while. */
async function start(server) {
  let last = '';
  for (let attempt = 0; attempt < 40; attempt += 1) {
    if (server.child === null) server.child = launched(server, (text) => (last = text));
    if (isReady(server)) return;
    await pause(250);
  }
  throw new Error(`it did not start within 10 s (${last.trim().split('\n').at(-1)}).`);
}

function launched(server, onLog) {
  const words = ['-D', join(server.folder, 'data'), '-p', String(server.port), '-h', '127.0.0.1', '-k', server.folder];
  const child = spawn(join(server.bin, 'postgres'), words, { ...asOwner(server), stdio: ['ignore', 'ignore', 'pipe'] });
  child.stderr.on('data', (data) => onLog(String(data)));
  child.on('exit', () => {
    if (server.child === child) server.child = null;
  });
  return child;
}

function isReady({ bin, port }) {
  try {
    execFileSync(join(bin, 'pg_isready'), ['-q', '-h', '127.0.0.1', '-p', String(port)], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}

/** As if the machine had lost the program: no goodbye to anybody. */
async function crash(server) {
  await stop(server, 'SIGKILL');
}

/** `fast` lets running work go and closes the files in order. */
async function stop({ child }, how) {
  if (child === null || child.exitCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill(how === 'fast' ? 'SIGINT' : how);
  await gone;
}

function pause(ms) {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
