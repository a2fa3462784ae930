import type { PaperName } from '@hitchwright/print';
import type { Asked } from '../asked.ts';
import { UsageError } from '../exit.ts';

/** The file to write and its format by its ending. It is named by whoever asks, never by a record. */
export function outAsked<Format extends string>(
  command: string,
  { files, json }: Asked,
  formats: readonly Format[],
): { readonly file: string; readonly format: Format } {
  const file = files['out'];
  const endings = formats.map((format) => `.${format}`).join(', ');
  if (json) throw new UsageError(`hitchwright ${command} writes a file: leave --json out.`);
  if (file === undefined) throw new UsageError(`Name the file to write: --out FILE, ending in ${endings}.`);
  const format = formats.find((one) => file.toLowerCase().endsWith(`.${one}`));
  if (format === undefined) throw new UsageError(`--out takes a file that ends in ${endings}.`);
  return { file, format };
}

/** Letter unless A4 is asked for. */
export function paperAsked({ files }: Asked): PaperName {
  const paper = files['paper'] ?? 'letter';
  if (paper !== 'letter' && paper !== 'a4') throw new UsageError('--paper takes letter or a4.');
  return paper;
}

/** The day on the sheet: asked for, or today where this runs. */
export function dateAsked({ files }: Asked): string {
  const date = files['date'] ?? today();
  const isDay = /^\d{4}-\d\d-\d\d$/.test(date) && !Number.isNaN(Date.parse(date));
  if (!isDay) throw new UsageError('--date takes a day such as 2026-11-26.');
  return date;
}

function today(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
