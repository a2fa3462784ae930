import { crc32, deflateRawSync } from 'node:zlib';

/** One entry to be packed; what is given besides goes into the headers in place of what would be true. */
export interface Packed {
  readonly name: string;
  readonly content: string | Uint8Array;
  readonly stored?: boolean;
  readonly unpackedSaid?: number;
  readonly localName?: string;
  readonly flags?: number;
  readonly method?: number;
  readonly crcSaid?: number;
  /** Only listed, with its bytes at this place, where something else lies. */
  readonly at?: number;
}

/** Packs a ZIP file, well or, where told so, badly. */
export function zip(entries: readonly Packed[]): Buffer {
  const locals: Buffer[] = [];
  const listed: Buffer[] = [];
  let offset = 0;
  for (const entry of entries) {
    const local = entry.at === undefined ? localEntry(entry) : Buffer.alloc(0);
    locals.push(local);
    listed.push(listedEntry(entry, entry.at ?? offset));
    offset += local.length;
  }
  const directory = Buffer.concat(listed);
  return Buffer.concat([...locals, directory, end(entries.length, directory.length, offset)]);
}

function bytesOf({ content }: Packed): Buffer {
  return typeof content === 'string' ? Buffer.from(content, 'utf8') : Buffer.from(content);
}

function packedBytes(entry: Packed): Buffer {
  return entry.stored === true ? bytesOf(entry) : deflateRawSync(bytesOf(entry));
}

function sizes(entry: Packed): Buffer {
  const head = Buffer.alloc(12);
  head.writeUInt32LE(entry.crcSaid ?? crc32(bytesOf(entry)), 0);
  head.writeUInt32LE(packedBytes(entry).length, 4);
  head.writeUInt32LE(entry.unpackedSaid ?? bytesOf(entry).length, 8);
  return head;
}

function methodOf(entry: Packed): number {
  return entry.method ?? (entry.stored === true ? 0 : 8);
}

/** An entry as it lies in the file: its header and its packed bytes. */
export function localEntry(entry: Packed): Buffer {
  const name = Buffer.from(entry.localName ?? entry.name, 'utf8');
  const head = Buffer.alloc(30);
  head.writeUInt32LE(0x04034b50, 0);
  head.writeUInt16LE(20, 4);
  head.writeUInt16LE(entry.flags ?? 0, 6);
  head.writeUInt16LE(methodOf(entry), 8);
  sizes(entry).copy(head, 14);
  head.writeUInt16LE(name.length, 26);
  return Buffer.concat([head, name, packedBytes(entry)]);
}

function listedEntry(entry: Packed, offset: number): Buffer {
  const name = Buffer.from(entry.name, 'utf8');
  const head = Buffer.alloc(46);
  head.writeUInt32LE(0x02014b50, 0);
  head.writeUInt16LE(20, 4);
  head.writeUInt16LE(20, 6);
  head.writeUInt16LE(entry.flags ?? 0, 8);
  head.writeUInt16LE(methodOf(entry), 10);
  sizes(entry).copy(head, 16);
  head.writeUInt16LE(name.length, 28);
  head.writeUInt32LE(offset, 42);
  return Buffer.concat([head, name]);
}

function end(count: number, size: number, offset: number): Buffer {
  const tail = Buffer.alloc(22);
  tail.writeUInt32LE(0x06054b50, 0);
  tail.writeUInt16LE(count, 8);
  tail.writeUInt16LE(count, 10);
  tail.writeUInt32LE(size, 12);
  tail.writeUInt32LE(offset, 16);
  return tail;
}
