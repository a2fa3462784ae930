import PDFDocument from 'pdfkit';
import { Faces } from '../fonts/faces.ts';
import type { Fonts } from '../fonts/fonts.ts';
import { cleaned } from '../text/cleaned.ts';
import { Ink } from './ink.ts';
import type { Paper } from './paper.ts';
import { Tags } from './tags.ts';

/** What a document says of itself. */
export interface AboutPdf {
  readonly title: string;
  /** The day it is made on, in ISO 8601: the same input gives the same bytes. */
  readonly date: string;
}

/** A document that is being written. */
export interface OpenPdf {
  readonly ink: Ink;
  readonly tags: Tags;
  readonly addPage: () => void;
  readonly close: () => Promise<Uint8Array>;
}

/** Opens a tagged document without a page. */
export function openPdf(fonts: Fonts, paper: Paper, { title, date }: AboutPdf): OpenPdf {
  const day = new Date(`${date}T00:00:00Z`);
  if (Number.isNaN(day.getTime())) throw new RangeError(`${date} is no date in ISO 8601`);
  const points = [(paper.width * 72) / 25.4, (paper.height * 72) / 25.4];
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    size: points as [number, number],
    margin: 0,
    // No built-in font is opened: it would be read from a file, and is not embedded.
    font: null as unknown as string,
    info: { Title: cleaned(title), CreationDate: day, ModDate: day, Creator: 'hitchwright', Producer: 'hitchwright' },
  });
  const chunks: Uint8Array[] = [];
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((done, fail) => doc.on('end', done).on('error', fail));
  const tags = new Tags(doc);
  return {
    ink: new Ink(doc, new Faces(doc, fonts)),
    tags,
    addPage: () => void doc.addPage(),
    close: async () => {
      tags.end();
      doc.end();
      await ended;
      return together(chunks);
    },
  };
}

function together(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
