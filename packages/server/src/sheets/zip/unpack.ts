import { crc32, inflateRawSync } from 'node:zlib';
import { damaged } from '../trouble.ts';
import type { Entry } from './directory.ts';

/** Unpacks one entry: never more than its directory says, and only what its check sum confirms. */
export function unpacked(bytes: Buffer, { method, start, packed, unpacked: size, crc }: Entry): Buffer {
  const raw = bytes.subarray(start, start + packed);
  const content = method === 0 ? raw : inflated(raw, size);
  if (content.length !== size || crc32(content) !== crc) throw damaged('an entry that is not what it says');
  return content;
}

function inflated(raw: Buffer, size: number): Buffer {
  try {
    return inflateRawSync(raw, { maxOutputLength: Math.max(1, size) });
  } catch (problem) {
    if (!(problem instanceof Error)) throw problem;
    throw damaged('an entry that is not what it says');
  }
}
