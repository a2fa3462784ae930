import { notThis } from '../trouble.ts';

/** The text of a file, and the encoding that it was taken to be in where nothing says so. */
export interface Decoded {
  readonly text: string;
  readonly guessed: string | null;
}

/** Bytes to look at to tell an encoding. */
const sample = 4096;

/** The text of a CSV file in UTF-8, UTF-16 or Windows-1252, with or without a mark at its start. */
export function decode(bytes: Uint8Array): Decoded {
  const said = saidBy(bytes) ?? wide(bytes);
  if (said !== null) return { text: readable(decoded(bytes, said)), guessed: null };
  refuseBinary(bytes);
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), guessed: null };
  } catch (problem) {
    if (!(problem instanceof TypeError)) throw problem;
    return { text: new TextDecoder('windows-1252').decode(bytes), guessed: 'Windows-1252' };
  }
}

function saidBy([a, b, c]: Uint8Array): string | null {
  if (a === 0xef && b === 0xbb && c === 0xbf) return 'utf-8';
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  return a === 0xfe && b === 0xff ? 'utf-16be' : null;
}

/** UTF-16 without a mark: every other byte of Latin letters is nought. */
function wide(bytes: Uint8Array): string | null {
  const start = bytes.subarray(0, sample);
  const noughts = [0, 0];
  start.forEach((byte, i) => {
    if (byte === 0) noughts[i % 2] = (noughts[i % 2] ?? 0) + 1;
  });
  const [even = 0, odd = 0] = noughts;
  const half = start.length / 2;
  if (odd > half * 0.4 && even < half * 0.02) return 'utf-16le';
  return even > half * 0.4 && odd < half * 0.02 ? 'utf-16be' : null;
}

function decoded(bytes: Uint8Array, encoding: string): string {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch (problem) {
    if (!(problem instanceof TypeError)) throw problem;
    throw notThis(`text in ${encoding.toUpperCase()}`, 'bytes that are none', 'Save it again as CSV in UTF-8.');
  }
}

function readable(text: string): string {
  if (text.includes('\0')) throw notBinary();
  return text;
}

/** Text has no noughts, and next to no control characters. */
function refuseBinary(bytes: Uint8Array): void {
  const start = bytes.subarray(0, sample);
  const controls = start.filter((byte) => byte < 9 || (byte > 13 && byte < 32)).length;
  if (bytes.includes(0) || controls > start.length * 0.02) throw notBinary();
}

function notBinary() {
  return notThis(
    'a CSV or XLSX file',
    'a file that is no text',
    'Save the table as CSV or XLSX in a spreadsheet program.',
  );
}
