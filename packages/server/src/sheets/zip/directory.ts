import { limits } from '../limits.ts';
import { damaged, notThis, tooMuch } from '../trouble.ts';

/** One entry of a packed file, as its directory lists it. */
export interface Entry {
  readonly name: string;
  readonly method: 0 | 8;
  readonly crc: number;
  /** [bytes] */
  readonly packed: number;
  readonly unpacked: number;
  /** Where its packed bytes begin. */
  readonly start: number;
}

const endSize = 22;
const longestComment = 65_535;
const marks = { end: 0x06054b50, listed: 0x02014b50, local: 0x04034b50 } as const;

/**
 * Reads the directory of a packed file and refuses whatever is absurd or made to mislead, before anything is unpacked: too many or
 * too large entries, entries that overlap, names that lead out of the file or stand twice, encryption, parts of several disks.
 *
 * Source: APPNOTE.TXT, the .ZIP File Format Specification, 6.3, sections 4.3 and 4.4.
 */
export function readDirectory(bytes: Buffer): ReadonlyMap<string, Entry> {
  const { count, offset, size } = readEnd(bytes);
  if (count > limits.entries)
    throw tooMuch(`at most ${limits.entries} entries in the file`, `${count}`, 'Is this a spreadsheet?');
  const entries = new Map<string, Entry>();
  let at = offset;
  for (let i = 0; i < count; i += 1) {
    const { entry, next } = readListed(bytes, at, offset + size);
    if (entries.has(entry.name)) throw damaged('an entry that stands twice');
    entries.set(entry.name, entry);
    at = next;
  }
  refuseBombs([...entries.values()]);
  refuseOverlaps([...entries.values()], offset);
  return entries;
}

interface End {
  readonly count: number;
  readonly offset: number;
  readonly size: number;
}

function readEnd(bytes: Buffer): End {
  const lowest = Math.max(0, bytes.length - endSize - longestComment);
  for (let at = bytes.length - endSize; at >= lowest; at -= 1) {
    if (bytes.readUInt32LE(at) !== marks.end || at + endSize + bytes.readUInt16LE(at + 20) !== bytes.length) continue;
    const [disk, start, here, count] = [4, 6, 8, 10].map((field) => bytes.readUInt16LE(at + field)) as [
      number,
      number,
      number,
      number,
    ];
    const [size, offset] = [bytes.readUInt32LE(at + 12), bytes.readUInt32LE(at + 16)];
    if (disk !== 0 || start !== 0 || here !== count) throw damaged('a part of several files');
    if (count === 0xffff || offset === 0xffffffff)
      throw tooMuch('a file of at most 20 MB', 'a directory for larger ones');
    if (offset + size > at) throw damaged('a directory beyond its end');
    return { count, offset, size };
  }
  throw damaged('no directory');
}

function readListed(bytes: Buffer, at: number, end: number): { entry: Entry; next: number } {
  if (at + 46 > end || bytes.readUInt32LE(at) !== marks.listed) throw damaged('a directory cut short');
  const [flags, method] = [bytes.readUInt16LE(at + 8), bytes.readUInt16LE(at + 10)];
  const [nameSize, extraSize, commentSize] = [28, 30, 32].map((field) => bytes.readUInt16LE(at + field)) as [
    number,
    number,
    number,
  ];
  const next = at + 46 + nameSize + extraSize + commentSize;
  if (next > end) throw damaged('a directory cut short');
  if ((flags & 0x2041) !== 0)
    throw notThis('a file without a password', 'an encrypted one', 'Save it without a password.');
  if (method !== 0 && method !== 8) throw damaged(`packing method ${method}`);
  const name = bytes.toString('utf8', at + 46, at + 46 + nameSize);
  refuseName(name);
  const [crc, packed, unpacked, local] = [16, 20, 24, 42].map((field) => bytes.readUInt32LE(at + field)) as [
    number,
    number,
    number,
    number,
  ];
  if (method === 0 && packed !== unpacked) throw damaged('two sizes for one entry');
  return { entry: { name, method, crc, packed, unpacked, start: startOf(bytes, local, name) }, next };
}

function refuseName(name: string): void {
  const leads =
    name === '' ||
    name.startsWith('/') ||
    /[\\\0:]/.test(name) ||
    name.split('/').some((part) => part === '..' || part === '.');
  if (leads) throw damaged('an entry that leads out of the file');
}

/** The local header before an entry’s bytes says its name once more: a reader that goes by it must find the same. */
function startOf(bytes: Buffer, local: number, name: string): number {
  if (local + 30 > bytes.length || bytes.readUInt32LE(local) !== marks.local)
    throw damaged('an entry that is not there');
  const [nameSize, extraSize] = [bytes.readUInt16LE(local + 26), bytes.readUInt16LE(local + 28)];
  const start = local + 30 + nameSize + extraSize;
  if (start > bytes.length || bytes.toString('utf8', local + 30, local + 30 + nameSize) !== name)
    throw damaged('an entry with two names');
  return start;
}

function refuseBombs(entries: readonly Entry[]): void {
  const all = entries.reduce((sum, { unpacked }) => sum + unpacked, 0);
  const megabytes = Math.round(limits.unpacked / 1e6);
  if (all > limits.unpacked) throw tooMuch(`at most ${megabytes} MB unpacked`, `${Math.round(all / 1e6)} MB`);
  const bomb = entries.find(({ packed, unpacked }) => unpacked > limits.ratioFrom && unpacked > packed * limits.ratio);
  if (bomb !== undefined)
    throw tooMuch(
      `no part more than ${limits.ratio} times larger than packed`,
      `${Math.round(bomb.unpacked / Math.max(1, bomb.packed))} times`,
    );
}

function refuseOverlaps(entries: readonly Entry[], directory: number): void {
  const ordered = [...entries].sort((a, b) => a.start - b.start);
  ordered.forEach(({ start, packed }, i) => {
    const next = ordered[i + 1]?.start ?? directory;
    if (start + packed > next) throw damaged('entries that overlap');
  });
}
