/** One table of a font file. */
interface FontTable {
  readonly tag: number;
  readonly checksum: number;
  readonly data: Uint8Array;
}

const signature = 0x774f4646;
const lengths = { woffHeader: 44, woffEntry: 20, header: 12, entry: 16 } as const;

/**
 * Takes a font out of its WOFF wrapper: its tables unpressed, each where the plain format has it. The writer would do so anew
 * for every document, which takes longer than all the rest of a sheet.
 *
 * @param bytes a file in WOFF 1.0 [bytes]
 * @param inflate opens what zlib has pressed [function]
 * @returns the same font as a plain file [bytes]
 */
export function unwrapped(bytes: Uint8Array, inflate: (pressed: Uint8Array) => Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(0) !== signature) throw new Error('invariant: the font is no WOFF');
  const tables = Array.from({ length: view.getUint16(12) }, (_, i): FontTable => {
    const at = lengths.woffHeader + i * lengths.woffEntry;
    const [offset, pressed, original] = [4, 8, 12].map((by) => view.getUint32(at + by)) as [number, number, number];
    const own = bytes.subarray(offset, offset + pressed);
    const data = pressed < original ? inflate(own) : own;
    return { tag: view.getUint32(at), checksum: view.getUint32(at + 16), data };
  });
  return plainFile(view.getUint32(4), tables);
}

function plainFile(flavour: number, tables: readonly FontTable[]): Uint8Array {
  const starts: number[] = [];
  let size = lengths.header + tables.length * lengths.entry;
  for (const { data } of tables) {
    starts.push(size);
    size += Math.ceil(data.length / 4) * 4;
  }
  const file = new Uint8Array(size);
  const view = new DataView(file.buffer);
  const power = Math.floor(Math.log2(tables.length));
  view.setUint32(0, flavour);
  [tables.length, 16 * 2 ** power, power, 16 * (tables.length - 2 ** power)].forEach((value, i) =>
    view.setUint16(4 + 2 * i, value),
  );
  tables.forEach(({ tag, checksum, data }, i) => {
    const start = starts[i] ?? 0;
    [tag, checksum, start, data.length].forEach((value, j) =>
      view.setUint32(lengths.header + i * lengths.entry + 4 * j, value),
    );
    file.set(data, start);
  });
  return file;
}
