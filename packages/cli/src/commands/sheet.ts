import { assess } from '@hitchwright/core/assess';
import { askedFor, readFile, refuse, systemFor, type Asked } from '../asked.ts';
import { writeOut } from '../drawing.ts';
import { UsageError } from '../exit.ts';
import { dateAsked, outAsked, paperAsked } from './printed.ts';

/** What may be written on the sheet, by its option. */
const named = { for: 'customer', by: 'issuer', number: 'number', revision: 'revision' } as const;

/** Longest text of these: a line or two of the title block. */
const longest = 80;

/** `hitchwright sheet FILE --out FILE`: the sheet that is handed over, as PDF. */
export async function sheetCommand(words: readonly string[]): Promise<number> {
  const asked = askedFor('sheet', words, ['out', 'paper', 'date', 'site', ...Object.keys(named)]);
  const { file } = outAsked('sheet', asked, ['pdf']);
  const how = { paper: paperAsked(asked), date: dateAsked(asked), ...namesAsked(asked), ...siteAsked(asked) };
  const reading = readFile(asked.file);
  if (!reading.ok) return refuse(reading.errors, false);
  const { document, setup } = reading;
  const assessment = assess(document);
  if (!assessment.ok) return refuse(assessment.errors, false);
  // The writer is large: whoever only checks never loads it.
  const { bundledFonts, sheetPdf } = await import('@hitchwright/print');
  const judged = { document, setup, answer: assessment.answer };
  const { bytes } = await sheetPdf(judged, { fonts: bundledFonts, system: systemFor(asked, setup), ...how });
  writeOut(file, bytes);
  return 0;
}

function namesAsked({ files }: Asked): Partial<Record<(typeof named)[keyof typeof named], string>> {
  const given = Object.entries(named).flatMap(([option, name]) => {
    const text = files[option];
    if (text !== undefined && text.length > longest)
      throw new UsageError(`--${option} takes at most ${longest} characters.`);
    return text === undefined ? [] : [[name, text] as const];
  });
  return Object.fromEntries(given);
}

function siteAsked({ files }: Asked): { readonly site?: string } {
  const { site } = files;
  if (site === undefined) return {};
  if (!/^https?:\/\/[^\s#]+$/.test(site))
    throw new UsageError('--site takes the address of the page that opens links, such as https://example.org/check/.');
  return { site };
}
