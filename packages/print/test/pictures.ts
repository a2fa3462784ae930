import { createCanvas, loadImage } from '@napi-rs/canvas';
import { crc32, deflateSync } from 'node:zlib';
import { opened } from './readPdf.ts';

/** A page as it comes out on paper, row by row from its upper left corner: from 0, black, to 255, white. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly greys: Uint8Array;
}

/** How pages are pictured: how finely [dots per inch], and how far they are pushed to the right and down [dots]. */
export interface Picturing {
  readonly dpi: number;
  readonly push?: number;
}

/** Draws every page of a document as an independent reader draws it. */
export async function picturesOf(bytes: Uint8Array, { dpi, push = 0 }: Picturing): Promise<Picture[]> {
  const pdf = await opened(bytes);
  const pictures: Picture[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const viewport = page.getViewport({ scale: dpi / 72, offsetX: push, offsetY: push });
    const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
    const context = canvas.getContext('2d');
    // The canvas of this package is one that pdf.js draws on, and no browser’s by its type.
    await page.render({ canvasContext: context as never, viewport }).promise;
    pictures.push(inGrey(context.getImageData(0, 0, canvas.width, canvas.height)));
  }
  await pdf.destroy();
  return pictures;
}

interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

function inGrey({ width, height, data }: Pixels): Picture {
  const greys = new Uint8Array(width * height);
  greys.forEach((_, i) => {
    greys[i] = Math.round(((data[4 * i] ?? 0) + (data[4 * i + 1] ?? 0) + (data[4 * i + 2] ?? 0)) / 3);
  });
  return { width, height, greys };
}

/** The picture as red, green, blue and opacity, black coming out as the level that is asked for and white as 255. */
export function pixelsOf({ greys }: Picture, black = 0): Uint8ClampedArray {
  const pixels = new Uint8ClampedArray(4 * greys.length);
  greys.forEach((grey, i) => {
    const level = Math.round(black + (grey * (255 - black)) / 255);
    pixels[4 * i] = pixels[4 * i + 1] = pixels[4 * i + 2] = level;
    pixels[4 * i + 3] = 255;
  });
  return pixels;
}

/** Levels from one of the sixteen tones of four bits to the next. */
const tone = 17;

/** How many dots across go into one of a picture that is kept. */
const gathered = 3;

/** The picture a third as large, nine dots averaged into one of sixteen tones: plenty for black ink, and small files. */
export function shrunk({ width, height, greys }: Picture): Picture {
  const [across, down] = [Math.floor(width / gathered), Math.floor(height / gathered)];
  const sums = new Uint16Array(across * down);
  for (let y = 0; y < gathered * down; y += 1) {
    const row = across * Math.floor(y / gathered);
    for (let x = 0; x < gathered * across; x += 1) {
      const at = row + Math.floor(x / gathered);
      sums[at] = (sums[at] ?? 0) + (greys[y * width + x] ?? 0);
    }
  }
  const small = Uint8Array.from(sums, (sum) => tone * Math.round(sum / (gathered * gathered * tone)));
  return { width: across, height: down, greys: small };
}

/** Reads a PNG in grey. */
export async function readPng(path: string): Promise<Picture> {
  const image = await loadImage(path);
  const context = createCanvas(image.width, image.height).getContext('2d');
  context.drawImage(image, 0, 0);
  return inGrey(context.getImageData(0, 0, image.width, image.height));
}

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** A picture of sixteen tones as a PNG of four bits a dot, which the canvas can’t write: a fifth of its size in colour. */
export function pngOf({ width, height, greys }: Picture): Buffer {
  const row = 1 + Math.ceil(width / 2);
  const rows = Buffer.alloc(row * height);
  greys.forEach((grey, i) => {
    const x = i % width;
    const at = row * Math.floor(i / width) + 1 + Math.floor(x / 2);
    const four = Math.round(grey / tone);
    rows[at] = (rows[at] ?? 0) | (x % 2 === 0 ? four << 4 : four);
  });
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 4;
  const parts = [chunk('IHDR', header), chunk('IDAT', deflateSync(rows, { level: 9 })), chunk('IEND', Buffer.alloc(0))];
  return Buffer.concat([signature, ...parts]);
}

/** A part of a PNG: its length, its name, what it holds and a sum to check both. */
function chunk(name: string, content: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), content]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(content.length);
  sum.writeUInt32BE(crc32(named));
  return Buffer.concat([length, named, sum]);
}
