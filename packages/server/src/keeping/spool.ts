import { createReadStream, mkdtempSync, rmSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { largestArchive, tooLarge } from '../http/limits.ts';

/** A folder for one piece of work, which is gone afterwards. */
export async function inFolder<T>(work: (folder: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'hitchwright-server-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Writes a body into a file, piece by piece; a slow sender keeps nobody waiting but itself. */
export async function spooled(body: ReadableStream<Uint8Array> | null, file: string): Promise<void> {
  const output = await open(file, 'w');
  let size = 0;
  try {
    for await (const piece of (body ?? []) as AsyncIterable<Uint8Array>) {
      size += piece.length;
      if (size > largestArchive) throw tooLarge(largestArchive);
      await output.write(piece);
    }
  } finally {
    await output.close();
  }
}

/** The bytes of a file as a body; the folder that it lies in is gone when it was sent, or when nobody wants it any more. */
export function sentFrom(file: string, folder: string): ReadableStream<Uint8Array> {
  const pieces = createReadStream(file)[Symbol.asyncIterator]() as AsyncIterator<Uint8Array>;
  const clear = (): void => rmSync(folder, { recursive: true, force: true });
  return new ReadableStream({
    async pull(controller) {
      const { done, value } = await pieces.next();
      if (done !== true) controller.enqueue(new Uint8Array(value));
      else {
        clear();
        controller.close();
      }
    },
    async cancel() {
      await pieces.return?.();
      clear();
    },
  });
}

/** The lines that somebody writes, as a body; whoever writes waits for whoever reads. What breaks on the way breaks the body off. */
export function streamed(
  write: (sink: (line: string) => Promise<void>) => Promise<unknown>,
): ReadableStream<Uint8Array> {
  const { readable, writable } = new TransformStream<Uint8Array, Uint8Array>();
  const writer = writable.getWriter();
  const encoder = new TextEncoder();
  let isWanted = true;
  const sink = async (line: string): Promise<void> => {
    await writer.ready.catch(() => (isWanted = false));
    if (!isWanted) throw new Error('Nobody reads it any more.');
    await writer.write(encoder.encode(line));
  };
  const written = async (): Promise<void> => {
    try {
      await write(sink);
      await writer.close();
    } catch (problem) {
      if (!isWanted) return;
      console.error('An export was broken off:', problem);
      await writer.abort(problem).catch(() => undefined);
    }
  };
  void written();
  return readable;
}
